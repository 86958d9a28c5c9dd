// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/hang.h"

#include "core/book/queries/placements.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/round_rule.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// Questions asked in one order; the first without its yes is the answer.
class Questions {
public:
    explicit Questions(const Confirmed& confirmed) : m_confirmed(confirmed) {}
    /// True when the answer was yes, so that it is written beside what it was asked about.
    bool put(Why why, const QString& field, const QStringList& facts) {
        if (m_confirmed.count(why))
            return true;
        if (!m_first)
            m_first = Refusal{why, field, facts, true};
        return false;
    }
    const std::optional<Refusal>& first() const { return m_first; }

private:
    const Confirmed& m_confirmed;
    std::optional<Refusal> m_first;
};

using Already = std::map<HiveId, book::HangingInHive>;

std::optional<Refusal> past_limit_refused(const Hanging& hanging, const Shares& shares) {
    for (const auto& [id, stock] : shares.bags)
        if (*stock.bag.use_by < hanging.on && hanging.past_limit_reason.trimmed().isEmpty())
            return Refusal{Why::bag_past_limit,
                           QStringLiteral("past_limit_reason"),
                           {stock.bag.code, fact(*stock.bag.use_by)},
                           false};
    return text_refused(hanging.past_limit_reason, longest_note, QStringLiteral("past_limit_reason"));
}

/// Asks about the whole yard: the day, supers, and its times. Gives the keys of what was answered with yes.
QStringList ask_of_yard(const book::Workbook& workbook, const Hanging& hanging, maths::Day today,
                        Questions& questions) {
    QStringList yes;
    const auto put = [&](Why why, const char* field, const QStringList& facts) {
        if (questions.put(why, QLatin1String(field), facts))
            yes << key_of(why);
    };
    if (const auto back = maths::days_between(hanging.on, today); back > 366)
        put(Why::long_ago, "on", {fact(back)});
    if (hanging.supers_on.value_or(false))
        put(Why::supers_on, "supers_on", {fact(hanging.yard_name)});
    for (const YardTimeEntry& time : times_meeting(workbook, hanging.yard, hanging.on, hanging.on))
        put(time.kind == TimeKind::flow ? Why::in_flow : Why::yard_closed, "on",
            {fact(time.what), fact(*time.from), fact(*time.to)});
    yes.removeDuplicates();
    return yes;
}

/// Asks about one hive: strips that hang there already, its own supers, a dose outside the rule.
QStringList ask_of_hive(const Hanging& hanging, const HangRow& row, const Already& already,
                        Questions& questions) {
    QStringList yes;
    if (const auto found = already.find(row.hive.id); found != already.end())
        if (questions.put(Why::hive_has_strips, row.wish.strips_field,
                          {fact(row.hive.name), fact(found->second.strips), fact(found->second.since)}))
            yes << key_of(Why::hive_has_strips);
    if (!hanging.supers_on && row.hive.supers_on.value_or(false))
        if (questions.put(Why::supers_on, QStringLiteral("supers_on"), {fact(row.hive.name)}))
            yes << key_of(Why::supers_on);
    const int least = hanging.least.value_or(0) * row.hive.hives;
    const int most = hanging.most ? *hanging.most * row.hive.hives : row.wish.strips;
    if (row.wish.strips < least || row.wish.strips > most) {
        // Without a most there is no range to name.
        const QStringList facts =
            hanging.most ? QStringList{fact(row.wish.strips), fact(least), fact(most)} : QStringList{};
        if (questions.put(Why::dose_outside, row.wish.strips_field, facts))
            yes << key_of(Why::dose_outside);
    }
    return yes;
}

} // namespace

std::vector<BagUse> uses_of(const Shares& shares) {
    std::vector<BagUse> uses;
    for (const auto& [id, stock] : shares.bags) {
        const book::Bag& bag = stock.bag;
        BagUse use{id, bag.code, stock.left, 0, *bag.use_by, bag.rest_until, bag.opened_on.has_value(), bag.stands};
        for (const auto& from : shares.of)
            for (const FromBag& part : from)
                if (part.bag == id)
                    use.used += part.strips;
        uses.push_back(std::move(use));
    }
    std::stable_sort(uses.begin(), uses.end(), [](const BagUse& a, const BagUse& b) { return a.use_by < b.use_by; });
    return uses;
}

