// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/yard_checks.h"

#include "core/work/checks.h"
#include "core/work/facts.h"

namespace soakbook::work {

Outcome<maths::Day> day_not_to_come(std::optional<maths::Day> on, maths::Day today, const QString& field) {
    if (on && *on > today)
        return refuse(Why::in_the_future, field, {fact(*on)});
    return on.value_or(today);
}

std::optional<Refusal> asked_if_long_ago(maths::Day on, maths::Day today, const Confirmed& confirmed,
                                         const QString& field) {
    const auto back = maths::days_between(on, today);
    if (back <= 366 || confirmed.count(Why::long_ago))
        return std::nullopt;
    return ask(Why::long_ago, field, {fact(back)}).value();
}

std::optional<Refusal> text_refused(const QString& text, int most, const QString& field, bool needed) {
    const auto checked = checked_text(text, field, most, needed);
    return checked ? std::nullopt : std::optional<Refusal>(checked.error());
}

std::optional<Refusal> name_refused(const QString& name, int most, const QString& field, bool needed) {
    const auto checked = checked_name(name, field, most, needed);
    return checked ? std::nullopt : std::optional<Refusal>(checked.error());
}

std::optional<Refusal> reason_refused(const QString& reason) {
    if (reason.trimmed().isEmpty())
        return Refusal{Why::reason_missing, QStringLiteral("reason"), {}, false};
    return text_refused(reason, longest_note, QStringLiteral("reason"));
}

QString row_field(std::size_t row, const char* name) {
    return QStringLiteral("rows/%1/%2").arg(row).arg(QLatin1String(name));
}

QString key_of(Why why) {
    switch (why) {
    case Why::long_ago:
        return QStringLiteral("long_ago");
    case Why::supers_on:
        return QStringLiteral("supers_on");
    case Why::in_flow:
        return QStringLiteral("in_flow");
    case Why::yard_closed:
        return QStringLiteral("yard_closed");
    case Why::hive_has_strips:
        return QStringLiteral("hive_has_strips");
    case Why::dose_outside:
        return QStringLiteral("dose_outside");
    case Why::bag_resting:
        return QStringLiteral("bag_resting");
    case Why::bag_opened_long:
        return QStringLiteral("bag_opened_long");
    case Why::window_not_open:
        return QStringLiteral("window_not_open");
    default:
        return {};
    }
}

} // namespace soakbook::work
