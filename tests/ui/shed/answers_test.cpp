// SPDX-License-Identifier: GPL-3.0-or-later
// The pages answer: each sum is seen where its question is asked, worked by keys, with the trade's check values (common
// practice, no source, unless another is named).
#include "tests/ui/shed/stage.h"

#include "core/work/figures.h"
#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "tests/work/priced.h"
#include "ui/charts/chart_frame.h"
#include "ui/charts/plot.h"
#include "ui/parts/how_button.h"
#include "ui/shed/pail_checklist.h"

#include <QLabel>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

/// Numbers and units are joined by narrow spaces; these tests look at the words.
std::string plain(QString text) {
    text.replace(QChar(0x202f), QLatin1Char(' ')).replace(QChar(0x00a0), QLatin1Char(' '));
    return text.toStdString();
}

class ShedAnswers : public testing::Test {
protected:
    void show(const char* task, work::BatchId batch) {
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QLatin1String(task), {batch.value}, {}});
        stage.settle();
    }
    void new_batch(const QString& kilograms) {
        stage.place().refresh();
        stage.place().open({ui::PlaceName::shed, QStringLiteral("new_batch"), {}, {}});
        stage.settle();
        stage.go_to(QStringLiteral("mix_amount"));
        stage.type(kilograms);
    }
    std::string said() { return plain(stage.words()); }
    std::string text_of(const char* name) {
        const auto* label = stage.find<QLabel>(QLatin1String(name));
        return label != nullptr ? plain(label->text()) : std::string();
    }
    /// Pails of those kilograms out of a batch that was bagged on day n + 2.
    void pour(int n, const std::vector<double>& pails) {
        work::PourEntry entry;
        entry.batch = bench.bagged_batch(n);
        for (const double kilograms : pails)
            entry.pails.push_back(maths::kilograms(kilograms));
        entry.warm_and_clear = true;
        entry.scraped = true;
        must(work::pour_leftovers(bench.book(), entry, on_day(n + 2, 16)));
    }
    void read_tank(work::BatchId batch, double dial, double probe, int hour) {
        work::ReadingEntry reading;
        reading.batch = batch;
        reading.dial = maths::celsius(dial);
        reading.probe = maths::celsius(probe);
        must(work::log_reading(bench.book(), reading, on_day(1, hour)));
    }
    void weigh(work::SoakId soak, double grams, int day, int hour) {
        work::WeighEntry entry;
        entry.soak = soak;
        entry.strips = 10;
        entry.total = maths::grams(grams);
        must(work::log_weighing(bench.book(), entry, on_day(day, hour)));
    }
    /// Strips out of that bin one by one; the standard deviation is `apart` x 0.19 g.
    void weigh_singly(work::SoakId soak, double mean, double apart, int day, int hour) {
        work::WeighEntry entry;
        entry.soak = soak;
        for (const double off : {-0.3, -0.1, 0.1, 0.3, -0.2, 0.2, -0.1, 0.1, 0.0, 0.0})
            entry.singles.push_back(maths::grams(mean + apart * off));
        must(work::log_weighing(bench.book(), entry, on_day(day, hour)));
    }
    void say(work::Figure figure, qint64 value) {
        must(work::set_figures(bench.book(), {{figure, value, QStringLiteral("ours")}}, on_day(-9)));
    }
    /// Opens the "How?" that is nearest to the keyboard, and gives back what it says.
    std::string how() {
        stage.press(Qt::Key_F3);
        QStringList told;
        for (const ui::HowButton* button : stage.window().findChildren<ui::HowButton*>()) {
            if (button->isVisible() && button->is_open())
                told << button->plain_text();
        }
        stage.press(Qt::Key_F3);
        return plain(told.join(QLatin1Char('\n')));
    }
    ui::ChartFrame* frame(const QString& of) {
        for (ui::ChartFrame* found : stage.window().findChildren<ui::ChartFrame*>()) {
            if (found->isVisible() && found->plot()->name().contains(of))
                return found;
        }
        ADD_FAILURE() << "no chart " << of.toStdString();
        return nullptr;
    }

    Bench bench;
    Stage stage{bench};
};

} // namespace

