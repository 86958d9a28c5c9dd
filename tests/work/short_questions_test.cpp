// SPDX-License-Identifier: GPL-3.0-or-later
// What pages and forms ask without reading a list says the same as the list would.
#include "yards_bench.h"
#include "core/work/bag.h"
#include "core/work/count.h"
#include "core/work/heat.h"
#include "core/work/short_questions.h"
#include "core/work/weigh.h"

namespace soakbook::tests {

using namespace work;

TEST(ShortQuestions, strips_that_ever_hung_in_a_yard_are_known_though_they_were_made_void) {
    YardsBench b;
    b.bagged_batch();
    EXPECT_FALSE(was_anything_hung(b.book()));
    const RoundId round = b.round(10);
    VisitEntry entry = b.as_planned(round, b.yard, 10);
    entry.rows.resize(1);
    must(enter_visit(b.book(), entry, on_day(10)));
    EXPECT_TRUE(was_anything_hung(b.book()));
    EXPECT_TRUE(was_anything_hung(b.book(), b.yard));
    EXPECT_FALSE(was_anything_hung(b.book(), YardId{4711}));
    must(void_placement(b.book(), b.placement(b.hives.front()), because(QStringLiteral("wrong hive"), 11)));
    EXPECT_TRUE(was_anything_hung(b.book(), b.yard));
}

TEST(ShortQuestions, the_bees_counted_last_are_those_of_that_kind_and_not_void) {
    YardsBench b;
    EXPECT_FALSE(bees_used_last(b.book(), MiteCountKind::wash));
    const auto count = [&](MiteCountKind kind, std::optional<int> bees, int n) {
        CountEntry entry;
        entry.kind = kind;
        entry.on = day_n(n);
        CountEntry::Row row;
        row.hive = b.hives.front();
        row.mites = 3;
        row.bees = bees;
        if (!bees)
            row.days = 3;
        entry.rows.push_back(row);
        must(enter_counts(b.book(), entry, on_day(n)));
    };
    count(MiteCountKind::wash, 300, 1);
    count(MiteCountKind::powder, 250, 2);
    count(MiteCountKind::drop, {}, 3);
    EXPECT_EQ(bees_used_last(b.book(), MiteCountKind::wash), 300);
    EXPECT_EQ(bees_used_last(b.book(), MiteCountKind::powder), 250);
    EXPECT_FALSE(bees_used_last(b.book(), MiteCountKind::drop));
    must(void_count(b.book(), counts(b.book(), b.hives.front(), {}).back().id, because(QStringLiteral("another hive"), 4)));
    EXPECT_FALSE(bees_used_last(b.book(), MiteCountKind::wash));
}

TEST(ShortQuestions, the_bags_there_ever_were_are_all_of_the_list) {
    YardsBench b;
    EXPECT_EQ(bags_ever(b.book()), 0);
    const BatchId batch = b.bagged_batch();
    must(void_bag(b.book(), b.bags_of(batch).front(), because(QStringLiteral("burst"), 3)));
    must(reserve_labels(b.book(), b.soaked_batch(5), 2, on_day(7)));
    EXPECT_EQ(bags_ever(b.book()), static_cast<int>(bags(b.book(), day_n(8), BagFilter::all).size()));
    EXPECT_EQ(bags_ever(b.book()), 14);
}

TEST(ShortQuestions, a_range_of_days_shows_also_the_corrections_made_in_it) {
    YardsBench b;
    b.bagged_batch();
    // Nothing of this batch hangs, so that it stands behind no treatment.
    const BatchId other = b.weighed_batch(20, 1);
    const WeighLine line = b.view(other).soaks.front().weighings.front();
    WeighEntry right;
    right.soak = b.view(other).soaks.front().id;
    right.strips = 10;
    right.total = maths::grams(338);
    must(correct_weighing(b.book(), line.id, right, because(QStringLiteral("not tared"), 30)));
    RegisterFilter then;
    then.from = day_n(29);
    then.to = day_n(31);
    EXPECT_TRUE(corrections(b.book(), then).empty());
    EXPECT_FALSE(corrections_and_those_made_then(b.book(), then).empty());
    then.to = day_n(29);
    EXPECT_TRUE(corrections_and_those_made_then(b.book(), then).empty());
    then.to.reset();
    then.yard = b.yard;
    EXPECT_TRUE(corrections_and_those_made_then(b.book(), then).empty()) << "of a yard, its own alone";
}

} // namespace soakbook::tests
