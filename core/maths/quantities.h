// SPDX-License-Identifier: GPL-3.0-or-later
// The trade's quantities as types of their own, so that a kilogram cannot be passed for a litre. Each is a whole
// number of a small unit: sums close to zero exactly.
#pragma once

#include <chrono>
#include <cmath>
#include <compare>
#include <cstdint>

namespace soakbook::maths {

/// A whole number of one small unit. `Tag` makes each quantity a type of its own.
template <class Tag> struct Quantity {
    std::int64_t count = 0;

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return {-count}; }
    constexpr Quantity& operator+=(Quantity other) {
        count += other.count;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        count -= other.count;
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.count + b.count}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.count - b.count}; }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return {a.count * n}; }
    friend constexpr Quantity operator*(std::int64_t n, Quantity a) { return {a.count * n}; }
};

struct MassTag;
struct VolumeTag;
struct TemperatureTag;
struct FractionTag;
struct MoneyTag;
struct LengthTag;

using Mass = Quantity<MassTag>;               ///< milligrams
using Volume = Quantity<VolumeTag>;           ///< microlitres
using Temperature = Quantity<TemperatureTag>; ///< hundredths of a degree Celsius
using Fraction = Quantity<FractionTag>;       ///< parts per million; 400 000 is 40 %
using Money = Quantity<MoneyTag>;             ///< ten-thousandths of the user's currency unit
using Length = Quantity<LengthTag>;           ///< micrometres

constexpr Mass milligrams(std::int64_t n) { return {n}; }
inline Mass grams(double g) { return {std::llround(g * 1e3)}; }
inline Mass kilograms(double kg) { return {std::llround(kg * 1e6)}; }
inline Volume millilitres(double ml) { return {std::llround(ml * 1e3)}; }
inline Volume litres(double l) { return {std::llround(l * 1e6)}; }
inline Temperature celsius(double c) { return {std::llround(c * 1e2)}; }
inline Fraction percent(double p) { return {std::llround(p * 1e4)}; }
inline Length millimetres(double mm) { return {std::llround(mm * 1e3)}; }
constexpr Fraction ppm(std::int64_t n) { return {n}; }

constexpr double in_grams(Mass m) { return static_cast<double>(m.count) / 1e3; }
constexpr double in_kilograms(Mass m) { return static_cast<double>(m.count) / 1e6; }
constexpr double in_millilitres(Volume v) { return static_cast<double>(v.count) / 1e3; }
constexpr double in_litres(Volume v) { return static_cast<double>(v.count) / 1e6; }
constexpr double in_celsius(Temperature t) { return static_cast<double>(t.count) / 1e2; }
constexpr double in_millimetres(Length l) { return static_cast<double>(l.count) / 1e3; }
constexpr double as_number(Fraction f) { return static_cast<double>(f.count) / 1e6; }
constexpr double in_percent(Fraction f) { return static_cast<double>(f.count) / 1e4; }

/// A part of a mass, to the nearest milligram.
inline Mass part_of(Mass whole, Fraction part) { return {std::llround(static_cast<double>(whole.count) * as_number(part))}; }
/// What part of `whole` is `part`, to the nearest ppm. `whole` must not be zero.
inline Fraction share(Mass part, Mass whole) {
    return {std::llround(static_cast<double>(part.count) / static_cast<double>(whole.count) * 1e6)};
}

/// A calendar day where the user lives; it has no time zone and no clock change.
using Day = std::chrono::local_days;

constexpr Day day(int year, unsigned month, unsigned day_of_month) {
    return Day{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day_of_month}};
}
constexpr Day days_after(Day d, std::int64_t n) { return d + std::chrono::days{n}; }
constexpr std::int64_t days_between(Day from, Day to) { return (to - from).count(); }

/// A moment: milliseconds UTC, with the offset that the clock on the wall had, in minutes.
struct Instant {
    std::int64_t utc_ms = 0;
    int offset_minutes = 0;

    constexpr bool operator==(const Instant&) const = default;
    /// The calendar day on the wall at that moment.
    constexpr Day local_day() const {
        const auto local = std::chrono::milliseconds{utc_ms} + std::chrono::minutes{offset_minutes};
        return Day{std::chrono::floor<std::chrono::days>(local)};
    }
};
constexpr bool operator<(const Instant& a, const Instant& b) { return a.utc_ms < b.utc_ms; }
constexpr double hours_between(const Instant& a, const Instant& b) {
    return static_cast<double>(b.utc_ms - a.utc_ms) / 3.6e6;
}

} // namespace soakbook::maths
