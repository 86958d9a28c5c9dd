// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is written is read back as the same value, in each unit and locale. Values: the corners, and a few thousand
// drawn with a fixed seed over all sizes, so that a failure comes again.
#include "core/exchange/date_text.h"
#include "core/exchange/quantity_text.h"
#include "tests/exchange/wording.h"

#include <limits>
#include <random>

namespace soakbook::exchange {
namespace {

constexpr std::int64_t most = 9'000'000'000'000'000;

std::vector<std::int64_t> counts(std::int64_t up_to) {
    std::vector<std::int64_t> values{0,    1,       2,         9,         10,         999,       1000,
                                     1001, 999'999, 1'000'000, 1'234'000, 12'345'678, up_to - 1, up_to};
    std::mt19937_64 draw(20'260'103);
    for (std::int64_t size = 10; size < up_to; size *= 10) {
        for (int i = 0; i < 60; ++i) {
            values.push_back(static_cast<std::int64_t>(draw() % static_cast<std::uint64_t>(size)));
        }
    }
    std::erase_if(values, [up_to](std::int64_t value) { return value > up_to; });
    return values;
}

TEST(RoundTrip, masses_in_every_unit_and_locale) {
    for (const QLocale& locale : eight_locales()) {
        for (const MassUnit unit : {MassUnit::gram, MassUnit::kilogram, MassUnit::pound, MassUnit::ounce}) {
            for (const std::int64_t count : counts(most)) {
                const maths::Mass mass{count};
                const QString with_unit = write_mass(mass, unit, locale);
                ASSERT_TRUE(reads_as(read_mass(with_unit, MassUnit::gram), mass)) << with_unit.toStdString();
                const QString bare = write_mass_number(mass, unit, locale);
                ASSERT_TRUE(reads_as(read_mass(bare, unit), mass)) << bare.toStdString();
            }
        }
    }
}

TEST(RoundTrip, volumes_in_every_unit_and_locale) {
    for (const QLocale& locale : eight_locales()) {
        for (const VolumeUnit unit : {VolumeUnit::millilitre, VolumeUnit::litre, VolumeUnit::us_gallon}) {
            for (const std::int64_t count : counts(most)) {
                const QString written = write_volume({count}, unit, locale);
                ASSERT_TRUE(reads_as(read_volume(written, VolumeUnit::litre), maths::Volume{count}))
                    << written.toStdString();
            }
        }
    }
}

TEST(RoundTrip, temperatures_in_both_scales_and_every_locale) {
    for (const QLocale& locale : eight_locales()) {
        for (const TemperatureUnit unit : {TemperatureUnit::celsius, TemperatureUnit::fahrenheit}) {
            for (std::int64_t hundredths = -10'000; hundredths <= 20'000; hundredths += 7) {
                const maths::Temperature value{hundredths};
                const QString written = write_temperature(value, unit, locale);
                ASSERT_TRUE(reads_as(read_temperature(written, TemperatureUnit::celsius), value))
                    << written.toStdString();
                const QString bare = write_temperature_number(value, unit, locale);
                ASSERT_TRUE(reads_as(read_temperature(bare, unit), value)) << bare.toStdString();
            }
        }
    }
}

TEST(RoundTrip, percents_money_and_counts_in_every_locale) {
    for (const QLocale& locale : eight_locales()) {
        for (const std::int64_t count : counts(1'000'000)) {
            const QString written = write_percent({count}, locale);
            ASSERT_TRUE(reads_as(read_percent(written), maths::Fraction{count})) << written.toStdString();
        }
        for (const std::int64_t count : counts(most)) {
            const QString written = write_money({count}, locale);
            ASSERT_TRUE(reads_as(read_money(written), maths::Money{count})) << written.toStdString();
            const auto read = read_count(write_count(count, locale));
            // What a request cannot hold is refused, never another number.
            ASSERT_TRUE(count > std::numeric_limits<int>::max() ? is_refused(read, Unreadable::too_large)
                                                                : reads_as(read, static_cast<qint64>(count)));
        }
    }
}

TEST(RoundTrip, rounded_masses_are_off_by_half_a_last_digit_at_most) {
    const QLocale locale(QStringLiteral("de_DE"));
    for (const std::int64_t count : counts(1'000'000'000)) {
        const auto read = read_mass(write_mass({count}, MassUnit::kilogram, locale, 2), MassUnit::gram);
        ASSERT_TRUE(read.has_value());
        ASSERT_LE(std::abs(read->count - count), 5'000);
    }
}

TEST(RoundTrip, every_day_of_thirteen_years_in_many_languages) {
    std::vector<QLocale> locales = eight_locales();
    for (const char* name :
         {"fi_FI", "pl_PL", "cs_CZ", "ru_RU", "el_GR", "he_IL", "zh_CN", "ko_KR", "hu_HU", "lt_LT", "hr_HR", "tr_TR",
          "fa_IR", "hi_IN", "th_TH", "vi_VN", "pt_BR", "es_ES", "it_IT", "nl_NL", "da_DK", "uk_UA", "bg_BG"}) {
        locales.emplace_back(QLatin1String(name));
    }
    const maths::Day today = maths::day(2026, 6, 15);
    for (const QLocale& locale : locales) {
        for (maths::Day day = maths::day(2020, 1, 1); day < maths::day(2033, 1, 1); day = maths::days_after(day, 1)) {
            const QString written = write_day(day, locale);
            ASSERT_TRUE(reads_as(read_day(written, today, locale), day))
                << locale.name().toStdString() << ": " << written.toStdString();
            ASSERT_TRUE(reads_as(read_day(write_day_iso(day), today, locale), day));
            ASSERT_TRUE(reads_as(read_day_iso(write_day_iso(day)), day));
        }
    }
}

TEST(RoundTrip, a_day_without_its_year_comes_back_within_half_a_year) {
    const maths::Day today = maths::day(2026, 6, 15);
    for (const QLocale& locale : eight_locales()) {
        for (int away = -180; away <= 180; ++away) {
            const maths::Day day = maths::days_after(today, away);
            ASSERT_TRUE(reads_as(read_day(write_day_short(day, locale), today, locale), day))
                << locale.name().toStdString();
        }
    }
}

} // namespace
} // namespace soakbook::exchange
