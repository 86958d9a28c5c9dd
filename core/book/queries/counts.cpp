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
    QStringList conditions;
    if (hive)
        conditions << QStringLiteral("mite_count.hive_id = ?");
    if (yard)
        conditions << QStringLiteral("hive.yard_id = ?");
    if (!also_void)
        conditions << QStringLiteral("mite_count.void_reason IS NULL");
    QString where;
    if (!conditions.isEmpty())
        where = QStringLiteral("WHERE ") + conditions.join(QStringLiteral(" AND "));
    Statement s(workbook.db(), counts_query() + where + QStringLiteral(" ORDER BY mite_count.on_day DESC, mite_count.id DESC"));
    if (hive)
        s.bind(hive);
    if (yard)
        s.bind(yard);
    return read_counts(s);
}

std::optional<int> bees_counted_last(const Workbook& workbook, CountKind kind) {
    Statement s(workbook.db(), QStringLiteral("SELECT bees FROM mite_count WHERE kind = ? AND bees IS NOT NULL AND void_reason IS NULL ORDER BY id DESC LIMIT 1"));
    s.bind(kind).run();
    return s.next() ? s.get<std::optional<int>>(0) : std::nullopt;
}

std::vector<CountRow> counts_of_round(const Workbook& workbook, Id<Round> round) {
    Statement s(workbook.db(), counts_query() + QStringLiteral("WHERE mite_count.round_id = ? AND mite_count.void_reason IS NULL "
                                                               "ORDER BY mite_count.on_day DESC, mite_count.id DESC"));
    s.bind(round);
    return read_counts(s);
}

std::vector<CountRow> newest_counts(const Workbook& workbook, Id<Yard> yard) {
    // One look into the index a hive, instead of putting the counts of all years in order.
    Statement s(workbook.db(), counts_query() + QStringLiteral("WHERE mite_count.id IN (SELECT (SELECT c.id FROM mite_count c WHERE c.hive_id = h.id "
                                                               "AND c.void_reason IS NULL ORDER BY c.on_day DESC, c.id DESC LIMIT 1) "
                                                               "FROM hive h WHERE h.yard_id = ? OR ? = 0)"));
    s.bind(yard).bind(yard);
    return read_counts(s);
}

} // namespace soakbook::book
