// SPDX-License-Identifier: GPL-3.0-or-later
// What is left in a damaged workbook, in words.
#pragma once

#include "core/work/salvage.h"

namespace soakbook::ui {

class Habits;

/// Why nothing was read, with the way out.
QString not_salvaged_words(work::NotSalvaged why, const QString& path);
/// How many of a table's records were read, and what is known of the rest.
QString left_table_words(const work::LeftTable& table);
/// How many records were read of the whole workbook.
QString left_words(const work::WhatIsLeft& left);
/// What a column is called; the record's own number has a name here.
QString left_column_words(const QString& column);
QString how_sure_words(work::HowSure sure);
/// The tables' names, columns and values as they go into files for a spreadsheet.
work::TableWording table_wording(const Habits& habits);

} // namespace soakbook::ui
