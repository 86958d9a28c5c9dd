// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"
#include "tests/print/read_back.h"
#include "ui/charts/axis_steps.h"
#include "ui/charts/chart_frame.h"
#include "ui/charts/chart_output.h"
#include "ui/charts/batch_chart.h"
#include "ui/charts/mass_flow_chart.h"
#include "ui/charts/mite_chart.h"
#include "ui/charts/stock_band.h"
#include "ui/charts/stock_by_month_chart.h"
#include "ui/charts/strip_weight_chart.h"
#include "ui/charts/tank_temperature_chart.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSvgRenderer>
#include <QTableWidget>
#include <QTest>

#include <gtest/gtest.h>

using namespace soakbook;
using namespace soakbook::ui;
using namespace soakbook::ui::test;

namespace {

const QLocale british(QLocale::English, QLocale::UnitedKingdom);

maths::Instant at(int hour, int minute) {
    const std::int64_t day = 1'795'000'000'000;
    return {day + (hour * 60 + minute) * 60'000LL, 0};
}

TankTemperature a_warm_tank() {
    TankTemperature tank;
    tank.locale = british;
    tank.ceiling = maths::celsius(60);
    const std::vector<std::tuple<int, int, double, double>> readings = {{16, 0, 18.5, 55}, {18, 0, 34, 55},   {20, 30, 47.5, 55},
                                                                         {22, 0, 52, 61},  {31, 0, 61.8, 61}, {31, 20, 60.6, 57},
                                                                         {32, 0, 56.5, 57}, {33, 0, 55.2, 57}};
    for (const auto& [hour, minute, probe, dial] : readings) {
        tank.readings.push_back({at(hour, minute), QStringLiteral("%1 Nov %2:%3").arg(24 + hour / 24).arg(hour % 24, 2, 10, QLatin1Char('0')).arg(minute, 2, 10, QLatin1Char('0')),
                                 maths::celsius(probe), maths::celsius(dial), hour > 30});
    }
    return tank;
}

StripWeight soaking_strips() {
    StripWeight strips;
    strips.locale = british;
    strips.dry = maths::grams(9);
    strips.wanted_from = maths::grams(25.5);
    strips.wanted_to = maths::grams(27);
    strips.bins = {{QStringLiteral("bin 1"),
                    {{2, QStringLiteral("24 Nov 17:30"), maths::grams(12.8), 10, QStringLiteral("light by 13.2 g")},
                     {6, QStringLiteral("24 Nov 21:30"), maths::grams(18.2), 10, QStringLiteral("light by 7.8 g")},
                     {12, QStringLiteral("25 Nov 03:30"), maths::grams(22.6), 10, QStringLiteral("light by 3.4 g")},
                     {18, QStringLiteral("25 Nov 09:30"), maths::grams(25.1), 12, QStringLiteral("light by 0.9 g")}}},
                   {QStringLiteral("bin 2"),
                    {{3, QStringLiteral("24 Nov 19:00"), maths::grams(13.1), 10, {}},
                     {17, QStringLiteral("25 Nov 09:00"), maths::grams(24.6), 10, QStringLiteral("light by 1.4 g")}}}};
    return strips;
}

/// The same with a fitted curve: w = 9 + 18.5 (1 - exp(-0.11 h)), invented.
StripWeight strips_with_a_curve() {
    StripWeight strips = soaking_strips();
    strips.target = maths::grams(26);
    BinOfSamples& bin = strips.bins.front();
    for (int step = 0; step <= 30; ++step) {
        const double hours = step;
        const double weight = 9 + 18.5 * (1 - std::exp(-0.11 * hours));
        const double wide = 0.05 * hours;
        bin.curve.push_back({hours, maths::grams(weight), maths::grams(weight - wide), maths::grams(weight + wide)});
    }
    bin.reached = 22.7;
    bin.reached_words = QStringLiteral("25 Nov 14:10, give or take 1 h 20 min");
    strips.bins.pop_back();
    return strips;
}

MassFlow a_closed_batch() {
    MassFlow flow;
    flow.locale = british;
    // 62.5 kg, 960 strips that took up 23 g each: common practice, no source. The rest is invented.
    flow.parts = {{QStringLiteral("went in"), maths::kilograms(62.5), FlowKind::went_in, false},
                  {QStringLiteral("taken up by strips"), maths::kilograms(22.08), FlowKind::went_out, false},
                  {QStringLiteral("in pails"), maths::kilograms(38.9), FlowKind::went_out, false},
                  {QStringLiteral("drips"), maths::kilograms(0.12), FlowKind::went_out, false},
                  {QStringLiteral("unexplained"), maths::kilograms(1.4), FlowKind::unexplained, true}};
    return flow;
}

BatchSeries batches_beside_each_other() {
    BatchSeries series;
    series.locale = british;
    series.figure_name = QStringLiteral("acid in a strip");
    int n = 0;
    for (const double grams : {9.2, 9.1, 9.3, 9.0, 9.2, 10.4, 9.1}) {
        ++n;
        series.batches.push_back({QStringLiteral("B00%1").arg(n), QStringLiteral("%1 Mar 2026").arg(n), maths::grams(grams), n == 7, n == 6, false});
    }
    series.mean = maths::grams(9.15);
    series.lower = maths::grams(8.7);
    series.upper = maths::grams(9.7);
    return series;
}

StockByMonth shelf() {
    StockByMonth stock;
    stock.locale = british;
    const std::vector<std::tuple<const char*, const char*, int, MonthState>> months = {
        {"Sep", "September 2026", 60, MonthState::past},   {"Oct", "October 2026", 0, MonthState::past},
        {"Nov", "November 2026", 228, MonthState::near},   {"Dec", "December 2026", 120, MonthState::near},
        {"Jan", "January 2027", 0, MonthState::in_date},   {"Feb", "February 2027", 0, MonthState::in_date},
        {"Mar", "March 2027", 480, MonthState::in_date},   {"Apr", "April 2027", 960, MonthState::in_date}};
    for (const auto& [name, words, strips, state] : months) {
        stock.months.push_back({QLatin1String(name), QLatin1String(words), strips, state, strips / 60});
    }
    return stock;
}

StockBand year() {
    StockBand band;
    band.locale = british;
    const char* const names[] = {"Dec", "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov"};
    for (int i = 0; i < 12; ++i) {
        MonthInBand month;
        month.name = QLatin1String(names[i]);
        month.words = month.name + (i == 0 ? QStringLiteral(" 2026") : QStringLiteral(" 2027"));
        month.in_date = i == 0 ? 1486 : i < 4 ? 1258 : 0;
        month.reach_limit = i == 0 ? 228 : 0;
        if (i == 3) {
            month.rounds = {{QStringLiteral("Spring round"), 1342, 84}};
        }
        if (i == 10) {
            month.rounds = {{QStringLiteral("Autumn round"), 1240, 1240}};
        }
        band.months.push_back(month);
    }
    return band;
}

MiteCounts counted() {
    MiteCounts mites;
    mites.locale = british;
    mites.unit = QStringLiteral("%");
    mites.threshold = 3;
    mites.strips = {{maths::day(2026, 9, 2), maths::day(2026, 10, 20)}};
    // Handbook of the trade, section 10: 9/300 gives Wilson 1.59 to 5.60 %; the others are invented.
    mites.points = {{maths::day(2026, 8, 1), QStringLiteral("1 Aug 2026"), 1.7, 0.7, 3.9, QStringLiteral("5 mites on 300 bees")},
                    {maths::day(2026, 8, 29), QStringLiteral("29 Aug 2026"), 4.3, 2.5, 7.2, QStringLiteral("13 mites on 300 bees")},
                    {maths::day(2026, 9, 20), QStringLiteral("20 Sep 2026"), 3.0, 1.59, 5.6, QStringLiteral("9 mites on 300 bees")},
                    {maths::day(2026, 11, 3), QStringLiteral("3 Nov 2026"), 0.3, 0.1, 1.9, QStringLiteral("1 mite on 300 bees")}};
    return mites;
}

template <class Chart, class Data> ChartFrame* framed(const Data& data) {
    auto* chart = new Chart;
    chart->set_data(data);
    auto* frame = new ChartFrame(chart);
    frame->resize(900, 360);
    return frame;
}

void picture(ChartFrame& frame, const QString& name) {
    frame.show();
    QTest::qWait(30);
    frame.grab().save(picture_path(name + QStringLiteral(".png")));
}

class Themed : public ::testing::TestWithParam<std::pair<Look, int>> {
protected:
    void SetUp() override { apply_theme(*qobject_cast<QApplication*>(qApp), GetParam().first, GetParam().second); }
    void TearDown() override { apply_theme(*qobject_cast<QApplication*>(qApp), Look::light, 100); }
    static QString suffix() {
        return (GetParam().first == Look::dark ? QStringLiteral("-dark-%1") : QStringLiteral("-light-%1")).arg(GetParam().second);
    }
};

} // namespace

TEST_P(Themed, charts_are_drawn_within_their_frame) {
    const std::vector<std::pair<QString, ChartFrame*>> frames = {
        {QStringLiteral("tank"), framed<TankTemperatureChart>(a_warm_tank())},
        {QStringLiteral("strips"), framed<StripWeightChart>(soaking_strips())},
        {QStringLiteral("strips-curve"), framed<StripWeightChart>(strips_with_a_curve())},
        {QStringLiteral("flow"), framed<MassFlowChart>(a_closed_batch())},
        {QStringLiteral("batches"), framed<BatchChart>(batches_beside_each_other())},
        {QStringLiteral("stock"), framed<StockByMonthChart>(shelf())},
        {QStringLiteral("year"), framed<StockBandChart>(year())},
        {QStringLiteral("mites"), framed<MiteChart>(counted())},
    };
    for (const auto& [name, frame] : frames) {
        SCOPED_TRACE(qPrintable(name));
        frame->plot()->go_to(1);
        picture(*frame, QStringLiteral("chart-") + name + suffix());
        // Every label lies inside the picture.
        const QRectF room = frame->plot()->chart()->rect().adjusted(-1, -1, 1, 1);
        int labels = 0;
        for (QGraphicsItem* item : frame->plot()->chart()->childItems()) {
            if (auto* text = dynamic_cast<PlotLabel*>(item)) {
                EXPECT_TRUE(room.contains(text->mapRectToParent(text->boundingRect()))) << qPrintable(text->text());
                ++labels;
            }
        }
        EXPECT_GE(labels, 2);
        delete frame;
    }
}

INSTANTIATE_TEST_SUITE_P(Charts, Themed,
                         ::testing::Values(std::pair(Look::light, 100), std::pair(Look::dark, 100), std::pair(Look::light, 150),
                                           std::pair(Look::dark, 200)));

TEST(Charts, the_hour_a_bin_is_ready_is_said_with_how_sure_that_is) {
    StripWeightChart chart;
    chart.set_data(strips_with_a_curve());
    QStringList said;
    for (int stop = 0; stop < chart.stop_count(); ++stop)
        said << plain(chart.words_at(stop));
    EXPECT_TRUE(said.contains(QStringLiteral("bin 1 reaches the weight wanted 25 Nov 14:10, give or take 1 h 20 min"))) << qPrintable(said.join(QLatin1Char('|')));
}

TEST(Charts, nothing_of_the_old_axes_stays_in_a_chart_that_is_drawn_anew) {
    StripWeight later = strips_with_a_curve();
    StripWeightChart changed;
    changed.resize(700, 340);
    changed.set_data(soaking_strips());
    changed.show();
    QTest::qWait(30);
    changed.set_data(later);
    const QImage at_once = changed.grab().toImage();
    QTest::qWait(30);
    EXPECT_EQ(at_once, changed.grab().toImage());
}

TEST(Charts, each_part_of_a_batch_is_said_with_its_mass_and_its_share) {
    MassFlowChart chart;
    EXPECT_TRUE(chart.is_empty());
    chart.set_data(a_closed_batch());
    // 22.08 / 62.5 = 35.328 %, by hand.
    EXPECT_EQ(plain(chart.words_at(1)), QStringLiteral("taken up by strips: 22.08 kg (35.3 %)"));
    EXPECT_EQ(plain(chart.words_at(4)), QStringLiteral("unexplained: 1.4 kg (2.2 %)"));
    EXPECT_EQ(chart.table().rows.size(), 5U);
}

TEST(Charts, a_batch_outside_the_limits_says_so) {
    BatchChart chart;
    EXPECT_TRUE(chart.is_empty());
    chart.set_data(batches_beside_each_other());
    EXPECT_EQ(plain(chart.words_at(5)), QStringLiteral("B006, 6 Mar 2026, 10.4 g, outside the limits"));
    EXPECT_EQ(plain(chart.words_at(6)), QStringLiteral("B007, 7 Mar 2026, 9.1 g, as usual"));
    EXPECT_EQ(chart.table().rows[5].back(), QStringLiteral("outside the limits"));
}

TEST(Charts, a_reading_over_the_ceiling_is_said_in_words) {
    TankTemperatureChart chart;
    chart.set_data(a_warm_tank());
    EXPECT_EQ(chart.stop_count(), 8);
    EXPECT_TRUE(plain(chart.words_at(4)).contains(QStringLiteral("probe 61.8 °C, dial 61 °C, over the ceiling of 60 °C"))) << qPrintable(chart.words_at(4));
    EXPECT_FALSE(chart.words_at(6).contains(QStringLiteral("over")));
    EXPECT_EQ(chart.words_at(8), QString());
    TankTemperature warm = a_warm_tank();
    warm.unit = exchange::TemperatureUnit::fahrenheit;
    chart.set_data(warm);
    // 61.8 C is 143.24 F (exact by definition: F = 9/5 C + 32).
    EXPECT_TRUE(plain(chart.words_at(4)).contains(QStringLiteral("143.2 °F"))) << qPrintable(chart.words_at(4));
}

TEST(Charts, arrow_keys_walk_along_the_readings_and_the_line_beneath_says_them) {
    ChartFrame* frame = framed<StripWeightChart>(soaking_strips());
    frame->show();
    frame->plot()->setFocus();
    EXPECT_TRUE(frame->reading().isEmpty());
    QTest::keyClick(frame->plot(), Qt::Key_Home);
    EXPECT_EQ(plain(frame->reading()), QStringLiteral("Dry: 9 g a strip"));
    QTest::keyClick(frame->plot(), Qt::Key_Right);
    EXPECT_EQ(plain(frame->reading()), QStringLiteral("bin 1, 24 Nov 17:30, 2.0 h in: 12.8 g a strip, 10 weighed, light by 13.2 g"));
    QTest::keyClick(frame->plot(), Qt::Key_End);
    EXPECT_TRUE(frame->reading().startsWith(QStringLiteral("bin 2, 25 Nov 09:00")));
    QTest::keyClick(frame->plot(), Qt::Key_Right);
    EXPECT_TRUE(frame->reading().startsWith(QStringLiteral("bin 2, 25 Nov 09:00")));
    delete frame;
}

TEST(Charts, the_table_behind_a_chart_is_one_key_away) {
    ChartFrame* frame = framed<TankTemperatureChart>(a_warm_tank());
    frame->show();
    frame->plot()->setFocus();
    EXPECT_FALSE(frame->shows_table());
    QTest::keyClick(frame->plot(), Qt::Key_F2);
    ASSERT_TRUE(frame->shows_table());
    const auto* table = frame->findChild<QTableWidget*>();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->rowCount(), 8);
    EXPECT_EQ(table->item(4, 1)->text(), QStringLiteral("61.8"));
    EXPECT_EQ(table->item(4, 3)->text(), QStringLiteral("over the ceiling, stirred"));
    picture(*frame, QStringLiteral("chart-tank-table"));
    QTest::keyClick(frame->findChild<QTableWidget*>(), Qt::Key_T);
    EXPECT_FALSE(frame->shows_table());
    delete frame;
}

