// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/weigh_form.h"

#include "core/work/figures.h"
#include "core/work/how_strips.h"
#include "core/work/more_to_weigh.h"
#include "core/work/soak.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/result_card.h"
#include "ui/parts/theme.h"
#include "ui/shed/mass_rows.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/step_names.h"
#include "ui/shed/weigh_words.h"

#include <QPushButton>

#include <algorithm>

namespace soakbook::ui {

WeighForm::WeighForm(Desk& desk, QWidget* parent)
    //: Label of a field
    : FormFrame(desk, QString(), parent), m_desk(desk), m_soak(add(tr("Out of"), new ChoiceField, QStringLiteral("soak"))),
      //: Label of a field
      m_strips(add(tr("Strips on the scale"), new CountField(desk), QStringLiteral("strips"))),
      //: Label of a field
      m_total(add(tr("Weight together"), new MassField(desk, MassSize::small), QStringLiteral("total"))),
      //: Label of a field
      m_singles(add_wide(tr("One by one"), new MassRows(desk, MassSize::small, QStringLiteral("weigh_single")),
                         QStringLiteral("one_by_one"))),
      m_way(new QPushButton(this)),
      //: A unit behind a number
      m_drip(add(tr("Dripped for"), new CountField(desk, tr("min")), QStringLiteral("drip"))),
      m_when(add(tr("When"), new WhenField(desk), QStringLiteral("at"))), m_end(add_secondary(QString())) {
    set_columns(1);
    set_kind(m_way, "link");
    m_way->setAutoDefault(false);
    add_widget(m_way);
    m_soak->setObjectName(QStringLiteral("weigh_soak"));
    m_strips->setObjectName(QStringLiteral("weigh_strips"));
    m_total->setObjectName(QStringLiteral("weigh_total"));
    m_singles->setObjectName(QStringLiteral("weigh_singles"));
    m_drip->setObjectName(QStringLiteral("weigh_drip"));
    m_when->setObjectName(QStringLiteral("weigh_when"));
    m_way->setObjectName(QStringLiteral("weigh_one_by_one"));
    m_end->setObjectName(QStringLiteral("end_soak"));
    //: Button that writes a weighing down
    set_primary(tr("Log the sample"));
    set_commit([this](const work::Confirmed& confirmed) -> std::optional<work::Refusal> {
        const auto logged = work::log_weighing(m_desk.workbook(), entry(), m_desk.doing(), confirmed);
        if (logged)
            return std::nullopt;
        work::Refusal refusal = logged.error();
        if (refusal.field.startsWith(QLatin1String("singles/"))) {
            m_singles->point_at(refusal.field.section(QLatin1Char('/'), 1, 1).toInt());
            refusal.field = QStringLiteral("one_by_one");
        } else if (m_one_by_one && (refusal.field == QLatin1String("total") || refusal.field == QLatin1String("strips"))) {
            refusal.field = QStringLiteral("one_by_one");
        }
        return refusal;
    });
    connect(this, &FormFrame::edited, this, &WeighForm::reckon);
    connect(m_soak, &Field::edited, this, &WeighForm::name_end);
    // What comes back from a draft may belong to the other way.
    connect(m_singles, &Field::edited, this, [this] { turn_to(true); });
    connect(m_total, &Field::edited, this, [this] { turn_to(false); });
    connect(m_way, &QPushButton::clicked, this, [this] {
        set_one_by_one(!m_one_by_one);
        begin();
    });
    connect(m_end, &QPushButton::clicked, this, &WeighForm::end_soak);
    set_one_by_one(false);
}

void WeighForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch.line.id == batch.line.id && is_edited();
    const work::SoakId before = same ? soak() : work::SoakId{};
    m_batch = batch;
    std::vector<ChoiceField::Choice> choices;
    for (const work::SoakLine& line : batch.soaks) {
        if (!line.ended) {
            choices.push_back({QVariant::fromValue<qlonglong>(line.id.value),
                               //: A bin in a list; %1 its name, %n strips, %2 how long they have soaked
                               tr("%1 · %n strips · %2 in", nullptr, line.strips)
                                   .arg(line.bin_name, how_long(maths::hours_between(line.started, m_desk.now())))});
        }
    }
    m_soak->set_choices(choices);
    set_shown(QStringLiteral("soak"), choices.size() > 1);
    if (before)
        choose_soak(before);
    else if (const work::SoakLine* next = next_soak(batch))
        choose_soak(next->id);
    if (!same)
        fill_sample(batch);
    name_end();
}

void WeighForm::fill_sample(const work::BatchView& batch) {
    const auto sample = work::figure(m_desk.workbook(), work::Figure::sample_strips);
    m_strips->set_value(sample);
    m_drip->clear();
    bool one_by_one = false;
    maths::Instant latest{};
    for (const work::SoakLine& line : batch.soaks) {
        for (const work::WeighLine& weighing : line.weighings) {
            if (weighing.at < latest)
                continue;
            latest = weighing.at;
            m_strips->set_value(weighing.strips);
            m_drip->set_value(weighing.drip_minutes ? std::optional<qint64>(*weighing.drip_minutes) : std::nullopt);
            one_by_one = weighing.one_by_one;
        }
    }
    m_total->clear();
    m_singles->clear();
    m_when->clear();
    set_one_by_one(one_by_one);
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("weigh"), QStringLiteral("weigh"), batch.line.id, batch.line.code, tr("weigh strips")));
}

void WeighForm::choose_soak(work::SoakId soak) {
    m_soak->set_value(QVariant::fromValue<qlonglong>(soak.value));
    name_end();
}

work::SoakId WeighForm::soak() const { return work::SoakId{m_soak->id()}; }

