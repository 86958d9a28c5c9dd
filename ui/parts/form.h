// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of every form: title, cautions, fields, what follows from them, and the one filled button. Enter goes to the
// next field, Ctrl+Enter makes the entry from anywhere in the form, Esc leaves (twice, when something was typed).
#pragma once

#include "core/work/outcome.h"
#include "ui/parts/draft.h"
#include "ui/parts/field.h"
#include "ui/parts/result_card.h"

#include <QElapsedTimer>
#include <QHash>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

class QBoxLayout;
class QLabel;
class QPushButton;
class QTimer;

namespace soakbook::ui {

class DraftKeeper;
class FieldGrid;
class FlowLayout;
class FormNotice;
class Habits;
class PrimaryButton;

/// The refusal of an outcome, if it is one: what a form's commit gives back.
template <class T> std::optional<work::Refusal> refusal_of(const work::Outcome<T>& outcome) {
    return outcome ? std::nullopt : std::optional<work::Refusal>(outcome.error());
}

class FormFrame : public QWidget {
    Q_OBJECT

public:
    /// An empty title leaves the head out, where the card around the form already has one.
    explicit FormFrame(const Habits& habits, const QString& title = {}, QWidget* parent = nullptr);
    ~FormFrame() override;

    // What the form is made of, from top to bottom.
    void set_title(const QString& title);
    /// A soft sentence or two under the title.
    void set_intro(const QString& text);
    /// A caution with the red rule; it always stands there.
    void add_caution(const QString& text);
    /// Adds a field under its label. `key` is the request's field name that refusals use; `help` a sentence on what it is for.
    template <class F> F* add(const QString& label, F* field, const QString& key, const QString& help = {}) {
        add_field(label, field, key, help, false);
        return field;
    }
    /// The same over the whole width, for notes and for what must be read before the rest.
    template <class F> F* add_wide(const QString& label, F* field, const QString& key, const QString& help = {}) {
        add_field(label, field, key, help, true);
        return field;
    }
    /// A heading within the form.
    void add_section(const QString& title, const QString& help = {});
    /// A table, chart or the like over the whole width. Refusals at `key`/... are handed to `refused` with what follows the
    /// slash and the words, so that it can place them; without one they stand at the foot of the form.
    using Refused = std::function<void(const QString& rest, const QString& words)>;
    void add_widget(QWidget* widget, const QString& key = {}, Refused refused = {});
    /// Shows or hides a field with its label and help. A hidden field is not checked.
    void set_shown(const QString& key, bool shown);
    Field* field(const QString& key) const;
    /// Fields stand in one column, or in two where the form is wide enough; 2 at first.
    void set_columns(int most);
    /// The live result: what was understood, what follows, what to do now. Empty it is not seen.
    ResultCard* result() const { return m_result; }

    // The buttons.
    void set_primary(const QString& words);
    QPushButton* primary() const;
    QPushButton* add_secondary(const QString& words);
    /// The button that leaves the form; off until asked for in a page, on in a dialog.
    void set_cancel_shown(bool shown);

    // Making the entry.
    /// Reads the fields, does the piece of work, and gives back its refusal or nothing. Runs once for each entry however the
    /// button is hit. `confirmed` holds what the user was asked and answered with "keep it".
    using Commit = std::function<std::optional<work::Refusal>(const work::Confirmed& confirmed)>;
    void set_commit(Commit commit);
    /// As Ctrl+Enter. Texts that do not read are named first and nothing is committed.
    void commit();
    /// Puts the words beside the field they are about and the keyboard there; keeps all that was typed.
    void show_refusal(const work::Refusal& refusal);
    /// Ready for the next entry, with whatever the fields hold now: call it after filling in a form, or when it stays open.
    void start_again();
    bool is_edited() const { return m_edited; }
    /// What is typed from now on is kept as a draft under this name, and what was kept before is offered. Call it when the
    /// fields are in and filled, and again when the form is about another record.
    void set_draft(const DraftPlace& place);
    DraftKeeper& drafts() const { return *m_drafts; }
    /// Call it after typing that no field of the form tells of, as in a cell.
    void note_cells();
    /// A question asked about the form as it was is out of date; what was typed stays typed.
    void forget_answers();
    /// As Esc.
    void cancel();
    /// Puts the keyboard into the first field that is empty, or the first.
    void take_focus();

    /// The part that scrolls in a dialog, and the buttons that do not.
    QWidget* body() const { return m_body; }
    QWidget* foot() const { return m_foot; }

Q_SIGNALS:
    /// After each change by the user, once for several in a row; compute the live result here.
    void edited();
    /// The entry was made.
    void committed();
    void cancelled();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void add_field(const QString& label, Field* field, const QString& key, const QString& help, bool wide);
    void watch_keys(QWidget* part);
    void order_tabs();
    void go_on_from(QWidget* editor, bool back);
    void settle_typing();
    bool name_problems();
    void run();
    void take_answer(const std::optional<work::Refusal>& refusal);
    void keep_as_it_is();
    void ask_about(const work::Refusal& refusal, const QString& words, bool beside_field);
    bool place(const QString& path, const QString& words);
    void wait_and_try_again(const work::Refusal& refusal);
    void note_edit(const QString& key);
    void put_notice_away();
    void drop_complaints();

    const Habits& m_habits;
    QLabel* m_title;
    QLabel* m_intro;
    QWidget* m_body;
    QWidget* m_foot;
    QBoxLayout* m_cautions;
    FieldGrid* m_grid;
    ResultCard* m_result;
    DraftKeeper* m_drafts;
    FormNotice* m_notice;
    PrimaryButton* m_primary;
    FlowLayout* m_buttons;
    QPushButton* m_cancel;
    QHash<QString, Field*> m_fields;
    std::vector<Field*> m_order;    ///< the fields from top to bottom
    std::vector<QWidget*> m_stops;  ///< where Enter stops, in order
    QHash<QString, Refused> m_refused;
    Commit m_commit;
    /// What was confirmed, and the field it was about: an edit there takes the answer back.
    std::vector<std::pair<work::Why, QString>> m_confirmed;
    std::optional<work::Refusal> m_asked;
    QTimer* m_again;
    QTimer* m_settle;
    QElapsedTimer m_since_question;
    QElapsedTimer m_since_success;
    int m_tries = 0;
    bool m_running = false;
    bool m_edited = false;
    bool m_leaving = false;
};

} // namespace soakbook::ui
