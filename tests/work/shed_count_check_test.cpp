// SPDX-License-Identifier: GPL-3.0-or-later
// One short? A bundle of 2.686 kg net at 33.9 g a strip lies between 79 (2.678 kg) and 80 (2.712 kg): common practice,
// no source. How sure follows from the spread of single strips.
#include "bench.h"
#include "core/work/count_check.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;
using maths::kilograms;

namespace {

/// One bin whose last weighing is ten strips at 33.9 g, and before it five one by one, so far apart.
struct Bundle {
    Bench bench;
    BatchId batch = bench.weighed_batch(0, 1);
    SoakId soak = bench.soaks_of(batch).at(0);

    void learn(double apart) {
        WeighEntry entry;
        entry.soak = soak;
        entry.at = moment(2, 8);
        for (const int step : {-2, -1, 0, 1, 2})
            entry.singles.push_back(grams(33.9 + step * apart));
        must(log_weighing(bench.book(), entry, on_day(2, 11)));
    }
    CountCheck check(maths::Mass net, int packed) {
        return must(count_check(bench.book(), CountWish{batch, soak, net, packed, std::nullopt}));
    }
};

} // namespace

TEST(CountByWeight, without_a_spread_it_cannot_tell) {
    Bundle bundle;
    const CountCheck check = bundle.check(kilograms(2.686), 80);
    EXPECT_EQ(check.says, CountSays::cannot_tell);
    EXPECT_FALSE(check.spread || check.likeliest || check.sureness || check.least || check.most);
    EXPECT_EQ(check.mean, grams(33.9));
    EXPECT_EQ(check.mean_strips, 10);
}

TEST(CountByWeight, strips_much_alike_tell_that_one_is_short) {
    Bundle bundle;
    bundle.learn(0.05); // s 0.079 g
    const CountCheck check = bundle.check(kilograms(2.6781), 80);
    EXPECT_EQ(check.says, CountSays::fewer);
    EXPECT_EQ(check.likeliest, 79);
    EXPECT_GT(*check.sureness, 0.95);
    EXPECT_EQ(check.least, 79);
    EXPECT_EQ(check.most, 79);
    EXPECT_EQ(bundle.check(kilograms(2.6781), 79).says, CountSays::as_packed);
    EXPECT_EQ(bundle.check(kilograms(2.6781), 78).says, CountSays::more);
    EXPECT_EQ(bundle.check(kilograms(2.712), 80).says, CountSays::as_packed);
}

TEST(CountByWeight, the_bundle_between_79_and_80_is_likelier_79) {
    Bundle bundle;
    bundle.learn(0.1); // s 0.158 g
    const CountCheck check = bundle.check(kilograms(2.686), 80);
    EXPECT_EQ(check.likeliest, 79); // 7.9 g off 79, 26 g off 80
    EXPECT_LE(*check.least, 79);
    EXPECT_GE(*check.most, 79);
    EXPECT_EQ(check.spread->strips, 5);
}

TEST(CountByWeight, strips_far_apart_leave_it_open) {
    Bundle bundle;
    bundle.learn(0.8); // s 1.26 g
    const CountCheck check = bundle.check(kilograms(2.686), 80);
    EXPECT_EQ(check.says, CountSays::cannot_tell);
    EXPECT_LT(*check.sureness, 0.95);
    EXPECT_LE(*check.least, 79);
    EXPECT_GE(*check.most, 80);
}

TEST(CountByWeight, a_filled_bag_is_checked_by_its_own_net_weight) {
    Bundle bundle;
    bundle.learn(0.05);
    BagEntry entry;
    entry.batch = bundle.batch;
    entry.bags = 1;
    entry.bag_lot = bundle.bench.bags;
    must(fill_bags(bundle.bench.book(), entry, on_day(2, 14)));
    entry.net = kilograms(2.712);
    must(fill_bags(bundle.bench.book(), entry, on_day(2, 15)));
    const auto bags = bundle.bench.bags_of(bundle.batch);
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), bags.at(0)), Why::missing, QStringLiteral("net")));
    EXPECT_EQ(must(count_check(bundle.bench.book(), bags.at(1))).says, CountSays::as_packed);
}

TEST(CountByWeight, what_cannot_be_counted_is_refused) {
    Bundle bundle;
    CountWish wish{bundle.batch, bundle.soak, kilograms(2.686), 0, std::nullopt};
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), wish), Why::not_positive, QStringLiteral("packed")));
    wish.packed = 80;
    wish.net = maths::Mass{};
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), wish), Why::not_positive, QStringLiteral("net")));
    wish.net = kilograms(2.686);
    wish.soak = SoakId{999};
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), wish), Why::not_found, QStringLiteral("soak")));
    wish.soak.reset();
    wish.sealed = maths::days_after(first_day, 1); // before the first weighing
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), wish), Why::no_weigh_in));
    EXPECT_TRUE(refused(count_check(bundle.bench.book(), BagId{999}), Why::not_found));
}

} // namespace soakbook::tests
