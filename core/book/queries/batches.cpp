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

std::vector<Batch> open_batches(const Workbook& workbook) {
    return fetch_where<Batch>(workbook, "WHERE void_reason IS NULL AND closed_ms IS NULL ORDER BY "
                                        "coalesce(date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch'), planned_on) DESC, id DESC");
}

std::optional<Batch> newest_batch(const Workbook& workbook) {
    auto found = fetch_where<Batch>(workbook, "WHERE void_reason IS NULL ORDER BY id DESC LIMIT 1");
    return found.empty() ? std::nullopt : std::optional<Batch>(std::move(found.front()));
}

namespace {

// Of one batch where a condition says so, else of all.
std::map<Id<Batch>, BatchCounts> count_batches(const Workbook& workbook, std::optional<Id<Batch>> one, maths::Day today) {
    const QString of_one = one ? QStringLiteral("batch_id = ? AND ") : QString();
    std::map<Id<Batch>, BatchCounts> counts;
    Statement soaks(workbook.db(), QStringLiteral("SELECT batch_id, sum(strips), sum(ended_ms IS NULL) FROM soak WHERE ") + of_one +
                                       QStringLiteral("void_reason IS NULL GROUP BY batch_id"));
    if (one)
        soaks.bind(*one);
    soaks.run();
    while (soaks.next()) {
        BatchCounts& of = counts[soaks.get<Id<Batch>>(0)];
        of.strips = soaks.get<int>(1);
        of.soaks_running = soaks.get<int>(2);
    }
    Statement bags(workbook.db(), QStringLiteral("SELECT batch_id, sum(packed), count(*), coalesce(sum(rest_until > ?), 0) FROM bag WHERE ") + of_one +
                                      QStringLiteral("void_reason IS NULL AND sealed_on IS NOT NULL GROUP BY batch_id"));
    bags.bind(today);
    if (one)
        bags.bind(*one);
    bags.run();
    while (bags.next()) {
        BatchCounts& of = counts[bags.get<Id<Batch>>(0)];
        of.strips_bagged = bags.get<int>(1);
        of.bags = bags.get<int>(2);
        of.resting = bags.get<int>(3);
    }
    return counts;
}

} // namespace

BatchCounts counts_of(const Workbook& workbook, Id<Batch> batch, maths::Day today) { return count_batches(workbook, batch, today)[batch]; }

std::map<Id<Batch>, BatchCounts> counts_of_all(const Workbook& workbook, maths::Day today) { return count_batches(workbook, {}, today); }

} // namespace soakbook::book
