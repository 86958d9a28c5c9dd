// SPDX-License-Identifier: GPL-3.0-or-later
// What one piece of work changed, as SQLite's session extension records it, and its inverse.
#pragma once

#include <QByteArray>
#include <QSqlDatabase>

#include <memory>
#include <set>

namespace soakbook::book {

/// Records the changes of the record tables from its making on.
class ChangeRecorder {
public:
    explicit ChangeRecorder(const QSqlDatabase& db);
    ~ChangeRecorder();
    /// Everything changed so far; empty when nothing was.
    QByteArray changeset() const;

private:
    struct Session;
    std::unique_ptr<Session> m_session;
};

std::set<QString> tables_in(const QByteArray& changeset);

/// Takes every change of `changeset` back, inside the transaction under way. A record that was added and since shown
/// outside is made void with the reason "undone". Throws LawBroken when a record no longer is what the changeset left.
void take_back_changes(const QSqlDatabase& db, const QByteArray& changeset);

} // namespace soakbook::book
