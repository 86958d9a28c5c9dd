// SPDX-License-Identifier: GPL-3.0-or-later
// Quantities as a beekeeper types them. The unit ratios are checked against published ones in the tests named
// "published".
#include "core/exchange/quantity_text.h"
#include "tests/exchange/wording.h"

namespace soakbook::exchange {
namespace {

using maths::Mass;
using maths::milligrams;

Read<Mass> kg(const char16_t* typed) {
    return read_mass(text(typed), MassUnit::kilogram);
}

TEST(Quantities, comma_and_point_are_both_decimal_marks) {
    EXPECT_TRUE(reads_as(kg(u"12,5"), milligrams(12'500'000)));
    EXPECT_TRUE(reads_as(kg(u"12.5"), milligrams(12'500'000)));
    EXPECT_TRUE(reads_as(kg(u"0,234"), milligrams(234'000)));
    EXPECT_TRUE(reads_as(kg(u".5"), milligrams(500'000)));
    EXPECT_TRUE(reads_as(kg(u"1234.567"), milligrams(1'234'567'000)));
    EXPECT_TRUE(reads_as(kg(u"1,2340"), milligrams(1'234'000)));
}

TEST(Quantities, a_mark_before_three_digits_is_asked_not_guessed) {
    for (const char16_t* typed :
         {u"1.234", u"1,234", u"12.345", u"123,456", u"1 234", u"1'234", u"1\u2019234", u"1.234,5", u"1,234.50",
          u"1.234.567", u"12\u00A0345", u"1\u202F234", u"1\u2009234 kg"}) {
        EXPECT_TRUE(is_refused(kg(typed), Unreadable::grouping)) << text(typed).toStdString();
    }
}

TEST(Quantities, a_named_unit_makes_three_decimals_plain) {
    EXPECT_TRUE(reads_as(kg(u"1.234 kg"), milligrams(1'234'000)));
    EXPECT_TRUE(reads_as(kg(u"1,234kg"), milligrams(1'234'000)));
}

TEST(Quantities, units_are_known_by_their_usual_words) {
    EXPECT_TRUE(reads_as(kg(u"34 g"), milligrams(34'000)));
    EXPECT_TRUE(reads_as(kg(u"34 G"), milligrams(34'000)));
    EXPECT_TRUE(reads_as(kg(u"25 Kg"), milligrams(25'000'000)));
    EXPECT_TRUE(reads_as(kg(u"1 lb"), milligrams(453'592)));
    EXPECT_TRUE(reads_as(kg(u"1 oz"), milligrams(28'350)));
    EXPECT_TRUE(is_refused(kg(u"5 l"), Unreadable::unknown_unit));
    EXPECT_TRUE(is_refused(kg(u"5 Pfund"), Unreadable::unknown_unit));
    EXPECT_TRUE(is_refused(kg(u"5 %"), Unreadable::unknown_unit));
}

TEST(Quantities, pounds_and_ounces_go_together) {
    // 27.5 lb x 0.45359237 kg = 12.473790175 kg.
    EXPECT_TRUE(reads_as(kg(u"27 lb 8 oz"), milligrams(12'473'790)));
    EXPECT_TRUE(reads_as(kg(u"27lb8oz"), milligrams(12'473'790)));
    EXPECT_TRUE(reads_as(kg(u"27 lbs 8,0 oz"), milligrams(12'473'790)));
    EXPECT_TRUE(is_refused(kg(u"27 lb 16 oz"), Unreadable::not_a_number)) << "sixteen ounces are a pound: a slip";
    EXPECT_TRUE(is_refused(kg(u"27.5 lb 8 oz"), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(u"27 lb 8"), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(u"8 oz 27 lb"), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(u"27 lb -8 oz"), Unreadable::negative));
    EXPECT_TRUE(is_refused(kg(u"99999999999999999999 lb 1 oz"), Unreadable::too_large));
}

TEST(Quantities, published_ratios_of_pound_ounce_and_gallon) {
    // NIST Special Publication 811 (2008), appendix B, from memory: 1 lb = 0.453 592 37 kg exactly,
    // 1 oz = 0.028 349 523 125 kg exactly, 1 US gallon = 3.785 411 784 L exactly.
    EXPECT_TRUE(reads_as(kg(u"1000 lb"), milligrams(453'592'370)));
    EXPECT_TRUE(reads_as(kg(u"1000000 oz"), milligrams(28'349'523'125)));
    EXPECT_TRUE(reads_as(read_volume(text(u"1000 gal"), VolumeUnit::litre), maths::Volume{3'785'411'784}));
}

TEST(Quantities, exponents_signs_and_junk_are_no_numbers) {
    for (const char16_t* typed :
         {u"1e3", u"1E3", u"1e3 kg", u"abc", u"kg", u"kg 5", u"--5", u"5-",  u"5 5 kg", u"1..5",   u"1.2.3",
          u"5.",  u".",   u",",      u"-",   u"+",  u"0x10", u"5;6", u"NaN", u"inf",    u"\u00BD", u"5\u00B2"}) {
        EXPECT_TRUE(is_refused(kg(typed), Unreadable::not_a_number)) << text(typed).toStdString();
    }
}

TEST(Quantities, empty_and_negative_say_so) {
    EXPECT_TRUE(is_refused(kg(u""), Unreadable::empty));
    EXPECT_TRUE(is_refused(kg(u" \u00A0\t "), Unreadable::empty));
    EXPECT_TRUE(is_refused(kg(u"-1"), Unreadable::negative));
    EXPECT_TRUE(is_refused(kg(u"\u22121 kg"), Unreadable::negative));
    EXPECT_TRUE(is_refused(read_count(text(u"-1")), Unreadable::negative));
    EXPECT_TRUE(is_refused(read_percent(text(u"-1")), Unreadable::negative));
    EXPECT_TRUE(is_refused(read_money(text(u"-1")), Unreadable::negative));
}

TEST(Quantities, finer_than_a_milligram_or_larger_than_the_record_is_refused) {
    EXPECT_TRUE(reads_as(kg(u"0.000001"), milligrams(1)));
    EXPECT_TRUE(reads_as(kg(u"0.0000010000"), milligrams(1)));
    EXPECT_TRUE(is_refused(kg(u"0.0000001"), Unreadable::too_fine));
    EXPECT_TRUE(is_refused(kg(u"34.0005 g"), Unreadable::too_fine));
    EXPECT_TRUE(reads_as(kg(u"9000000000"), milligrams(9'000'000'000'000'000)));
    EXPECT_TRUE(is_refused(kg(u"9000000000.000001"), Unreadable::too_large));
    EXPECT_TRUE(is_refused(kg(u"99999999999999999999999999"), Unreadable::too_large));
}

TEST(Quantities, temperatures_may_be_below_zero_and_in_either_scale) {
    const auto read = [](const char16_t* typed, TemperatureUnit bare = TemperatureUnit::celsius) {
        return read_temperature(text(typed), bare);
    };
    EXPECT_TRUE(reads_as(read(u"55"), maths::celsius(55)));
    EXPECT_TRUE(reads_as(read(u"55,5"), maths::celsius(55.5)));
    EXPECT_TRUE(reads_as(read(u"-3"), maths::celsius(-3)));
    EXPECT_TRUE(reads_as(read(u"\u22123 \u00B0C"), maths::celsius(-3)));
    EXPECT_TRUE(reads_as(read(u"131 F"), maths::celsius(55)));
    EXPECT_TRUE(reads_as(read(u"131\u00B0F"), maths::celsius(55)));
    EXPECT_TRUE(reads_as(read(u"131", TemperatureUnit::fahrenheit), maths::celsius(55)));
    EXPECT_TRUE(reads_as(read(u"131\u00B0", TemperatureUnit::fahrenheit), maths::celsius(55)));
    EXPECT_TRUE(reads_as(read(u"55 C", TemperatureUnit::fahrenheit), maths::celsius(55)));
    EXPECT_TRUE(is_refused(read(u"55.555"), Unreadable::grouping));
    EXPECT_TRUE(is_refused(read(u"55.555 C"), Unreadable::too_fine));
    EXPECT_TRUE(is_refused(read(u"328 K"), Unreadable::unknown_unit));
    // The scales meet at -40; water boils at 212 F, freezes at 32 F (definition of the Fahrenheit scale).
    EXPECT_TRUE(reads_as(read(u"-40 F"), maths::celsius(-40)));
    EXPECT_TRUE(reads_as(read(u"212 F"), maths::celsius(100)));
    EXPECT_TRUE(reads_as(read(u"32 F"), maths::celsius(0)));
}

TEST(Quantities, percents_run_from_nothing_to_a_hundred) {
    EXPECT_TRUE(reads_as(read_percent(text(u"40")), maths::percent(40)));
    EXPECT_TRUE(reads_as(read_percent(text(u"40,5 %")), maths::percent(40.5)));
    EXPECT_TRUE(reads_as(read_percent(text(u"12.345")), maths::ppm(123'450)));
    EXPECT_TRUE(reads_as(read_percent(text(u"100%")), maths::percent(100)));
    EXPECT_TRUE(reads_as(read_percent(text(u"0")), maths::percent(0)));
    EXPECT_TRUE(is_refused(read_percent(text(u"100.0001")), Unreadable::too_large));
    EXPECT_TRUE(is_refused(read_percent(text(u"40 g")), Unreadable::unknown_unit));
    EXPECT_TRUE(is_refused(read_percent(text(u"40 %%")), Unreadable::unknown_unit));
}

TEST(Quantities, counts_are_whole_and_money_has_four_decimals) {
    EXPECT_TRUE(reads_as(read_count(text(u"480")), qint64{480}));
    EXPECT_TRUE(reads_as(read_count(text(u"080")), qint64{80}));
    EXPECT_TRUE(reads_as(read_count(text(u"2147483647")), qint64{2147483647}));
    EXPECT_TRUE(is_refused(read_count(text(u"2147483648")), Unreadable::too_large));
    EXPECT_TRUE(is_refused(read_count(text(u"4294967304")), Unreadable::too_large)) << "would come round to 8";
    EXPECT_TRUE(is_refused(read_count(text(u"4.5")), Unreadable::too_fine));
    EXPECT_TRUE(is_refused(read_count(text(u"1.000")), Unreadable::grouping));
    EXPECT_TRUE(is_refused(read_count(text(u"80 strips")), Unreadable::unknown_unit));
    EXPECT_TRUE(reads_as(read_money(text(u"12,50")), maths::Money{125'000}));
    EXPECT_TRUE(reads_as(read_money(text(u"0.0001")), maths::Money{1}));
    EXPECT_TRUE(is_refused(read_money(text(u"0.00001")), Unreadable::too_fine));
    EXPECT_TRUE(is_refused(read_money(text(u"1.234")), Unreadable::grouping));
}

TEST(Quantities, the_same_text_means_the_same_in_every_locale_it_was_written_in) {
    for (const QLocale& locale : eight_locales()) {
        const QString written = write_mass_number(milligrams(12'500'000), MassUnit::kilogram, locale);
        EXPECT_TRUE(written == text(u"12.5") || written == text(u"12,5")) << locale.name().toStdString();
        EXPECT_TRUE(reads_as(read_mass(written, MassUnit::kilogram), milligrams(12'500'000)))
            << locale.name().toStdString();
    }
    EXPECT_EQ(write_mass_number(milligrams(12'500'000), MassUnit::kilogram, QLocale(QStringLiteral("de_DE"))),
              text(u"12,5"));
    EXPECT_EQ(write_mass_number(milligrams(12'500'000), MassUnit::kilogram, QLocale(QStringLiteral("en_GB"))),
              text(u"12.5"));
}

TEST(Quantities, written_with_their_unit_after_a_thin_space) {
    const QLocale english(QStringLiteral("en_GB"));
    EXPECT_EQ(write_mass(milligrams(62'500'000), MassUnit::kilogram, english), text(u"62.5\u202Fkg"));
    EXPECT_EQ(write_mass(milligrams(62'500'000'000), MassUnit::gram, english), text(u"62500000\u202Fg"))
        << "no grouping";
    EXPECT_EQ(write_mass(milligrams(9'163'456), MassUnit::gram, english, 2), text(u"9163.46\u202Fg"));
    EXPECT_EQ(write_mass(milligrams(9'200), MassUnit::gram, english, 2), text(u"9.2\u202Fg")) << "no idle zeros";
    EXPECT_EQ(write_mass(milligrams(-1'500), MassUnit::gram, english), text(u"-1.5\u202Fg"))
        << "a difference may be negative";
    EXPECT_EQ(write_mass(milligrams(-400), MassUnit::kilogram, english, 2), text(u"0\u202Fkg")) << "no minus nothing";
    EXPECT_EQ(write_temperature(maths::celsius(55.55), TemperatureUnit::celsius, english, 1),
              text(u"55.6\u202F\u00B0C"));
    EXPECT_EQ(write_temperature(maths::Temperature{-55}, TemperatureUnit::celsius, english, 1),
              text(u"-0.6\u202F\u00B0C"))
        << "halves go away from zero on both sides";
    EXPECT_EQ(write_temperature(maths::celsius(-3), TemperatureUnit::fahrenheit, english), text(u"26.6\u202F\u00B0F"));
    EXPECT_EQ(write_percent(maths::percent(40), english), text(u"40\u202F%"));
    EXPECT_EQ(write_volume(maths::litres(1.234), VolumeUnit::litre, english), text(u"1.234\u202Fl"));
    EXPECT_EQ(write_count(12345, english), text(u"12345"));
}

TEST(Quantities, a_bare_number_gets_a_zero_where_it_would_look_like_a_thousand) {
    const QLocale english(QStringLiteral("en_GB"));
    EXPECT_EQ(write_mass_number(milligrams(1'234'000), MassUnit::kilogram, english), text(u"1.2340"));
    EXPECT_EQ(write_mass_number(milligrams(234'000), MassUnit::kilogram, english), text(u"0.234"));
    EXPECT_EQ(write_mass_number(milligrams(1'234'567), MassUnit::kilogram, english), text(u"1.234567"));
    EXPECT_EQ(write_money(maths::Money{12'340}, english), text(u"1.2340"));
}

} // namespace
} // namespace soakbook::exchange
