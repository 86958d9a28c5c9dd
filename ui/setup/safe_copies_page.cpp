// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/safe_copies_page.h"

#include "core/work/safe_copies.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"

#include <QDir>
#include <QFileInfo>

namespace soakbook::ui {

SafeCopiesPage::SafeCopiesPage(Desk& desk, const QString& folder) : m_desk(desk), m_folder(folder) {
    //: Head of a page of Set-up.
    auto* card = new Card(tr("Safe copies"));
    const bool is_kept = !m_folder.isEmpty();
    if (is_kept)
        //: Explains safe copies; nothing of computing.
        card->column()->addWidget(make_soft_label(tr("When the workbook is closed, Soakbook copies it, reads the copy back in full, and keeps the newest twenty. "
                                                     "They lie on this computer: carry one to another place now and then. To go back to one, open it like any workbook."),
                                                  Type::body));
    m_state = make_label({}, Type::body, nullptr, true);
    m_state->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_state->setObjectName(QStringLiteral("safe_copy_state"));
    card->column()->addWidget(m_state);
    //: A button.
    m_button = card->add_head_button(tr("Make a copy now"), true);
    m_button->setObjectName(QStringLiteral("safe_copy_now"));
    m_button->setVisible(is_kept);
    m_answer = make_soft_label({}, Type::body);
    card->column()->addWidget(m_answer);
    column()->addWidget(card);
    column()->addStretch();
    connect(m_button, &QPushButton::clicked, this, [this] { copy_now(); });
}

void SafeCopiesPage::refresh() {
    if (m_folder.isEmpty()) {
        //: In place of where safe copies are: the worked example is open
        m_state->setText(tr("This is the example: what is entered here is not kept, and no copy is made of it. Your own workbook has its copies here."));
        return;
    }
    const work::SafeCopyState state = work::safe_copy_state(m_desk.workbook(), m_folder);
    if (state.path.isEmpty()) {
        //: %1 is a folder.
        m_state->setText(tr("There is no copy yet. They go to %1").arg(QDir::toNativeSeparators(m_folder)));
        return;
    }
    //: %1 is a file; %n entries were made after the copy.
    m_state->setText(tr("Newest copy: %1. Entries made since: %n.", nullptr, static_cast<int>(state.entries_behind)).arg(QDir::toNativeSeparators(state.path)));
}

void SafeCopiesPage::copy_now() {
    const auto made = work::make_safe_copy(m_desk.workbook(), m_folder);
    //: Said after a copy was made.
    m_answer->setText(made ? tr("Copied, read back in full, and good.") : refusal_words(made.error(), m_desk));
    refresh();
}

void SafeCopiesPage::take_focus() { (m_folder.isEmpty() ? static_cast<QWidget*>(m_state) : m_button)->setFocus(); }

} // namespace soakbook::ui
