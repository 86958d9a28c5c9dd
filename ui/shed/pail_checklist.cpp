// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/pail_checklist.h"

#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"
#include "ui/shed/mix_words.h"
#include "ui/shed/shed_words.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

PailChecklist::PailChecklist(Desk& desk, QWidget* parent)
    : Field(parent), m_desk(desk), m_advice(make_label({}, Type::body, this, true)), m_suggest(nullptr) {
    // As high as its sentences need at this width.
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    auto* column = new QVBoxLayout;
    column->setSpacing(scaled(4));
    row()->addLayout(column, 1);
    for (work::PailLine& pail : work::pails(desk.workbook(), desk.today())) {
        const bool can = pail.state == work::PailState::ready || pail.state == work::PailState::only_with_its_set;
        if (!can && pail.state != work::PailState::strength_unknown)
            continue;
        auto* line = new QWidget(this);
        column->addWidget(line);
        add_line(std::move(pail), line);
    }
    //: Button: ticks the leftover pails that go in best
    m_suggest = new QPushButton(tr("Suggest pails"), this);
    m_suggest->setObjectName(QStringLiteral("suggest_pails"));
    m_suggest->setAutoDefault(false);
    column->addSpacing(scaled(4));
    column->addWidget(m_suggest, 0, Qt::AlignLeft);
    m_advice->setObjectName(QStringLiteral("pail_advice"));
    m_advice->hide();
    column->addWidget(m_advice);
    connect(m_suggest, &QPushButton::clicked, this, &PailChecklist::advice_wanted);
}

void PailChecklist::add_line(work::PailLine pail, QWidget* line) {
    auto* parts = new FlowLayout(scaled(12), 0, line);
    const bool can = pail.state != work::PailState::strength_unknown;
    const QString strength = pail.strength ? m_desk.percent(*pail.strength)
                                           //: Beside a pail that was used in part
                                           : tr("used in part, strength unknown: goes into no mix");
    const QString set = pail.set.size() > 1
                            //: Beside a pail that goes into a mix only with others; %1 their codes
                            ? tr("only together: %1").arg(pail.set.join(QStringLiteral(", ")))
                            : QString();
    auto* box = new QCheckBox(joined({pail.code, large(m_desk, pail.mass), strength,
                                      //: Beside a pail; %1 the day from which its liquid dates
                                      tr("since %1").arg(m_desk.day_short(pail.oldest_on)), set}),
                              line);
    box->setObjectName(QStringLiteral("mix_pail_%1").arg(pail.code));
    box->setEnabled(can);
    box->setMinimumHeight(scaled(28));
    QLabel* reason = make_soft_label({}, Type::small, line, false);
    reason->setObjectName(QStringLiteral("pail_reason_%1").arg(pail.code));
    reason->setMinimumHeight(scaled(28));
    reason->hide();
    parts->addWidget(box);
    parts->addWidget(reason);
    const std::size_t n = m_pails.size();
    m_pails.push_back({std::move(pail), box, reason});
    connect(box, &QCheckBox::clicked, this, [this, n] {
        keep_sets_whole(n);
        note_edit();
    });
}

void PailChecklist::take_advice(const work::PailAdvice& advice) {
    drop_advice();
    if (advice.says == work::PailAdviceSays::advised)
        choose(advice.used());
    for (const Line& line : m_pails) {
        const auto said = std::find_if(advice.lines.begin(), advice.lines.end(),
                                       [&line](const work::PailAdviceLine& other) { return other.id == line.pail.id; });
        if (said == advice.lines.end())
            continue;
        const QString words = stays_out_words(*said);
        line.reason->setText(words);
        line.reason->setVisible(!words.isEmpty());
        line.box->setAccessibleDescription(words);
    }
    m_advice->setText(advice_words(m_desk, advice));
    m_advice->setVisible(!m_advice->text().isEmpty());
    if (advice.says == work::PailAdviceSays::advised)
        note_edit();
}

void PailChecklist::drop_advice() {
    for (const Line& line : m_pails) {
        line.reason->clear();
        line.reason->hide();
        line.box->setAccessibleDescription({});
    }
    m_advice->clear();
    m_advice->hide();
}

QWidget* PailChecklist::editor() const {
    return m_pails.empty() ? const_cast<PailChecklist*>(this) : static_cast<QWidget*>(m_pails.front().box);
}

void PailChecklist::clear() { choose({}); }

std::vector<work::PailId> PailChecklist::chosen() const {
    std::vector<work::PailId> pails;
    for (const Line& line : m_pails) {
        if (line.box->isChecked())
            pails.push_back(line.pail.id);
    }
    return pails;
}

void PailChecklist::choose(const std::vector<work::PailId>& pails) {
    for (const Line& line : m_pails)
        line.box->setChecked(std::find(pails.begin(), pails.end(), line.pail.id) != pails.end());
}

void PailChecklist::keep_sets_whole(std::size_t changed) {
    const Line& line = m_pails[changed];
    for (const Line& other : m_pails) {
        if (line.pail.set.contains(other.pail.code))
            other.box->setChecked(line.box->isChecked());
    }
}

void PailChecklist::mark_wrong(bool) {}

} // namespace soakbook::ui
