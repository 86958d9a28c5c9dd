// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/pail_checklist.h"

#include "ui/parts/theme.h"
#include "ui/shed/shed_words.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

PailChecklist::PailChecklist(Desk& desk, QWidget* parent) : Field(parent) {
    auto* column = new QVBoxLayout;
    column->setSpacing(scaled(4));
    row()->addLayout(column, 1);
    for (work::PailLine& pail : work::pails(desk.workbook(), desk.today())) {
        const bool can = pail.state == work::PailState::ready || pail.state == work::PailState::only_with_its_set;
        if (!can && pail.state != work::PailState::strength_unknown)
            continue;
        const QString strength = pail.strength ? desk.percent(*pail.strength)
                                               //: Beside a pail that was used in part
                                               : tr("used in part, strength unknown: goes into no mix");
        const QString set = pail.set.size() > 1
                                //: Beside a pail that goes into a mix only with others; %1 their codes
                                ? tr("only together: %1").arg(pail.set.join(QStringLiteral(", ")))
                                : QString();
        auto* box = new QCheckBox(joined({pail.code, large(desk, pail.mass), strength,
                                          //: Beside a pail; %1 the day from which its liquid dates
                                          tr("since %1").arg(desk.day_short(pail.oldest_on)), set}),
                                  this);
        box->setObjectName(QStringLiteral("mix_pail_%1").arg(pail.code));
        box->setEnabled(can);
        box->setMinimumHeight(scaled(28));
        column->addWidget(box);
        const std::size_t n = m_pails.size();
        m_pails.push_back({std::move(pail), box});
        connect(box, &QCheckBox::clicked, this, [this, n] {
            keep_sets_whole(n);
            note_edit();
        });
    }
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
