// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet or roll of labels, told by its dimensions alone.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <optional>
#include <vector>

namespace soakbook::ui {

/// All lengths in millimetres. A roll is a page of one label.
struct LabelSheet {
    QSizeF page{210, 297};
    QSizeF label{63.5, 38.1};
    int columns = 3;
    int rows = 7;
    double left = 7.25;
    double top = 15.15;
    double pitch_x = 66.0;
    double pitch_y = 38.1;
    double offset_x = 0; ///< what this printer is off, to the right
    double offset_y = 0; ///< what this printer is off, downward
    int dots_per_inch = 300; ///< the grid that code squares are set on

    int labels_a_page() const { return columns * rows; }
    /// The rectangle of label `n` (from 0, row by row) on its page, the offset included.
    QRectF label_at(int n) const;
    bool is_roll() const { return columns == 1 && rows == 1 && page == label; }
    bool operator==(const LabelSheet&) const = default;
};

/// A roll: every label is a page of its own.
LabelSheet roll_label(QSizeF label);

/// The sheets that every stationer sells, by dimension. Sources: A4 and Letter sheets as printed on the packs, from memory;
/// printers differ, hence the offset and the test page.
std::vector<LabelSheet> stock_sheets();

/// "63.5 x 38.1 mm, 21 on A4"; another page size is told in mm. Inches where the sheet is a Letter sheet.
QString sheet_name(const LabelSheet& sheet);

/// Why a sheet cannot be printed on.
enum class SheetFault {
    no_labels,     ///< no columns, no rows, or more than a page could ever hold
    label_too_small, ///< under 10 mm either way
    page_too_large,  ///< over 2 m either way
    off_the_page,  ///< a label reaches over an edge of the page
    overlap,       ///< labels lie over each other
    offset_too_far ///< more than 20 mm: that is no printer's tolerance
};

/// The first thing that is wrong with the sheet, or nothing.
std::optional<SheetFault> fault_of(const LabelSheet& sheet);
/// The fault in a sentence, with the way out.
QString sheet_fault_words(SheetFault fault);

} // namespace soakbook::ui