TEST(Charts, an_empty_chart_says_what_will_stand_there) {
    const std::vector<ChartFrame*> frames = {framed<TankTemperatureChart>(TankTemperature{}), framed<StripWeightChart>(StripWeight{}),
                                             framed<StockByMonthChart>(StockByMonth{}), framed<StockBandChart>(StockBand{}), framed<MiteChart>(MiteCounts{})};
    for (ChartFrame* frame : frames) {
        frame->show();
        EXPECT_TRUE(frame->plot()->is_empty());
        EXPECT_TRUE(frame->plot()->empty_sentence().endsWith(QLatin1Char('.')) );
        bool seen = false;
        for (const QLabel* label : frame->findChildren<QLabel*>()) {
            seen |= label->isVisible() && label->text() == frame->plot()->empty_sentence();
        }
        EXPECT_TRUE(seen);
        for (const QPushButton* button : frame->findChildren<QPushButton*>()) {
            EXPECT_FALSE(button->isVisible()) << "a dead button on an empty chart";
        }
        delete frame;
    }
}

TEST(Charts, data_that_come_later_take_the_sentence_away) {
    auto* chart = new TankTemperatureChart;
    ChartFrame frame(chart);
    frame.resize(800, 300);
    frame.show();
    EXPECT_FALSE(chart->isVisible());
    chart->set_data(a_warm_tank());
    frame.refresh();
    EXPECT_TRUE(chart->isVisible());
    TankTemperature one = a_warm_tank();
    one.readings.resize(1);
    one.ceiling.reset();
    chart->set_data(one);
    frame.refresh();
    picture(frame, QStringLiteral("chart-tank-one-reading"));
    EXPECT_EQ(chart->stop_count(), 1);
}

