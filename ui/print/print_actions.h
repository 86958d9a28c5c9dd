// SPDX-License-Identifier: GPL-3.0-or-later
// Sends pages to where the person says: a printer or a file.
#pragma once

#include "ui/print/pdf_file.h"

class QWidget;

namespace soakbook::ui {

struct PrintOutcome {
    bool done = false;
    QString words; ///< what to tell; empty when the person thought better of it
};

/// Asks for the printer and prints.
PrintOutcome print_pages(QWidget* parent, const PagedPaper& paper);
/// Asks for a name and writes a PDF. `suggested` is a name with its ending.
PrintOutcome save_pages(QWidget* parent, const PagedPaper& paper, const QString& suggested);

} // namespace soakbook::ui
