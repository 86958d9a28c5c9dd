// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

constexpr int long_ago_days = 365;

bool whole(const QString& text) {
    if (text.contains(QChar(0)) || text.contains(QChar(0xFFFE)) || text.contains(QChar(0xFFFF)))
        return false;
    for (qsizetype i = 0; i < text.size(); ++i) {
        if (text.at(i).isLowSurrogate())
            return false;
        if (text.at(i).isHighSurrogate() && (++i == text.size() || !text.at(i).isLowSurrogate()))
            return false;
    }
    return true;
}

bool is_hidden_sign(QChar c) {
    const char16_t u = c.unicode();
    // Embeddings, overrides and isolates: "Explicit Directional Formatting", Unicode Standard Annex 9.
    return c.category() == QChar::Other_Control || u == 0x2028 || u == 0x2029 || (u >= 0x202A && u <= 0x202E) ||
           (u >= 0x2066 && u <= 0x2069);
}

} // namespace

Outcome<QString> checked_text(const QString& text, const QString& field, int most, bool needed) {
    const QString trimmed = text.trimmed();
    if (trimmed.isEmpty() && needed)
        return refuse(Why::missing, field);
    if (trimmed.size() > most)
        return refuse(Why::too_long, field, {fact(most)});
    if (!whole(trimmed))
        return refuse(Why::unreadable, field);
    return trimmed;
}

Outcome<QString> checked_name(const QString& text, const QString& field, int most, bool needed) {
    auto checked = checked_text(text, field, most, needed);
    if (checked && std::any_of(checked->begin(), checked->end(), is_hidden_sign))
        return refuse(Why::hidden_signs, field);
    return checked;
}

Not reason_missing(const book::Doing& doing) {
    if (const auto reason = checked_text(doing.why, QStringLiteral("reason"), 4000, false); !reason)
        return reason.error();
    return doing.why.trimmed().isEmpty() ? no(Why::reason_missing, QStringLiteral("reason")) : Not{};
}

Outcome<int> checked_count(std::optional<int> count, const QString& field, int most) {
    if (!count)
        return refuse(Why::missing, field);
    if (*count <= 0)
        return refuse(Why::not_positive, field);
    if (*count > most)
        return refuse(Why::too_large, field, {fact(most)});
    return *count;
}

Outcome<maths::Mass> checked_mass(std::optional<maths::Mass> mass, const QString& field, maths::Mass most) {
    if (!mass)
        return refuse(Why::missing, field);
    if (mass->count <= 0)
        return refuse(Why::not_positive, field);
    if (*mass > most)
        return refuse(Why::too_large, field, {fact(most)});
    return *mass;
}

Outcome<maths::Instant> checked_time(std::optional<maths::Instant> at, const book::Doing& doing,
                                     const Confirmed& confirmed, std::optional<maths::Instant> earliest,
                                     const QString& field) {
    const maths::Instant moment = at.value_or(doing.at);
    if (doing.at < moment)
        return refuse(Why::in_the_future, field);
    if (earliest && moment < *earliest)
        return refuse(Why::before_start, field, {fact(earliest->local_day())});
    const auto ago = maths::days_between(moment.local_day(), doing.today());
    if (ago > long_ago_days)
        if (const Not asked = no_unless(confirmed, Why::long_ago, field, {fact(ago)}))
            return because(asked);
    return moment;
}

Outcome<maths::Day> checked_day(std::optional<maths::Day> day, const book::Doing& doing, const Confirmed& confirmed,
                                std::optional<maths::Day> earliest, const QString& field) {
    const maths::Day on = day.value_or(doing.today());
    if (on > doing.today())
        return refuse(Why::in_the_future, field);
    if (earliest && on < *earliest)
        return refuse(Why::before_start, field, {fact(*earliest)});
    const auto ago = maths::days_between(on, doing.today());
    if (ago > long_ago_days)
        if (const Not asked = no_unless(confirmed, Why::long_ago, field, {fact(ago)}))
            return because(asked);
    return on;
}

} // namespace soakbook::work
