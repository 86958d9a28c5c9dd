// SPDX-License-Identifier: GPL-3.0-or-later
// What every printed sheet has in common, handed in by whoever prints.
#pragma once

#include "ui/print/paper_sheet.h"

namespace soakbook::ui {

struct SheetHead {
    QString workbook; ///< the operation's or the file's name
    QString entry;    ///< "Entry 1 204": how far the workbook had come
    QString printed;  ///< the day
    PaperSize paper = PaperSize::a4;
};

/// An empty sheet with that head.
inline PaperSheet sheet_with(const SheetHead& head, const QString& title, const QString& subtitle, bool landscape = false) {
    PaperSheet sheet;
    sheet.title = title;
    sheet.subtitle = subtitle;
    sheet.page.size = head.paper;
    sheet.page.landscape = landscape;
    sheet.workbook = head.workbook;
    sheet.entry = head.entry;
    sheet.printed = head.printed;
    return sheet;
}

/// Rows of empty boxes to write in.
inline std::vector<SheetRow> empty_rows(int n) { return std::vector<SheetRow>(static_cast<std::size_t>(n)); }

} // namespace soakbook::ui
