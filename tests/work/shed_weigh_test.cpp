// SPDX-License-Identifier: GPL-3.0-or-later
// Weigh. Ten strips at 33.9 g each on average, target 34 g, dry 11 g, 40 %: on target, 9.16 g of dihydrate a strip
// (common practice, no source).
#include "bench.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/work/figures.h"

namespace soakbook::tests {

using namespace work;
using maths::grams;

namespace {
WeighEntry ten(SoakId soak, maths::Mass total) {
    WeighEntry entry;
    entry.soak = soak;
    entry.strips = 10;
    entry.total = total;
    return entry;
}
struct Soaking {
    Bench bench;
    BatchId batch = bench.soaked_batch(0, 1);
    SoakId soak = bench.soaks_of(batch).at(0);
};
} // namespace

TEST(Weigh, ten_strips_at_thirty_three_point_nine_grams_are_on_target) {
    Soaking s;
    const WeighFigures figures = must(log_weighing(s.bench.book(), ten(s.soak, grams(339)), on_day(2, 10)));
    EXPECT_EQ(figures.mean, grams(33.9));
    EXPECT_EQ(figures.uptake, grams(22.9));
    EXPECT_EQ(figures.acid_per_strip, grams(9.16));
    EXPECT_EQ(figures.verdict, WeighVerdict::on_target);
    EXPECT_EQ(figures.off_target, -grams(0.1));
    EXPECT_FALSE(figures.low);
    // 9.16 g of dihydrate are 6.542 g of anhydrous acid: molar masses 126.064 and 90.034 (IUPAC abridged weights).
    EXPECT_NEAR(maths::in_grams(figures.acid_per_strip_anhydrous), 9.16 * 90.034 / 126.064, 0.0006);
}

TEST(Weigh, at_the_target_a_strip_holds_nine_point_two_grams) {
    Soaking s;
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), ten(s.soak, grams(340)))).acid_per_strip, grams(9.2));
}

TEST(Weigh, light_means_soak_on_and_heavy_means_drain_on) {
    Soaking s;
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), ten(s.soak, grams(334.9)))).verdict, WeighVerdict::light);
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), ten(s.soak, grams(335)))).verdict, WeighVerdict::on_target);
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), ten(s.soak, grams(345.1)))).verdict, WeighVerdict::heavy);
}

TEST(Weigh, one_by_one_gives_an_interval_and_may_ask_for_more) {
    Soaking s;
    WeighEntry entry;
    entry.soak = s.soak;
    for (const double mass : {33.6, 33.9, 34.1, 33.8, 34.1})
        entry.singles.push_back(grams(mass));
    const WeighFigures figures = must(log_weighing(s.bench.book(), entry, on_day(2, 10)));
    EXPECT_EQ(figures.strips, 5);
    EXPECT_EQ(figures.mean, grams(33.9));
    ASSERT_TRUE(figures.low && figures.high);
    EXPECT_LT(*figures.low, figures.mean);
    EXPECT_GT(*figures.high, figures.mean);
    EXPECT_EQ(figures.verdict, WeighVerdict::on_target);
    entry.singles = {grams(32), grams(36)};
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), entry)).verdict, WeighVerdict::weigh_more);
    const WeighLine line = s.bench.view(s.batch).soaks.at(0).weighings.at(0);
    EXPECT_TRUE(line.one_by_one);
    EXPECT_EQ(line.total, grams(169.5));
    EXPECT_NEAR(line.hours, 24.0, 1e-9);
}

TEST(Weigh, the_sample_size_comes_from_set_up_or_has_to_be_typed) {
    Soaking s;
    WeighEntry entry = ten(s.soak, grams(339));
    entry.strips.reset();
    EXPECT_TRUE(refused(reckon_weighing(s.bench.book(), entry), Why::figure_missing, QStringLiteral("strips")));
    must(set_figures(s.bench.book(), {{Figure::sample_strips, 10, {}}}, on_day(2)));
    EXPECT_EQ(must(reckon_weighing(s.bench.book(), entry)).strips, 10);
}

