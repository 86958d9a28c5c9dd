// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/bags_of_batch.h"

namespace soakbook::book {

std::vector<Bag> bags_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<Bag>(workbook, "WHERE batch_id = ? ORDER BY id", batch);
}

std::vector<Placement> placements_of_bag(const Workbook& workbook, Id<Bag> bag) {
    return fetch_where<Placement>(workbook, "WHERE bag_id = ? AND void_reason IS NULL ORDER BY placed_on, id", bag);
}

int left_in_bag(const Workbook& workbook, Id<Bag> bag) {
    Statement s(workbook.db(), QStringLiteral("SELECT left_over FROM bag_stock WHERE bag_id = ?"));
    s.bind(bag).run();
    return s.next() ? s.get<int>(0) : 0;
}

QString hive_name(const Workbook& workbook, const Placement& placement) {
    Statement s(workbook.db(), QStringLiteral("SELECT name FROM hive WHERE id = ?"));
    s.bind(placement.hive).run();
    return s.next() ? s.get<QString>(0) : QString();
}

} // namespace soakbook::book