TEST_F(ShedAnswers, suggested_pails_are_ticked_with_what_they_save) {
    give_costs(bench);
    pour(0, {20, 20.4, 0.02});
    stage.set_clock(9, 9);
    new_batch(QStringLiteral("30"));
    stage.go_to(QStringLiteral("suggest_pails"));
    stage.press(Qt::Key_Space);
    // 20.4 and 0.02 kg at 40 % are 20.42 kg: 8.168 kg of acid at 3 and 12.252 kg of glycerine at 2 a kilogram.
    auto* pails = stage.find<ui::PailChecklist>(QStringLiteral("mix_pails"));
    ASSERT_NE(pails, nullptr);
    EXPECT_EQ(pails->chosen().size(), 2U);
    EXPECT_THAT(text_of("pail_advice"), AllOf(HasSubstr("20.42 kg of old liquid"), HasSubstr("8.17 kg of acid"),
                                              HasSubstr("12.25 kg of glycerine"), HasSubstr("49.01 in money"),
                                              HasSubstr("No other choice")));
    EXPECT_THAT(said(), HasSubstr("no room beside the others"));
    EXPECT_THAT(how(), AllOf(HasSubstr("Land"), HasSubstr("20.42 kg")));
    // Another amount makes it an old advice.
    stage.go_to(QStringLiteral("mix_amount"));
    stage.type(QStringLiteral("50"));
    EXPECT_THAT(said(), AllOf(Not(HasSubstr("of old liquid")), Not(HasSubstr("no room beside"))));
}

TEST_F(ShedAnswers, a_pail_that_is_more_than_the_mix_stays_out_and_says_so) {
    pour(0, {40});
    stage.set_clock(9, 9);
    new_batch(QStringLiteral("30"));
    stage.go_to(QStringLiteral("suggest_pails"));
    stage.press(Qt::Key_Space);
    EXPECT_THAT(said(), AllOf(HasSubstr("None of these pails"), HasSubstr("more than the whole mix")));
    EXPECT_THAT(said(), Not(HasSubstr("That saves")));
}

TEST_F(ShedAnswers, pails_are_not_suggested_for_acid_at_hand_and_an_amount_is_asked_for_first) {
    pour(0, {20});
    stage.set_clock(9, 9);
    new_batch(QString());
    stage.go_to(QStringLiteral("suggest_pails"));
    stage.press(Qt::Key_Space);
    EXPECT_EQ(stage.here(), QStringLiteral("mix_amount"));
}

TEST_F(ShedAnswers, a_cans_mark_and_the_strips_of_two_bins_stand_beside_the_amounts) {
    say(work::Figure::heat_low, 5000);
    say(work::Figure::heat_high, 5600);
    new_batch(QStringLiteral("62.5"));
    // 12.5 kg stand at 9.9 l at 20 C (Cheng 2008: 1263.92 kg/m3); 960 strips leave at most 40.42 kg, 1,440 29.38 kg.
    EXPECT_THAT(said(), AllOf(HasSubstr("12.5 kg of glycerine stand at"), HasSubstr("9.89 l at 20")));
    EXPECT_THAT(said(), AllOf(HasSubstr("960"), HasSubstr("40.42 kg"), HasSubstr("1440"), HasSubstr("29.38 kg")));
    EXPECT_THAT(said(), AllOf(HasSubstr("whole liquid at 53"), HasSubstr("an estimate")));
    EXPECT_THAT(how(), AllOf(HasSubstr("Cheng 2008"), HasSubstr("1653")));
}

TEST_F(ShedAnswers, two_readings_of_the_dial_give_a_range_and_the_dial_to_set) {
    // Dial and probe 55/52 and 61/55.5: the dial reads 3 to 5.5 above the tank; a range, not a line.
    say(work::Figure::heat_low, 5000);
    say(work::Figure::heat_high, 5600);
    const work::BatchId batch = bench.mixed_batch();
    stage.set_clock(1, 8);
    show("reading", batch);
    EXPECT_THAT(text_of("dial_advice"), HasSubstr("read dial and probe together"));
    read_tank(batch, 55, 52, 6);
    read_tank(batch, 61, 55.5, 7);
    show("reading", batch);
    EXPECT_THAT(text_of("dial_advice"), AllOf(HasSubstr("Set the dial to 56 °C"), HasSubstr("for 53 °C"),
                                              HasSubstr("50.5 °C to 53 °C"), HasSubstr("not a line"),
                                              HasSubstr("3.0 °C to 5.5 °C"), HasSubstr("2 readings")));
    stage.go_to(QStringLiteral("reading_probe"));
    EXPECT_THAT(how(), HasSubstr("60"));
}

