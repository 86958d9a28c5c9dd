// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/plain_window.h"

#include "ui/parts/theme.h"

#include <QDialog>
#include <QVBoxLayout>

namespace soakbook::ui {

QVBoxLayout* lay_out_window(QDialog* dialog, const QString& name, const QString& title) {
    dialog->setObjectName(name);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowModality(Qt::WindowModal);
    dialog->setWindowTitle(title);
    set_kind(dialog, "plain_card");
    auto* column = new QVBoxLayout(dialog);
    column->setContentsMargins(page_margin, page_margin, page_margin, 16);
    column->setSpacing(12);
    return column;
}

} // namespace soakbook::ui
