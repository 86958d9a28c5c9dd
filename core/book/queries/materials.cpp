// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/materials.h"

namespace soakbook::book {

namespace {
qint64 sum_for(const Workbook& workbook, const QString& sql, Id<MaterialLot> lot) {
    Statement s(workbook.db(), sql);
    s.bind(lot).run();
    return s.next() ? s.get<qint64>(0) : 0;
}
} // namespace

std::vector<MaterialLot> lots_newest_first(const Workbook& workbook) {
    return fetch_where<MaterialLot>(workbook, "WHERE void_reason IS NULL ORDER BY received_on DESC, id DESC");
}

qint64 used_of_lot(const Workbook& workbook, const MaterialLot& lot) {
    switch (lot.material) {
    case Material::acid:
    case Material::glycerine:
        return sum_for(workbook,
                       QStringLiteral("SELECT coalesce(sum(coalesce(mass_mg, planned_mg)), 0) FROM batch_input "
                                      "WHERE lot_id = ? AND void_reason IS NULL"),
                       lot.id);
    case Material::strips:
        return sum_for(
            workbook,
            QStringLiteral("SELECT coalesce(sum(strips), 0) FROM soak WHERE lot_id = ? AND void_reason IS NULL"),
            lot.id);
    case Material::bags:
        break;
    }
    return sum_for(workbook,
                   QStringLiteral("SELECT count(*) FROM bag WHERE bag_lot_id = ? AND sealed_on IS NOT NULL "
                                  "AND coalesce(void_reason, '') <> 'undone'"),
                   lot.id);
}

qint64 changes_of_lot(const Workbook& workbook, Id<MaterialLot> lot) {
    return sum_for(workbook, QStringLiteral("SELECT coalesce(sum(amount), 0) FROM lot_change WHERE lot_id = ?"), lot);
}

std::optional<Id<MaterialLot>> lot_used_last(const Workbook& workbook, Material material) {
    Statement s(workbook.db(),
                QStringLiteral("SELECT i.lot_id FROM batch_input i JOIN material_lot l ON l.id = i.lot_id "
                               "WHERE l.material = ? AND i.void_reason IS NULL ORDER BY i.id DESC LIMIT 1"));
    s.bind(material).run();
    return s.next() ? std::optional<Id<MaterialLot>>(s.get<Id<MaterialLot>>(0)) : std::nullopt;
}

} // namespace soakbook::book
