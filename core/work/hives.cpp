// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/hives.h"

#include "core/book/queries/hives.h"
#include "core/work/facts.h"
#include "core/work/perform.h"
#include "core/work/standing.h"
#include "core/work/yard_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

constexpr int most_hives = 10'000;
constexpr int most_boxes_each = 20;
constexpr int most_frames_each = 100;

HiveEntry entry_of(const book::Hive& h) {
    return {h.id,        h.yard,        h.name,
            h.hives,     h.brood_boxes, h.frames_of_bees,
            h.supers_on, h.untreated,   static_cast<StateOfHive>(h.state),
            h.state_on,  h.note};
}

QString in_front(const QString& prefix, const char* field) {
    const QString text = prefix + QLatin1String(field);
    return text;
}

std::optional<Refusal> figure_refused(std::optional<int> figure, int most, const QString& field) {
    if (figure && *figure < 0)
        return Refusal{Why::too_small, field, {fact(0)}, false};
    if (figure && *figure > most)
        return Refusal{Why::too_large, field, {fact(most)}, false};
    return std::nullopt;
}

bool name_is_taken(const std::vector<book::Hive>& in_yard, const QString& name, HiveId but) {
    return std::any_of(in_yard.begin(), in_yard.end(), [&](const book::Hive& h) {
        return h.id != but && h.state == book::HiveState::alive && h.name.compare(name, Qt::CaseInsensitive) == 0;
    });
}

/// The record a hive's entry makes, checked; `prefix` stands in front of each field's name.
Outcome<book::Hive> checked_hive(const book::Workbook& workbook, const HiveEntry& entry, maths::Day today,
                                 const QString& prefix) {
    if (auto refusal = name_refused(entry.name, longest_name, in_front(prefix, "name")))
        return unexpected(*refusal);
    if (auto refusal = text_refused(entry.note, longest_note, in_front(prefix, "note")))
        return unexpected(*refusal);
    if (entry.hives <= 0)
        return refuse(Why::not_positive, in_front(prefix, "hives"));
    if (entry.hives > most_hives)
        return refuse(Why::too_large, in_front(prefix, "hives"), {fact(most_hives)});
    if (auto refusal =
            figure_refused(entry.brood_boxes, most_boxes_each * entry.hives, in_front(prefix, "brood_boxes")))
        return unexpected(*refusal);
    if (auto refusal =
            figure_refused(entry.frames_of_bees, most_frames_each * entry.hives, in_front(prefix, "frames_of_bees")))
        return unexpected(*refusal);
    book::Hive record;
    if (entry.id) {
        const auto before = book::fetch(workbook, entry.id);
        if (!before || before->void_reason)
            return refuse(Why::not_found, in_front(prefix, "name"), {fact(entry.name)});
        record = *before;
    } else {
        record.yard = entry.yard;
    }
    if (!book::fetch(workbook, record.yard))
        return refuse(Why::not_found, in_front(prefix, "yard"));
    record.name = entry.name.trimmed();
    record.hives = entry.hives;
    record.brood_boxes = entry.brood_boxes;
    record.frames_of_bees = entry.frames_of_bees;
    record.supers_on = entry.supers_on;
    record.untreated = entry.untreated;
    record.state = static_cast<book::HiveState>(entry.state);
    record.note = entry.note.trimmed();
    const auto state_on = day_not_to_come(entry.state_on, today, in_front(prefix, "state_on"));
    if (!state_on)
        return unexpected(state_on.error());
    record.state_on = entry.state == StateOfHive::alive ? std::nullopt : std::optional(*state_on);
    if (entry.state == StateOfHive::alive &&
        name_is_taken(book::hives_of_yard(workbook, record.yard), record.name, entry.id))
        return refuse(Why::name_taken, in_front(prefix, "name"), {fact(record.name)});
    return record;
}

} // namespace

std::vector<HiveEntry> hives(const book::Workbook& workbook, YardId yard, bool also_dead) {
    std::vector<book::Hive> records = book::hives_of_yard(workbook, yard);
    sort_as_counted(records);
    std::vector<HiveEntry> entries;
    for (const book::Hive& h : records)
        if (also_dead || h.state == book::HiveState::alive)
            entries.push_back(entry_of(h));
    return entries;
}

std::optional<HiveEntry> hive(const book::Workbook& workbook, HiveId id) {
    const auto record = book::fetch(workbook, id);
    return record && !record->void_reason ? std::optional(entry_of(*record)) : std::nullopt;
}

Outcome<HiveId> save_hive(book::Workbook& workbook, const HiveEntry& hive, const book::Doing& doing) {
    const auto record = checked_hive(workbook, hive, doing.today(), {});
    if (!record)
        return unexpected(record.error());
    if (hive.id && book::fetch(workbook, hive.id) == *record)
        return refuse(Why::nothing_changed);
    const auto yard = book::fetch(workbook, record->yard);
    const Piece piece = hive.id ? Piece{QStringLiteral("hive_changed"), 1, record->name}
                                : Piece{QStringLiteral("hives"), record->hives, yard->name};
    return perform(workbook, piece, doing, [&](book::Writing& w) -> Outcome<HiveId> {
        if (!hive.id)
            return book::insert(w, *record);
        book::update(w, *record);
        return record->id;
    });
}

