// SPDX-License-Identifier: GPL-3.0-or-later
// Short phrases that several pages of the Shed say alike.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/materials.h"
#include "core/work/mix.h"
#include "core/work/shed_view.h"
#include "ui/parts/habits.h"
#include "ui/parts/state.h"

#include <QString>

#include <optional>

namespace soakbook::ui {

/// Shape and word of a batch's state.
State batch_state(const work::BatchLine& batch);
QString batch_state_word(const work::BatchLine& batch);

/// "1 can of 25 kg and 12.5 kg"; empty where the lot's container is not known.
QString in_containers(const Habits& habits, const work::InContainers& amount, bool acid);
/// The same for one line of a batch, as it was planned.
QString in_containers(const Habits& habits, const work::InputLine& input);
/// What was planned of one line, in whole containers and a last part.
work::InContainers planned_containers(const work::InputLine& input);
/// "acid A1 · 75 kg left".
QString lot_words(const Habits& habits, const work::LotLine& lot);
/// A mass to two decimals of the large unit, as scales in a shed show it.
QString large(const Habits& habits, maths::Mass mass);
/// The same with its sign, "+0.3 kg" or "−0.3 kg".
QString large_signed(const Habits& habits, maths::Mass mass);
/// Bare numbers for a column, and the header with its unit: "Weighed, kg".
QString large_number(const Habits& habits, maths::Mass mass);
QString small_number(const Habits& habits, maths::Mass mass);
QString temperature_number(const Habits& habits, maths::Temperature temperature);
QString large_header(const Habits& habits, const QString& words);
QString small_header(const Habits& habits, const QString& words);
QString temperature_header(const Habits& habits, const QString& words);
/// A strip's mass to two decimals of the small unit.
QString small(const Habits& habits, maths::Mass mass);
/// A difference of two temperatures in the user's scale, "4 °C".
QString degrees_apart(const Habits& habits, maths::Temperature difference);
/// Litres, or US gallons where the user weighs in pounds, to a mark's width.
QString volume(const Habits& habits, maths::Volume volume);
/// An amount of money as a sum is read: to a hundredth.
QString money(const Habits& habits, maths::Money money);
/// The same for what a single strip costs: to a thousandth.
QString small_money(const Habits& habits, maths::Money money);
/// An hour to come or just past: "14:10 today", "09:00 tomorrow", "5 Oct 09:00". To the next ten minutes.
QString hour_words(const Habits& habits, const maths::Instant& at);
/// The same from one to another: "between 13:00 and 16:00"; a day is named where it is not the one of `beside`.
QString between_hours(const Habits& habits, const maths::Instant& from, const maths::Instant& to, const maths::Instant& beside);
/// "3 h 20 min", "25 min", "2 days 4 h".
QString how_long(double hours);
/// The moment a correction means: what stood there, seconds and all, where the form shows the same minute.
std::optional<maths::Instant> corrected_moment(std::optional<maths::Instant> typed, const maths::Instant& before);
/// The two parts, joined by a raised dot, without what is empty.
QString joined(const QStringList& parts);

} // namespace soakbook::ui
