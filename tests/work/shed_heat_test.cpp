// SPDX-License-Identifier: GPL-3.0-or-later
// Heat and clear. A dial at 55 gave 52 C and at 61 gave 55.5 C; a reading over 60 C is a warning at once (common
// practice, no source).
#include "bench.h"
#include "core/work/dial_advice.h"

namespace soakbook::tests {

using namespace work;
using maths::celsius;

namespace {
ReadingEntry reading(BatchId batch, std::optional<maths::Temperature> probe,
                     std::optional<maths::Temperature> dial = std::nullopt) {
    ReadingEntry entry;
    entry.batch = batch;
    entry.probe = probe;
    entry.dial = dial;
    return entry;
}
StirEntry clear_stir(BatchId batch) {
    StirEntry entry;
    entry.batch = batch;
    entry.clear = true;
    entry.outlet_poured_back = true;
    return entry;
}
} // namespace

TEST(Heat, the_tank_shows_how_far_its_dial_is_off) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    EXPECT_EQ(must(log_reading(bench.book(), reading(batch, celsius(52), celsius(55)), on_day(0, 20))).dial_above_probe,
              celsius(3));
    EXPECT_EQ(
        must(log_reading(bench.book(), reading(batch, celsius(55.5), celsius(61)), on_day(0, 21))).dial_above_probe,
        celsius(5.5));
    const DialAdvice advice = dial_advice(bench.book(), bench.tank);
    EXPECT_EQ(advice.offset_low, celsius(3));
    EXPECT_EQ(advice.offset_high, celsius(5.5));
    EXPECT_EQ(advice.pairs, 2);
    EXPECT_EQ(bench.view(batch).highest, celsius(55.5));
}

TEST(Heat, a_reading_over_the_ceiling_is_kept_and_said_at_once) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    const ReadingResult at_ceiling = must(log_reading(bench.book(), reading(batch, celsius(60)), on_day(0, 20)));
    EXPECT_FALSE(at_ceiling.over_ceiling);
    EXPECT_EQ(at_ceiling.ceiling, celsius(60));
    EXPECT_TRUE(must(log_reading(bench.book(), reading(batch, celsius(60.1)), on_day(0, 21))).over_ceiling);
    const BatchView view = bench.view(batch);
    EXPECT_FALSE(view.readings[0].over_ceiling);
    EXPECT_TRUE(view.readings[1].over_ceiling);
}

TEST(Heat, the_tank_may_be_read_the_evening_before_and_no_earlier) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    ReadingEntry entry = reading(planned.batch, celsius(30));
    entry.at = moment(-1, 21);
    EXPECT_TRUE(log_reading(bench.book(), entry, on_day(0)).has_value());
    entry.at = moment(-2, 21);
    EXPECT_TRUE(refused(log_reading(bench.book(), entry, on_day(0)), Why::before_start, QStringLiteral("at")));
    entry.at = moment(0, 13);
    EXPECT_TRUE(refused(log_reading(bench.book(), entry, on_day(0)), Why::in_the_future, QStringLiteral("at")));
}

TEST(Heat, an_entry_made_late_keeps_its_true_time_and_says_so) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    ReadingEntry entry = reading(batch, celsius(50));
    entry.at = moment(0, 20);
    must(log_reading(bench.book(), entry, on_day(1, 9)));
    const ReadingLine line = bench.view(batch).readings.at(0);
    EXPECT_EQ(line.at, moment(0, 20));
    EXPECT_TRUE(line.written_late);
}

TEST(Heat, odd_temperatures_are_asked_about_and_impossible_ones_refused) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    EXPECT_TRUE(asked(log_reading(bench.book(), reading(batch, celsius(130)), on_day(0, 20)), Why::odd_temperature));
    EXPECT_TRUE(asked(log_reading(bench.book(), reading(batch, celsius(-21)), on_day(0, 20)), Why::odd_temperature));
    EXPECT_TRUE(
        log_reading(bench.book(), reading(batch, celsius(130)), on_day(0, 20), {Why::odd_temperature}).has_value());
    EXPECT_TRUE(refused(log_reading(bench.book(), reading(batch, celsius(5200)), on_day(0, 20)), Why::too_large,
                        QStringLiteral("probe")));
    EXPECT_TRUE(refused(log_reading(bench.book(), reading(batch, celsius(-300)), on_day(0, 20)), Why::too_small,
                        QStringLiteral("probe")));
}

TEST(Heat, an_empty_reading_is_refused_but_jacket_water_alone_is_worth_writing) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    EXPECT_TRUE(refused(log_reading(bench.book(), reading(batch, std::nullopt), on_day(0, 20)), Why::missing,
                        QStringLiteral("probe")));
    ReadingEntry jacket = reading(batch, std::nullopt);
    jacket.jacket_seen = true;
    EXPECT_TRUE(log_reading(bench.book(), jacket, on_day(0, 20)).has_value());
    ReadingEntry wordy = reading(batch, celsius(50));
    wordy.note = QString(4001, QLatin1Char('x'));
    EXPECT_TRUE(refused(log_reading(bench.book(), wordy, on_day(0, 20)), Why::too_long, QStringLiteral("note")));
}