Outcome<std::vector<HiveId>> add_hives(book::Workbook& workbook, const HiveRow& row, const book::Doing& doing) {
    const auto yard = book::fetch(workbook, row.yard);
    if (!yard)
        return refuse(Why::not_found, QStringLiteral("yard"));
    if (auto refusal = name_refused(row.prefix, longest_name - 20, QStringLiteral("prefix"), false))
        return unexpected(*refusal);
    if (!row.first || !row.count)
        return refuse(Why::missing, row.first ? QStringLiteral("count") : QStringLiteral("first"));
    if (auto refusal = figure_refused(row.first, 1'000'000, QStringLiteral("first")))
        return unexpected(*refusal);
    if (*row.count <= 0)
        return refuse(Why::not_positive, QStringLiteral("count"));
    if (*row.count > 1'000)
        return refuse(Why::too_large, QStringLiteral("count"), {fact(1'000)});
    if (auto refusal = figure_refused(row.brood_boxes, most_boxes_each, QStringLiteral("brood_boxes")))
        return unexpected(*refusal);
    if (auto refusal = figure_refused(row.frames_of_bees, most_frames_each, QStringLiteral("frames_of_bees")))
        return unexpected(*refusal);
    const auto in_yard = book::hives_of_yard(workbook, row.yard);
    std::vector<book::Hive> records;
    for (int i = 0; i < *row.count; ++i) {
        book::Hive record;
        record.yard = row.yard;
        record.name = row.prefix.trimmed() +
                      QStringLiteral("%1").arg(*row.first + i, std::clamp(row.digits, 1, 6), 10, QLatin1Char('0'));
        record.brood_boxes = row.brood_boxes;
        record.frames_of_bees = row.frames_of_bees;
        if (name_is_taken(in_yard, record.name, {}))
            return refuse(Why::name_taken, QStringLiteral("first"), {fact(record.name)});
        records.push_back(std::move(record));
    }
    return perform(workbook, {QStringLiteral("hives"), *row.count, yard->name}, doing,
                   [&](book::Writing& w) -> Outcome<std::vector<HiveId>> {
                       std::vector<HiveId> ids;
                       for (const book::Hive& record : records)
                           ids.push_back(book::insert(w, record));
                       return ids;
                   });
}

Outcome<int> save_hives(book::Workbook& workbook, const std::vector<HiveEntry>& hives, const book::Doing& doing) {
    std::vector<book::Hive> changed;
    for (std::size_t i = 0; i < hives.size(); ++i) {
        if (!hives[i].id)
            return refuse(Why::not_found, row_field(i, "name"), {fact(hives[i].name)});
        const auto record = checked_hive(workbook, hives[i], doing.today(), QStringLiteral("rows/%1/").arg(i));
        if (!record)
            return unexpected(record.error());
        for (const book::Hive& other : changed)
            if (other.id != record->id && other.yard == record->yard && other.state == book::HiveState::alive &&
                record->state == book::HiveState::alive && other.name.compare(record->name, Qt::CaseInsensitive) == 0)
                return refuse(Why::name_taken, row_field(i, "name"), {fact(record->name)});
        if (book::fetch(workbook, hives[i].id) != *record)
            changed.push_back(*record);
    }
    if (changed.empty())
        return refuse(Why::nothing_changed);
    const auto yard = book::fetch(workbook, changed.front().yard);
    const Piece piece = changed.size() == 1
                            ? Piece{QStringLiteral("hive_changed"), 1, changed.front().name}
                            : Piece{QStringLiteral("hives"), static_cast<int>(changed.size()), yard->name};
    return perform(workbook, piece, doing, [&](book::Writing& w) -> Outcome<int> {
        for (const book::Hive& record : changed)
            book::update(w, record);
        return static_cast<int>(changed.size());
    });
}

Outcome<int> move_hives(book::Workbook& workbook, const std::vector<HiveId>& hives, std::optional<YardId> to,
                        std::optional<maths::Day> on, const book::Doing& doing) {
    if (hives.empty())
        return refuse(Why::missing, QStringLiteral("hives"));
    if (!to)
        return refuse(Why::missing, QStringLiteral("to"));
    const auto yard = book::fetch(workbook, *to);
    if (!yard)
        return refuse(Why::not_found, QStringLiteral("to"));
    const auto day = day_not_to_come(on, doing.today());
    if (!day)
        return unexpected(day.error());
    const auto in_yard = book::hives_of_yard(workbook, *to);
    std::vector<book::Hive> records;
    int count = 0;
    for (const HiveId id : std::set<HiveId>(hives.begin(), hives.end())) {
        auto record = book::fetch(workbook, id);
        if (!record || record->void_reason)
            return refuse(Why::not_found, QStringLiteral("hives"));
        if (record->yard == *to)
            return refuse(Why::same_yard, QStringLiteral("to"), {fact(record->name)});
        if (record->state == book::HiveState::alive && name_is_taken(in_yard, record->name, id))
            return refuse(Why::name_taken, QStringLiteral("to"), {fact(record->name)});
        // What was written of the hive since would have happened in another yard.
        const auto moves = book::moves_of_hive(workbook, id);
        if (!moves.empty() && *day < moves.back().on)
            return refuse(Why::before_start, QStringLiteral("on"), {fact(moves.back().on)});
        if (const auto placed = book::last_placed(workbook, id); placed && *day < *placed)
            return refuse(Why::before_start, QStringLiteral("on"), {fact(*placed)});
        count += record->hives;
        records.push_back(std::move(*record));
    }
    for (std::size_t i = 0; i < records.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (records[i].name.compare(records[j].name, Qt::CaseInsensitive) == 0 &&
                records[i].state == book::HiveState::alive && records[j].state == book::HiveState::alive)
                return refuse(Why::name_taken, QStringLiteral("to"), {fact(records[i].name)});
    return perform(workbook, {QStringLiteral("hives_moved"), count, yard->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       for (book::Hive& record : records) {
                           book::insert(w, book::HiveMove{{}, record.id, record.yard, *to, *day, {}});
                           record.yard = *to;
                           book::update(w, record);
                       }
                       return count;
                   });
}

} // namespace soakbook::work
