// SPDX-License-Identifier: GPL-3.0-or-later
// Every computed figure can say how it was worked out: formula, this case's numbers, source.
#include "core/work/facts.h"
#include "core/work/how_keeping.h"
#include "core/work/how_liquid.h"
#include "core/work/how_strips.h"
#include "core/work/how_yards.h"
#include "tests/ui/parts/fixed_clock.h"
#include "tests/ui/parts/names_in_enum.h"
#include "ui/parts/how_words.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include <set>

namespace soakbook::ui {
namespace {

using maths::celsius;
using maths::grams;
using maths::kilograms;
using maths::percent;
using work::How;
using work::HowKind;

class HowWords : public testing::Test {
protected:
    HowWords() : habits(fixed_clock) { say(exchange::MassUnit::kilogram, exchange::MassUnit::gram); }
    ~HowWords() override { habits.set_preferences({}); }

    void say(exchange::MassUnit large, exchange::MassUnit small, const QString& language = QStringLiteral("en"),
             exchange::TemperatureUnit degrees = exchange::TemperatureUnit::celsius) {
        Preferences wish;
        wish.large_mass = large;
        wish.small_mass = small;
        wish.language = language;
        wish.temperature = degrees;
        habits.set_preferences(wish);
    }
    /// With plain spaces, as the sums are read here.
    QString numbers(const How& how) const {
        return how_words(how, habits).numbers.replace(QChar(0x202f), QLatin1Char(' '));
    }
    static void holds(const QString& text, const char* part) {
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part << " is not in: " << text.toStdString();
    }

