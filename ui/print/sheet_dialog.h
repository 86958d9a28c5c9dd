// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet before it is printed.
#pragma once

#include "ui/print/paper_sheet.h"
#include "ui/print/pdf_file.h"

#include <QDialog>

#include <functional>

class QLabel;
class QPushButton;

namespace soakbook::ui {

class PreviewPane;

class SheetDialog : public QDialog {
    Q_OBJECT

public:
    /// `file` is the name a PDF is offered under, without ending. `printed` is called each time it was printed or saved; words
    /// it gives back are shown.
    using Printed = std::function<QString()>;
    SheetDialog(const PaperSheet& sheet, const QString& file, Printed printed, QWidget* parent = nullptr);

    PreviewPane* pane() const { return m_pane; }

private:
    void print();
    void save();
    void finish(bool done, const QString& words);

    PagedPaper m_paper;
    QString m_file;
    Printed m_printed;
    PreviewPane* m_pane;
    QLabel* m_words;
};

} // namespace soakbook::ui
