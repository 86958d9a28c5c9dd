// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/count_page.h"

#include "core/work/figures.h"
#include "core/work/how_yards.h"
#include "core/work/short_questions.h"
#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/record_table.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_rounds.h"
#include "ui/yards/yard_words.h"

#include <algorithm>

namespace soakbook::ui {

using work::MiteCountKind;

CountPage::CountPage(Desk& desk, QWidget* parent)
    //: The filled button of a mite count
    : GridPage(desk, QStringLiteral("count"), tr("Mites of each hive"), tr("Enter the count"), parent),
      m_rows(new RowsModel<CountRow>(CountGrid::columns(desk, [this] { note_typing(); }),
                                     [](const CountRow& row) { return row.line.entry.id.value; }, this)) {
    make_form();
    set_grid(m_rows, CountGrid::widths(), count_note, {count_last});
    set_first_column(count_mites);
    //: What stands in the empty grid of a mite count
    table()->set_empty_text(tr("No hive stands in this yard yet. Add hives first."));
}

void CountPage::make_form() {
    //: Field: the way mites are counted
    m_kind = form()->add(tr("How the mites are counted"), new ChoiceField, QStringLiteral("kind"));
    for (const auto kind : {MiteCountKind::wash, MiteCountKind::powder, MiteCountKind::drop}) {
        m_kind->add(YardWords::kind(kind), static_cast<int>(kind));
    }
    m_kind->set_value(static_cast<int>(MiteCountKind::wash));
    m_kind->editor()->setObjectName(QStringLiteral("count_kind"));
    //: Field: the day of the count
    m_day = form()->add(tr("Day"), new DayField(desk()), QStringLiteral("on"));
    m_day->editor()->setObjectName(QStringLiteral("count_on"));
    //: Field: the round that a count stands beside, before or after
    m_round = form()->add(tr("Belongs to the round"), new ChoiceField, QStringLiteral("round"));
    m_round->editor()->setObjectName(QStringLiteral("count_round"));
    //: First entry of a list of rounds
    m_round->set_none_text(tr("no round"));
    show_grid_refusals();
    form()->set_commit([this](const work::Confirmed& confirmed) { return enter(confirmed); });
    connect(m_kind, &ChoiceField::edited, this, &CountPage::use_kind);
}

MiteCountKind CountPage::kind() const {
    return static_cast<MiteCountKind>(m_kind->value().toInt());
}

void CountPage::open(work::YardId yard) {
    if (yard != m_yard) {
        m_yard = yard;
        m_rows->set_rows({});
        m_day->set_value(desk().today());
        set_complaint({});
        show_rounds();
        const auto rounds = open_rounds(desk().workbook(), yard);
        m_round->set_value(rounds.empty() ? QVariant() : QVariant(qint64{rounds.back().id.value}));
        form()->start_again();
    }
    refresh();
    DraftPlace place = yard_draft(QStringLiteral("count"), QStringLiteral("count"), {m_yard.value});
    place.title = title();
    form()->set_draft(place);
    settle_give_up();
    Q_EMIT title_changed();
}

QString CountPage::title() const {
    //: Title; %1 a yard
    return tr("%1: mite count").arg(m_yard_name);
}

void CountPage::show_rounds() {
    std::vector<ChoiceField::Choice> choices;
    for (const work::RoundLine& round : open_rounds(desk().workbook(), m_yard)) {
        choices.push_back({qint64{round.id.value}, round.name});
    }
    form()->set_shown(QStringLiteral("round"), !choices.empty());
    m_round->set_choices(choices);
}

void CountPage::refresh() {
    if (!m_yard) {
        return;
    }
    for (const work::YardLine& yard : work::yard_lines(desk().workbook(), desk().today())) {
        if (yard.id == m_yard) {
            m_yard_name = yard.name;
        }
    }
    const std::optional<int> usual = kind() == MiteCountKind::drop ? std::nullopt : bees_used_last();
    std::vector<CountRow> rows;
    for (const work::HiveLine& line : work::hive_lines(desk().workbook(), m_yard, desk().today())) {
        if (line.entry.state != work::StateOfHive::alive) {
            continue;
        }
        CountRow row;
        row.line = line;
        row.usual_bees = usual;
        if (const CountRow* before = m_rows->find(line.entry.id.value)) {
            row.take_typing(*before);
        }
        rows.push_back(std::move(row));
    }
    m_rows->set_rows(std::move(rows));
    show_rounds();
    use_kind();
}

void CountPage::use_kind() {
    const bool drop = kind() == MiteCountKind::drop;
    table()->setColumnHidden(count_bees, drop);
    table()->setColumnHidden(count_days, !drop);
    fit_columns();
    figure();
    show_how();
}

std::optional<int> CountPage::bees_used_last() const {
    return work::bees_used_last(desk().workbook(), kind());
}

void CountPage::forget_typing() {
    m_rows->set_rows({});
    refresh();
}

void CountPage::figure() {
    std::vector<CountRow> rows = m_rows->rows();
    int counted = 0;
    int over = 0;
    for (CountRow& row : rows) {
        row.figures = row.mites.value ? work::mite_figures(desk().workbook(), kind(), *row.mites.value, row.bees_in_sample(), row.days.value)
                                      : work::MiteFigures{};
        counted += row.mites.value ? 1 : 0;
        over += row.figures.over_threshold.value_or(false) ? 1 : 0;
    }
    sentence()->clear();
    //: Rich text: keep the marks around the figures; %1 hives counted of %n
    sentence()->add(tr("<b>%1</b> counted of <b>%n</b> hives", nullptr, static_cast<int>(rows.size())).arg(counted));
    if (const auto threshold = work::figure(desk().workbook(), work::Figure::mite_threshold)) {
        //: %1 the user's threshold
        sentence()->add(tr("your threshold %1").arg(desk().percent(maths::ppm(*threshold))));
        //: Rich text: keep the marks around the figure
        sentence()->add(tr("<b>%n</b> over it", nullptr, over));
    } else {
        //: No mite threshold stands in Set-up
        sentence()->add(tr("no threshold said in Set-up"));
    }
    //: Beside the figures of a mite count
    sentence()->set_remark(kind() == MiteCountKind::drop ? QString() : tr("about 300 bees is common practice"));
    m_rows->set_rows(std::move(rows));
    const maths::Day on = m_day->value().value_or(desk().today());
    //: Heading of the grid; %1 a day
    set_heading(tr("Count of %1").arg(YardWords::day(on, desk())));
}

void CountPage::show_how() {
    const CountRow* row = m_rows->find(table()->current_id());
    std::vector<work::How> hows;
    if (row != nullptr && row->mites.value) {
        work::CountLine typed;
        typed.kind = kind();
        typed.mites = *row->mites.value;
        typed.bees = row->bees_in_sample();
        typed.days = row->days.value;
        typed.figures = row->figures;
        hows.push_back(work::how_mite_rate(typed));
    } else if (row != nullptr && row->line.last_count) {
        hows.push_back(work::how_mite_rate(*row->line.last_count));
    }
    tell_how(hows, row == nullptr ? QString() : YardWords::hive(row->line.entry.name, row->line.entry.hives));
}

work::CountEntry CountPage::entry() const {
    work::CountEntry entry;
    entry.on = m_day->value();
    entry.kind = kind();
    if (m_round->id() != 0) {
        entry.round = work::RoundId{m_round->id()};
    }
    for (const CountRow& row : m_rows->rows()) {
        work::CountEntry::Row one = row.entry();
        (kind() == MiteCountKind::drop ? one.bees : one.days).reset();
        entry.rows.push_back(one);
    }
    return entry;
}

std::optional<work::Refusal> CountPage::enter(const work::Confirmed& confirmed) {
    set_complaint({});
    m_sent.clear();
    for (const CountRow& row : m_rows->rows()) {
        m_sent.push_back(row.line.entry.id);
    }
    if (auto unread = unread_cell(*m_rows, m_sent)) {
        return unread;
    }
    const auto done = work::enter_counts(desk().workbook(), entry(), desk().doing(), confirmed);
    if (!done) {
        return done.error();
    }
    m_yard = {};
    //: News after a mite count
    Q_EMIT entered(tr("Mites counted in %n hives.", nullptr, *done));
    return std::nullopt;
}

void CountPage::refused_at(int index, const QString& part, const QString& words) {
    if (index < 0 || index >= static_cast<int>(m_sent.size())) {
        set_complaint(words);
        return;
    }
    const qint64 hive = m_sent[static_cast<std::size_t>(index)].value;
    const CountRow* row = m_rows->find(hive);
    const QString said = row != nullptr && row->unread() == part ? number_wanted() : words;
    //: %1 a hive, %2 what is wrong there
    set_complaint(row == nullptr ? said : tr("%1: %2").arg(YardWords::hive(row->line.entry.name, row->line.entry.hives), said));
    go_to(hive, part == QLatin1String("bees") ? count_bees : part == QLatin1String("days") ? count_days : count_mites);
}

} // namespace soakbook::ui
