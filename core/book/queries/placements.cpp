// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/placements.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

namespace {

PlacementRow read_row(const Statement& s) {
    static const int at = joined_width<Placement>();
    PlacementRow r;
    r.placement = take_record<Placement>(s);
    r.hive = s.get<QString>(at);
    r.hives = s.get<int>(at + 1);
    r.hive_state = s.get<HiveState>(at + 2);
    r.yard_now = s.get<Id<Yard>>(at + 3);
    r.yard_now_name = s.get<QString>(at + 4);
    r.yard_name = s.get<QString>(at + 5);
    r.bag_code = s.get<QString>(at + 6);
    r.batch = s.get<Id<Batch>>(at + 7);
    r.batch_code = s.get<QString>(at + 8);
    r.use_by = s.get<maths::Day>(at + 9);
    r.strength = s.get<std::optional<maths::Fraction>>(at + 10);
    r.round_name = s.get<QString>(at + 11);
    return r;
}

} // namespace

std::vector<PlacementRow> placements(const Workbook& workbook, const PlacementFilter& filter) {
    QStringList conditions;
    QVariantList values;
    const auto narrow = [&](const char* condition, const QVariant& value) {
        conditions << QLatin1String(condition);
        values << value;
    };
    if (filter.hanging)
        conditions << QStringLiteral("placement.pulled_on IS NULL");
    if (filter.hanging || !filter.also_void)
        conditions << QStringLiteral("placement.void_reason IS NULL");
    if (filter.yard_now)
        narrow("hive.yard_id = ?", Cell<Id<Yard>>::write(filter.yard_now));
    if (filter.yard_then)
        narrow("placement.yard_id = ?", Cell<Id<Yard>>::write(filter.yard_then));
    if (filter.hive)
        narrow("placement.hive_id = ?", Cell<Id<Hive>>::write(filter.hive));
    if (filter.bag)
        narrow("placement.bag_id = ?", Cell<Id<Bag>>::write(filter.bag));
    if (filter.batch)
        narrow("bag.batch_id = ?", Cell<Id<Batch>>::write(filter.batch));
    if (filter.round)
        narrow("placement.round_id = ?", Cell<Id<Round>>::write(filter.round));
    if (filter.from)
        narrow("placement.placed_on >= ?", Cell<maths::Day>::write(*filter.from));
    if (filter.to)
        narrow("placement.placed_on <= ?", Cell<maths::Day>::write(*filter.to));
    QString sql =
        QStringLiteral("SELECT ") + joined_columns<Placement>() +
        QStringLiteral(", hive.name, hive.hives, hive.state, hive.yard_id, stands.name, hung.name, bag.code, "
                       "bag.batch_id, batch.code, "
                       "bag.use_by, bag.strength_ppm, coalesce(round.name, '') FROM placement "
                       "JOIN hive ON hive.id = placement.hive_id JOIN yard stands ON stands.id = hive.yard_id "
                       "JOIN yard hung ON hung.id = placement.yard_id JOIN bag ON bag.id = placement.bag_id "
                       "JOIN batch ON batch.id = bag.batch_id LEFT JOIN round ON round.id = placement.round_id ");
    if (!conditions.isEmpty())
        sql += QStringLiteral("WHERE ") + conditions.join(QStringLiteral(" AND "));
    sql += QStringLiteral(" ORDER BY placement.placed_on, placement.id");
    Statement s(workbook.db(), sql);
    for (const QVariant& value : values)
        s.bind(value);
    s.run();
    std::vector<PlacementRow> rows;
    while (s.next())
        rows.push_back(read_row(s));
    return rows;
}

std::vector<LastPulled> last_pulled(const Workbook& workbook) {
    Statement s(
        workbook.db(),
        QStringLiteral("SELECT hive_id, withdrawal_days, max(pulled_on) FROM placement "
                       "WHERE pulled_on IS NOT NULL AND void_reason IS NULL GROUP BY hive_id, withdrawal_days"));
    s.run();
    std::vector<LastPulled> rows;
    while (s.next())
        rows.push_back({s.get<Id<Hive>>(0), s.get<std::optional<int>>(1), s.get<maths::Day>(2)});
    return rows;
}

std::vector<RoundStrips> strips_by_round(const Workbook& workbook) {
    Statement s(
        workbook.db(),
        QStringLiteral(
            "SELECT round_id, yard_id, sum(strips), sum(CASE WHEN pulled_on IS NULL THEN strips ELSE 0 END), "
            "min(CASE WHEN pulled_on IS NULL THEN pull_from END), min(CASE WHEN pulled_on IS NULL THEN pull_by END) "
            "FROM placement WHERE round_id IS NOT NULL AND void_reason IS NULL GROUP BY round_id, yard_id"));
    s.run();
    std::vector<RoundStrips> rows;
    while (s.next())
        rows.push_back({s.get<Id<Round>>(0), s.get<Id<Yard>>(1), s.get<int>(2), s.get<int>(3),
                        s.get<std::optional<maths::Day>>(4), s.get<std::optional<maths::Day>>(5)});
    return rows;
}

std::set<std::pair<Id<Round>, Id<Hive>>> hung_in_rounds(const Workbook& workbook) {
    Statement s(
        workbook.db(),
        QStringLiteral(
            "SELECT DISTINCT round_id, hive_id FROM placement WHERE round_id IS NOT NULL AND void_reason IS NULL"));
    s.run();
    std::set<std::pair<Id<Round>, Id<Hive>>> pairs;
    while (s.next())
        pairs.emplace(s.get<Id<Round>>(0), s.get<Id<Hive>>(1));
    return pairs;
}

std::vector<PullWritten> pulls_written(const Workbook& workbook) {
    // The bare column at_off comes from the row that holds the maximum.
    Statement s(workbook.db(), QStringLiteral("SELECT row_id, max(at_ms), at_off FROM change WHERE tbl = 'placement' "
                                              "AND work IN ('strips_out', 'redo:strips_out') GROUP BY row_id"));
    s.run();
    std::vector<PullWritten> rows;
    while (s.next())
        rows.push_back({s.get<Id<Placement>>(0), {s.get<qint64>(1), s.get<int>(2)}});
    return rows;
}

} // namespace soakbook::book
