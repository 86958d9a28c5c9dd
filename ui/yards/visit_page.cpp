// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/visit_page.h"

#include "core/work/find.h"
#include "core/work/hives.h"
#include "core/work/how_yards.h"
#include "core/work/round.h"
#include "core/work/store_view.h"
#include "ui/parts/cards.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/text_field.h"
#include "ui/yards/choice_delegate.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_rounds.h"
#include "ui/yards/yard_words.h"

#include <QPushButton>

#include <algorithm>

namespace soakbook::ui {

VisitPage::VisitPage(Desk& desk, QWidget* parent)
    //: The filled button of a visit
    : GridPage(desk, QStringLiteral("visit"), tr("Hives of the visit"), tr("Enter the visit"), parent) {
    //: A button that prints a sheet to take along
    QPushButton* sheet = add_button(tr("Run sheet"), QStringLiteral("visit_run_sheet"));
    connect(sheet, &QPushButton::clicked, this, [this] { Q_EMIT wants_run_sheet(m_round.value, m_yard.value); });
    make_form();
    make_grid(false);
    set_first_column(visit_strips);
    add_caution(YardWords::gloves_caution() + QLatin1Char(' ') + YardWords::harvest_caution());
}

void VisitPage::make_form() {
    //: Field: which of several rounds
    m_round_field = form()->add(tr("Round"), new ChoiceField, QStringLiteral("round"));
    m_round_field->editor()->setObjectName(QStringLiteral("visit_round"));
    //: Field: the day of the visit
    m_day = form()->add(tr("Day"), new DayField(desk()), QStringLiteral("on"));
    m_day->editor()->setObjectName(QStringLiteral("visit_on"));
    //: Field: whether honey supers are on the hives
    m_supers = form()->add(tr("Honey supers on?"), new YesNoField, QStringLiteral("supers_on"));
    named(m_supers, "visit_supers_on");
    //: Field: why strips past their limit are hung
    m_reason = form()->add(tr("Why strips past their limit"), new TextField, QStringLiteral("past_limit_reason"),
                           //: Help of a field
                           tr("A bag on this visit is past its use-by day. The register will show the reason."));
    m_reason->editor()->setObjectName(QStringLiteral("visit_past_limit_reason"));
    show_grid_refusals();
    form()->set_commit([this](const work::Confirmed& confirmed) { return enter(confirmed); });
    connect(m_round_field, &ChoiceField::edited, this, [this] { open(work::RoundId{m_round_field->id()}, m_yard); });
    connect(m_day, &DayField::edited, this, [this] {
        if (m_day->is_empty() || m_day->value()) {
            plan();
        }
    });
}

void VisitPage::make_grid(bool by_boxes) {
    m_by_boxes = by_boxes;
    VisitTyping typing;
    typing.by_boxes = by_boxes;
    typing.set_figure = [this](work::HiveId hive, std::optional<int> figure) { return set_figure(hive, figure); };
    typing.bag_named = [this](const QString& code) { return bag_named(code); };
    typing.changed = [this] { note_typing(); };
    auto* old = m_rows;
    m_rows = new RowsModel<VisitRow>(VisitGrid::columns(typing), [](const VisitRow& row) { return row.line.hive.value; }, this);
    set_grid(m_rows, VisitGrid::widths(), visit_note, {visit_figure});
    delete old;

    const auto bags = [this] {
        //: First entry of the list of bags
        std::vector<ChoiceDelegate::Choice> choices{{QString(), tr("nearest limit first")}};
        for (const work::BagLine& bag : work::bags(desk().workbook(), desk().today())) {
            const QString by = bag.use_by ? desk().day(*bag.use_by) : QString();
            //: A bag: its code, the strips left in it, its use-by day
            choices.push_back({bag.code, tr("%1, %2 left, use by %3").arg(bag.code).arg(bag.left).arg(by)});
        }
        return choices;
    };
    const auto states = [] {
        std::vector<ChoiceDelegate::Choice> choices;
        for (const auto state : {work::StateOfHive::alive, work::StateOfHive::dead, work::StateOfHive::gone}) {
            choices.push_back({YardWords::word(state), YardWords::word(state)});
        }
        return choices;
    };
    delete table()->itemDelegateForColumn(visit_bag);
    delete table()->itemDelegateForColumn(visit_state);
    table()->setItemDelegateForColumn(visit_bag, new ChoiceDelegate(bags, this));
    table()->setItemDelegateForColumn(visit_state, new ChoiceDelegate(states, this));
}

void VisitPage::open(work::RoundId round, work::YardId yard) {
    if (round != m_round || yard != m_yard) {
        m_round = round;
        m_yard = yard;
        const auto rule = work::round_entry(desk().workbook(), round).dose_rule;
        if ((rule == work::DoseRule::brood_boxes) != m_by_boxes) {
            make_grid(!m_by_boxes);
        }
        m_rows->set_rows({});
        m_day->set_value(desk().today());
        m_supers->clear();
        m_reason->clear();
        set_complaint({});
        form()->start_again();
    }
    refresh();
    offer_draft();
    Q_EMIT title_changed();
}

void VisitPage::offer_draft() {
    constexpr qint64 most_yards = 1'000'000;
    DraftPlace place = yard_draft(QStringLiteral("visit"), QStringLiteral("strips_in"), {m_yard.value, m_round.value});
    place.record = m_round.value * most_yards + m_yard.value;
    //: What Due calls a visit that was begun; %1 a yard and its round
    place.title = tr("Strips in, %1").arg(title());
    form()->set_draft(place);
    settle_give_up();
}

QString VisitPage::title() const {
    //: Title: a yard and its round
    return m_plan.round_name.isEmpty() ? m_plan.yard_name : tr("%1: %2").arg(m_plan.yard_name, m_plan.round_name);
}

void VisitPage::refresh() {
    if (!m_round || !m_yard) {
        return;
    }
    show_rounds();
    plan();
}

void VisitPage::show_rounds() {
    std::vector<ChoiceField::Choice> choices;
    for (const work::RoundLine& round : open_rounds(desk().workbook(), m_yard)) {
        if (is_visited(round, m_yard) && round.id != m_round) {
            continue;
        }
        choices.push_back({qint64{round.id.value}, round.name});
    }
    m_round_field->set_choices(choices);
    m_round_field->set_value(qint64{m_round.value});
    form()->set_shown(QStringLiteral("round"), choices.size() > 1);
}

void VisitPage::plan() {
    const maths::Day on = m_day->value().value_or(desk().today());
    const auto planned = work::plan_visit(desk().workbook(), m_round, m_yard, on);
    if (!planned) {
        set_complaint(refusal_words(planned.error(), desk()));
        return;
    }
    m_plan = *planned;
    m_rule = work::round_entry(desk().workbook(), m_round);
    show_plan();
}

void VisitPage::show_plan() {
    std::vector<VisitRow> rows;
    bool all_off = !m_plan.lines.empty();
    bool any_on = false;
    for (const work::VisitLine& line : m_plan.lines) {
        VisitRow row;
        row.line = line;
        row.from = line.from;
        if (const VisitRow* before = m_rows->find(line.hive.value)) {
            row.take_typing(*before);
        }
        all_off = all_off && line.supers_on == false;
        any_on = any_on || line.supers_on == true;
        rows.push_back(std::move(row));
    }
    m_rows->set_rows(std::move(rows));
    if (m_supers->is_empty() && (all_off || any_on)) {
        m_supers->set_value(any_on);
    }
    //: Heading of the grid; %1 a day
    set_heading(tr("Visit of %1, as planned unless typed over").arg(YardWords::day(m_plan.on, desk())));
    figure();
    show_how();
    Q_EMIT title_changed();
}

void VisitPage::forget_typing() {
    m_rows->set_rows({});
    refresh();
}

void VisitPage::figure() {
    fill_bags();
    show_figures(m_rows->rows());
    const auto exceptions = std::count_if(m_rows->rows().begin(), m_rows->rows().end(), [](const VisitRow& row) { return row.is_exception(); });
    //: How many hives were typed over
    set_aside(exceptions == 0 ? QString() : tr("%n exceptions", nullptr, static_cast<int>(exceptions)));
    form()->set_shown(QStringLiteral("past_limit_reason"), any_bag_past_limit() || !m_reason->is_empty());
}

void VisitPage::show_how() {
    const VisitRow* row = m_rows->find(table()->current_id());
    std::vector<work::How> hows;
    if (row != nullptr) {
        if (const auto dose = work::how_dose(m_rule, row->line)) {
            hows.push_back(*dose);
        }
        hows.push_back(work::how_pull_window(m_plan.on, m_plan.pull_from, m_plan.pull_by));
    }
    tell_how(hows, row == nullptr ? QString() : YardWords::hive(row->line.name, row->line.hives));
}

void VisitPage::fill_bags() {
    std::vector<VisitRow> rows = m_rows->rows();
    const auto shared = work::share_out(desk().workbook(), entry(), desk().today());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rows[i].from = shared && i < shared->size() ? (*shared)[i] : std::vector<work::FromBag>{};
    }
    m_rows->set_rows(std::move(rows));
    set_complaint(shared ? QString() : refusal_words(shared.error(), desk()));
}