TEST(Charts, a_picture_is_copied_saved_and_printed) {
    ChartFrame* frame = framed<StripWeightChart>(soaking_strips());
    frame->show();
    frame->copy_picture();
    EXPECT_FALSE(QGuiApplication::clipboard()->image().isNull());
    const QString svg = picture_path(QStringLiteral("strips.svg"));
    const QString png = picture_path(QStringLiteral("strips.png"));
    QString suggested;
    let_answer([&](const FileQuestion& question) {
        suggested = question.suggested;
        return svg;
    });
    frame->save_picture();
    EXPECT_EQ(suggested, QStringLiteral("weight-of-one-strip.png"));
    let_answer([&](const FileQuestion&) { return png; });
    frame->save_picture();
    EXPECT_TRUE(frame->reading().contains(png));
    let_answer({});
    EXPECT_TRUE(QSvgRenderer(svg).isValid());
    EXPECT_GE(QImage(png).width(), 1000);
    const QString pdf = picture_path(QStringLiteral("strips.pdf"));
    ASSERT_FALSE(write_pdf(paper_of(*frame->plot(), {297, 210}, QStringLiteral("marsh-end.soakbook")), pdf).has_value());
    const QString text = text_of_pdf(pdf);
    for (const char* words : {"Weight of one strip", "wanted", "bin 2", "dry 9 g", "marsh-end.soakbook", "12 h"}) {
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    }
    // Greys alone: no dot of the print has a colour.
    const QImage page = picture_of_page(pdf, 1, 60);
    for (int y = 0; y < page.height(); ++y) {
        for (int x = 0; x < page.width(); ++x) {
            const QColor dot = page.pixelColor(x, y);
            ASSERT_TRUE(dot.red() == dot.green() && dot.green() == dot.blue());
        }
    }
    delete frame;
}

