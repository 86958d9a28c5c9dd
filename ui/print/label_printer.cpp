// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_printer.h"

#include "ui/print/label_paint.h"
#include "ui/print/label_setting.h"

#include <QCoreApplication>
#include <QPageLayout>
#include <QPageSize>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct LabelPrinterWords {
    Q_DECLARE_TR_FUNCTIONS(LabelPrinter)
};

} // namespace

int LabelRun::pages() const {
    const int all = start + static_cast<int>(labels.size());
    const int a_page = std::max(1, sheet.labels_a_page());
    return labels.empty() ? 0 : (all + a_page - 1) / a_page;
}

std::vector<LabelPiece> LabelRun::left_out() const {
    LabelPieces gone;
    for (const LabelLayout& label : labels) {
        for (const LabelPiece piece : label.left_out) {
            gone.set(static_cast<std::size_t>(piece));
        }
    }
    std::vector<LabelPiece> pieces;
    for (std::size_t i = 0; i < gone.size(); ++i) {
        if (gone.test(i)) {
            pieces.push_back(static_cast<LabelPiece>(i));
        }
    }
    return pieces;
}

tl::expected<LabelRun, LabelRefusal> set_labels(const std::vector<LabelContent>& contents, const LabelSheet& sheet,
                                                int start, LabelStyle style) {
    style.dots_per_inch = sheet.dots_per_inch;
    LabelRun run{sheet, std::clamp(start, 0, std::max(0, sheet.labels_a_page() - 1)), {}};
    run.labels.reserve(contents.size());
    // Labels that have the same things to say are set alike; a search for each would make thousands slow.
    struct Alike {
        LabelKind kind;
        bool reserved;
        LabelPieces pieces;
        LabelPlan plan;
    };
    std::vector<Alike> kinds;
    for (std::size_t i = 0; i < contents.size(); ++i) {
        const LabelContent& content = contents[i];
        const LabelPieces pieces = pieces_of(content, style);
        const auto same = std::find_if(kinds.begin(), kinds.end(), [&](const Alike& it) {
            return it.kind == content.kind && it.reserved == content.reserved && it.pieces == pieces;
        });
        auto label = lay_out_label(content, sheet.label, style, same == kinds.end() ? nullptr : &same->plan);
        if (!label) {
            return tl::unexpected(LabelRefusal{i, label.error()});
        }
        if (same == kinds.end()) {
            kinds.push_back({content.kind, content.reserved, pieces, label->plan});
        }
        run.labels.push_back(std::move(*label));
    }
    return run;
}

PagedPaper paper_of(std::shared_ptr<const LabelRun> run) {
    const int pages = run->pages();
    const QSizeF page = run->sheet.page;
    auto paint = [run = std::move(run)](QPainter& painter, int at) {
        const int a_page = run->sheet.labels_a_page();
        const int first = at * a_page - run->start;
        for (int place = 0; place < a_page; ++place) {
            const int i = first + place;
            if (i >= 0 && i < static_cast<int>(run->labels.size())) {
                paint_label(painter, run->labels[static_cast<std::size_t>(i)], run->sheet.label_at(place).topLeft(),
                            run->sheet.dots_per_inch);
            }
        }
    };
    //: title of a PDF file with labels
    const QString title = LabelPrinterWords::tr("Labels");
    return {page, pages, std::move(paint), title};
}

PagedPaper test_page_of(const LabelSheet& sheet) {
    //: title of a PDF file with one page to test a label sheet
    const QString title = LabelPrinterWords::tr("Test page for labels");
    return {sheet.page, 1, [sheet](QPainter& painter, int) { paint_test_page(painter, sheet); }, title};
}

void set_page(QPrinter& printer, QSizeF page) {
    const bool wide = page.width() > page.height();
    // A page size stands upright; what lies across is turned, or printers with a fixed paper would shrink it.
    QPageSize size(wide ? page.transposed() : page, QPageSize::Millimeter);
    printer.setFullPage(true);
    printer.setPageLayout(QPageLayout(size, wide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF()));
}

std::optional<PaperFailure> print_on(QPrinter& printer, const PagedPaper& paper) {
    if (paper.pages < 1) {
        return PaperFailure{PaperFault::nothing, {}};
    }
    printer.setDocName(paper.title);
    set_page(printer, paper.page);
    QPainter painter;
    if (!painter.begin(&printer)) {
        return PaperFailure{PaperFault::printer, printer.outputFileName()};
    }
    for (int page = 0; page < paper.pages; ++page) {
        if (page > 0 && !printer.newPage()) {
            return PaperFailure{PaperFault::printer, printer.outputFileName()};
        }
        painter.save();
        count_in_millimetres(painter, printer.logicalDpiX(), printer.logicalDpiY());
        paper.paint(painter, page);
        painter.restore();
    }
    return painter.end() && printer.printerState() != QPrinter::Error
               ? std::nullopt
               : std::optional(PaperFailure{PaperFault::printer, printer.outputFileName()});
}

} // namespace soakbook::ui
