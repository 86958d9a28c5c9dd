// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/counts.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

namespace {

QString counts_query() {
    return QStringLiteral("SELECT ") + joined_columns<MiteCount>() +
           QStringLiteral(
               ", hive.name, coalesce(round.name, '') FROM mite_count JOIN hive ON hive.id = mite_count.hive_id "
               "LEFT JOIN round ON round.id = mite_count.round_id ");
}

std::vector<CountRow> read_counts(Statement& s) {
    const int at = joined_width<MiteCount>();
    std::vector<CountRow> rows;
    s.run();
    while (s.next())
        rows.push_back({take_record<MiteCount>(s), s.get<QString>(at), s.get<QString>(at + 1)});
    return rows;
}

} // namespace

std::vector<CountRow> mite_counts(const Workbook& workbook, Id<Hive> hive, Id<Yard> yard, bool also_void) {
    Statement s(
        workbook.db(),
        counts_query() +
            QStringLiteral(
                "WHERE (mite_count.hive_id = ? OR ? = 0) AND (hive.yard_id = ? OR ? = 0) "
                "AND (mite_count.void_reason IS NULL OR ?) ORDER BY mite_count.on_day DESC, mite_count.id DESC"));
    s.bind(hive).bind(hive).bind(yard).bind(yard).bind(also_void);
    return read_counts(s);
}

std::vector<CountRow> newest_counts(const Workbook& workbook) {
    Statement s(
        workbook.db(),
        counts_query() +
            QStringLiteral(
                "JOIN (SELECT id, row_number() OVER (PARTITION BY hive_id ORDER BY on_day DESC, id DESC) AS place "
                "FROM mite_count WHERE void_reason IS NULL) newest "
                "ON newest.id = mite_count.id AND newest.place = 1"));
    return read_counts(s);
}

} // namespace soakbook::book
