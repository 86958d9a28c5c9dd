// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/changeset.h"
#include "core/book/connection.h"
#include "core/book/kept_statements.h"
#include "core/book/outside_watch.h"
#include "core/book/schema.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"
#include "core/book/workbook.h"

#include <sqlite3.h>

namespace soakbook::book {

namespace {

// A clock that stands an hour before the newest entry was set back, or that entry's was wrong.
bool is_clock_behind(const QSqlDatabase& db, const maths::Instant& now) {
    constexpr qint64 hour_ms = 3'600'000;
    Statement newest(db, QStringLiteral("SELECT at_ms FROM change ORDER BY seq DESC LIMIT 1"));
    newest.run();
    return newest.next() && newest.get<qint64>(0) - now.utc_ms > hour_ms;
}

} // namespace

struct Writing::Recorder {
    explicit Recorder(const QSqlDatabase& db) : changes(db) {}
    ChangeRecorder changes;
};

Writing::Writing(Workbook& workbook, Piece piece, Doing doing) : Writing(workbook, std::move(piece), std::move(doing), Kind::work) {}

Writing::Writing(Workbook& workbook, Piece piece, Doing doing, Kind kind)
    : m_workbook(workbook), m_piece(std::move(piece)), m_doing(std::move(doing)), m_kind(kind) {
    begin();
    try {
        mind_others();
        const QString prefix = kind == Kind::undo ? QStringLiteral("undo:") : kind == Kind::redo ? QStringLiteral("redo:") : QString();
        Statement(db(), QStringLiteral("INSERT INTO now_doing(id, piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful) "
                                       "VALUES(1, (SELECT coalesce(max(piece), 0) + 1 FROM change), ?, ?, ?, ?, ?, ?, ?, ?, ?)"))
            .bind(QString(prefix + m_piece.key)).bind(m_piece.count).bind(m_piece.subject).bind(m_doing.who).bind(m_doing.why)
            .bind(QStringLiteral(SOAKBOOK_VERSION)).bind(static_cast<qint64>(m_doing.at.utc_ms)).bind(m_doing.at.offset_minutes)
            .bind(m_doing.clock_doubtful || is_clock_behind(db(), m_doing.at)).run();
        m_recorder = std::make_unique<Recorder>(db());
    } catch (const ChangedOutside&) {
        give_up();
        const QStringList tables = record_tables();
        m_workbook.tell({{tables.begin(), tables.end()}, m_workbook.m_watch->known_seq()});
        throw;
    } catch (...) {
        give_up();
        throw;
    }
}

void Writing::give_up() {
    forget_kept_statements(db());
    QSqlQuery(db()).exec(QStringLiteral("ROLLBACK"));
    m_open = false;
}

void Writing::begin() {
    if (m_workbook.is_for_looking())
        throw LookingOnly(SQLITE_READONLY, "the workbook was opened for looking alone");
    if (m_workbook.entries_are_held())
        throw BeingChecked(SQLITE_BUSY, "the workbook is being checked");
    // One that failed for want of memory may not have been rolled back either, for the same reason.
    if (sqlite3_get_autocommit(static_cast<sqlite3*>(raw_handle(db()))) == 0)
        run(db(), QStringLiteral("ROLLBACK"));
    m_workbook.m_watch->forget_what_was_read();
    run(db(), QStringLiteral("BEGIN IMMEDIATE"));
    m_open = true;
}

// What a form shows was read before: an entry made on the strength of it waits until it was looked at again.
void Writing::mind_others() {
    const auto seen = m_workbook.m_watch->look();
    if (seen == OutsideWatch::Seen::nothing)
        return;
    if (seen == OutsideWatch::Seen::replaced)
        throw Replaced(SQLITE_READONLY_DBMOVED, "another file lies in the place of the workbook");
    m_workbook.m_watch->note();
    m_workbook.undo_stack().forget();
    throw ChangedOutside(SQLITE_BUSY_SNAPSHOT, "another program changed the workbook");
}

Writing::~Writing() {
    m_recorder.reset();
    if (m_open)
        give_up();
}

void Writing::name(int count, const QString& subject) {
    m_piece.count = count;
    m_piece.subject = subject;
    Statement(db(), QStringLiteral("UPDATE now_doing SET count = ?, subject = ?")).bind(count).bind(subject).run();
}

void Writing::end_for_good(const std::optional<Seal>& own) {
    try {
        run(db(), QStringLiteral("COMMIT"));
    } catch (const StoreError&) {
        // The disk may fail after the work is down, when the folder is synced. The seal says which it is.
        QSqlQuery(db()).exec(QStringLiteral("ROLLBACK"));
        bool is_down = false;
        try {
            is_down = own && newest_seal(db()) == *own;
        } catch (const StoreError&) {
            is_down = false;
        }
        if (!is_down)
            throw;
    }
}

void Writing::commit() {
    const QByteArray changeset = m_recorder->changes.changeset();
    m_recorder.reset();
    const std::set<QString> tables = changeset.isEmpty() ? std::set<QString>{} : tables_in(changeset);
    forget_kept_statements(db());
    run(db(), QStringLiteral("DELETE FROM now_doing"));
    const std::optional<Seal> seal = seal_changes(db());
    end_for_good(seal);
    // From here on nothing may fail: the work is down.
    m_open = false;
    m_workbook.m_watch->note_own(seal);
    UndoStack& undo = m_workbook.undo_stack();
    if (!changeset.isEmpty() && m_undoable) {
        if (m_kind == Kind::work)
            undo.push_work({m_piece, changeset});
        else
            (m_kind == Kind::undo ? undo.m_undone : undo.m_done).push_back({m_piece, changeset});
    }
    try {
        m_workbook.tell({tables, m_workbook.m_watch->known_seq()});
    } catch (const StoreError&) {
        // A page that could not be read again just now must not make a piece of work that is down look refused.
    }
}

} // namespace soakbook::book
