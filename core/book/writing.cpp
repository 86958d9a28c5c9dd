// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/changeset.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"
#include "core/book/workbook.h"

namespace soakbook::book {

struct Writing::Recorder {
    explicit Recorder(const QSqlDatabase& db) : changes(db) {}
    ChangeRecorder changes;
};

Writing::Writing(Workbook& workbook, Piece piece, Doing doing) : Writing(workbook, std::move(piece), std::move(doing), Kind::work) {}

Writing::Writing(Workbook& workbook, Piece piece, Doing doing, Kind kind)
    : m_workbook(workbook), m_piece(std::move(piece)), m_doing(std::move(doing)), m_kind(kind) {
    run(db(), QStringLiteral("BEGIN IMMEDIATE"));
    m_open = true;
    try {
        const QString prefix = kind == Kind::undo ? QStringLiteral("undo:") : kind == Kind::redo ? QStringLiteral("redo:") : QString();
        Statement(db(), QStringLiteral("INSERT INTO now_doing(id, piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful) "
                                       "VALUES(1, (SELECT coalesce(max(piece), 0) + 1 FROM change), ?, ?, ?, ?, ?, ?, ?, ?, ?)"))
            .bind(QString(prefix + m_piece.key)).bind(m_piece.count).bind(m_piece.subject).bind(m_doing.who).bind(m_doing.why)
            .bind(QStringLiteral(SOAKBOOK_VERSION)).bind(static_cast<qint64>(m_doing.at.utc_ms)).bind(m_doing.at.offset_minutes)
            .bind(m_doing.clock_doubtful).run();
        m_recorder = std::make_unique<Recorder>(db());
    } catch (...) {
        QSqlQuery(db()).exec(QStringLiteral("ROLLBACK"));
        m_open = false;
        throw;
    }
}

Writing::~Writing() {
    m_recorder.reset();
    if (m_open)
        QSqlQuery(db()).exec(QStringLiteral("ROLLBACK"));
}

void Writing::name(int count, const QString& subject) {
    m_piece.count = count;
    m_piece.subject = subject;
    Statement(db(), QStringLiteral("UPDATE now_doing SET count = ?, subject = ?")).bind(count).bind(subject).run();
}

void Writing::commit() {
    const QByteArray changeset = m_recorder->changes.changeset();
    m_recorder.reset();
    run(db(), QStringLiteral("DELETE FROM now_doing"));
    run(db(), QStringLiteral("COMMIT"));
    m_open = false;
    UndoStack& undo = m_workbook.undo_stack();
    if (!changeset.isEmpty() && m_undoable) {
        if (m_kind == Kind::work)
            undo.push_work({m_piece, changeset});
        else
            (m_kind == Kind::undo ? undo.m_undone : undo.m_done).push_back({m_piece, changeset});
    }
    undo.note_own_commit();
    m_workbook.tell({changeset.isEmpty() ? std::set<QString>{} : tables_in(changeset), m_workbook.last_seq()});
}

} // namespace soakbook::book
