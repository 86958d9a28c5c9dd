// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/date_text.h"

#include "core/exchange/month_names.h"
#include "core/exchange/plain_text.h"

#include <QRegularExpression>

#include <array>
#include <cstdlib>

namespace soakbook::exchange {
namespace {

constexpr int first_year = 1900;
constexpr int last_year = 2199;
constexpr int most_days_away = 36'525;

std::optional<maths::Day> possible(int year, int month, int day_of_month) {
    if (month < 1 || day_of_month < 1) {
        return std::nullopt;
    }
    const std::chrono::year_month_day date{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day_of_month)}};
    return date.ok() ? std::optional(maths::Day{date}) : std::nullopt;
}

Read<maths::Day> in_year(int year, int month, int day_of_month) {
    if (year < first_year || year > last_year) {
        return tl::unexpected(Unreadable::too_large);
    }
    const auto day = possible(year, month, day_of_month);
    return day ? Read<maths::Day>(*day) : tl::unexpected(Unreadable::impossible_date);
}

int year_of(maths::Day day) {
    return static_cast<int>(std::chrono::year_month_day{day}.year());
}

Read<maths::Day> nearest(int month, int day_of_month, maths::Day today) {
    std::optional<maths::Day> best;
    for (int year = year_of(today) - 1; year <= year_of(today) + 1; ++year) {
        const auto day = possible(year, month, day_of_month);
        if (day &&
            (!best || std::abs(maths::days_between(today, *day)) < std::abs(maths::days_between(today, *best)))) {
            best = day;
        }
    }
    return best ? Read<maths::Day>(*best) : tl::unexpected(Unreadable::impossible_date);
}

/// The order in which the locale writes a day in numbers.
enum class Order { day_month_year, month_day_year, year_month_day };

Order order_of(const QLocale& locale) {
    const QString format = locale.dateFormat(QLocale::ShortFormat);
    const auto day = format.indexOf(u'd');
    const auto month = format.indexOf(u'M');
    if (format.indexOf(u'y') < std::min(day, month)) {
        return Order::year_month_day;
    }
    return day < month ? Order::day_month_year : Order::month_day_year;
}

/// The numbers of a day as typed: two of them, or three.
struct Numbers {
    int first;
    int second;
    QString third; ///< empty when the year is left out
};

Read<maths::Day> read_two_digit_year(int first, int second, int third, Order order) {
    struct Reading {
        Order order;
        std::optional<maths::Day> day;
    };
    std::array readings{Reading{Order::day_month_year, possible(2000 + third, second, first)},
                        Reading{Order::month_day_year, possible(2000 + third, first, second)},
                        Reading{Order::year_month_day, possible(2000 + first, second, third)}};
    if (order != Order::year_month_day) {
        readings[2].day.reset();
    }
    std::optional<maths::Day> own;
    for (const Reading& reading : readings) {
        if (reading.order == order) {
            own = reading.day;
        }
    }
    if (!own) {
        return tl::unexpected(Unreadable::impossible_date);
    }
    for (const Reading& reading : readings) {
        if (reading.day && *reading.day != *own) {
            return tl::unexpected(Unreadable::two_meanings);
        }
    }
    return *own;
}

Read<maths::Day> read_numbers(const Numbers& numbers, maths::Day today, Order order) {
    const bool day_first = order == Order::day_month_year;
    const int day = day_first ? numbers.first : numbers.second;
    const int month = day_first ? numbers.second : numbers.first;
    switch (numbers.third.size()) {
    case 0:
        return nearest(month, day, today);
    case 4:
        return in_year(numbers.third.toInt(), month, day);
    default:
        return read_two_digit_year(numbers.first, numbers.second, numbers.third.toInt(), order);
    }
}

Read<maths::Day> read_named(const QString& month_word, int day_of_month, const QString& year, maths::Day today,
                            const QLocale& locale) {
    return read_month(month_word, locale).and_then([&](unsigned month) -> Read<maths::Day> {
        if (year.isEmpty()) {
            return nearest(static_cast<int>(month), day_of_month, today);
        }
        return in_year(year.size() == 2 ? 2000 + year.toInt() : year.toInt(), static_cast<int>(month), day_of_month);
    });
}

