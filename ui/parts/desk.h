// SPDX-License-Identifier: GPL-3.0-or-later
// What every room is handed: the open workbook, the clock and the name of whoever makes entries, and how this user likes
// quantities written. The clock is read nowhere else.
#pragma once

#include "core/book/doing.h"
#include "ui/parts/habits.h"

namespace soakbook::book {
class Workbook;
}

namespace soakbook::ui {

class Desk : public Habits {
    Q_OBJECT

public:
    Desk(book::Workbook& workbook, Clock clock, QObject* parent = nullptr);
    ~Desk() override;

    book::Workbook& workbook() const { return m_workbook; }
    /// The circumstances for a piece of work done now; `why` is the reason of a correction.
    book::Doing doing(const QString& why = {}) const;

    /// Whether the workbook is open for looking alone: forms are shown, and their entries refused.
    bool looking() const;
    /// Why it is, in a sentence, for whoever shows it; said by whoever opened it, before the rooms are made.
    void set_looking_why(const QString& why) { m_looking_why = why; }
    QString no_entries_why() const override;

    const QString& who() const { return m_who; }
    /// Keeps the name for this user, with today as the day on which it was said.
    void set_who(const QString& who);
    /// Whether the name was said today.
    bool who_said_today() const;

Q_SIGNALS:
    /// After each piece of work, undo included, once, in the window's thread.
    void work_done();
    void who_changed();

private:
    void note_work();

    book::Workbook& m_workbook;
    QString m_who;
    QString m_looking_why;
    bool m_telling = false;
    std::function<void()> m_unsubscribe;
};

} // namespace soakbook::ui
