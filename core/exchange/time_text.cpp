// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/date_text.h"
#include "core/exchange/plain_text.h"

#include <QRegularExpression>

namespace soakbook::exchange {
namespace {

constexpr int minutes_a_day = 24 * 60;

/// The hour of the day for one on a twelve-hour clock; nothing outside 1 to 12.
std::optional<int> on_twelve_hour_clock(int hour, bool afternoon) {
    if (hour < 1 || hour > 12) {
        return std::nullopt;
    }
    return hour % 12 + (afternoon ? 12 : 0);
}

} // namespace

Read<int> read_time(const QString& text) {
    static const QRegularExpression form(QStringLiteral("^(\\d{1,2})(?:[:.]?(\\d{2}))?(?: ?([ap])(?:m|\\.m\\.))?$"),
                                         QRegularExpression::CaseInsensitiveOption);
    const auto plain = plain_text(text);
    if (!plain) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    if (plain->isEmpty()) {
        return tl::unexpected(Unreadable::empty);
    }
    const auto m = form.match(*plain);
    if (plain->size() > 20 || !m.hasMatch()) {
        return tl::unexpected(Unreadable::not_a_number);
    }
    const QString half = m.captured(3).toLower();
    if (half.isEmpty() && m.captured(2).isEmpty()) {
        return tl::unexpected(Unreadable::two_meanings);
    }
    std::optional<int> hour = m.captured(1).toInt();
    if (!half.isEmpty()) {
        hour = on_twelve_hour_clock(*hour, half == QLatin1String("p"));
    }
    const int minute = m.captured(2).toInt();
    if (!hour || *hour > 23 || minute > 59) {
        return tl::unexpected(Unreadable::impossible_date);
    }
    return *hour * 60 + minute;
}

QString write_time(const maths::Instant& at) {
    const auto local = std::chrono::floor<std::chrono::minutes>(std::chrono::milliseconds{at.utc_ms}) +
                       std::chrono::minutes{at.offset_minutes};
    auto minutes = local.count() % minutes_a_day;
    if (minutes < 0) {
        minutes += minutes_a_day;
    }
    const auto padded = [](qint64 n) { return QString::number(n).rightJustified(2, u'0'); };
    return padded(minutes / 60) + u':' + padded(minutes % 60);
}

} // namespace soakbook::exchange
