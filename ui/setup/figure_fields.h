// SPDX-License-Identifier: GPL-3.0-or-later
// One figure of Set-up as a field: its unit, its words, its value.
#pragma once

#include "core/work/figures.h"

#include <QString>

namespace soakbook::ui {

class Field;
class Habits;

/// What stands before the field: "Rest after sealing".
QString figure_label(work::Figure figure);
/// What it is for, in a sentence.
QString figure_help(work::Figure figure);
/// A field that takes this figure in its unit.
Field* make_figure_field(work::Figure figure, const Habits& habits);
/// Its value in the unit of the store; nothing while it is empty.
std::optional<qint64> figure_value(const Field* field, work::Figure figure);
void set_figure_value(Field* field, work::Figure figure, std::optional<qint64> value);

} // namespace soakbook::ui