Outcome<Hung> plan_hanging(const book::Workbook& workbook, const Hanging& hanging, const book::Doing& doing,
                           const Confirmed& confirmed) {
    const auto window = maths::pull_window(hanging.on, hanging.pull_from_days, hanging.pull_by_days);
    if (!window)
        return refuse(Why::too_large, QStringLiteral("on"));
    std::vector<Wish> wishes;
    for (const HangRow& row : hanging.rows)
        wishes.push_back(row.wish);
    auto shares = share_from_bags(workbook, hanging.kind, wishes, hanging.on);
    if (!shares)
        return unexpected(shares.error());
    if (auto refusal = past_limit_refused(hanging, *shares))
        return unexpected(*refusal);
    if (shares->short_of > 0) {
        int wanted = 0;
        for (const Wish& wish : wishes)
            wanted += wish.bag ? 0 : wish.strips;
        return refuse(Why::not_enough_strips, wishes[*shares->first_short].strips_field,
                      {fact(wanted - shares->short_of), fact(wanted)});
    }
    const bool rest_refuses = figure(workbook, Figure::rest_refuses).value_or(0) == 1;
    const auto opened_days = figure(workbook, Figure::opened_days);
    const auto already = book::hanging_by_hive(workbook);
    Questions questions(confirmed);
    Hung hung;
    const QStringList of_yard = ask_of_yard(workbook, hanging, doing.today(), questions);
    for (std::size_t i = 0; i < hanging.rows.size(); ++i) {
        const HangRow& row = hanging.rows[i];
        const QStringList of_hive = of_yard + ask_of_hive(hanging, row, already, questions);
        hung.done.hives += row.hive.hives;
        for (const FromBag& part : shares->of[i]) {
            const book::Bag& bag = shares->bags.at(part.bag).bag;
            QStringList yes = of_hive;
            if (bag.rest_until && *bag.rest_until > hanging.on) {
                if (rest_refuses)
                    return refuse(Why::bag_resting_refused, row.wish.bag_field, {bag.code, fact(*bag.rest_until)});
                if (questions.put(Why::bag_resting, row.wish.bag_field, {bag.code, fact(*bag.rest_until)}))
                    yes << key_of(Why::bag_resting);
            }
            if (bag.opened_on && opened_days && maths::days_after(*bag.opened_on, *opened_days) < hanging.on)
                if (questions.put(Why::bag_opened_long, row.wish.bag_field,
                                  {bag.code, fact(*bag.opened_on), fact(*opened_days)}))
                    yes << key_of(Why::bag_opened_long);
            book::Placement p;
            p.round = hanging.round;
            p.hive = row.hive.id;
            p.yard = row.hive.yard;
            p.bag = part.bag;
            p.strips = part.strips;
            p.acid_per_strip = bag.acid_per_strip;
            p.placed_on = hanging.on;
            p.placed_by = doing.who;
            p.written = doing.at;
            p.pull_from = window->first;
            p.pull_by = window->last;
            p.withdrawal_days = hanging.withdrawal_days;
            p.supers_on = hanging.supers_on ? hanging.supers_on : row.hive.supers_on;
            p.asked = yes.join(QLatin1Char(' '));
            if (*bag.use_by < hanging.on)
                p.past_limit_reason = hanging.past_limit_reason.trimmed();
            p.note = row.note;
            hung.placements.push_back(std::move(p));
            hung.done.strips += part.strips;
        }
    }
    if (questions.first())
        return unexpected(*questions.first());
    for (const auto& [id, stock] : shares->bags)
        if (!stock.bag.opened_on || *stock.bag.opened_on > hanging.on) {
            book::Bag bag = stock.bag;
            bag.opened_on = hanging.on;
            hung.opened.push_back(std::move(bag));
        }
    hung.done.bags = uses_of(*shares);
    hung.done.pull_from = window->first;
    hung.done.pull_by = window->last;
    return hung;
}

void write_hung(book::Writing& writing, const Hung& hung) {
    for (const book::Bag& bag : hung.opened)
        book::update(writing, bag);
    for (const book::Placement& placement : hung.placements)
        book::insert(writing, placement);
}

} // namespace soakbook::work
