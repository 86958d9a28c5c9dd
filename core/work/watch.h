// SPDX-License-Identifier: GPL-3.0-or-later
// For whoever shows the workbook: told after each piece of work, and what stands in its title.
#pragma once

#include <QString>

#include <functional>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// Calls `tell` after each piece of work; the result ends it.
std::function<void()> watch(book::Workbook& workbook, std::function<void()> tell);
/// The file's name without its folder, and how many entries its history holds.
QString workbook_name(const book::Workbook& workbook);
QString workbook_path(const book::Workbook& workbook);
qint64 entry_number(const book::Workbook& workbook);
/// Whether it was opened for looking alone.
bool is_for_looking(const book::Workbook& workbook);
/// The name of the operation; empty before the welcome.
QString operation_name(const book::Workbook& workbook);

} // namespace soakbook::work
