// SPDX-License-Identifier: GPL-3.0-or-later
// Holds entries until an opened workbook is known to be sound and to be the one that stood there before. What was verified
// before is not verified again; a workbook that is not known is looked through on a safe copy, behind the window.
#pragma once

#include "app/clock.h"
#include "core/book/verified.h"

#include <QObject>

#include <memory>
#include <optional>

namespace soakbook::app {

class Keeper;

/// Entries that were seen in this place, or elsewhere in this workbook, and are not in it.
struct MissingEntries {
    qint64 entries = 0;     ///< how many more it had come to; 0: as many or fewer, but others
    qint64 newest_then = 0; ///< the number of the newest entry then
    maths::Instant seen;    ///< when
    QString place;          ///< where, if that was another file
};

class FirstCheck : public QObject {
    Q_OBJECT

public:
    enum class State {
        free,    ///< entries can be made
        looking_through, ///< they wait for the check
        missing, ///< they wait for the person to say what this file is
        damaged, ///< there will be none
    };

    /// Entries are held from here on. `place` is the file's path without links; `keeper` makes the copy that is checked and
    /// outlives this.
    FirstCheck(book::Workbook& workbook, Keeper& keeper, book::VerifiedBefore memory, QString place, Clock clock, QObject* parent = nullptr);
    ~FirstCheck() override;

    /// After the window is there.
    void begin();
    /// The person says that this is the workbook to go on with, whatever stood there before.
    void go_on_with_this();
    /// Remembers what stands in it now. After work, and before it is closed.
    void note_seen();

    State state() const { return m_state; }
    int percent() const { return m_percent; }
    const std::optional<MissingEntries>& missing() const { return m_missing; }
    /// Why it could not be looked through, in a sentence; entries can be made nevertheless.
    const QString& not_checked() const { return m_not_checked; }

Q_SIGNALS:
    void changed();
    /// It was looked through and is not sound. Also later, while the keeper is at it.
    void found_damaged(const soakbook::book::Verdict& verdict);
    void entries_missing();

private:
    void set_state(State state);
    bool look_for_missing();
    void look_through();
    void take_verdict(const book::Verdict& verdict);

    book::Workbook& m_workbook;
    Keeper& m_keeper;
    book::VerifiedBefore m_memory;
    QString m_place;
    Clock m_clock;
    QByteArray m_uid;
    State m_state = State::looking_through;
    int m_percent = 0;
    std::optional<MissingEntries> m_missing;
    QString m_not_checked;
};

} // namespace soakbook::app
