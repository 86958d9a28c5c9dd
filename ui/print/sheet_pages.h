// SPDX-License-Identifier: GPL-3.0-or-later
// Sets a sheet on pages.
#pragma once

#include "ui/print/paper_sheet.h"
#include "ui/print/paper_text.h"
#include "ui/print/pdf_file.h"

#include <QLineF>
#include <QRectF>

#include <memory>
#include <vector>

namespace soakbook::ui {

/// Lines `first` up to but without `end` of a paragraph, at a place on the page.
struct SetLines {
    PaperText text;
    QPointF at;
    int first = 0;
    int end = 0;
    bool grey = false;
};

struct SetRule {
    QLineF line;
    double width = 0.15; ///< mm
};

struct SheetPageInk {
    std::vector<SetLines> texts;
    std::vector<SetRule> rules;
    std::vector<QRectF> boxes; ///< thin outlines
};

struct SheetPages {
    QSizeF page;
    QString title;
    std::vector<SheetPageInk> pages;
};

SheetPages set_pages(const PaperSheet& sheet);
void paint_sheet_page(QPainter& painter, const SheetPageInk& page);
PagedPaper paper_of(std::shared_ptr<const SheetPages> pages);
/// Sets and wraps up in one go.
PagedPaper paper_of(const PaperSheet& sheet);

} // namespace soakbook::ui