    Habits habits;
};

TEST_F(HowWords, every_kind_has_a_name_a_formula_numbers_and_a_source) {
    const QStringList kinds = names_in_enum(QStringLiteral("core/work/how.h"), QStringLiteral("HowKind"));
    ASSERT_GE(kinds.size(), 30);
    std::set<QString> formulas;
    for (int i = 0; i < kinds.size(); ++i) {
        How how{static_cast<HowKind>(i), {}};
        for (int n = 0; n < 9; ++n) {
            how.facts << work::fact(percent(10 + n));
        }
        const HowText text = how_words(how, habits);
        const std::string kind = kinds[i].toStdString();
        EXPECT_FALSE(text.name.isEmpty()) << kind;
        EXPECT_FALSE(text.formula.isEmpty()) << kind;
        EXPECT_FALSE(text.source.isEmpty()) << kind;
        EXPECT_TRUE(text.numbers.contains(QStringLiteral("10"))) << kind << ": " << text.numbers.toStdString();
        EXPECT_TRUE(formulas.insert(text.formula).second) << kind << " has the formula of another";
        for (const QString& part : {text.name, text.formula, text.numbers, text.source}) {
            EXPECT_FALSE(part.contains(QRegularExpression(QStringLiteral("%[0-9]")))) << kind << ": " << part.toStdString();
            EXPECT_FALSE(part.contains(QLatin1Char('_'))) << part.toStdString();
        }
        // Nothing known is no sum with gaps.
        const QString unknown = how_words({how.kind, {}}, habits).numbers;
        EXPECT_FALSE(unknown.contains(QRegularExpression(QStringLiteral("[=%×÷]|[a-z]:[0-9]"))))
            << kind << ": " << unknown.toStdString();
    }
    EXPECT_TRUE(how_words({static_cast<HowKind>(kinds.size()), {}}, habits).formula.isEmpty());
}

TEST_F(HowWords, a_mix_of_62_and_a_half_kilograms_takes_25_of_acid) {
    // 62.5 kg at 40 %: 25 kg and 37.5 kg. Common practice, no source.
    const QStringList facts{work::fact(kilograms(62.5)), work::fact(percent(40)),   work::fact(percent(100)),
                            work::fact(kilograms(25)),   work::fact(kilograms(37.5)), work::fact(maths::Mass{}),
                            work::fact(maths::Fraction{285'677})};
    const QString said = numbers({HowKind::mix_amounts, facts});
    EXPECT_EQ(said.toStdString(), "Acid: 62.5 kg × 40 % ÷ 100 % = 25 kg\n"
                                  "Glycerine: 62.5 kg − 25 kg = 37.5 kg\n"
                                  "Strength: 40 % as dihydrate is 28.6 % as anhydrous acid");
    QStringList weaker = facts;
    weaker[2] = work::fact(percent(99.6));
    weaker[3] = work::fact(kilograms(25.100402));
    holds(numbers({HowKind::mix_amounts, weaker}), "62.5 kg × 40 % ÷ 99.6 % = 25.1 kg");
    weaker[5] = work::fact(kilograms(11.4));
    holds(numbers({HowKind::mix_amounts, weaker}), "acid in 11.4 kg of old liquid");
    weaker[2].clear();
    const QString unsaid = numbers({HowKind::mix_amounts, weaker});
    EXPECT_FALSE(unsaid.contains(QStringLiteral("÷"))) << unsaid.toStdString();
    holds(unsaid, "Acid: 25.1 kg");
}

TEST_F(HowWords, a_strip_of_33_9_grams_holds_9_16_of_acid) {
    // (33.9 - 11.0) x 40 % = 9.16 g as dihydrate, 6.542 as anhydrous acid. Common practice, no source.
    work::WeighFigures figures;
    figures.strips = 10;
    figures.mean = grams(33.9);
    figures.dry = grams(11);
    figures.uptake = grams(22.9);
    figures.acid_per_strip = grams(9.16);
    figures.acid_per_strip_anhydrous = grams(6.542);
    EXPECT_EQ(numbers(work::how_acid_in_strip(figures, percent(40))).toStdString(),
              "(33.9 g − 11 g) × 40 % = 9.16 g as dihydrate\n9.16 g × 90.034 ÷ 126.064 = 6.542 g as anhydrous acid");
    EXPECT_EQ(numbers(work::how_taken_up(figures)).toStdString(), "33.9 g − 11 g = 22.9 g\nStrips weighed: 10");
}

TEST_F(HowWords, fifteen_mites_on_148_bees_lie_from_6_2_to_16_0_per_cent) {
    // Newcombe 1998, Stat. Med. 17:857: 15 of 148, Wilson 0.0624 to 0.1605.
    work::CountLine wash;
    wash.mites = 15;
    wash.bees = 148;
    wash.figures.rate = maths::Fraction{101'351};
    wash.figures.low = maths::Fraction{62'386};
    wash.figures.high = maths::Fraction{160'487};
    EXPECT_EQ(numbers(work::how_mite_rate(wash)).toStdString(), "15 ÷ 148 = 10.1 %\nFrom 6.2 % to 16.0 %");
    holds(how_words(work::how_mite_rate(wash), habits).source, "Newcombe 1998, Stat. Med. 17:857");
    wash.figures.threshold = maths::Fraction{30'000};
    EXPECT_EQ(numbers(work::how_mite_rate(wash)).toStdString(), "15 ÷ 148 = 10.1 %\nFrom 6.2 % to 16.0 %\nYour threshold: 3 %");
    wash.bees.reset();
    wash.figures = {};
    EXPECT_EQ(numbers(work::how_mite_rate(wash)).toStdString(), "Mites: 15; how many bees is not known");
}

TEST_F(HowWords, neighbours_of_one_kind_share_their_formula) {
    const HowKind kind = HowKind::use_by;
    const std::vector<work::How> two{{kind, {QStringLiteral("d:2026-08-05"), QStringLiteral("n:12"), QStringLiteral("d:2027-08-05")}},
                                     {kind, {QStringLiteral("d:2026-08-06"), QStringLiteral("n:12"), QStringLiteral("d:2027-08-06")}}};
    const QString plain = how_plain(how_texts(two, habits));
    EXPECT_EQ(plain.count(QStringLiteral("Source:")), 1) << plain.toStdString();
    EXPECT_EQ(plain.count(QStringLiteral("day sealed + months")), 1);
    EXPECT_EQ(plain.count(QStringLiteral("(months)")), 2) << "each with its own numbers";
    EXPECT_EQ(how_html(how_texts(two, habits)).count(QStringLiteral("Source:")), 1);
}

TEST_F(HowWords, a_mix_too_weak_and_one_too_strong) {
    // 62.5 kg at 38 % instead of 40: 2.0833 kg of acid; at 42 %: 3.125 kg of glycerine. Common practice, no source.
    const QStringList weak{work::fact(kilograms(62.5)), work::fact(kilograms(23.75)), work::fact(percent(38)),
                           work::fact(percent(40)),     work::fact(percent(100)),     work::fact(kilograms(2.083333)), {}};
    EXPECT_EQ(numbers({HowKind::mix_correction, weak}).toStdString(),
              "Strength: 23.75 kg ÷ 62.5 kg = 38 %\nAcid to add: (40 % × 62.5 kg − 23.75 kg) ÷ (100 % − 40 %) = 2.083 kg");
    const QStringList strong{work::fact(kilograms(62.5)), work::fact(kilograms(26.25)), work::fact(percent(42)),
                             work::fact(percent(40)),     work::fact(percent(100)),     {}, work::fact(kilograms(3.125))};
    holds(numbers({HowKind::mix_correction, strong}), "Glycerine to add: 26.25 kg ÷ 40 % − 62.5 kg = 3.125 kg");
}

TEST_F(HowWords, what_is_left_of_a_soak_is_told_by_its_strips) {
    // 62.5 kg, 960 strips of 23 g: 40.42 kg left. Common practice, no source.
    work::SoakFigures soak;
    soak.strips = 960;
    soak.liquid = kilograms(62.5);
    soak.taken_at_target = kilograms(22.08);
    soak.most_left = kilograms(40.42);
    EXPECT_EQ(numbers(work::how_yield(soak)).toStdString(), "Left at the most: 62.5 kg − 960 × 23 g = 40.42 kg");
}

TEST_F(HowWords, a_difference_of_temperatures_knows_no_zero_point) {
    work::DialAdvice advice;
    advice.says = work::DialSays::advised;
    advice.pairs = 2;
    advice.wanted = celsius(50);
    advice.offset_low = celsius(3);
    advice.offset_high = celsius(5.5);
    advice.dial = celsius(54);
    advice.expected_low = celsius(48.5);
    advice.expected_high = celsius(51);
    advice.ceiling = celsius(60);
    advice.highest_dial = celsius(63);
    holds(numbers(work::how_dial(advice)), "Dial above probe: 3 °C to 5.5 °C (readings: 2)\nFor 50 °C: dial at 54 °C");
    say(exchange::MassUnit::pound, exchange::MassUnit::ounce, QStringLiteral("en"), exchange::TemperatureUnit::fahrenheit);
    // 3 C apart are 5.4 F apart; 50 C is 122 F.
    holds(numbers(work::how_dial(advice)), "Dial above probe: 5.4 °F to 9.9 °F");
    holds(numbers(work::how_dial(advice)), "For 122 °F");
}

TEST_F(HowWords, numbers_stand_in_the_users_units_and_with_his_decimal_mark) {
    say(exchange::MassUnit::pound, exchange::MassUnit::ounce);
    work::LevelMark mark{celsius(20), maths::litres(9.8898), kilograms(12.5), {}, {}, false};
    holds(numbers(work::how_level_mark(mark)), "27.558 lb");
    holds(numbers(work::how_level_mark(mark)), "2.61 gal");
    say(exchange::MassUnit::kilogram, exchange::MassUnit::gram, QStringLiteral("de"));
    const QString german = numbers(work::how_level_mark(mark));
    holds(german, "12,5 kg");
    holds(german, "1263,93 kg/m³");
    holds(numbers(work::how_cold_room({celsius(15), celsius(22), 1.93548})), "1,94");
    holds(numbers({HowKind::strip_cost,
                   {QStringLiteral("c:425000"), QStringLiteral("c:90000"), QStringLiteral("c:0"), QStringLiteral("c:480000"),
                    QStringLiteral("c:24000"), QStringLiteral("n:960"), QStringLiteral("c:1061")}}),
          "(42,5 + 9 + 0 + 48 + 2,4) ÷ 960 = 0,1061");
}

TEST_F(HowWords, bags_accounts_and_hazard) {
    work::Balance balance;
    balance.in = kilograms(62.5);
    balance.in_strips = kilograms(21.984);
    balance.in_pails = kilograms(41);
    balance.unexplained = kilograms(62.5 - 21.984 - 41);
    EXPECT_EQ(numbers(work::how_balance(balance)).toStdString(), "62.5 kg − 21.984 kg − 0 g − 41 kg − 0 g = −484 g");
    balance.limit = percent(2);
    holds(numbers(work::how_balance(balance)), "Limit: 2 % of what went in");
    // Rat by mouth 375 mg/kg, 40 %: 937.5. UN GHS 3.1.3.6.
    holds(numbers(work::how_hazard_class(percent(40))), "By mouth: 375 mg/kg ÷ 40 % = 937.5 mg/kg");
    holds(numbers(work::how_hazard_class(percent(40))), "Through the skin: 1100 mg/kg ÷ 40 % = 2750 mg/kg");
    EXPECT_EQ(numbers({HowKind::use_by, {QStringLiteral("d:2026-08-05"), QStringLiteral("n:12"), QStringLiteral("d:2027-08-05")}}),
              habits.day(maths::day(2026, 8, 5)) + QStringLiteral(" + 12 (months) = ") + habits.day(maths::day(2027, 8, 5)));
}

TEST_F(HowWords, a_share_that_is_nearly_all_is_not_rounded_to_all) {
    const auto sure = [this](qint64 ppm) {
        return numbers({HowKind::count_by_weight,
                        {work::fact(kilograms(2.686)), work::fact(grams(33.9)), work::fact(20), work::fact(grams(0.4)),
                         work::fact(20), work::fact(79), work::fact(maths::Fraction{ppm}), work::fact(78), work::fact(80)}});
    };
    holds(sure(876'543), "Likeliest: 79, sure to 87.7 %");
    holds(sure(996'200), "sure to 99.62 %");
    holds(sure(999'990), "sure to over 99.99 %");
    holds(sure(1'000'000), "sure to 100 %");
    // An unknown spread cannot tell.
    work::CountCheck check;
    check.net = kilograms(2.686);
    check.mean = grams(33.9);
    check.mean_strips = 20;
    EXPECT_EQ(numbers(work::how_count_by_weight(check)).toStdString(),
              "Net 2.686 kg; mean of a strip 33.9 g (m = 20)\nHow far single strips differ is not known yet, so the number "
              "cannot be told.");
}

TEST_F(HowWords, limits_of_a_rule_stand_in_the_sum_only_where_there_are_any) {
    const auto dose = [this](const QString& least, const QString& most, int strips) {
        return numbers({HowKind::dose_boxes, {work::fact(2), work::fact(3), work::fact(1), least, most, work::fact(strips)}});
    };
    EXPECT_EQ(dose({}, {}, 6).toStdString(), "2 × 3 (brood boxes) = 6");
    EXPECT_EQ(dose({}, work::fact(4), 4).toStdString(), "2 × 3 (brood boxes), not over 4: 4");
    EXPECT_EQ(dose(work::fact(8), {}, 8).toStdString(), "2 × 3 (brood boxes), not under 8: 8");
    EXPECT_EQ(dose(work::fact(1), work::fact(4), 4).toStdString(), "2 × 3 (brood boxes), not under 1 and not over 4: 4");
}

TEST_F(HowWords, several_stand_one_after_the_other) {
    const std::vector<How> hows{{HowKind::rest, {QStringLiteral("d:2026-08-05"), QStringLiteral("n:7"), QStringLiteral("d:2026-08-12")}},
                                {HowKind::mite_drop, {work::fact(9), work::fact(3), work::number_fact(3.0, 1)}}};
    const QString html = how_html(how_texts(hows, habits));
    EXPECT_EQ(html.count(QStringLiteral("<b>")), 2);
    EXPECT_EQ(html.count(QStringLiteral("Source: ")), 2);
    holds(html, "9 ÷ 3 = 3 a day");
    holds(how_plain(how_texts(hows, habits)), "Source: common practice, no source");
    EXPECT_TRUE(how_html(how_texts({}, habits)).isEmpty());
    // What stands in a fact is no markup.
    EXPECT_FALSE(how_html(how_texts({{HowKind::mite_drop, {QStringLiteral("<i>9"), work::fact(3), work::fact(3)}}}, habits))
                     .contains(QStringLiteral("<i>9")));
}

} // namespace
} // namespace soakbook::ui
