// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/shelf_pails.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

std::vector<PailRow> all_pails(const Workbook& workbook) {
    Statement s(workbook.db(),
                QStringLiteral("SELECT ") + joined_columns<Pail>() +
                    QStringLiteral(
                        ", source.code, pour.warm_and_clear, pour.scraped, "
                        "CASE WHEN i.mass_mg IS NULL THEN coalesce(taker.code, '') ELSE '' END, "
                        "CASE WHEN i.mass_mg IS NOT NULL THEN coalesce(taker.code, '') ELSE '' END "
                        "FROM pail JOIN batch source ON source.id = pail.batch_id JOIN pour ON pour.id = pail.pour_id "
                        "LEFT JOIN batch_input i ON i.pail_id = pail.id AND i.void_reason IS NULL "
                        "LEFT JOIN batch taker ON taker.id = i.batch_id ORDER BY pail.oldest_on, pail.id"));
    const int at = joined_width<Pail>();
    s.run();
    std::vector<PailRow> rows;
    while (s.next())
        rows.push_back({take_record<Pail>(s), s.get<QString>(at), s.get<bool>(at + 1), s.get<bool>(at + 2),
                        s.get<QString>(at + 3), s.get<QString>(at + 4)});
    return rows;
}

} // namespace soakbook::book
