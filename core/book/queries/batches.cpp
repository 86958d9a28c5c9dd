// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/batches.h"

namespace soakbook::book {

std::vector<BatchInput> inputs_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<BatchInput>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY id", batch);
}

std::vector<Reading> readings_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<Reading>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY at_ms, id", batch);
}

std::vector<Stir> stirs_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<Stir>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY at_ms, id", batch);
}

std::vector<BatchLoss> losses_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<BatchLoss>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY id", batch);
}

std::vector<Batch> batches_in_tank(const Workbook& workbook, Id<Vessel> tank) {
    return fetch_where<Batch>(
        workbook,
        "WHERE tank_id = ? AND void_reason IS NULL AND closed_ms IS NULL AND NOT EXISTS "
        "(SELECT 1 FROM soak WHERE soak.batch_id = batch.id AND soak.void_reason IS NULL) ORDER BY id",
        tank);
}

std::vector<Reading> dial_readings_of_tank(const Workbook& workbook, Id<Vessel> tank) {
    return fetch_where<Reading>(
        workbook,
        "WHERE probe_cc IS NOT NULL AND dial_cc IS NOT NULL AND void_reason IS NULL AND batch_id IN "
        "(SELECT id FROM batch WHERE tank_id = ? AND void_reason IS NULL) ORDER BY at_ms, id",
        tank);
}

std::vector<Batch> batches_open_first(const Workbook& workbook, bool also_void) {
    return fetch_where<Batch>(workbook,
                              "WHERE void_reason IS NULL OR ? ORDER BY void_reason IS NOT NULL, closed_ms IS NOT NULL, "
                              "coalesce(date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch'), planned_on) DESC, id DESC",
                              also_void);
}

std::optional<Batch> newest_batch(const Workbook& workbook) {
    auto found = fetch_where<Batch>(workbook, "WHERE void_reason IS NULL ORDER BY id DESC LIMIT 1");
    return found.empty() ? std::nullopt : std::optional<Batch>(std::move(found.front()));
}

BatchCounts counts_of(const Workbook& workbook, Id<Batch> batch, maths::Day today) {
    BatchCounts counts;
    Statement soaks(workbook.db(),
                    QStringLiteral("SELECT coalesce(sum(strips), 0), coalesce(sum(ended_ms IS NULL), 0) FROM soak "
                                   "WHERE batch_id = ? AND void_reason IS NULL"));
    soaks.bind(batch).run();
    if (soaks.next()) {
        counts.strips = soaks.get<int>(0);
        counts.soaks_running = soaks.get<int>(1);
    }
    Statement bags(
        workbook.db(),
        QStringLiteral("SELECT coalesce(sum(packed), 0), count(*), coalesce(sum(rest_until > ?), 0) FROM bag "
                       "WHERE batch_id = ? AND void_reason IS NULL AND sealed_on IS NOT NULL"));
    bags.bind(today).bind(batch).run();
    if (bags.next()) {
        counts.strips_bagged = bags.get<int>(0);
        counts.bags = bags.get<int>(1);
        counts.resting = bags.get<int>(2);
    }
    return counts;
}

} // namespace soakbook::book
