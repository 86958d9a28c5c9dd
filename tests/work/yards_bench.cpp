// SPDX-License-Identifier: GPL-3.0-or-later
#include "yards_bench.h"

namespace soakbook::tests {

using namespace work;

maths::Day day_n(int n) {
    return maths::days_after(first_day, n);
}

YardsBench::YardsBench() {
    say(Figure::pull_from_days, 42);
    say(Figure::pull_by_days, 56);
    say(Figure::withdrawal_days, 14);
    YardEntry entry;
    entry.name = QStringLiteral("Mill lane");
    yard = must(save_yard(book(), entry, on_day(-5)));
    HiveRow numbered;
    numbered.yard = yard;
    numbered.prefix = QStringLiteral("A");
    numbered.first = 1;
    numbered.count = 20;
    numbered.frames_of_bees = 8;
    hives = must(add_hives(book(), numbered, on_day(-5)));
    HiveEntry group;
    group.yard = yard;
    group.name = QStringLiteral("long row");
    group.hives = 6;
    group.frames_of_bees = 60;
    row = must(save_hive(book(), group, on_day(-5)));
}

void YardsBench::say(Figure figure, qint64 value) {
    must(set_figures(book(), {{figure, value, {}}}, on_day(-6)));
}

RoundId YardsBench::round(int n, const QString& name, std::vector<YardId> yards) {
    RoundEntry entry;
    entry.name = name;
    entry.planned_on = day_n(n);
    entry.yards = yards.empty() ? std::vector<YardId>{yard} : std::move(yards);
    return must(plan_round(book(), entry, on_day(std::min(n, 3))));
}

VisitEntry YardsBench::as_planned(RoundId round, YardId where, int n) {
    VisitEntry entry;
    entry.round = round;
    entry.yard = where;
    entry.on = day_n(n);
    entry.supers_on = false;
    const VisitPlan plan = must(plan_visit(book(), round, where, day_n(n)));
    for (const VisitLine& line : plan.lines)
        entry.rows.push_back({line.hive, line.planned.value_or(0), {}, {}, {}});
    return entry;
}

VisitDone YardsBench::visit(RoundId round, int n, const Confirmed& yes) {
    return must(enter_visit(book(), as_planned(round, yard, n), on_day(n), yes));
}

PullDone YardsBench::pull(YardId where, int n, const Confirmed& yes) {
    PullEntry entry;
    entry.on = day_n(n);
    for (const PullLine& line : hanging(book(), where, day_n(n)))
        entry.rows.push_back({line.placement, {}, {}, {}});
    return must(enter_pull(book(), entry, on_day(n), yes));
}

HiveId YardsBench::hive(const QString& name) {
    for (const HiveEntry& entry : work::hives(book(), {}, true))
        if (entry.name == name)
            return entry.id;
    throw std::runtime_error("no such hive");
}

PlacementId YardsBench::placement(HiveId wanted) {
    for (const PullLine& line : hanging(book(), {}, day_n(0)))
        if (line.hive == wanted)
            return line.placement;
    throw std::runtime_error("nothing hangs there");
}

int YardsBench::left(BagId id) {
    return bag(book(), id, day_n(0))->left;
}

} // namespace soakbook::tests
