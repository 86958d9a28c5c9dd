// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/workbooks_page.h"

#include "core/work/watch.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/theme.h"

#include <QDir>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

WorkbooksPage::WorkbooksPage(Desk& desk, const WorkbookDoors& doors) {
    //: Head of a page of Set-up.
    auto* card = new Card(tr("Workbooks"));
    //: On a page of Set-up; %1 is a file.
    card->column()->addWidget(make_soft_label(tr("Open now: %1").arg(QDir::toNativeSeparators(work::workbook_path(desk.workbook()))), Type::body));
    const auto add = [&](const QString& words, const QString& name, const std::function<void()>& door) {
        if (!door)
            return;
        auto* button = new QPushButton(words);
        button->setObjectName(name);
        button->setAutoDefault(true);
        connect(button, &QPushButton::clicked, this, [door] { door(); });
        card->column()->addWidget(button, 0, Qt::AlignLeft);
        if (!m_first)
            m_first = button;
    };
    //: A button.
    add(tr("Open another workbook..."), QStringLiteral("workbook_other"), doors.open_other);
    //: A button.
    add(tr("Make a new workbook..."), QStringLiteral("workbook_new"), doors.make_new);
    //: A button.
    add(tr("Open the worked example"), QStringLiteral("workbook_example"), doors.open_example);
    column()->addWidget(card);
    column()->addStretch();
}

void WorkbooksPage::take_focus() {
    if (m_first)
        m_first->setFocus();
}

} // namespace soakbook::ui
