// SPDX-License-Identifier: GPL-3.0-or-later
// What all papers of a workbook have in common.
#pragma once

#include "ui/parts/desk.h"
#include "ui/print/sheet_head.h"

#include <QStringList>

namespace soakbook::ui {

/// The head of every sheet: whose workbook, how far it had come, the day, and the size of paper.
SheetHead paper_head(const Desk& desk);
/// "Entry 1234, seal 0f3a2b4c5d6e7f80": the newest sealed entry and the beginning of its seal, the same on every paper,
/// export and copy.
QString entry_and_seal(const Desk& desk);
/// What that is good for, in a sentence or two.
QString seal_words();
/// Who made it, as labels say it: the name of the operation and its address, a line each.
QStringList maker_lines(const Desk& desk);

} // namespace soakbook::ui
