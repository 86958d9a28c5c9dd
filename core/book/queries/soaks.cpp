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
