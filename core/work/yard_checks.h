// SPDX-License-Identifier: GPL-3.0-or-later
// Checks that the pieces of work of the yards and the store share.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/outcome.h"

#include <optional>

namespace soakbook::work {

/// The day of an entry: today when nothing was said. Refuses days to come.
Outcome<maths::Day> day_not_to_come(std::optional<maths::Day> on, maths::Day today,
                                    const QString& field = QStringLiteral("on"));
/// Asks (long_ago) about a day more than a year back.
std::optional<Refusal> asked_if_long_ago(maths::Day on, maths::Day today, const Confirmed& confirmed,
                                         const QString& field = QStringLiteral("on"));
/// Refuses a text longer than `most`, or an empty one where `needed`.
std::optional<Refusal> text_refused(const QString& text, int most, const QString& field, bool needed = false);
/// The same for what a yard, hive or round is called: signs too that nobody sees (hidden_signs).
std::optional<Refusal> name_refused(const QString& name, int most, const QString& field, bool needed = true);
/// Refuses a reason that was not given or is too long.
std::optional<Refusal> reason_refused(const QString& reason);
/// "rows/3/strips"
QString row_field(std::size_t row, const char* name);
/// How a question answered with yes stands in a placement.
QString key_of(Why why);

constexpr int longest_name = 200;
constexpr int longest_place = 400;
constexpr int longest_note = 4000;
constexpr int most_strips = 10'000;

} // namespace soakbook::work
