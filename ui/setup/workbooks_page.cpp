// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/workbooks_page.h"

#include "core/work/salvage.h"
#include "core/work/watch.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/theme.h"
#include "ui/safekeeping/comparison_window.h"
#include "ui/safekeeping/salvage_window.h"

#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

WorkbooksPage::WorkbooksPage(Desk& desk, const WorkbookDoors& doors) : m_desk(desk) {
    //: Head of a page of Set-up.
    auto* card = new Card(tr("Workbooks"));
    //: On a page of Set-up; %1 is a file.
    card->column()->addWidget(make_soft_label(tr("Open now: %1").arg(QDir::toNativeSeparators(work::workbook_path(desk.workbook()))), Type::body));
    //: A button.
    add(*card, tr("Open another workbook..."), QStringLiteral("workbook_other"), doors.open_other);
    //: A button.
    add(*card, tr("Make a new workbook..."), QStringLiteral("workbook_new"), doors.make_new);
    //: A button.
    add(*card, tr("Open the worked example"), QStringLiteral("workbook_example"), doors.open_example);
    column()->addWidget(card);

    //: Head of a card of Set-up: copies of the workbook that were carried elsewhere.
    auto* copies = new Card(tr("Copies and damaged files"));
    //: Explains the button beneath.
    copies->column()->addWidget(make_soft_label(tr("When a copy of this workbook was written in elsewhere: see what stands in only one of the two, and take over what is missing here."), Type::body));
    //: A button.
    add(*copies, tr("Compare with another copy..."), QStringLiteral("workbook_compare"), [this] {
        //: Title of the window that asks for a file.
        if (const QString path = ask_for_file(tr("The other copy of this workbook")); !path.isEmpty())
            open_comparison(m_desk, path, window());
    });
    //: Explains the button beneath.
    copies->column()->addWidget(make_soft_label(tr("When a workbook no longer opens: see what can still be read of it. The newest safe copy is the better way back."), Type::body));
    //: A button.
    add(*copies, tr("Read what is left in a damaged file..."), QStringLiteral("workbook_salvage"), [this] {
        //: Title of the window that asks for a file.
        if (const QString path = ask_for_file(tr("The damaged workbook")); !path.isEmpty())
            read_damaged(path);
    });
    m_answer = make_soft_label({}, Type::body);
    m_answer->setObjectName(QStringLiteral("workbook_answer"));
    m_answer->hide();
    copies->column()->addWidget(m_answer);
    column()->addWidget(copies);
    column()->addStretch();
}

void WorkbooksPage::add(Card& card, const QString& words, const QString& name, const std::function<void()>& door) {
    if (!door)
        return;
    auto* button = new QPushButton(words);
    button->setObjectName(name);
    button->setAutoDefault(true);
    connect(button, &QPushButton::clicked, this, [door] { door(); });
    card.column()->addWidget(button, 0, Qt::AlignLeft);
    if (!m_first)
        m_first = button;
}

QString WorkbooksPage::ask_for_file(const QString& title) {
    m_answer->hide();
    return QFileDialog::getOpenFileName(window(), title, {},
                                        //: The kind of files, in the window that asks for one.
                                        tr("Workbooks (*.soakbook);;All files (*)"));
}

// Reading the open file a second time would drop the lock that keeps others from writing in it.
void WorkbooksPage::read_damaged(const QString& path) {
    if (work::is_one_file(path, work::workbook_path(m_desk.workbook()))) {
        //: In answer to the choice of a damaged file.
        m_answer->setText(tr("That is the workbook that is open. What it holds stands in its pages and in the register."));
        m_answer->show();
        return;
    }
    open_salvage(path, m_desk, window());
}

void WorkbooksPage::take_focus() {
    if (m_first)
        m_first->setFocus();
}

} // namespace soakbook::ui
