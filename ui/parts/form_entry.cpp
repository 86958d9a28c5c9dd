// SPDX-License-Identifier: GPL-3.0-or-later
// How a form makes its entry: once, with what is refused or asked said where it belongs.
#include "ui/parts/cards.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/form.h"
#include "ui/parts/form_notice.h"
#include "ui/parts/habits.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/place.h"
#include "ui/parts/primary_button.h"
#include "ui/parts/record_table.h"
#include "ui/parts/refusal_words.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QPointer>
#include <QScopeGuard>
#include <QTimer>

#include <algorithm>

namespace soakbook::ui {

namespace {

/// A question must be seen before a key can answer it.
constexpr qint64 time_to_see_ms = 300;
/// How often a busy workbook is tried again: every 250 ms for 5 s.
constexpr int most_tries = 20;

/// A cell that is still being typed into gives its text to its table.
void finish_open_cell(const QWidget* form) {
    QWidget* focus = QApplication::focusWidget();
    if (focus == nullptr || !form->isAncestorOf(focus)) {
        return;
    }
    for (QWidget* above = focus->parentWidget(); above != nullptr && above != form; above = above->parentWidget()) {
        if (auto* view = qobject_cast<QAbstractItemView*>(above)) {
            view->setFocus();
            return;
        }
    }
}

/// A form that stays in its page shows again what the workbook says.
void refresh_place_around(const QWidget& form) {
    for (QWidget* above = form.parentWidget(); above != nullptr && !above->isWindow(); above = above->parentWidget()) {
        if (auto* place = qobject_cast<Place*>(above)) {
            QTimer::singleShot(0, place, &Place::refresh);
            return;
        }
    }
}

} // namespace

void FormFrame::commit() {
    const bool just_made = !m_edited && m_since_success.isValid() &&
                           m_since_success.elapsed() < std::max(400, QApplication::doubleClickInterval());
    if (m_running || m_again->isActive() || m_asked || just_made || !m_commit) {
        return;
    }
    finish_open_cell(this);
    settle_typing();
    put_notice_away();
    drop_complaints();
    if (!name_problems()) {
        m_tries = 0;
        run();
    }
}

void FormFrame::settle_typing() {
    // What follows from the last typing is worked out before the entry is made, not over the words of its refusal.
    if (m_settle->isActive()) {
        m_settle->stop();
        Q_EMIT edited();
    }
}

bool FormFrame::name_problems() {
    Field* first = nullptr;
    for (Field* field : m_order) {
        if (field->isVisibleTo(this) && !field->problem().isEmpty()) {
            field->show_problem();
            first = first == nullptr ? field : first;
        }
    }
    for (const RecordTable* table : first == nullptr ? m_body->findChildren<RecordTable*>() : QList<RecordTable*>()) {
        if (QWidget* cell = table->refused_cell()) {
            cell->setFocus();
            return true;
        }
    }
    if (first != nullptr) {
        first->take_focus();
        bring_into_view(first);
    }
    return first != nullptr;
}

void FormFrame::run() {
    if (m_running) {
        return;
    }
    m_running = true;
    m_primary->setEnabled(false);
    const QPointer<FormFrame> still_here(this);
    const auto open_again = qScopeGuard([still_here] {
        if (still_here) {
            still_here->m_running = false;
            still_here->m_primary->setEnabled(!still_here->m_again->isActive() && still_here->m_habits.no_entries_why().isEmpty());
        }
    });
    work::Confirmed confirmed;
    for (const auto& [why, field] : m_confirmed) {
        confirmed.insert(why);
    }
    const std::optional<work::Refusal> refusal = m_commit(confirmed);
    if (still_here) {
        take_answer(refusal);
    }
}

void FormFrame::take_answer(const std::optional<work::Refusal>& refusal) {
    const bool passes = refusal && (refusal->why == work::Why::busy || refusal->why == work::Why::being_checked);
    if (passes && m_tries < most_tries) {
        wait_and_try_again(*refusal);
        return;
    }
    m_again->stop();
    m_primary->setEnabled(m_habits.no_entries_why().isEmpty());
    if (refusal) {
        show_refusal(*refusal);
        return;
    }
    put_notice_away();
    m_confirmed.clear();
    m_edited = false;
    m_drafts->drop();
    m_since_success.start();
    Q_EMIT committed();
}

void FormFrame::wait_and_try_again(const work::Refusal& refusal) {
    ++m_tries;
    if (refusal.why == work::Why::being_checked) {
        //: At the foot of a form, while it waits for the check of a workbook that was opened
        m_notice->wait(tr("The workbook is still being looked through. Trying again; what you typed is kept."));
    } else {
        //: At the foot of a form, while it waits for a workbook that is in use
        m_notice->wait(tr("Another program is writing in this workbook. Trying again; what you typed is kept."));
    }
    if (!m_again->isActive()) {
        m_again->start();
    }
}

void FormFrame::show_refusal(const work::Refusal& refusal) {
    put_notice_away();
    const QString words = refusal_words(refusal, m_habits);
    const bool placed = !refusal.field.isEmpty() && place(refusal.field, words);
    if (refusal.can_confirm) {
        ask_about(refusal, words, placed);
    } else if (!placed) {
        m_notice->refuse(words);
    }
}

bool FormFrame::place(const QString& path, const QString& words) {
    if (Field* wanted = field(path); wanted != nullptr && wanted->isVisibleTo(this)) {
        wanted->set_complaint(words);
        wanted->take_focus();
        bring_into_view(wanted);
        return true;
    }
    for (auto slash = path.lastIndexOf(QLatin1Char('/')); slash > 0; slash = path.lastIndexOf(QLatin1Char('/'), slash - 1)) {
        const auto grid = m_refused.constFind(path.left(slash));
        if (grid != m_refused.constEnd()) {
            (*grid)(path.mid(slash + 1), words);
            return true;
        }
    }
    return false;
}

void FormFrame::ask_about(const work::Refusal& refusal, const QString& words, bool beside_field) {
    m_asked = refusal;
    m_since_question.start();
    m_primary->hide();
    //: Above a button, after a question that stands beside a field
    const QString hint = tr("Change it, or keep it as it is.");
    //: Button that answers a question such as "3 kg in one strip?"
    const QString keep = tr("Keep it as it is");
    //: The keys that answer, as they stand in the button
    m_notice->ask(beside_field ? hint : words, keep, tr("Ctrl+Enter"));
}

void FormFrame::keep_as_it_is() {
    if (!m_asked || m_running || m_since_question.elapsed() < time_to_see_ms) {
        return;
    }
    // What was typed since may be another question.
    finish_open_cell(this);
    if (!m_asked) {
        commit();
        return;
    }
    m_confirmed.emplace_back(m_asked->why, m_asked->field);
    put_notice_away();
    drop_complaints();
    m_tries = 0;
    run();
}

void FormFrame::note_edit(const QString& key) {
    m_edited = true;
    m_drafts->note(field(key));
    std::erase_if(m_confirmed, [&key](const auto& kept) { return kept.second == key; });
    if (!m_again->isActive()) {
        put_notice_away();
    }
    m_settle->start();
}

void FormFrame::put_notice_away() {
    m_leaving = false;
    m_asked.reset();
    m_notice->put_away();
    m_primary->show();
}

void FormFrame::drop_complaints() {
    for (Field* field : m_order) {
        field->set_complaint({});
    }
}

void FormFrame::note_cells() {
    m_drafts->note(nullptr);
}

void FormFrame::start_again() {
    m_drafts->begin_anew();
    forget_answers();
    if (isVisible() && m_drafts->offer() != nullptr) {
        order_tabs();
    }
}

void FormFrame::forget_answers() {
    m_again->stop();
    m_primary->setEnabled(m_habits.no_entries_why().isEmpty());
    m_confirmed.clear();
    m_edited = false;
    put_notice_away();
    drop_complaints();
    m_settle->start();
}

void FormFrame::cancel() {
    if (m_edited && !m_leaving) {
        put_notice_away();
        m_leaving = true;
        //: In a form in which something was typed, after Esc or Cancel
        const QString words = tr("What was typed here is not entered yet, and goes when you leave.");
        //: Button that leaves a form and gives up what was typed
        const QString leave = tr("Leave the form");
        //: The key that leaves, as it stands in the button
        m_notice->ask(words, leave, tr("Esc"));
        return;
    }
    m_again->stop();
    put_notice_away();
    m_drafts->drop();
    m_edited = false;
    refresh_place_around(*this);
    Q_EMIT cancelled();
}

} // namespace soakbook::ui
