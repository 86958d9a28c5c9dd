// SPDX-License-Identifier: GPL-3.0-or-later
// Chooses several rows of a table at once, whatever keys are held down meanwhile.
#pragma once

#include <QtGlobal>

#include <vector>

namespace soakbook::ui {

class RecordTable;

/// Gives back whether one of them is there; what was chosen stays where none is.
bool choose_rows(RecordTable& table, const std::vector<qint64>& ids);
/// The first row, where nothing is chosen.
void choose_some_row(RecordTable& table);

} // namespace soakbook::ui