bool VisitPage::any_bag_past_limit() const {
    return std::any_of(m_plan.bags.begin(), m_plan.bags.end(), [this](const work::BagUse& use) { return use.use_by < m_plan.on; }) ||
           std::any_of(m_rows->rows().begin(), m_rows->rows().end(), [this](const VisitRow& row) {
               const auto bag = row.bag ? work::bag(desk().workbook(), *row.bag, desk().today()) : std::nullopt;
               return bag && bag->use_by && *bag->use_by < m_plan.on;
           });
}

work::VisitEntry VisitPage::entry() const {
    work::VisitEntry entry;
    entry.round = m_round;
    entry.yard = m_yard;
    entry.on = m_day->value();
    for (const VisitRow& row : m_rows->rows()) {
        entry.rows.push_back(row.entry());
    }
    entry.supers_on = m_supers->value();
    entry.past_limit_reason = m_reason->value();
    return entry;
}

std::optional<work::Refusal> VisitPage::enter(const work::Confirmed& confirmed) {
    set_complaint({});
    m_sent.clear();
    for (const VisitRow& row : m_rows->rows()) {
        m_sent.push_back(row.line.hive);
    }
    if (auto unread = unread_cell(*m_rows, m_sent)) {
        return unread;
    }
    const auto done = work::enter_visit(desk().workbook(), entry(), desk().doing(), confirmed);
    if (!done) {
        if (done.error().why == work::Why::bag_past_limit) {
            form()->set_shown(QStringLiteral("past_limit_reason"), true);
        }
        return done.error();
    }
    m_round = {};
    //: News after a visit; %1 strips, %2 the days to pull them
    const QString news = tr("%n hives visited: %1 strips in, to be pulled %2.", nullptr, done->hives)
                             .arg(done->strips)
                             .arg(YardWords::days(done->pull_from, done->pull_by, desk()));
    Q_EMIT entered(news);
    return std::nullopt;
}

