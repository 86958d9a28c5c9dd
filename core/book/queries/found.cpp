// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/found.h"

#include "core/book/statement.h"

#include <algorithm>
#include <optional>

namespace soakbook::book {

namespace {

std::vector<FoundRecord> read_found(Statement& s) {
    std::vector<FoundRecord> rows;
    s.run();
    while (s.next())
        rows.push_back({s.get<QString>(0), s.get<qint64>(1), s.get<QString>(2), s.get<QString>(3)});
    return rows;
}

} // namespace

std::optional<FoundRecord> record_of_code(const Workbook& workbook, const QString& code) {
    Statement s(
        workbook.db(),
        QStringLiteral(
            "SELECT 'batch', id, code, '' FROM batch WHERE code = ? "
            "UNION ALL SELECT 'bag', bag.id, bag.code, batch.code FROM bag JOIN batch ON batch.id = bag.batch_id WHERE "
            "bag.code = ? "
            "UNION ALL SELECT 'pail', pail.id, pail.code, batch.code FROM pail JOIN batch ON batch.id = pail.batch_id "
            "WHERE pail.code = ?"));
    s.bind(code).bind(code).bind(code);
    const auto rows = read_found(s);
    return rows.empty() ? std::nullopt : std::optional<FoundRecord>(rows.front());
}

std::vector<FoundRecord> records_named(const Workbook& workbook, const QString& text, int most) {
    Statement s(workbook.db(),
                QStringLiteral("SELECT 'hive', hive.id, hive.name, yard.name FROM hive JOIN yard ON yard.id = "
                               "hive.yard_id WHERE hive.void_reason IS NULL "
                               "UNION ALL SELECT 'yard', id, name, where_it_is FROM yard "
                               "UNION ALL SELECT 'round', id, name, planned_on FROM round WHERE void_reason IS NULL "
                               "UNION ALL SELECT 'material_lot', id, name, supplier FROM material_lot"));
    // SQLite folds the case of ASCII letters alone; names are folded as Unicode has it.
    std::vector<FoundRecord> rows = read_found(s);
    std::erase_if(rows, [&](const FoundRecord& r) { return !r.name.contains(text, Qt::CaseInsensitive); });
    std::stable_sort(rows.begin(), rows.end(), [&](const FoundRecord& a, const FoundRecord& b) {
        const auto rank = [&](const FoundRecord& r) {
            return r.name.compare(text, Qt::CaseInsensitive) == 0 ? 0
                   : r.name.startsWith(text, Qt::CaseInsensitive) ? 1
                                                                  : 2;
        };
        return rank(a) < rank(b);
    });
    if (rows.size() > static_cast<std::size_t>(std::max(most, 0)))
        rows.resize(static_cast<std::size_t>(std::max(most, 0)));
    return rows;
}

} // namespace soakbook::book
