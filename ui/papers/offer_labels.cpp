// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/offer_labels.h"

#include "ui/parts/refusal_words.h"
#include "ui/print/label_dialog.h"
#include "ui/print/sheet_dialog.h"

namespace soakbook::ui {

namespace {

/// Notes it, and gives back the words of a refusal; nothing when all is well.
std::function<QString()> noting(Desk& desk, NotePrinted note) {
    return [&desk, note = std::move(note)] {
        const auto refusal = note();
        return refusal ? refusal_words(*refusal, desk) : QString();
    };
}

void open(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace

void offer_labels(Desk& desk, std::vector<LabelContent> labels, QWidget* parent, NotePrinted note) {
    if (labels.empty())
        return;
    auto* dialog = new LabelDialog(std::move(labels), desk.locale(), noting(desk, std::move(note)), parent);
    dialog->setObjectName(QStringLiteral("label_dialog"));
    open(dialog);
}

void offer_sheet(Desk& desk, const PaperSheet& sheet, const QString& file, QWidget* parent, NotePrinted note) {
    auto* dialog = new SheetDialog(sheet, file, noting(desk, std::move(note)), parent);
    dialog->setObjectName(QStringLiteral("sheet_dialog"));
    open(dialog);
}

} // namespace soakbook::ui
