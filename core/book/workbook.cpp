// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/workbook.h"

#include "core/book/connection.h"
#include "core/book/file_header.h"
#include "core/book/schema.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"

#include <QFile>
#include <QFileInfo>

namespace soakbook::book {

Workbook::Workbook(QString path, QSqlDatabase db)
    : m_path(std::move(path)), m_db(std::move(db)), m_undo(std::make_unique<UndoStack>(*this)) {}

Workbook::~Workbook() { disconnect_store(m_db); }

tl::expected<std::unique_ptr<Workbook>, NotOpened> Workbook::create(const QString& path, const Doing& doing) {
    if (QFileInfo::exists(path))
        return tl::unexpected(NotOpened::exists_already);
    QSqlDatabase db;
    try {
        db = connect_store(path);
        lay_out(db);
        run(db, QStringLiteral("BEGIN IMMEDIATE"));
        Statement(db, QStringLiteral("INSERT INTO workbook(id, uid, made_ms, made_off) VALUES(1, randomblob(16), ?, ?)"))
            .bind(static_cast<qint64>(doing.at.utc_ms)).bind(doing.at.offset_minutes).run();
        run(db, QStringLiteral("COMMIT"));
    } catch (const StoreError& error) {
        if (db.isValid())
            disconnect_store(db);
        QFile::remove(path);
        return tl::unexpected(dynamic_cast<const Busy*>(&error) ? NotOpened::busy : NotOpened::read_only);
    }
    return std::unique_ptr<Workbook>(new Workbook(path, std::move(db)));
}

tl::expected<std::unique_ptr<Workbook>, NotOpened> Workbook::open(const QString& path) {
    if (const auto refused = judge_header(path))
        return tl::unexpected(*refused);
    QSqlDatabase db;
    try {
        db = connect_store(path);
        Statement check(db, QStringLiteral("PRAGMA quick_check(1)"));
        check.run();
        if (!check.next() || check.get<QString>(0) != QStringLiteral("ok")) {
            check = Statement(db, QStringLiteral("SELECT 1"));
            disconnect_store(db);
            return tl::unexpected(NotOpened::damaged);
        }
    } catch (const Busy&) {
        if (db.isValid())
            disconnect_store(db);
        return tl::unexpected(NotOpened::busy);
    } catch (const ReadOnly&) {
        if (db.isValid())
            disconnect_store(db);
        return tl::unexpected(NotOpened::unreadable);
    } catch (const StoreError&) {
        if (db.isValid())
            disconnect_store(db);
        return tl::unexpected(NotOpened::damaged);
    }
    if (structure_of(db) != known_structure()) {
        disconnect_store(db);
        return tl::unexpected(NotOpened::changed_structure);
    }
    return std::unique_ptr<Workbook>(new Workbook(path, std::move(db)));
}

QByteArray Workbook::uid() const {
    Statement s(m_db, QStringLiteral("SELECT hex(uid) FROM workbook"));
    s.run();
    return s.next() ? QByteArray::fromHex(s.get<QString>(0).toLatin1()) : QByteArray();
}

qint64 Workbook::last_seq() const {
    Statement s(m_db, QStringLiteral("SELECT coalesce(max(seq), 0) FROM change"));
    s.run();
    return s.next() ? s.get<qint64>(0) : 0;
}

std::function<void()> Workbook::subscribe(std::function<void(const Changed&)> tell) {
    const int number = m_next_listener++;
    m_listeners.emplace(number, std::move(tell));
    return [this, number] { m_listeners.erase(number); };
}

void Workbook::tell(const Changed& changed) {
    // A listener may end its own subscription while it is told.
    const auto listeners = m_listeners;
    for (const auto& [number, listener] : listeners)
        if (m_listeners.count(number))
            listener(changed);
}

} // namespace soakbook::book
