// SPDX-License-Identifier: GPL-3.0-or-later
// The checks that every form shares: texts, counts, amounts, days and hours. For core/work's own use.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/facts.h"
#include "core/work/outcome.h"

#include <optional>

namespace soakbook::work {

/// A check's answer: why not, or nothing.
using Not = std::optional<Refusal>;
[[nodiscard]] inline tl::unexpected<Refusal> because(const Not& refusal) {
    return tl::unexpected<Refusal>(*refusal);
}
[[nodiscard]] inline Not no(Why why, const QString& field = {}, const QStringList& facts = {}) {
    return Refusal{why, field, facts, false};
}
/// Asks, unless it was answered with yes before.
[[nodiscard]] inline Not no_unless(const Confirmed& confirmed, Why why, const QString& field = {},
                                   const QStringList& facts = {}) {
    return confirmed.count(why) != 0 ? Not{} : Not{Refusal{why, field, facts, true}};
}

/// Trimmed. Refuses an empty one (missing) when it is needed, one longer than `most` (too_long), and what no file keeps
/// exactly: a NUL, half a character, or what is none (unreadable).
Outcome<QString> checked_text(const QString& text, const QString& field, int most, bool needed);
/// The same for what a person, place or thing is called: refuses signs too that nobody sees, those that break the line or
/// turn the letters round, since two names must differ where they are read (hidden_signs).
Outcome<QString> checked_name(const QString& text, const QString& field, int most, bool needed = true);
/// Refuses a correction or void without its reason.
Not reason_missing(const book::Doing& doing);
/// Refuses a count that is not said (missing), below one, or above `most`.
Outcome<int> checked_count(std::optional<int> count, const QString& field, int most);
/// Refuses a mass that is not said, zero or less, or above `most`.
Outcome<maths::Mass> checked_mass(std::optional<maths::Mass> mass, const QString& field, maths::Mass most);
/// The moment something was done: what was said, or now. Refuses the future and what lies before `earliest`; asks for
/// more than a year back.
Outcome<maths::Instant> checked_time(std::optional<maths::Instant> at, const book::Doing& doing,
                                     const Confirmed& confirmed, std::optional<maths::Instant> earliest = std::nullopt,
                                     const QString& field = QStringLiteral("at"));
/// The day something was done, likewise.
Outcome<maths::Day> checked_day(std::optional<maths::Day> day, const book::Doing& doing, const Confirmed& confirmed,
                                std::optional<maths::Day> earliest, const QString& field);

/// The most that one form takes: ten tonnes, a thousand times what a shed mixes in a day.
constexpr maths::Mass most_mass = maths::milligrams(10'000'000'000);
/// Strips, bags and pails in one form.
constexpr int most_count = 100'000;

} // namespace soakbook::work
