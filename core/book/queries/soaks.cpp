// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/soaks.h"

namespace soakbook::book {

std::vector<Soak> soaks_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<Soak>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY started_ms, id", batch);
}

std::vector<WeighIn> weigh_ins_of(const Workbook& workbook, Id<Soak> soak) {
    return fetch_where<WeighIn>(workbook, "WHERE soak_id = ? AND void_reason IS NULL ORDER BY at_ms, id", soak);
}

std::vector<WeighSingle> singles_of(const Workbook& workbook, Id<WeighIn> weigh_in) {
    return fetch_where<WeighSingle>(workbook, "WHERE weigh_in_id = ? ORDER BY place", weigh_in);
}

std::vector<std::vector<maths::Mass>> single_masses_of_kind(const Workbook& workbook, Id<StripKind> kind,
                                                            std::optional<Id<MaterialLot>> lot) {
    Statement s(
        workbook.db(),
        QStringLiteral(
            "WITH wanted(kind, lot) AS (SELECT ?, ?), "
            "soaked AS (SELECT soak.id FROM wanted JOIN batch ON batch.strip_kind_id = wanted.kind "
            "JOIN soak ON soak.batch_id = batch.id WHERE batch.void_reason IS NULL AND soak.void_reason IS NULL "
            "AND (wanted.lot IS NULL OR soak.lot_id = wanted.lot)), "
            "bagged AS (SELECT bag.id FROM wanted JOIN bag ON bag.strip_kind_id = wanted.kind "
            "WHERE bag.void_reason IS NULL AND (wanted.lot IS NULL OR bag.soak_id IN soaked)) "
            "SELECT w.id, one.mass_mg FROM weigh_in w JOIN weigh_single one ON one.weigh_in_id = w.id "
            "WHERE w.void_reason IS NULL AND (w.soak_id IN soaked OR w.bag_id IN bagged) ORDER BY w.id, one.id"));
    s.bind(kind).bind(lot).run();
    std::vector<std::vector<maths::Mass>> masses;
    qint64 weighing = 0;
    while (s.next()) {
        if (masses.empty() || weighing != s.get<qint64>(0))
            masses.emplace_back();
        weighing = s.get<qint64>(0);
        masses.back().push_back(s.get<maths::Mass>(1));
    }
    return masses;
}

void remove_single(Writing& writing, Id<WeighSingle> id) {
    Statement(writing.db(), QStringLiteral("DELETE FROM weigh_single WHERE id = ?")).bind(id).run();
}

std::optional<Soak> soak_in_bin(const Workbook& workbook, Id<Vessel> bin) {
    auto found =
        fetch_where<Soak>(workbook,
                          "WHERE bin_id = ? AND void_reason IS NULL AND ended_ms IS NULL AND batch_id IN "
                          "(SELECT id FROM batch WHERE void_reason IS NULL AND closed_ms IS NULL) ORDER BY id LIMIT 1",
                          bin);
    return found.empty() ? std::nullopt : std::optional<Soak>(std::move(found.front()));
}

std::optional<Soak> last_flooded_soak(const Workbook& workbook, Id<Vessel> bin) {
    auto found = fetch_where<Soak>(workbook,
                                   "WHERE bin_id = ? AND void_reason IS NULL AND flood_mg IS NOT NULL "
                                   "ORDER BY started_ms DESC, id LIMIT 1",
                                   bin);
    return found.empty() ? std::nullopt : std::optional<Soak>(std::move(found.front()));
}

std::set<qint64> corrected_weigh_ins(const Workbook& workbook, Id<Soak> soak) {
    // The image of the row when it was added against its image after its last change: equal again once a correction was
    // undone.
    Statement s(
        workbook.db(),
        QStringLiteral(
            "SELECT w.id FROM weigh_in w WHERE w.soak_id = ? AND "
            "(SELECT c.after FROM change c WHERE c.tbl = 'weigh_in' AND c.row_id = w.id ORDER BY c.seq LIMIT 1) <> "
            "(SELECT c.after FROM change c WHERE c.tbl = 'weigh_in' AND c.row_id = w.id ORDER BY c.seq DESC LIMIT 1)"));
    s.bind(soak).run();
    std::set<qint64> ids;
    while (s.next())
        ids.insert(s.get<qint64>(0));
    return ids;
}

} // namespace soakbook::book
