// SPDX-License-Identifier: GPL-3.0-or-later
// Who may include whom: the floors of the house and its rooms.
#pragma once

#include "tests/house/source_tree.h"

namespace soakbook::house {

/// Includes of the house's own files that go up, or across to another place's room.
std::vector<Breach> includes_against_the_floors(const SourceFile& file);
/// Qt, SQLite or a database in the sums.
std::vector<Breach> machinery_in_maths(const SourceFile& file);
/// Windows, fonts, colours and painters below ui.
std::vector<Breach> widgets_below_ui(const SourceFile& file);
/// A library that reads workbooks, PDFs or codes in the test of the main job, which reads them with other programs alone.
std::vector<Breach> readers_in_the_main_job(const SourceFile& file);
/// Database headers, or SQL in quotation marks, outside core/book.
std::vector<Breach> sql_outside_the_book(const SourceFile& file);
/// A sum of core/maths called from ui, where only values are made, counted in units and compared.
std::vector<Breach> sums_called_from_ui(const SourceFile& file);
/// A folder's CMakeLists.txt below ui that links what belongs above it.
std::vector<Breach> links_against_the_floors(const SourceFile& file);

} // namespace soakbook::house
