// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/print_actions.h"

#include "ui/print/ask_file.h"
#include "ui/print/label_printer.h"

#include <QCoreApplication>
#include <QPrintDialog>
#include <QPrinter>

namespace soakbook::ui {

namespace {

struct PrintActionsWords {
    Q_DECLARE_TR_FUNCTIONS(PrintActions)
};

} // namespace

PrintOutcome print_pages(QWidget* parent, const PagedPaper& paper) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(paper.title);
    set_page(printer, paper.page);
    QPrintDialog dialog(&printer, parent);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
    //: title of the window that asks which printer
    dialog.setWindowTitle(PrintActionsWords::tr("Print"));
    if (dialog.exec() != QDialog::Accepted) {
        return {};
    }
    if (const auto failure = print_on(printer, paper)) {
        return {false, paper_failure_words(*failure)};
    }
    //: after pages went to the printer
    return {true, PrintActionsWords::tr("%n page(s) sent to the printer.", nullptr, paper.pages)};
}

PrintOutcome save_pages(QWidget* parent, const PagedPaper& paper, const QString& suggested) {
    //: title of a window that asks for a file's name
    const QString path = ask_file_to_write(parent, {PrintActionsWords::tr("Save as PDF"),
                                                    suggested,
                                                    //: kind of file
                                                    {PrintActionsWords::tr("PDF (*.pdf)")}});
    if (path.isEmpty()) {
        return {};
    }
    if (const auto failure = write_pdf(paper, path)) {
        return {false, paper_failure_words(*failure)};
    }
    //: after saving; %1 is a file's name
    return {true, PrintActionsWords::tr("Saved as %1.").arg(path)};
}

} // namespace soakbook::ui
