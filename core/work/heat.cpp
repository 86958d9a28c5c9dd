// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/heat.h"

#include "core/book/queries/batches.h"
#include "core/maths/thermostat.h"
#include "core/work/batch_checks.h"
#include "core/work/perform.h"
#include "core/work/temperature_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

Piece batch_piece(const char* key) {
    return {QLatin1String(key), 1, {}};
}

/// The evening before the day that was planned: a tank warms for hours before the acid goes in.
maths::Day first_heat(const book::Batch& batch) {
    return maths::days_after(batch.planned_on, -1);
}

/// The record a form stands for, without its batch and times.
Outcome<book::Reading> checked_reading(const ReadingEntry& entry, const Confirmed& confirmed) {
    if (!entry.probe && !entry.dial && !entry.room && !entry.jacket_seen)
        return refuse(Why::missing, QStringLiteral("probe"));
    for (const auto& [value, field] :
         {std::pair{entry.probe, "probe"}, std::pair{entry.dial, "dial"}, std::pair{entry.room, "room"}})
        if (const Not odd = odd_temperature(value, QLatin1String(field), confirmed))
            return because(odd);
    const auto note = checked_text(entry.note, QStringLiteral("note"), 4000, false);
    if (!note)
        return unexpected(note.error());
    book::Reading reading;
    reading.probe = entry.probe;
    reading.dial = entry.dial;
    reading.room = entry.room;
    reading.jacket_seen = entry.jacket_seen;
    reading.note = *note;
    return reading;
}

Outcome<maths::Instant> time_of_reading(const book::Batch& batch, std::optional<maths::Instant> at,
                                        const book::Doing& doing, const Confirmed& confirmed) {
    const auto moment = checked_time(at, doing, confirmed);
    if (moment && moment->local_day() < first_heat(batch))
        return refuse(Why::before_start, QStringLiteral("at"), {fact(batch.planned_on)});
    return moment;
}

/// The record and its batch for a correction or a void; needs its reason.
template <class Record> struct Found {
    Record record;
    book::Batch batch;
};
template <class Record>
Outcome<Found<Record>> to_correct(const book::Workbook& workbook, book::Id<Record> id, const book::Doing& doing) {
    const auto record = book::fetch(workbook, id);
    if (!record)
        return refuse(Why::not_found);
    if (record->void_reason)
        return refuse(Why::nothing_changed);
    const auto batch = batch_there(workbook, record->batch);
    if (!batch)
        return unexpected(batch.error());
    if (const Not missing = reason_missing(doing))
        return because(missing);
    return Found<Record>{*record, *batch};
}

template <class Record>
Outcome<int> make_void(book::Workbook& workbook, book::Id<Record> id, const book::Doing& doing) {
    return perform(workbook, batch_piece("made_void"), doing, [&](book::Writing& writing) -> Outcome<int> {
        auto found = to_correct(writing.workbook(), id, doing);
        if (!found)
            return unexpected(found.error());
        writing.name(1, found->batch.code);
        found->record.void_reason = doing.why.trimmed();
        book::update(writing, found->record);
        return 1;
    });
}

} // namespace

