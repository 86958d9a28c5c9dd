// SPDX-License-Identifier: GPL-3.0-or-later
// What the store's columns and values are called, for corrections and histories on screen and on paper.
#pragma once

#include "core/work/register_view.h"
#include "ui/parts/habits.h"

namespace soakbook::ui {

/// "strips", "day hung", "weight of all strips" ...; a column without words of its own is shown as it is.
QString column_words(const QString& column);
/// What a record of that table is called: "reading", "weighing", "bag" ...; a table without words is shown as it is.
QString record_kind_words(const QString& table);
/// A value as the store has it, written as a quantity by its column's kind: a mass, a day, a temperature.
QString value_words(const QString& column, const QString& value, const Habits& habits);
/// "strips: 12, before 21" as one sentence.
QString correction_words(const work::CorrectionLine& line, const Habits& habits);
/// What is to be known of a treatment beside its figures: entered late, past its limit, supers on, void, corrected, note.
QString treatment_notes(const work::RegisterLine& line, const Habits& habits);
/// "11 of 12, 1 missing"; empty while strips hang.
QString pulled_words(const work::RegisterLine& line);
/// "dead", "gone", "no strips hung", "left untreated".
QString hive_state_words(const QString& state);

} // namespace soakbook::ui
