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
/// Tells this workbook from every other, and is the same in its copies.
QString workbook_uid(const book::Workbook& workbook);
QString workbook_path(const book::Workbook& workbook);
qint64 entry_number(const book::Workbook& workbook);
/// Whether it was opened for looking alone.
bool is_for_looking(const book::Workbook& workbook);
/// What a paper or a copy of the workbook can be told by later: the newest sealed entry, and the beginning of its seal.
struct Anchor {
    qint64 entry = 0; ///< 0 before the first entry
    QString seal;     ///< the first 16 of the seal's 64 hexadecimal digits
};
Anchor anchor(const book::Workbook& workbook);
/// The name of the operation; empty before the welcome.
QString operation_name(const book::Workbook& workbook);

} // namespace soakbook::work
