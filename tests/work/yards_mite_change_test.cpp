// SPDX-License-Identifier: GPL-3.0-or-later
// What a round did to the mites. Treated 300 to 30, untreated 500 to 550 is 90.9091 %: Henderson & Tilton 1955, J.
// Econ. Entomol. 48:157, by its formula.
#include "core/work/count.h"
#include "core/work/how_yards.h"
#include "core/work/mite_change.h"
#include "yards_bench.h"

namespace soakbook::tests {

using namespace work;

namespace {

/// Strips in hive A1 from day 20 to day 70; A2 is left untreated.
struct TreatedYard : YardsBench {
    RoundId treatment;
    HiveId treated = hive(QStringLiteral("A1"));
    HiveId untreated = hive(QStringLiteral("A2"));

    TreatedYard() {
        bagged_batch(0, 1);
        for (HiveEntry entry : work::hives(book(), yard))
            if (entry.id == untreated) {
                entry.untreated = true;
                must(save_hive(book(), entry, because(QStringLiteral("to compare with"), 5)));
            }
        treatment = round(20);
        VisitEntry entry;
        entry.round = treatment;
        entry.yard = yard;
        entry.on = day_n(20);
        entry.supers_on = false;
        entry.rows.push_back({treated, 4, {}, {}, {}});
        must(enter_visit(book(), entry, on_day(20)));
    }
    void count(HiveId hive, int mites, int n) {
        CountEntry entry;
        entry.round = treatment;
        entry.kind = MiteCountKind::wash;
        entry.rows.push_back({hive, mites, 1000, {}, {}});
        must(enter_counts(book(), entry, on_day(n)));
    }
    MiteChange change() { return mite_change(book(), treatment, MiteCountKind::wash); }
};

} // namespace

TEST(MiteChange, against_untreated_hives_agrees_with_henderson_and_tilton) {
    TreatedYard y;
    y.count(y.treated, 300, 19);
    y.count(y.untreated, 500, 19);
    y.pull(y.yard, 70);
    y.count(y.treated, 30, 75);
    y.count(y.untreated, 550, 75);
    const MiteChange change = y.change();
    EXPECT_EQ(change.says, MiteChangeSays::against_untreated);
    EXPECT_EQ(change.treated.hives, 1);
    EXPECT_EQ(change.untreated.hives, 1);
    EXPECT_EQ(change.change, maths::ppm(909'091));
    const How how = how_mite_change(change);
    EXPECT_EQ(how.kind, HowKind::mite_change);
    EXPECT_EQ(how.facts.join(QLatin1Char(' ')), QStringLiteral("f:300000 f:30000 f:500000 f:550000 f:909091"));
}

TEST(MiteChange, without_untreated_hives_it_is_a_change_and_more_mites_stay_below_zero) {
    TreatedYard y;
    y.count(y.treated, 300, 19);
    y.pull(y.yard, 70);
    y.count(y.treated, 330, 75);
    const MiteChange change = y.change();
    EXPECT_EQ(change.says, MiteChangeSays::without_untreated);
    EXPECT_EQ(change.change, maths::ppm(-100'000));
    EXPECT_EQ(how_mite_change(change).kind, HowKind::mite_fall);
}

TEST(MiteChange, no_mites_before_cannot_be_computed) {
    TreatedYard y;
    y.count(y.treated, 0, 19);
    y.pull(y.yard, 70);
    y.count(y.treated, 3, 75);
    EXPECT_EQ(y.change().says, MiteChangeSays::zero_below_the_line);
    EXPECT_FALSE(y.change().change);
}

TEST(MiteChange, it_waits_until_the_strips_are_out_and_both_counts_are_there) {
    TreatedYard y;
    y.count(y.treated, 300, 19);
    y.count(y.treated, 100, 40); // while they hang
    EXPECT_EQ(y.change().says, MiteChangeSays::no_counts);
    y.pull(y.yard, 70);
    EXPECT_EQ(y.change().says, MiteChangeSays::no_counts);
    y.count(y.treated, 30, 75);
    EXPECT_EQ(y.change().says, MiteChangeSays::without_untreated);
    EXPECT_EQ(mite_change(y.book(), y.treatment, MiteCountKind::drop).says, MiteChangeSays::no_counts);
    EXPECT_EQ(mite_change(y.book(), RoundId{999}, MiteCountKind::wash).says, MiteChangeSays::no_counts);
}

} // namespace soakbook::tests