TEST(Weigh, what_cannot_be_on_the_scale_is_refused) {
    Soaking s;
    const auto reckon = [&](const WeighEntry& entry) { return reckon_weighing(s.bench.book(), entry); };
    EXPECT_TRUE(refused(reckon({}), Why::missing, QStringLiteral("soak")));
    WeighEntry entry = ten(s.soak, grams(110)); // as light as the dry card
    EXPECT_TRUE(refused(reckon(entry), Why::lighter_than_dry, QStringLiteral("total")));
    entry.total.reset();
    EXPECT_TRUE(refused(reckon(entry), Why::missing, QStringLiteral("total")));
    entry.total = maths::Mass{};
    EXPECT_TRUE(refused(reckon(entry), Why::not_positive, QStringLiteral("total")));
    entry.total = grams(20'000);
    entry.strips = 481;
    EXPECT_TRUE(refused(reckon(entry), Why::more_than_soaked, QStringLiteral("strips")));
    entry.strips = 0;
    EXPECT_TRUE(refused(reckon(entry), Why::not_positive, QStringLiteral("strips")));
    entry.singles = {grams(34), maths::Mass{}};
    EXPECT_TRUE(refused(reckon(entry), Why::not_positive, QStringLiteral("singles/1")));
    entry = ten(s.soak, grams(339));
    entry.drip_minutes = -1;
    EXPECT_TRUE(refused(reckon(entry), Why::too_small, QStringLiteral("drip")));
    EXPECT_TRUE(refused(reckon(ten(SoakId{99}, grams(339))), Why::not_found));
}

TEST(Weigh, three_kilograms_in_one_strip_are_asked_about) {
    Soaking s;
    WeighEntry entry = ten(s.soak, maths::kilograms(3));
    entry.strips = 1;
    EXPECT_TRUE(asked(log_weighing(s.bench.book(), entry, on_day(2, 10)), Why::heavier_than_possible));
    EXPECT_TRUE(log_weighing(s.bench.book(), entry, on_day(2, 10), {Why::heavier_than_possible}).has_value());
}

TEST(Weigh, before_the_soak_began_or_in_the_future_is_refused) {
    Soaking s;
    WeighEntry entry = ten(s.soak, grams(339));
    entry.at = moment(1, 9);
    EXPECT_TRUE(refused(log_weighing(s.bench.book(), entry, on_day(2, 10)), Why::before_start, QStringLiteral("at")));
    entry.at = moment(2, 11);
    EXPECT_TRUE(refused(log_weighing(s.bench.book(), entry, on_day(2, 10)), Why::in_the_future, QStringLiteral("at")));
}

TEST(Weigh, a_wrong_weighing_is_put_right_and_says_that_it_said_something_else) {
    Soaking s;
    must(log_weighing(s.bench.book(), ten(s.soak, grams(239)), on_day(2, 10)));
    const WeighInId id = s.bench.view(s.batch).soaks.at(0).weighings.at(0).id;
    EXPECT_FALSE(s.bench.view(s.batch).soaks.at(0).weighings.at(0).corrected);
    EXPECT_TRUE(
        refused(correct_weighing(s.bench.book(), id, ten(s.soak, grams(339)), on_day(2, 11)), Why::reason_missing));
    EXPECT_TRUE(
        refused(correct_weighing(s.bench.book(), id, ten(s.soak, grams(239)), because(QStringLiteral("x"), 2, 11)),
                Why::nothing_changed));
    must(correct_weighing(s.bench.book(), id, ten(s.soak, grams(339)), because(QStringLiteral("misread"), 2, 11)));
    const WeighLine line = s.bench.view(s.batch).soaks.at(0).weighings.at(0);
    EXPECT_EQ(line.figures.mean, grams(33.9));
    EXPECT_EQ(line.at, moment(2, 10));
    EXPECT_TRUE(line.corrected);
}

TEST(Weigh, single_weights_are_put_right_one_by_one_fewer_or_more) {
    Soaking s;
    WeighEntry entry;
    entry.soak = s.soak;
    entry.singles = {grams(33), grams(34), grams(35)};
    must(log_weighing(s.bench.book(), entry, on_day(2, 10)));
    const WeighInId id = s.bench.view(s.batch).soaks.at(0).weighings.at(0).id;
    entry.singles = {grams(33), grams(34.5)};
    must(correct_weighing(s.bench.book(), id, entry, because(QStringLiteral("one was wet twice"), 2, 11)));
    EXPECT_EQ(s.bench.view(s.batch).soaks.at(0).weighings.at(0).total, grams(67.5));
    entry.singles = {grams(33), grams(34.5), grams(34), grams(34)};
    must(correct_weighing(s.bench.book(), id, entry, because(QStringLiteral("two more"), 2, 11)));
    EXPECT_EQ(s.bench.view(s.batch).soaks.at(0).weighings.at(0).strips, 4);
}

TEST(Weigh, made_void_it_is_seen_no_more) {
    Soaking s;
    must(log_weighing(s.bench.book(), ten(s.soak, grams(339)), on_day(2, 10)));
    const WeighInId id = s.bench.view(s.batch).soaks.at(0).weighings.at(0).id;
    EXPECT_TRUE(refused(void_weighing(s.bench.book(), id, on_day(2, 11)), Why::reason_missing));
    must(void_weighing(s.bench.book(), id, because(QStringLiteral("other bin"), 2, 11)));
    EXPECT_TRUE(s.bench.view(s.batch).soaks.at(0).weighings.empty());
    EXPECT_TRUE(refused(void_weighing(s.bench.book(), id, because(QStringLiteral("x"), 2, 11)), Why::nothing_changed));
    EXPECT_TRUE(
        refused(correct_weighing(s.bench.book(), id, ten(s.soak, grams(339)), because(QStringLiteral("x"), 2, 11)),
                Why::not_found));
}

TEST(Weigh, strips_of_a_bag_after_its_rest) {
    Bench bench;
    const BatchId batch = bench.bagged_batch();
    const BagId bag = bench.bags_of(batch).at(0);
    WeighEntry entry;
    entry.bag = bag;
    entry.strips = 10;
    entry.total = grams(342);
    entry.at = moment(1, 12);
    EXPECT_TRUE(refused(log_weighing(bench.book(), entry, on_day(9)), Why::before_start, QStringLiteral("at")));
    entry.at.reset();
    EXPECT_EQ(must(log_weighing(bench.book(), entry, on_day(9))).mean, grams(34.2));
    // What it took up since lay in its bag already: the bag's own figure is not counted twice.
    EXPECT_EQ(book::fetch(bench.book(), bag)->strip, grams(33.9));
    entry.strips = 81;
    EXPECT_TRUE(refused(reckon_weighing(bench.book(), entry), Why::more_than_soaked, QStringLiteral("strips")));
    must(void_bag(bench.book(), bag, because(QStringLiteral("burst"), 9)));
    EXPECT_TRUE(refused(reckon_weighing(bench.book(), entry), Why::bag_gone));
    must(reserve_labels(bench.book(), batch, 1, on_day(9)));
    entry.bag = bench.bags_of(batch).back();
    EXPECT_TRUE(refused(reckon_weighing(bench.book(), entry), Why::not_filled));
}

} // namespace soakbook::tests
