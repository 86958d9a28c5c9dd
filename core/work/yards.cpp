// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/hives.h"
#include "core/work/facts.h"
#include "core/work/hives.h"
#include "core/work/perform.h"
#include "core/work/yard_checks.h"
#include "core/work/yards_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

YardEntry entry_of(const book::Yard& yard) {
    return {yard.id, yard.name, yard.where_it_is, yard.note, yard.active};
}

std::optional<Refusal> yard_refused(const YardEntry& yard) {
    if (auto r = name_refused(yard.name, longest_name, QStringLiteral("name")))
        return r;
    if (auto r = text_refused(yard.where_it_is, longest_place, QStringLiteral("where_it_is")))
        return r;
    return text_refused(yard.note, longest_note, QStringLiteral("note"));
}

constexpr maths::Day earliest_time = maths::day(1990, 1, 1);
constexpr maths::Day latest_time = maths::day(2199, 12, 31);

} // namespace

std::vector<YardEntry> yards(const book::Workbook& workbook, bool also_inactive) {
    std::vector<YardEntry> entries;
    for (const book::Yard& yard : book::yards_by_name(workbook))
        if (yard.active || also_inactive)
            entries.push_back(entry_of(yard));
    std::stable_sort(entries.begin(), entries.end(),
                     [](const YardEntry& a, const YardEntry& b) { return comes_before(a.name, b.name); });
    return entries;
}

Outcome<YardId> save_yard(book::Workbook& workbook, const YardEntry& yard, const book::Doing& doing) {
    if (auto refusal = yard_refused(yard))
        return unexpected(*refusal);
    const QString name = yard.name.trimmed();
    if (const auto other = book::yard_named(workbook, name); other && other->id != yard.id)
        return refuse(Why::name_taken, QStringLiteral("name"), {fact(other->name)});
    book::Yard record{yard.id, name, yard.where_it_is.trimmed(), yard.note.trimmed(), yard.active};
    if (yard.id) {
        const auto before = book::fetch(workbook, yard.id);
        if (!before)
            return refuse(Why::not_found, QStringLiteral("name"), {fact(name)});
        if (*before == record)
            return refuse(Why::nothing_changed);
    }
    return perform(workbook, {QStringLiteral("yard"), 1, name}, doing, [&](book::Writing& w) -> Outcome<YardId> {
        if (!yard.id)
            return book::insert(w, record);
        book::update(w, record);
        return record.id;
    });
}

std::vector<YardTimeEntry> yard_times(const book::Workbook& workbook, YardId yard) {
    std::vector<YardTimeEntry> entries;
    for (const book::YardTime& t : book::times_of_yard(workbook, yard))
        entries.push_back({t.id, t.yard, static_cast<TimeKind>(t.kind), t.what, t.from, t.to});
    return entries;
}

Outcome<YardTimeId> save_yard_time(book::Workbook& workbook, const YardTimeEntry& time, const book::Doing& doing) {
    const auto yard = book::fetch(workbook, time.yard);
    if (!yard)
        return refuse(Why::not_found, QStringLiteral("yard"));
    if (auto refusal = name_refused(time.what, longest_name, QStringLiteral("what")))
        return unexpected(*refusal);
    for (const auto& [day, field] :
         {std::pair{time.from, QStringLiteral("from")}, std::pair{time.to, QStringLiteral("to")}}) {
        if (!day)
            return refuse(Why::missing, field);
        if (*day < earliest_time)
            return refuse(Why::too_small, field, {fact(earliest_time)});
        if (*day > latest_time)
            return refuse(Why::too_large, field, {fact(latest_time)});
    }
    if (*time.to < *time.from)
        return refuse(Why::before_start, QStringLiteral("to"), {fact(*time.from)});
    const book::YardTime record{
        time.id, time.yard, static_cast<book::YardTimeKind>(time.kind), time.what.trimmed(), *time.from, *time.to, {}};
    if (time.id) {
        const auto before = book::fetch(workbook, time.id);
        if (!before || before->void_reason)
            return refuse(Why::not_found, QStringLiteral("what"), {fact(record.what)});
        if (*before == record)
            return refuse(Why::nothing_changed);
    }
    return perform(workbook, {QStringLiteral("yard_time"), 1, yard->name}, doing,
                   [&](book::Writing& w) -> Outcome<YardTimeId> {
                       if (!time.id)
                           return book::insert(w, record);
                       book::update(w, record);
                       return record.id;
                   });
}

Outcome<int> remove_yard_time(book::Workbook& workbook, YardTimeId id, const book::Doing& doing) {
    auto time = book::fetch(workbook, id);
    if (!time || time->void_reason)
        return refuse(Why::not_found);
    const auto yard = book::fetch(workbook, time->yard);
    time->void_reason = doing.why.trimmed().isEmpty() ? QStringLiteral("taken out") : doing.why;
    return perform(workbook, {QStringLiteral("yard_time"), 1, yard ? yard->name : QString()}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, *time);
                       return 1;
                   });
}

} // namespace soakbook::work