TEST_F(ShedAnswers, a_cold_room_is_named_beside_the_soak) {
    say(work::Figure::room_low, 2000);
    work::SoakEntry soak;
    soak.batch = bench.clear_batch();
    soak.bins.push_back({bench.bin, 480, std::nullopt});
    soak.lot = bench.strips;
    soak.room = maths::celsius(15);
    must(work::start_soak(bench.book(), soak, on_day(1, 10)));
    stage.set_clock(1, 13);
    show("weigh", soak.batch);
    EXPECT_THAT(text_of("target_hours"), AllOf(HasSubstr("The room was 15 °C, colder than your 20 °C"), HasSubstr("times the hours")));
}

TEST_F(ShedAnswers, three_weighings_tell_the_hour_the_target_is_reached) {
    const work::BatchId batch = bench.soaked_batch(0, 1);
    const work::SoakId soak = bench.soaks_of(batch)[0];
    stage.set_clock(1, 13);
    // On 11 + 26 (1 - exp(-0.15 t)) g but for a few milligrams: 34 g after ln(26 / 3) / 0.15 = 14.4 h.
    weigh(soak, 177.4, 1, 12);
    weigh(soak, 247.2, 1, 15);
    show("weigh", batch);
    EXPECT_THAT(text_of("target_hours"), HasSubstr("three weighings"));
    weigh(soak, 291.7, 1, 18);
    stage.set_clock(1, 18, 30);
    show("weigh", batch);
    EXPECT_THAT(text_of("target_hours"), AllOf(HasSubstr("bin 1 reaches 34 g at about 00:20 tomorrow"), HasSubstr("between 00:20 and 00:30")));
    const ui::ChartFrame* chart = frame(QStringLiteral("Weight of one strip"));
    ASSERT_NE(chart, nullptr);
    EXPECT_THAT(how(), HasSubstr("Bates"));
}

TEST_F(ShedAnswers, a_sample_says_how_many_more_to_weigh) {
    const work::BatchId batch = bench.soaked_batch(0, 1);
    stage.set_clock(2, 10);
    show("weigh", batch);
    stage.go_to(QStringLiteral("weigh_strips"));
    stage.type(QStringLiteral("10"));
    stage.press(Qt::Key_Return);
    stage.type(QStringLiteral("339"));
    EXPECT_THAT(said(), HasSubstr("weighed one by one"));
    stage.go_to(QStringLiteral("weigh_one_by_one"));
    stage.press(Qt::Key_Space);
    EXPECT_EQ(stage.here(), QStringLiteral("weigh_single_1"));
    for (const char* grams : {"34.33", "34.46", "34.29", "34.52", "34.40"}) {
        stage.type(QLatin1String(grams));
        stage.press(Qt::Key_Return);
    }
    // The mean of 34.4 g lies next to the 34.5 g that are still good.
    EXPECT_THAT(said(), AllOf(HasSubstr("Cannot tell yet"), HasSubstr("1 more would settle it")));
}

TEST_F(ShedAnswers, a_bundle_is_counted_by_its_weight_while_it_is_typed) {
    const work::BatchId batch = bench.soaked_batch(0, 1);
    const work::SoakId soak = bench.soaks_of(batch)[0];
    weigh(soak, 339, 2, 8);
    must(work::end_soak(bench.book(), soak, std::nullopt, on_day(2, 10)));
    stage.set_clock(2, 11);
    show("bag", batch);
    // Without the spread of single strips 2.686 kg are no count.
    stage.go_to(QStringLiteral("bag_net"));
    stage.type(QStringLiteral("2686 g"));
    EXPECT_EQ(stage.here(), QStringLiteral("bag_net"));
    EXPECT_EQ(stage.text_of(QStringLiteral("bag_net")), QStringLiteral("2686 g"));
    EXPECT_THAT(said(), HasSubstr("By weight the count cannot be told"));
}

TEST_F(ShedAnswers, a_bundle_between_two_counts_cannot_be_told_where_strips_lie_far_apart) {
    // 2.686 kg at 33.9 g lie between 79 (2.678) and 80 (2.712).
    const work::BatchId batch = bench.soaked_batch(0, 1);
    const work::SoakId soak = bench.soaks_of(batch)[0];
    weigh_singly(soak, 33.9, 8, 2, 8);
    must(work::end_soak(bench.book(), soak, std::nullopt, on_day(2, 10)));
    stage.set_clock(2, 11);
    show("bag", batch);
    stage.go_to(QStringLiteral("bag_net"));
    stage.type(QStringLiteral("2686 g"));
    EXPECT_THAT(said(), HasSubstr("by weight: cannot tell"));
    EXPECT_THAT(how(), HasSubstr("Bayes"));
}

