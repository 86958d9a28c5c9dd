// SPDX-License-Identifier: GPL-3.0-or-later
// Labels onto sheets or a roll.
#pragma once

#include "ui/print/label_layout.h"
#include "ui/print/label_sheet.h"
#include "ui/print/pdf_file.h"

#include <QPrinter>

#include <memory>

namespace soakbook::ui {

/// A label that could not be set, and which one.
struct LabelRefusal {
    std::size_t index = 0;
    LabelTooSmall why;
};

/// All labels of one order, set and ready to paint.
struct LabelRun {
    LabelSheet sheet;
    int start = 0; ///< the label on the first sheet that is printed first, from 0
    std::vector<LabelLayout> labels;

    int pages() const;
    /// The pieces that any of the labels had to do without, in order.
    std::vector<LabelPiece> left_out() const;
};

/// Sets all labels, alike where they can be. `start` counts from 0 and is kept within the sheet.
tl::expected<LabelRun, LabelRefusal> set_labels(const std::vector<LabelContent>& contents, const LabelSheet& sheet, int start,
                                                LabelStyle style);

/// The run as pages to paint.
PagedPaper paper_of(std::shared_ptr<const LabelRun> run);
PagedPaper test_page_of(const LabelSheet& sheet);

/// Sets page size and margins of a printer to those of `paper`, then paints all its pages. A printer without a printer
/// name and with a file name writes a PDF.
std::optional<PaperFailure> print_on(QPrinter& printer, const PagedPaper& paper);
/// Tells the printer the page's size and that margins are ours.
void set_page(QPrinter& printer, QSizeF page);

} // namespace soakbook::ui
