// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/safe_copies_page.h"

#include "core/exchange/date_text.h"
#include "core/work/watch.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/safekeeping/comparison_window.h"
#include "ui/setup/copies_table.h"
#include "ui/setup/copy_ages.h"
#include "ui/setup/copy_keeper.h"
#include "ui/setup/second_place_card.h"
#include "ui/setup/state_line.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

SafeCopiesPage::SafeCopiesPage(Desk& desk, const WorkbookDoors& doors)
    : m_desk(desk), m_doors(doors), m_habits([&desk] { return desk.now(); }) {
    build_state();
    if (m_doors.copy_folder.isEmpty()) {
        column()->addStretch();
        return;
    }
    m_second = new SecondPlaceCard(m_desk, m_doors.copy_folder, m_doors.keeper);
    build_list();
    column()->addWidget(m_second);
    column()->addStretch();
    if (CopyKeeper* keeper = m_doors.keeper) {
        connect(keeper, &CopyKeeper::news, this, [this] {
            refresh_state();
            refresh_list();
        });
        connect(keeper, &CopyKeeper::sent, this, [this](const QString& path, qint64 newest, const QString& seal) {
            //: After a copy was made for somebody; %1 a file, %2 the number of an entry, %3 the beginning of a seal
            answer(tr("%1 is a sound copy, read back in full. Its newest entry is %2, and its seal begins %3: printed beside a register, "
                      "these show later whether anything was changed.")
                       .arg(QDir::toNativeSeparators(path), m_desk.count(newest), seal));
        });
        connect(keeper, &CopyKeeper::not_sent, this, &SafeCopiesPage::answer);
    }
}

void SafeCopiesPage::build_state() {
    //: Head of a page of Set-up.
    auto* card = new Card(tr("Safe copies"));
    m_state = new StateLine;
    m_state->setObjectName(QStringLiteral("safe_copy_state"));
    card->column()->addWidget(m_state);
    m_progress = new QProgressBar;
    m_progress->setObjectName(QStringLiteral("safe_copy_progress"));
    m_progress->hide();
    card->column()->addWidget(m_progress);
    m_where = make_soft_label({}, Type::body);
    m_where->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    card->column()->addWidget(m_where);
    m_answer = make_label({}, Type::body, nullptr, true);
    m_answer->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_answer->setObjectName(QStringLiteral("safe_copy_answer"));
    m_answer->hide();
    card->column()->addWidget(m_answer);
    //: A button: a copy for an inspector, an adviser, another computer.
    m_send = card->add_head_button(tr("Send a copy..."));
    m_send->setObjectName(QStringLiteral("safe_copy_send"));
    //: A button.
    m_now = card->add_head_button(tr("Make a copy now"), true);
    m_now->setObjectName(QStringLiteral("safe_copy_now"));
    const bool is_kept = !m_doors.copy_folder.isEmpty();
    m_now->setVisible(is_kept);
    m_send->setVisible(is_kept && m_doors.keeper != nullptr);
    m_where->setVisible(is_kept);
    column()->addWidget(card);
    connect(m_now, &QPushButton::clicked, this, &SafeCopiesPage::copy_now);
    connect(m_send, &QPushButton::clicked, this, &SafeCopiesPage::send_copy);
}

void SafeCopiesPage::build_list() {
    //: Head of a card: the list of safe copies
    auto* card = new Card(tr("Copies of this workbook"));
    m_copies = new CopiesTable(m_desk);
    card->column()->addWidget(m_copies);
    m_choice = make_soft_label({}, Type::body);
    m_choice->setObjectName(QStringLiteral("safe_copy_choice"));
    card->column()->addWidget(m_choice);
    //: A button: shows how the chosen copy differs from the workbook.
    m_differs = new QPushButton(tr("What is different"));
    m_differs->setObjectName(QStringLiteral("safe_copy_differs"));
    //: A button: the chosen copy takes the workbook's place.
    m_put_back = new QPushButton(tr("Put this copy back..."));
    m_put_back->setObjectName(QStringLiteral("safe_copy_put_back"));
    auto* buttons = new FlowLayout(8, 8);
    for (QPushButton* button : {m_differs, m_put_back}) {
        button->setAutoDefault(true);
        buttons->addWidget(button);
    }
    card->column()->addLayout(buttons);
    column()->addWidget(card);
    connect(m_copies, &RecordTable::current_changed, this, &SafeCopiesPage::refresh_choice);
    connect(m_copies, &RecordTable::opened, this, &SafeCopiesPage::compare);
    connect(m_differs, &QPushButton::clicked, this, &SafeCopiesPage::compare);
    connect(m_put_back, &QPushButton::clicked, this, &SafeCopiesPage::put_back);
}

