// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/path_field.h"

#include "ui/parts/theme.h"

#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>

namespace soakbook::ui {

PathField::PathField(QWidget* parent) : TextField(parent) {
    //: Button beside the field for a file: opens a window of folders.
    auto* button = new QPushButton(tr("Choose..."), this);
    button->setObjectName(QStringLiteral("choose_path"));
    button->setAutoDefault(false);
    button->setProperty("beside", true);
    row()->setSpacing(scaled(8));
    row()->addWidget(button);
    connect(button, &QPushButton::clicked, this, &PathField::choose);
}

void PathField::choose() {
    //: Title of a window that asks for a file, and the kind of file.
    QFileDialog dialog(this, tr("Where the workbook is kept"), QString(), tr("Workbooks (*.soakbook)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("soakbook"));
    // A workbook that is there is never written over: the welcome refuses its name.
    dialog.setOption(QFileDialog::DontConfirmOverwrite);
    dialog.selectFile(QDir::fromNativeSeparators(value()));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return;
    set_value(QDir::toNativeSeparators(dialog.selectedFiles().constFirst()));
    note_edit();
    take_focus();
}

} // namespace soakbook::ui
