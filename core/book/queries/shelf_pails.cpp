// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/shelf_pails.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

namespace {

std::vector<PailRow> pails_where(const Workbook& workbook, const char* condition, std::optional<Id<Pail>> pail = {}) {
    Statement s(workbook.db(),
                QStringLiteral("SELECT ") + joined_columns<Pail>() +
                    QStringLiteral(
                        ", source.code, pour.warm_and_clear, pour.scraped, "
                        "CASE WHEN i.mass_mg IS NULL THEN coalesce(taker.code, '') ELSE '' END, "
                        "CASE WHEN i.mass_mg IS NOT NULL THEN coalesce(taker.code, '') ELSE '' END "
                        "FROM pail JOIN batch source ON source.id = pail.batch_id JOIN pour ON pour.id = pail.pour_id "
                        "LEFT JOIN batch_input i ON i.pail_id = pail.id AND i.void_reason IS NULL "
                        "LEFT JOIN batch taker ON taker.id = i.batch_id ") +
                    QLatin1String(condition) + QStringLiteral(" ORDER BY pail.oldest_on, pail.id"));
    if (pail)
        s.bind(*pail);
    const int at = joined_width<Pail>();
    s.run();
    std::vector<PailRow> rows;
    while (s.next())
        rows.push_back({take_record<Pail>(s), s.get<QString>(at), s.get<bool>(at + 1), s.get<bool>(at + 2),
                        s.get<QString>(at + 3), s.get<QString>(at + 4)});
    return rows;
}

} // namespace

std::vector<PailRow> all_pails(const Workbook& workbook) { return pails_where(workbook, ""); }

std::vector<PailRow> pails_of_pours_at_hand(const Workbook& workbook) {
    return pails_where(workbook, "WHERE pail.pour_id IN (SELECT p.pour_id FROM pail p WHERE p.void_reason IS NULL AND p.discarded_on IS NULL "
                                 "AND NOT EXISTS (SELECT 1 FROM batch_input u WHERE u.pail_id = p.id AND u.void_reason IS NULL AND u.mass_mg IS NOT NULL))");
}

std::vector<PailRow> pails_poured_with(const Workbook& workbook, Id<Pail> pail) {
    return pails_where(workbook, "WHERE pail.pour_id = (SELECT pour_id FROM pail WHERE id = ?)", pail);
}

} // namespace soakbook::book