void WeighForm::set_one_by_one(bool one_by_one) {
    m_one_by_one = one_by_one;
    set_shown(QStringLiteral("strips"), !one_by_one);
    set_shown(QStringLiteral("total"), !one_by_one);
    set_shown(QStringLiteral("one_by_one"), one_by_one);
    m_way->setText(one_by_one
                       //: Button: strips are weighed all at once
                       ? tr("Weigh them together")
                       //: Button: strips are weighed singly
                       : tr("Weigh them one by one"));
    reckon();
}

void WeighForm::turn_to(bool one_by_one) {
    if (m_one_by_one != one_by_one)
        set_one_by_one(one_by_one);
}

void WeighForm::name_end() {
    const auto at = std::find_if(m_batch.soaks.begin(), m_batch.soaks.end(),
                                 [this](const work::SoakLine& line) { return line.id == soak(); });
    m_end->setVisible(at != m_batch.soaks.end());
    if (at != m_batch.soaks.end()) {
        //: Button: the strips are taken out of the liquid; %1 the name of a bin
        m_end->setText(tr("Take %1 out").arg(at->bin_name));
    }
}

void WeighForm::begin() {
    const auto at = std::find_if(m_batch.soaks.begin(), m_batch.soaks.end(),
                                 [this](const work::SoakLine& line) { return line.id == soak(); });
    const bool on_target = at != m_batch.soaks.end() && !at->weighings.empty() &&
                           at->weighings.back().figures.verdict == work::WeighVerdict::on_target;
    if (on_target && !is_edited()) {
        m_end->setFocus(Qt::OtherFocusReason);
    } else if (m_one_by_one) {
        m_singles->take_focus();
    } else if (m_strips->is_empty()) {
        m_strips->take_focus();
    } else {
        m_total->take_focus();
    }
}

void WeighForm::end_soak() {
    const std::optional<maths::Instant> at = m_when->is_empty() ? std::nullopt : m_when->value();
    const auto ended = work::end_soak(m_desk.workbook(), soak(), at, m_desk.doing());
    if (!ended)
        show_refusal(ended.error());
    else
        Q_EMIT soak_ended();
}

work::WeighEntry WeighForm::entry() const {
    work::WeighEntry entry;
    entry.soak = soak();
    if (m_one_by_one) {
        entry.singles = m_singles->values();
    } else {
        if (const auto strips = m_strips->value())
            entry.strips = static_cast<int>(*strips);
        entry.total = m_total->value();
    }
    if (const auto minutes = m_drip->value())
        entry.drip_minutes = static_cast<int>(*minutes);
    if (!m_when->is_empty())
        entry.at = m_when->value();
    return entry;
}

void WeighForm::reckon() {
    result()->clear();
    const bool typed = m_one_by_one ? !m_singles->values().empty() : m_total->value().has_value();
    if (!typed || !soak())
        return;
    const auto figures = work::reckon_weighing(m_desk.workbook(), entry());
    if (!figures) {
        if (figures.error().why != work::Why::missing)
            result()->set_next(refusal_words(figures.error(), m_desk));
        return;
    }
    //: The live result of a weighing; %1 the mean weight, %2 the liquid taken up, %3 acid in a strip
    QString text = tr("%1 each, <b>%2 taken up</b>, %3 acid a strip.")
                       .arg(small(m_desk, figures->mean), small(m_desk, figures->uptake), small(m_desk, figures->acid_per_strip));
    if (figures->low && figures->high) {
        //: The range in which the mean lies; %1 and %2 weights
        text += QStringLiteral("<br>") +
                tr("The mean lies between %1 and %2 (95 %).").arg(small(m_desk, *figures->low), small(m_desk, *figures->high));
    }
    result()->set_text(text);
    const VerdictWords words = verdict_words(m_desk, *figures);
    result()->set_verdict(words.state, words.word, words.what_now);
    show_sureness(*figures);
}

void WeighForm::show_sureness(const work::WeighFigures& figures) {
    std::vector<work::How> hows{work::how_taken_up(figures)};
    if (m_batch.strength)
        hows.push_back(work::how_acid_in_strip(figures, *m_batch.strength));
    if (const auto sample = work::more_to_weigh(m_desk.workbook(), entry())) {
        result()->set_next(sample_words(m_desk, *sample));
        if (sample->low)
            hows.push_back(work::how_sample_interval(*sample));
        if (sample->says == work::SampleSays::weigh_more)
            hows.push_back(work::how_more_to_weigh(*sample));
    }
    result()->set_how(hows, m_desk);
}

VerdictWords verdict_words(const Habits& habits, const work::WeighFigures& figures) {
    const maths::Mass off = figures.off_target.count < 0 ? -figures.off_target : figures.off_target;
    if (!figures.verdict)
        return {State::gone, {}, {}};
    switch (*figures.verdict) {
    case work::WeighVerdict::on_target:
        //: The strips weigh what they should; what to do now
        return {State::ready, WeighForm::tr("On target"), WeighForm::tr("take them out.")};
    case work::WeighVerdict::light:
        //: The strips weigh less than they should; %1 how much
        return {State::near, WeighForm::tr("Light by %1").arg(small(habits, off)),
                //: What to do with strips that are too light
                WeighForm::tr("soak on, and weigh again.")};
    case work::WeighVerdict::heavy:
        //: The strips weigh more than they should; %1 how much
        return {State::near, WeighForm::tr("Heavy by %1").arg(small(habits, off)),
                //: What to do with strips that are too heavy
                WeighForm::tr("let them drip on, and weigh again.")};
    case work::WeighVerdict::weigh_more:
        //: The spread of the strips is too wide for a verdict
        return {State::near, WeighForm::tr("Cannot tell yet"),
                //: What to do when a sample was too small for a verdict
                WeighForm::tr("weigh more strips.")};
    }
    return {};
}

} // namespace soakbook::ui