TEST_F(ShedAnswers, a_bundle_of_even_strips_is_one_short_or_as_packed) {
    const work::BatchId batch = bench.soaked_batch(0, 1);
    const work::SoakId soak = bench.soaks_of(batch)[0];
    weigh_singly(soak, 33.9, 1, 2, 8);
    must(work::end_soak(bench.book(), soak, std::nullopt, on_day(2, 10)));
    stage.set_clock(2, 11);
    show("bag", batch);
    stage.go_to(QStringLiteral("bag_net"));
    stage.type(QStringLiteral("2678 g"));
    EXPECT_THAT(said(), HasSubstr("79 by weight, not 80"));
    stage.go_to(QStringLiteral("bag_net"));
    stage.type(QStringLiteral("2712 g"));
    EXPECT_THAT(said(), HasSubstr("80 as packed, over 99 % sure"));
}

TEST_F(ShedAnswers, leftovers_show_where_every_kilogram_went_and_what_a_strip_costs) {
    give_costs(bench);
    const work::BatchId batch = bench.bagged_batch();
    work::PourEntry poured;
    poured.batch = batch;
    poured.pails = {maths::kilograms(20), maths::kilograms(20)};
    poured.warm_and_clear = true;
    poured.scraped = true;
    must(work::pour_leftovers(bench.book(), poured, on_day(2, 16)));
    must(work::log_loss(bench.book(), batch, work::NamedLoss::drips, maths::kilograms(0.3), {}, on_day(2, 17)));
    must(work::close_batch(bench.book(), batch, on_day(2, 18)));
    stage.set_clock(2, 19);
    show("leftovers", batch);
    ui::ChartFrame* flow = frame(QStringLiteral("Where every kilogram went"));
    ASSERT_NE(flow, nullptr);
    // 62.5 = 960 x 22.9 g in strips, 40 in pails, 0.3 of drips, and 0.216 that nothing accounts for.
    const ui::ChartTable table = flow->plot()->table();
    QStringList parts;
    for (const QStringList& row : table.rows)
        parts << row.mid(0, 2).join(QLatin1Char(' '));
    EXPECT_THAT(parts.join(QLatin1Char('\n')).toStdString(),
                AllOf(HasSubstr("Went in 62.5"), HasSubstr("Taken up by bagged strips 21.98"), HasSubstr("In pails 40"),
                      HasSubstr("Lost: drips 0.3"), HasSubstr("Unexplained 0.22")));
    EXPECT_THAT(text_of("strip_cost"), AllOf(HasSubstr("A strip costs"), HasSubstr("960 strips"), HasSubstr("dry strips 48"),
                                             HasSubstr("bags 2.4")));
    stage.go_to(QStringLiteral("strip_cost_how"));
    stage.press(Qt::Key_Space);
    EXPECT_THAT(said(), HasSubstr("dry strips + bags"));
}

TEST_F(ShedAnswers, a_cost_that_is_missing_is_named_and_no_cost_is_guessed) {
    give_costs(bench, bench.glycerine);
    const work::BatchId batch = bench.bagged_batch();
    stage.set_clock(2, 19);
    show("leftovers", batch);
    EXPECT_THAT(text_of("strip_cost"), AllOf(HasSubstr("not known"), HasSubstr("the cost of glycerine G1"), Not(HasSubstr("A strip costs"))));
}

TEST_F(ShedAnswers, a_batch_stands_beside_the_others_from_the_second_on) {
    const work::BatchId first = bench.bagged_batch();
    stage.set_clock(2, 19);
    show("leftovers", first);
    EXPECT_EQ(stage.words().indexOf(QStringLiteral("Beside the other batches")), -1);
    work::PourEntry poured;
    poured.batch = first;
    poured.pails = {maths::kilograms(20), maths::kilograms(20)};
    poured.warm_and_clear = true;
    poured.scraped = true;
    must(work::pour_leftovers(bench.book(), poured, on_day(2, 20)));
    const work::BatchId second = bench.bagged_batch(4);
    stage.set_clock(6, 19);
    show("leftovers", second);
    const ui::ChartFrame* chart = frame(QStringLiteral("acid in a strip"));
    ASSERT_NE(chart, nullptr);
    EXPECT_EQ(chart->plot()->table().rows.size(), 2);
    stage.go_to(QStringLiteral("compare_taken_up"));
    stage.press(Qt::Key_Space);
    EXPECT_NE(frame(QStringLiteral("taken up by a strip")), nullptr);
}

} // namespace soakbook::tests