TEST(Heat, clear_without_one_reading_of_the_probe_is_refused) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    EXPECT_TRUE(
        refused(log_stir(bench.book(), clear_stir(batch), on_day(1, 9)), Why::no_reading, QStringLiteral("clear")));
    must(log_reading(bench.book(), reading(batch, celsius(52)), on_day(1, 8)));
    EXPECT_TRUE(log_stir(bench.book(), clear_stir(batch), on_day(1, 9)).has_value());
}

TEST(Heat, clear_wants_to_know_about_the_outlet) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    must(log_reading(bench.book(), reading(batch, celsius(52)), on_day(1, 8)));
    StirEntry stir = clear_stir(batch);
    stir.outlet_poured_back.reset();
    EXPECT_TRUE(refused(log_stir(bench.book(), stir, on_day(1, 9)), Why::missing, QStringLiteral("outlet")));
    stir.clear.reset();
    EXPECT_TRUE(refused(log_stir(bench.book(), stir, on_day(1, 9)), Why::missing, QStringLiteral("clear")));
    stir.clear = false;
    stir.minutes = 0;
    EXPECT_TRUE(refused(log_stir(bench.book(), stir, on_day(1, 9)), Why::not_positive, QStringLiteral("minutes")));
    stir.minutes = 5;
    EXPECT_TRUE(log_stir(bench.book(), stir, on_day(1, 9)).has_value());
    EXPECT_EQ(bench.view(batch).line.state, BatchState::warming);
}

TEST(Heat, a_stir_belongs_to_a_mix_and_comes_after_it) {
    Bench bench;
    const PlannedBatch planned = must(plan_mix(bench.book(), bench.plan(), on_day(0)));
    EXPECT_TRUE(refused(log_stir(bench.book(), clear_stir(planned.batch), on_day(0)), Why::batch_not_mixed));
    must(void_batch(bench.book(), planned.batch, because(QStringLiteral("x"), 0)));
    const BatchId batch = bench.mixed_batch();
    StirEntry stir = clear_stir(batch);
    stir.at = moment(0, 17, 30);
    EXPECT_TRUE(refused(log_stir(bench.book(), stir, on_day(1, 9)), Why::before_start, QStringLiteral("at")));
}

TEST(Heat, crystals_seen_later_take_the_clear_back) {
    Bench bench;
    const BatchId batch = bench.clear_batch();
    EXPECT_EQ(bench.view(batch).clear_at, moment(1, 9));
    StirEntry stir;
    stir.batch = batch;
    stir.clear = false;
    must(log_stir(bench.book(), stir, on_day(1, 10)));
    EXPECT_EQ(bench.view(batch).line.state, BatchState::warming);
    EXPECT_FALSE(bench.view(batch).clear_at);
}

TEST(Heat, a_reading_is_put_right_with_its_reason) {
    Bench bench;
    const BatchId batch = bench.mixed_batch();
    const ReadingId id = must(log_reading(bench.book(), reading(batch, celsius(25)), on_day(0, 20))).id;
    EXPECT_TRUE(refused(correct_reading(bench.book(), id, reading(batch, celsius(52)), on_day(0, 21)),
                        Why::reason_missing, QStringLiteral("reason")));
    EXPECT_TRUE(
        refused(correct_reading(bench.book(), id, reading(batch, celsius(25)), because(QStringLiteral("x"), 0, 21)),
                Why::nothing_changed));
    must(
        correct_reading(bench.book(), id, reading(batch, celsius(52)), because(QStringLiteral("turned round"), 0, 21)));
    const ReadingLine line = bench.view(batch).readings.at(0);
    EXPECT_EQ(line.probe, celsius(52));
    EXPECT_EQ(line.at, moment(0, 20)); // its time stays
}

TEST(Heat, a_reading_or_stir_made_void_counts_no_more) {
    Bench bench;
    const BatchId batch = bench.clear_batch();
    const BatchView before = bench.view(batch);
    EXPECT_TRUE(refused(void_stir(bench.book(), before.stirs[0].id, on_day(1, 10)), Why::reason_missing));
    must(void_stir(bench.book(), before.stirs[0].id, because(QStringLiteral("other tank"), 1, 10)));
    must(void_reading(bench.book(), before.readings[0].id, because(QStringLiteral("other tank"), 1, 10)));
    EXPECT_TRUE(refused(void_reading(bench.book(), before.readings[0].id, because(QStringLiteral("x"), 1, 10)),
                        Why::nothing_changed));
    const BatchView view = bench.view(batch);
    EXPECT_TRUE(view.readings.empty());
    EXPECT_TRUE(view.stirs.empty());
    EXPECT_EQ(view.line.state, BatchState::warming);
    EXPECT_EQ(dial_advice(bench.book(), bench.tank).pairs, 0);
}

} // namespace soakbook::tests
