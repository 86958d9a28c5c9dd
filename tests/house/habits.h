// SPDX-License-Identifier: GPL-3.0-or-later
// Habits that every file keeps: its licence line, its length, no clock below the edge, words for translators.
#pragma once

#include "tests/house/source_tree.h"

namespace soakbook::house {

/// Sources, scripts and build files without the licence line among their first two lines.
std::vector<Breach> missing_licence_line(const SourceFile& file);
/// Sources longer than fits in the head: 500 lines.
std::vector<Breach> too_long(const SourceFile& file);
/// The clock read elsewhere than at the edge: ui/parts/desk* and habits.cpp, ui/shell, app and the tests.
std::vector<Breach> clock_below_the_edge(const SourceFile& file);
/// A file opened past SQLite, except where it is known which files those are, and that none of them is a workbook that is open:
/// closing one would drop SQLite's locks in the whole process.
std::vector<Breach> opened_past_sqlite(const SourceFile& file);
/// Chance drawn in maths or work, where it must come in as an argument.
std::vector<Breach> chance_in_sums_or_work(const SourceFile& file);
/// A text for people without a comment for the translator in the three lines before it.
std::vector<Breach> untold_translator(const SourceFile& file);
/// Words that have no place in the tree: unfinished work, and paths of some machine.
std::vector<Breach> unfit_words(const SourceFile& file);

} // namespace soakbook::house
