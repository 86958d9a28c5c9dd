// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/key_sheet.h"

#include "ui/parts/page_scroll.h"
#include "ui/parts/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

KeySheet::KeySheet(const QStringList& places, QWidget* parent) : QDialog(parent) {
    setAttribute(Qt::WA_DeleteOnClose);
    //: Title of the sheet of keys
    setWindowTitle(tr("Keys"));
    set_kind(this, "plain_card");
    QList<std::pair<QString, QString>> keys;
    for (int i = 0; i < places.size(); ++i) {
        keys.append({QStringLiteral("Ctrl+%1").arg(i + 1), places[i]});
    }
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl+F"), tr("Find a code or a name, typed or scanned")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl+Z"), tr("Take back the last piece of work")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl+Shift+Z"), tr("Do again what was taken back")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl+H"), tr("History: what the row you are on said before, who changed it, when and why")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Enter"), tr("In a form: the next field. In a table: open the row")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Shift+Enter"), tr("In a form: the field before. In a note: a new line")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl+Enter"), tr("Make the entry; answer a question with: keep it as it is")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Esc"), tr("Leave a form; twice, when something was typed")});
    //: Beside the keys on the sheet of keys; "How?" stands on a button beside a figure
    keys.append({QStringLiteral("F3"), tr("How? Shows how the figures of the form or the page are worked out; again or Esc puts it away")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("F4"), tr("In a day: the calendar. In a choice: the list")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("Ctrl++  Ctrl+-  Ctrl+0"), tr("Larger text, smaller text, as at first")});
    //: Beside the keys on the sheet of keys
    keys.append({QStringLiteral("F1"), tr("This sheet")});

    auto* page = new PageScroll(PageScroll::Width::full, this);
    page->column()->addWidget(make_label(windowTitle(), Type::heading, page));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(24);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(1, 1);
    for (int i = 0; i < keys.size(); ++i) {
        grid->addWidget(make_label(keys[i].first, Type::code, page), i, 0, Qt::AlignTop);
        grid->addWidget(make_label(keys[i].second, Type::body, page, true), i, 1);
    }
    page->column()->addLayout(grid);
    //: Closes the sheet of keys
    auto* close = new QPushButton(tr("Close"), this);
    close->setDefault(true);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    page->column()->addWidget(close, 0, Qt::AlignLeft);
    page->column()->addStretch(1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(page);
    const QSize room = screen()->availableSize() - QSize(48, 64);
    resize(std::min(scaled(620), room.width()), std::min(scaled(640), room.height()));
    close->setFocus();
}

} // namespace soakbook::ui