Read<maths::Day> read_days_away(const QString& text, maths::Day today) {
    bool is_number = false;
    const int days = text.toInt(&is_number);
    if (!is_number || std::abs(days) > most_days_away) {
        return tl::unexpected(Unreadable::too_large);
    }
    return maths::days_after(today, days);
}

QString with_dot_if_usual(unsigned day_of_month, const QLocale& locale) {
    const QString number = QString::number(day_of_month);
    return locale.dateFormat(QLocale::LongFormat).contains(QLatin1String("d.")) ? QString(number + u'.') : number;
}

} // namespace

Read<maths::Day> read_day(const QString& text, maths::Day today, const QLocale& locale) {
    static const QRegularExpression days_away(QStringLiteral("^(?:0|[-+]\\d{1,9})$"));
    static const QRegularExpression year_first(QStringLiteral("^(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})\\.?$"));
    static const QRegularExpression numbers(
        QStringLiteral("^(\\d{1,2})([-/.]) ?(\\d{1,2})(?:\\2 ?(\\d{2}|\\d{4})?)?$"));
    static const QRegularExpression day_first(
        QStringLiteral("^(\\d{1,2})\\.?[ -]*([^\\d ,/-]+)(?:[ ,-]+(\\d{4}|\\d{2}))?$"));
    static const QRegularExpression month_first(
        QStringLiteral("^([^\\d ,/+-]+)[ -]*(\\d{1,2})\\.?(?:[ ,-]+(\\d{4}|\\d{2}))?$"));

    const auto plain = plain_text(text);
    if (!plain) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    if (plain->isEmpty()) {
        return tl::unexpected(Unreadable::empty);
    }
    if (plain->size() > 60) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    if (days_away.match(*plain).hasMatch()) {
        return read_days_away(*plain, today);
    }
    if (const auto m = year_first.match(*plain); m.hasMatch()) {
        return in_year(m.captured(1).toInt(), m.captured(3).toInt(), m.captured(4).toInt());
    }
    if (const auto m = numbers.match(*plain); m.hasMatch()) {
        return read_numbers({m.captured(1).toInt(), m.captured(3).toInt(), m.captured(4)}, today, order_of(locale));
    }
    if (const auto m = day_first.match(*plain); m.hasMatch()) {
        return read_named(m.captured(2), m.captured(1).toInt(), m.captured(3), today, locale);
    }
    if (const auto m = month_first.match(*plain); m.hasMatch()) {
        return read_named(m.captured(1), m.captured(2).toInt(), m.captured(3), today, locale);
    }
    return tl::unexpected(Unreadable::not_a_number);
}

QString write_day(maths::Day day, const QLocale& locale) {
    return write_day_short(day, locale) + u' ' + QString::number(year_of(day));
}

QString write_day_short(maths::Day day, const QLocale& locale) {
    const std::chrono::year_month_day date{day};
    return with_dot_if_usual(static_cast<unsigned>(date.day()), locale) + u' ' +
           write_month(static_cast<unsigned>(date.month()), locale);
}

QString write_day_iso(maths::Day day) {
    const std::chrono::year_month_day date{day};
    const auto padded = [](unsigned n, int width) { return QString::number(n).rightJustified(width, u'0'); };
    return padded(static_cast<unsigned>(year_of(day)), 4) + u'-' + padded(static_cast<unsigned>(date.month()), 2) +
           u'-' + padded(static_cast<unsigned>(date.day()), 2);
}

Read<maths::Day> read_day_iso(const QString& text) {
    static const QRegularExpression iso(QStringLiteral("\\A([0-9]{4})-([0-9]{2})-([0-9]{2})\\z"));
    if (text.isEmpty()) {
        return tl::unexpected(Unreadable::empty);
    }
    const auto m = iso.match(text);
    if (!m.hasMatch()) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    return in_year(m.captured(1).toInt(), m.captured(2).toInt(), m.captured(3).toInt());
}

} // namespace soakbook::exchange