void VisitPage::refused_at(int index, const QString& part, const QString& words) {
    if (index < 0 || index >= static_cast<int>(m_sent.size())) {
        set_complaint(words);
        return;
    }
    const qint64 hive = m_sent[static_cast<std::size_t>(index)].value;
    const VisitRow* row = m_rows->find(hive);
    const QString said = row != nullptr && row->unread() == part ? number_wanted() : words;
    //: %1 a hive, %2 what is wrong there
    set_complaint(row == nullptr ? said : tr("%1: %2").arg(YardWords::hive(row->line.name, row->line.hives), said));
    go_to(hive, part == QLatin1String("figure") ? visit_figure : part == QLatin1String("bag") ? visit_bag : part == QLatin1String("state") ? visit_state : visit_strips);
}

bool VisitPage::set_figure(work::HiveId hive, std::optional<int> figure) {
    auto entry = work::hive(desk().workbook(), hive);
    if (!entry) {
        return false;
    }
    std::optional<int>& kept = m_by_boxes ? entry->brood_boxes : entry->frames_of_bees;
    if (kept == figure) {
        return true;
    }
    kept = figure;
    const auto saved = work::save_hives(desk().workbook(), {*entry}, desk().doing());
    set_complaint(saved ? QString() : refusal_words(saved.error(), desk()));
    return saved.has_value();
}

std::optional<work::BagId> VisitPage::bag_named(const QString& code) const {
    const auto found = work::find(desk().workbook(), code, 1).found;
    const bool is_bag = !found.empty() && found.front().kind == work::FoundKind::bag;
    return is_bag ? std::optional(work::BagId{found.front().id}) : std::nullopt;
}

} // namespace soakbook::ui