TEST(Charts, stock_is_told_by_month_with_its_state) {
    StockByMonthChart chart;
    chart.set_data(shelf());
    EXPECT_EQ(chart.words_at(0), QStringLiteral("September 2026: 60 strips, past the limit"));
    EXPECT_EQ(chart.words_at(2), QStringLiteral("November 2026: 228 strips, near the limit"));
    EXPECT_EQ(chart.words_at(1), QStringLiteral("October 2026: no strips"));
    EXPECT_EQ(chart.words_at(7), QStringLiteral("April 2027: 960 strips, in date"));
    StockBandChart band;
    band.set_data(year());
    EXPECT_EQ(band.words_at(3), QStringLiteral("Mar 2027: 1258 strips in date, Spring round needs 1342, 84 short"));
}

TEST(Charts, a_mite_count_is_said_with_its_interval_and_the_threshold) {
    MiteChart chart;
    chart.set_data(counted());
    EXPECT_EQ(plain(chart.words_at(1)), QStringLiteral("29 Aug 2026: 4.3 %, between 2.5 % and 7.2 %, 13 mites on 300 bees, over the threshold of 3.0 %"));
    EXPECT_FALSE(chart.words_at(2).contains(QStringLiteral("over"))); // on it is not over it
    EXPECT_EQ(chart.table().rows.size(), 4U);
}

TEST(Charts, steps_on_axes_are_round_and_span_the_values) {
    for (const auto& [least, most] : {std::pair(9.0, 27.0), std::pair(0.0, 1.0), std::pair(17.5, 62.8), std::pair(-3.0, 4.0), std::pair(5.0, 5.0), std::pair(1e-4, 3e-4)}) {
        const AxisSteps steps = round_steps(least, most, 5);
        EXPECT_LE(steps.from, least + 1e-9);
        EXPECT_GE(steps.to, most - 1e-9);
        EXPECT_GE(steps.ticks(), 2);
        EXPECT_LE(steps.ticks(), 12);
    }
    EXPECT_EQ(hour_steps(1).decimals(), 2); // quarters of an hour
    EXPECT_EQ(round_steps(0, 10).decimals(), 0);
    EXPECT_DOUBLE_EQ(hour_steps(18).step, 3);
    EXPECT_DOUBLE_EQ(hour_steps(36).step, 6);
    EXPECT_DOUBLE_EQ(hour_steps(1).to, 1);
    EXPECT_LE(hour_steps(24 * 90).ticks(), 14);
}
