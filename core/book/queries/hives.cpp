// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/hives.h"

namespace soakbook::book {

std::vector<Yard> yards_by_name(const Workbook& workbook) {
    return fetch_where<Yard>(workbook, "ORDER BY name COLLATE NOCASE, id");
}

std::optional<Yard> yard_named(const Workbook& workbook, const QString& name) {
    auto found = fetch_where<Yard>(workbook, "WHERE name = ? COLLATE NOCASE", name);
    return found.empty() ? std::nullopt : std::optional<Yard>(std::move(found.front()));
}

std::vector<YardTime> times_of_yard(const Workbook& workbook, Id<Yard> yard) {
    return fetch_where<YardTime>(workbook, "WHERE (yard_id = ? OR ? = 0) AND void_reason IS NULL ORDER BY from_day, id",
                                 yard, yard);
}

std::vector<Hive> hives_of_yard(const Workbook& workbook, Id<Yard> yard) {
    if (!yard)
        return fetch_where<Hive>(workbook, "WHERE void_reason IS NULL ORDER BY id");
    return fetch_where<Hive>(workbook, "WHERE yard_id = ? AND void_reason IS NULL ORDER BY id", yard);
}

std::vector<HiveMove> moves_of_hive(const Workbook& workbook, Id<Hive> hive) {
    if (!hive)
        return fetch_where<HiveMove>(workbook, "WHERE void_reason IS NULL ORDER BY on_day, id");
    return fetch_where<HiveMove>(workbook, "WHERE hive_id = ? AND void_reason IS NULL ORDER BY on_day, id", hive);
}

std::vector<HiveMove> moves_after(const Workbook& workbook, maths::Day day) {
    return fetch_where<HiveMove>(workbook, "WHERE on_day > ? AND void_reason IS NULL ORDER BY on_day, id", day);
}

std::optional<maths::Day> last_placed(const Workbook& workbook, Id<Hive> hive) {
    Statement s(workbook.db(),
                QStringLiteral("SELECT max(placed_on) FROM placement WHERE hive_id = ? AND void_reason IS NULL"));
    s.bind(hive).run();
    return s.next() ? s.get<std::optional<maths::Day>>(0) : std::nullopt;
}

} // namespace soakbook::book