void SafeCopiesPage::refresh() {
    refresh_state();
    if (!m_copies)
        return;
    m_second->refresh();
    refresh_list();
}

void SafeCopiesPage::refresh_state() {
    if (m_doors.copy_folder.isEmpty()) {
        //: In place of where safe copies are: the worked example is open
        m_state->set(std::nullopt, tr("This is the example: what is entered here is not kept, and no copy is made of it. Your own workbook has its copies here."));
        return;
    }
    const auto stage = m_doors.keeper ? m_doors.keeper->stage() : CopyKeeper::Stage::idle;
    m_now->setEnabled(stage == CopyKeeper::Stage::idle || stage == CopyKeeper::Stage::carrying);
    m_progress->setVisible(stage == CopyKeeper::Stage::copying || stage == CopyKeeper::Stage::checking);
    // How long the check takes nobody knows: the bar runs.
    m_progress->setRange(0, stage == CopyKeeper::Stage::checking ? 0 : 100);
    m_progress->setValue(m_doors.keeper ? m_doors.keeper->percent() : 0);
    const QString folder = QDir::toNativeSeparators(m_doors.copy_folder);
    //: Explains safe copies; %1 is a folder. Nothing of computing.
    m_where->setText(tr("They lie in %1. Soakbook makes one by itself after every twentieth entry or half an hour, and when the workbook is closed; "
                        "each is read back in full before it counts. The newest twenty stay, then one of each day, week, month and year.")
                         .arg(folder));
    if (stage == CopyKeeper::Stage::copying) {
        //: The state of the safe copies; %1 in percent
        m_state->set(State::resting, tr("A copy is being made beside your work: %1 % of it is there.").arg(m_doors.keeper->percent()));
        return;
    }
    if (stage == CopyKeeper::Stage::checking) {
        //: The state of the safe copies
        m_state->set(State::resting, tr("The copy is being read back in full. You can go on working."));
        return;
    }
    const work::SafeCopyState state = work::safe_copy_state(m_desk.workbook(), m_doors.copy_folder);
    QString words;
    State shape = State::ready;
    if (state.path.isEmpty()) {
        //: The state of the safe copies
        words = tr("There is no safe copy yet.");
        shape = State::near;
    } else {
        const QDateTime at = QFileInfo(state.path).lastModified();
        const maths::Instant made{at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
        const QString ago = age_words(m_desk, made);
        if (state.entries_behind > 0) {
            //: The state of the safe copies; %1 such as "14 min ago", %n entries were made after it
            words = tr("%n entry(ies) since the last good copy (%1).", nullptr, static_cast<int>(state.entries_behind)).arg(ago);
            // Copies follow the work by half an hour: only one that is a day behind is late.
            shape = maths::hours_between(made, m_desk.now()) > 24 ? State::near : State::resting;
        } else {
            //: The state of the safe copies; %1 such as "14 min ago"
            words = tr("Everything is in a safe copy: made %1, read back in full, and good.").arg(ago);
        }
    }
    const QString failure = m_doors.keeper ? m_doors.keeper->failure() : QString();
    if (!failure.isEmpty())
        words = failure + QLatin1Char(' ') + words;
    m_state->set(failure.isEmpty() ? shape : State::past, words);
}

void SafeCopiesPage::refresh_list() {
    std::vector<work::CopyLine> lines = work::safe_copies(m_desk.workbook(), m_doors.copy_folder);
    if (m_doors.keeper) {
        std::vector<work::CopyLine> elsewhere = m_doors.keeper->second_copies();
        work::place_in_line(m_desk.workbook(), elsewhere);
        lines.insert(lines.end(), elsewhere.begin(), elsewhere.end());
    }
    m_copies->set_copies(std::move(lines));
    refresh_choice();
}

void SafeCopiesPage::refresh_choice() {
    const work::CopyLine* copy = m_copies->current();
    m_differs->setEnabled(copy != nullptr);
    m_put_back->setEnabled(copy != nullptr && m_doors.put_back);
    m_put_back->setVisible(static_cast<bool>(m_doors.put_back));
    if (!copy) {
        //: Beneath the list of safe copies, while none is chosen
        m_choice->setText(m_copies->rows_model()->rowCount() == 0 ? QString() : tr("Choose a copy to see what is different in it, or to go back to it."));
    } else if (!copy->of_this_line) {
        //: Beneath the list, of the chosen copy
        m_choice->setText(tr("It was kept before an older copy was put back: it holds entries that do not stand in the workbook. The button \"What is different\" shows them."));
    } else if (copy->entries_since == 0) {
        //: Beneath the list, of the chosen copy
        m_choice->setText(tr("It holds everything that stands in the workbook."));
    } else {
        //: Beneath the list, of the chosen copy; %n entries
        m_choice->setText(tr("If it is put back, %n entry(ies) made since would no longer stand in the workbook. The workbook of today is kept in this list first.",
                             nullptr, static_cast<int>(copy->entries_since)));
    }
}

void SafeCopiesPage::answer(const QString& words) {
    m_answer->setText(words);
    m_answer->setVisible(!words.isEmpty());
}

void SafeCopiesPage::copy_now() {
    answer({});
    if (m_doors.keeper) {
        m_doors.keeper->copy_now();
    } else {
        const auto made = work::make_safe_copy(m_desk.workbook(), m_doors.copy_folder);
        //: Said after a copy was made.
        answer(made ? tr("Copied, read back in full, and good.") : refusal_words(made.error(), m_desk));
    }
    refresh();
}

void SafeCopiesPage::send_copy() {
    answer({});
    const QString stem = QFileInfo(work::workbook_path(m_desk.workbook())).completeBaseName();
    const QString name = plain_file_name(stem + QLatin1Char(' ') + exchange::write_day_iso(m_desk.today()), QStringLiteral("soakbook"));
    //: The kind of files, in a window that asks for a file name.
    const QString kind = tr("Workbooks (*.soakbook)");
    //: Title of a window that asks for a file name.
    const QString to = ask_file_to_write(window(), {tr("Send a copy"), name, {kind}});
    if (!to.isEmpty())
        m_doors.keeper->send_copy(to);
}

void SafeCopiesPage::put_back() {
    const work::CopyLine* copy = m_copies->current();
    if (!copy)
        return;
    const QString path = copy->path;
    QString what = m_choice->text();
    //: In the form that puts a safe copy back.
    what += QLatin1Char(' ') + tr("The copy is read through first. Codes given out since stay given out, so that no label is ever printed twice. The workbook is closed and opened again.");
    //: Title of a form; %1 a day and time.
    const QString title = tr("Put back the copy of %1").arg(m_desk.moment(copy->made));
    //: A button of a form: the chosen safe copy takes the workbook's place.
    ask_reason(m_habits, this, title, what, tr("Put it back"),
               [this, path](const QString& reason) -> std::optional<work::Refusal> {
                   m_doors.put_back(path, reason);
                   return std::nullopt;
               })
        ->setObjectName(QStringLiteral("put_back_form"));
}

void SafeCopiesPage::compare() {
    if (const work::CopyLine* copy = m_copies->current())
        open_comparison(m_desk, copy->path, window());
}

void SafeCopiesPage::take_focus() {
    if (m_copies && m_copies->rows_model()->rowCount() > 0)
        m_copies->setFocus();
    else if (!m_doors.copy_folder.isEmpty())
        m_now->setFocus();
    else
        setFocus();
}

} // namespace soakbook::ui
