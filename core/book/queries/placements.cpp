// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/placements.h"

#include "core/book/queries/joined.h"

namespace soakbook::book {

namespace {

PlacementRow read_row(const Statement& s, bool pulls_written) {
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
    if (const auto written = pulls_written ? s.get<std::optional<qint64>>(at + 12) : std::nullopt)
        r.pull_written = maths::Instant{*written, s.get<int>(at + 13)};
    return r;
}

QString pull_written_columns() {
    const QString newest = QStringLiteral(", (SELECT %1 FROM change WHERE tbl = 'placement' AND work IN ('strips_out', 'redo:strips_out') "
                                          "AND row_id = placement.id ORDER BY at_ms DESC LIMIT 1)");
    return newest.arg(QStringLiteral("at_ms")) + newest.arg(QStringLiteral("at_off"));
}

/// The conditions of a filter, and the values that stand in them.
struct Narrowed {
    QString where;
    QVariantList values;
};

Narrowed narrow(const PlacementFilter& filter) {
    QStringList conditions;
    QVariantList values;
    const auto add = [&](const char* condition, const QVariant& value) {
        conditions << QLatin1String(condition);
        values << value;
    };
    if (filter.hanging)
        conditions << QStringLiteral("placement.pulled_on IS NULL");
    if (filter.hanging || !filter.also_void)
        conditions << QStringLiteral("placement.void_reason IS NULL");
    if (filter.yard_now)
        add("hive.yard_id = ?", Cell<Id<Yard>>::write(filter.yard_now));
    if (filter.yard_then)
        add("placement.yard_id = ?", Cell<Id<Yard>>::write(filter.yard_then));
    if (filter.hive)
        add("placement.hive_id = ?", Cell<Id<Hive>>::write(filter.hive));
    if (filter.bag)
        add("placement.bag_id = ?", Cell<Id<Bag>>::write(filter.bag));
    if (filter.batch)
        add("bag.batch_id = ?", Cell<Id<Batch>>::write(filter.batch));
    if (filter.round)
        add("placement.round_id = ?", Cell<Id<Round>>::write(filter.round));
    if (filter.from)
        add("placement.placed_on >= ?", Cell<maths::Day>::write(*filter.from));
    if (filter.to)
        add("placement.placed_on <= ?", Cell<maths::Day>::write(*filter.to));
    return {conditions.isEmpty() ? QString() : QStringLiteral("WHERE ") + conditions.join(QStringLiteral(" AND ")), values};
}

void bind_all(Statement& s, const QVariantList& values) {
    for (const QVariant& value : values)
        s.bind(value);
}

} // namespace

std::vector<PlacementRow> placements(const Workbook& workbook, const PlacementFilter& filter) {
    const Narrowed narrowed = narrow(filter);
    QString sql = QStringLiteral("SELECT ") + joined_columns<Placement>() +
                  QStringLiteral(", hive.name, hive.hives, hive.state, hive.yard_id, stands.name, hung.name, bag.code, "
                                 "bag.batch_id, batch.code, "
                                 "bag.use_by, bag.strength_ppm, coalesce(round.name, '')") +
                  (filter.pulls_written ? pull_written_columns() : QString()) +
                  QStringLiteral(" FROM placement "
                                 "JOIN hive ON hive.id = placement.hive_id JOIN yard stands ON stands.id = hive.yard_id "
                                 "JOIN yard hung ON hung.id = placement.yard_id JOIN bag ON bag.id = placement.bag_id "
                                 "JOIN batch ON batch.id = bag.batch_id LEFT JOIN round ON round.id = placement.round_id ") +
                  narrowed.where;
    // What hangs is little beside what ever hung: it is found first and put in order then.
    sql += filter.hanging ? QStringLiteral(" ORDER BY +placement.placed_on, placement.id") : QStringLiteral(" ORDER BY placement.placed_on, placement.id");
    Statement s(workbook.db(), sql);
    bind_all(s, narrowed.values);
    s.run();
    std::vector<PlacementRow> rows;
    while (s.next())
        rows.push_back(read_row(s, filter.pulls_written));
    return rows;
}

std::vector<std::pair<Id<Placement>, Id<Batch>>> placements_and_batches(const Workbook& workbook, const PlacementFilter& filter) {
    const Narrowed narrowed = narrow(filter);
    const QString hives = filter.yard_now ? QStringLiteral("JOIN hive ON hive.id = placement.hive_id ") : QString();
    Statement s(workbook.db(), QStringLiteral("SELECT placement.id, bag.batch_id FROM placement JOIN bag ON bag.id = placement.bag_id ") + hives + narrowed.where);
    bind_all(s, narrowed.values);
    s.run();
    std::vector<std::pair<Id<Placement>, Id<Batch>>> keys;
    while (s.next())
        keys.emplace_back(s.get<Id<Placement>>(0), s.get<Id<Batch>>(1));
    return keys;
}

std::vector<LastPulled> last_pulled(const Workbook& workbook, Id<Yard> yard) {
    const QString in_yard = yard ? QStringLiteral("AND hive_id IN (SELECT id FROM hive WHERE yard_id = ?) ") : QString();
    Statement s(workbook.db(), QStringLiteral("SELECT hive_id, withdrawal_days, max(pulled_on) FROM placement "
                                              "WHERE pulled_on IS NOT NULL AND void_reason IS NULL ") +
                                   in_yard + QStringLiteral("GROUP BY hive_id, withdrawal_days"));
    if (yard)
        s.bind(yard);
    s.run();
    std::vector<LastPulled> rows;
    while (s.next())
        rows.push_back({s.get<Id<Hive>>(0), s.get<std::optional<int>>(1), s.get<maths::Day>(2)});
    return rows;
}

std::vector<RoundStrips> strips_by_round(const Workbook& workbook) {
    std::map<Id<Round>, RoundStrips> rounds;
    {
        // A hive may have strips of a round from two bags: it counts once. This reads the index of rounds alone.
        Statement s(workbook.db(), QStringLiteral("SELECT round_id, count(DISTINCT hive_id), sum(strips) FROM placement "
                                                  "WHERE round_id IS NOT NULL AND void_reason IS NULL GROUP BY round_id"));
        s.run();
        while (s.next())
            rounds[s.get<Id<Round>>(0)] = {s.get<Id<Round>>(0), s.get<int>(1), s.get<int>(2), 0, {}, {}};
    }
    {
        // Few are groups of hives, or void.
        Statement s(workbook.db(), QStringLiteral("SELECT g.round_id, sum(iif(hive.void_reason IS NULL, hive.hives, 0) - 1) FROM "
                                                  "(SELECT DISTINCT round_id, hive_id FROM placement WHERE round_id IS NOT NULL AND void_reason IS NULL AND "
                                                  "hive_id IN (SELECT id FROM hive WHERE hives <> 1 OR void_reason IS NOT NULL)) g "
                                                  "JOIN hive ON hive.id = g.hive_id GROUP BY g.round_id"));
        s.run();
        while (s.next())
            rounds[s.get<Id<Round>>(0)].hives += s.get<int>(1);
    }
    Statement s(workbook.db(), QStringLiteral("SELECT round_id, sum(strips), min(pull_from), min(pull_by) FROM placement "
                                              "WHERE pulled_on IS NULL AND void_reason IS NULL AND round_id IS NOT NULL GROUP BY +round_id"));
    s.run();
    while (s.next()) {
        RoundStrips& round = rounds[s.get<Id<Round>>(0)];
        round.hanging = s.get<int>(1);
        round.pull_from = s.get<std::optional<maths::Day>>(2);
        round.pull_by = s.get<std::optional<maths::Day>>(3);
    }
    std::vector<RoundStrips> all;
    for (const auto& [id, round] : rounds)
        all.push_back(round);
    return all;
}

std::set<Id<Hive>> hung_in_round(const Workbook& workbook, Id<Round> round) {
    Statement s(workbook.db(), QStringLiteral("SELECT DISTINCT hive_id FROM placement WHERE round_id = ? AND void_reason IS NULL"));
    s.bind(round).run();
    std::set<Id<Hive>> hives;
    while (s.next())
        hives.insert(s.get<Id<Hive>>(0));
    return hives;
}

std::map<Id<Hive>, HangingInHive> hanging_by_hive(const Workbook& workbook) {
    Statement s(workbook.db(), QStringLiteral("SELECT hive_id, sum(strips), min(placed_on) FROM placement "
                                              "WHERE pulled_on IS NULL AND void_reason IS NULL GROUP BY +hive_id"));
    s.run();
    std::map<Id<Hive>, HangingInHive> hives;
    while (s.next())
        hives[s.get<Id<Hive>>(0)] = {s.get<int>(1), s.get<maths::Day>(2)};
    return hives;
}

} // namespace soakbook::book