Not odd_temperature(std::optional<maths::Temperature> temperature, const QString& field, const Confirmed& confirmed) {
    // Beyond these no tank, room or thermometer of the trade goes: a slip of the pen.
    constexpr maths::Temperature coldest{-10'000};
    constexpr maths::Temperature hottest{50'000};
    constexpr maths::Temperature odd_below{-2'000};
    constexpr maths::Temperature odd_above{12'000};
    if (!temperature)
        return {};
    if (*temperature < coldest)
        return no(Why::too_small, field, {fact(coldest)});
    if (*temperature > hottest)
        return no(Why::too_large, field, {fact(hottest)});
    if (*temperature < odd_below || *temperature > odd_above)
        return no_unless(confirmed, Why::odd_temperature, field, {fact(*temperature)});
    return {};
}

Outcome<ReadingResult> log_reading(book::Workbook& workbook, const ReadingEntry& entry, const book::Doing& doing,
                                   const Confirmed& confirmed) {
    return perform(workbook, batch_piece("reading"), doing, [&](book::Writing& writing) -> Outcome<ReadingResult> {
        const auto batch = open_batch(writing.workbook(), entry.batch);
        if (!batch)
            return unexpected(batch.error());
        auto reading = checked_reading(entry, confirmed);
        if (!reading)
            return unexpected(reading.error());
        const auto at = time_of_reading(*batch, entry.at, doing, confirmed);
        if (!at)
            return unexpected(at.error());
        reading->batch = batch->id;
        reading->at = *at;
        reading->written = doing.at;
        writing.name(1, batch->code);
        ReadingResult result;
        result.id = book::insert(writing, *reading);
        result.ceiling = batch->ceiling;
        result.over_ceiling = entry.probe && maths::is_over_ceiling(*entry.probe, batch->ceiling);
        if (entry.probe && entry.dial)
            result.dial_above_probe = *entry.dial - *entry.probe;
        return result;
    });
}

Outcome<StirId> log_stir(book::Workbook& workbook, const StirEntry& entry, const book::Doing& doing,
                         const Confirmed& confirmed) {
    return perform(workbook, batch_piece("stir"), doing, [&](book::Writing& writing) -> Outcome<StirId> {
        const auto batch = mixed_batch(writing.workbook(), entry.batch);
        if (!batch)
            return unexpected(batch.error());
        if (entry.minutes)
            if (const auto minutes = checked_count(entry.minutes, QStringLiteral("minutes"), 24 * 60); !minutes)
                return unexpected(minutes.error());
        if (!entry.clear)
            return refuse(Why::missing, QStringLiteral("clear"));
        if (*entry.clear && !entry.outlet_poured_back)
            return refuse(Why::missing, QStringLiteral("outlet"));
        const auto note = checked_text(entry.note, QStringLiteral("note"), 4000, false);
        if (!note)
            return unexpected(note.error());
        const auto at = checked_time(entry.at, doing, confirmed, batch->mixed);
        if (!at)
            return unexpected(at.error());
        if (*entry.clear) {
            const auto readings = book::readings_of(writing.workbook(), batch->id);
            if (std::none_of(readings.begin(), readings.end(),
                             [](const book::Reading& r) { return r.probe.has_value(); }))
                return refuse(Why::no_reading, QStringLiteral("clear"));
        }
        book::Stir stir;
        stir.batch = batch->id;
        stir.at = *at;
        stir.written = doing.at;
        stir.minutes = entry.minutes;
        stir.clear = *entry.clear;
        stir.outlet_poured_back = entry.outlet_poured_back;
        stir.note = *note;
        writing.name(1, batch->code);
        return book::insert(writing, stir);
    });
}

Outcome<int> correct_reading(book::Workbook& workbook, ReadingId id, const ReadingEntry& entry,
                             const book::Doing& doing) {
    return perform(workbook, batch_piece("corrected"), doing, [&](book::Writing& writing) -> Outcome<int> {
        const auto found = to_correct(writing.workbook(), id, doing);
        if (!found)
            return unexpected(found.error());
        // Whoever corrects has looked twice: nothing is asked.
        const Confirmed yes{Why::odd_temperature, Why::long_ago};
        auto reading = checked_reading(entry, yes);
        if (!reading)
            return unexpected(reading.error());
        const auto at = time_of_reading(found->batch, entry.at ? entry.at : found->record.at, doing, yes);
        if (!at)
            return unexpected(at.error());
        reading->id = id;
        reading->batch = found->record.batch;
        reading->at = *at;
        reading->written = found->record.written;
        if (*reading == found->record)
            return refuse(Why::nothing_changed);
        writing.name(1, found->batch.code);
        book::update(writing, *reading);
        return 1;
    });
}

Outcome<int> void_reading(book::Workbook& workbook, ReadingId id, const book::Doing& doing) {
    return make_void(workbook, id, doing);
}

Outcome<int> void_stir(book::Workbook& workbook, StirId id, const book::Doing& doing) {
    return make_void(workbook, id, doing);
}

} // namespace soakbook::work
