// SPDX-License-Identifier: GPL-3.0-or-later
// Due in the shed: what each open batch waits for, from the same view the Shed shows.
#include "core/book/queries/batches.h"
#include "core/work/due_rows.h"
#include "core/work/shed_view.h"
#include "core/work/soak_curve.h"

#include <algorithm>

namespace soakbook::work {

namespace {

constexpr std::int64_t minute = 60'000;
constexpr std::int64_t hour = 60 * minute;

maths::Instant later(maths::Instant at, std::int64_t ms) {
    return {at.utc_ms + ms, at.offset_minutes};
}

/// Now when its moment is past, else by its day.
DueGroup group_at(const DueList& list, maths::Instant at) {
    return at.utc_ms <= list.now.utc_ms ? DueGroup::now : list.group_of(at.local_day());
}

DueRow& add(DueList& list, DueKind kind, DueGroup group, maths::Day sort_day, const BatchView& batch) {
    DueRow& row = list.add(kind, group, sort_day);
    row.batch = batch.line.id;
    row.subject = batch.line.code;
    return row;
}

DueRow& add_at(DueList& list, DueKind kind, maths::Instant at, const BatchView& batch) {
    DueRow& row = add(list, kind, group_at(list, at), at.local_day(), batch);
    row.by_hour = at;
    row.by = at.local_day();
    return row;
}

void tank(DueList& list, const BatchView& batch) {
    // Once strips lie in the bins the tank is empty.
    const BatchState state = batch.line.state;
    if (state != BatchState::planned && state != BatchState::warming && state != BatchState::clear)
        return;
    std::optional<ReadingLine> last;
    for (const ReadingLine& reading : batch.readings)
        if (reading.probe)
            last = reading;
    if (last && last->over_ceiling) {
        DueRow& row = add(list, DueKind::over_ceiling, DueGroup::now, last->at.local_day(), batch);
        row.temperature = last->probe;
        row.since = last->at;
    }
    if (state == BatchState::planned)
        return;
    if (const auto gap = list.wanted(Figure::reading_gap_minutes); gap && batch.mixed) {
        const maths::Instant since = last && !(last->at < *batch.mixed) ? last->at : *batch.mixed;
        add_at(list, DueKind::read_tank, later(since, *gap * minute), batch).since = since;
    }
    if (state == BatchState::clear)
        return;
    if (const auto every = list.wanted(Figure::stir_every_minutes); every && batch.mixed) {
        const maths::Instant since = batch.stirs.empty() ? *batch.mixed : batch.stirs.back().at;
        add_at(list, DueKind::stir_tank, later(since, *every * minute), batch).since = since;
    }
}

bool on_target(const SoakLine& soak) {
    return !soak.weighings.empty() && soak.weighings.back().figures.verdict == WeighVerdict::on_target;
}

/// When the curve through its weighings reaches the target; nothing once that hour was weighed and it was not so.
std::optional<maths::Instant> target_hour(const SoakLine& soak) {
    const SoakCurve curve = soak_curve(soak);
    if (!curve.fit || !curve.fit->target || !(soak.weighings.back().at < curve.fit->target->at))
        return std::nullopt;
    return curve.fit->target->at;
}

/// The next weighing of a soak under way: at the hour its curve reaches the target, and before that as often as Set-up
/// says: the first so long after its start, others so long after the last.
void weighing(DueList& list, const BatchView& batch, const SoakLine& soak) {
    const bool first = soak.weighings.empty();
    std::optional<maths::Instant> at = target_hour(soak);
    const Figure rhythm = first ? Figure::first_weigh_hours : Figure::weigh_every_hours;
    const auto hours = at ? figure(list.workbook, rhythm) : list.wanted(rhythm);
    if (hours) {
        const maths::Instant usual = later(first ? soak.started : soak.weighings.back().at, *hours * hour);
        at = at && *at < usual ? *at : usual;
    }
    if (!at)
        return;
    DueRow& row = add_at(list, DueKind::weigh_strips, *at, batch);
    row.soak = soak.id;
    row.subject = soak.bin_name;
    row.since = soak.started;
    row.strips = soak.strips;
}

void soaks(DueList& list, const BatchView& batch) {
    int to_bag = 0;
    std::optional<maths::Instant> since;
    for (const SoakLine& soak : batch.soaks) {
        if (soak.bagged >= soak.strips)
            continue;
        if (soak.ended || on_target(soak)) {
            to_bag += soak.strips - soak.bagged;
            const maths::Instant ready = soak.ended ? *soak.ended : soak.weighings.back().at;
            since = since && *since < ready ? since : ready;
        } else {
            weighing(list, batch, soak);
        }
    }
    // Bags filled from any bin of a batch are counted with the batch: what is bagged there comes off the whole.
    to_bag = std::min(to_bag, batch.strips_soaked - batch.strips_bagged);
    if (to_bag > 0) {
        DueRow& row = add(list, DueKind::bag_strips, DueGroup::today, since->local_day(), batch);
        row.count = to_bag;
        row.strips = to_bag;
        row.since = since;
        list.wanted(Figure::rest_days);
    }
}

} // namespace

void due_in_shed(DueList& list) {
    for (const book::Batch& open : book::open_batches(list.workbook)) {
        const auto batch = batch_view(list.workbook, open.id, list.today);
        if (!batch)
            continue;
        const BatchLine& line = batch->line;
        if (line.state == BatchState::planned) {
            DueRow& row = add(list, DueKind::weigh_planned, list.group_of(line.day), line.day, *batch);
            row.by = line.day;
        }
        tank(list, *batch);
        soaks(list, *batch);
        if (batch->labels_reserved > 0) {
            DueRow& row = add(list, DueKind::fill_reserved, DueGroup::this_week, line.day, *batch);
            row.count = batch->labels_reserved;
        }
        if (line.state == BatchState::to_close)
            add(list, DueKind::pour_or_close, DueGroup::this_week, line.day, *batch);
    }
}

} // namespace soakbook::work
