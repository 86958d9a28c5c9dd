// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/workbook.h"

#include "core/book/connection.h"
#include "core/book/file_header.h"
#include "core/book/outside_watch.h"
#include "core/book/safe_copy.h"
#include "core/book/schema.h"
#include "core/book/statement.h"
#include "core/book/undo_stack.h"

#include <QFile>
#include <QFileInfo>

#include <sqlite3.h>

namespace soakbook::book {

namespace {
QString text_of_pragma(const QSqlDatabase& db, const QString& pragma) {
    Statement s(db, QStringLiteral("PRAGMA ") + pragma);
    s.run();
    return s.next() ? s.get<QString>(0) : QString();
}

/// Every page of a file of this size is looked at each time it is opened: that takes a tenth of a second. Of a larger one
/// the pages are looked at on a safe copy, behind the work.
constexpr qint64 small_file = 32 * 1024 * 1024;

NotOpened why_of(const StoreError& error, const QString& path) {
    if (dynamic_cast<const Busy*>(&error))
        return NotOpened::busy;
    if (!dynamic_cast<const ReadOnly*>(&error))
        return NotOpened::damaged;
    // A journal that may not be used: what stands in the file is half of a piece of work.
    if (error.code == SQLITE_READONLY_ROLLBACK || QFileInfo(path + QStringLiteral("-journal")).size() > 0)
        return NotOpened::broken_off;
    return NotOpened::unreadable;
}

std::optional<NotOpened> copy_first(const Workbook& workbook, const QString& copies) {
    const auto copy = make_safe_copy(workbook, copies.isEmpty() ? QFileInfo(workbook.path()).absolutePath() : copies);
    if (copy)
        return std::nullopt;
    return copy.error() == NotCopied::check_failed ? NotOpened::damaged : copy.error() == NotCopied::busy ? NotOpened::busy : NotOpened::not_copied;
}

} // namespace

Workbook::Workbook(QString path, QSqlDatabase db)
    : m_path(std::move(path)), m_db(std::move(db)), m_undo(std::make_unique<UndoStack>(*this)), m_watch(std::make_unique<OutsideWatch>(m_path, m_db)) {}

Workbook::~Workbook() { disconnect_store(m_db); }

tl::expected<std::unique_ptr<Workbook>, NotOpened> Workbook::create(const QString& path, const Doing& doing) {
    if (QFileInfo::exists(path))
        return tl::unexpected(NotOpened::exists_already);
    QSqlDatabase db;
    try {
        db = connect_store(path);
        lay_out(db, &doing);
    } catch (const StoreError& error) {
        if (db.isValid())
            disconnect_store(db);
        QFile::remove(path);
        return tl::unexpected(dynamic_cast<const Busy*>(&error) ? NotOpened::busy : NotOpened::read_only);
    }
    std::unique_ptr<Workbook> workbook(new Workbook(path, std::move(db)));
    workbook->m_watch->note();
    return workbook;
}

std::optional<NotOpened> Workbook::judge_pages() const {
    if (QFileInfo(m_path).size() > small_file)
        return std::nullopt;
    Statement check(m_db, QStringLiteral("PRAGMA quick_check(1)"));
    check.run();
    return check.next() && check.get<QString>(0) == QStringLiteral("ok") ? std::nullopt : std::optional<NotOpened>(NotOpened::damaged);
}

// The structure comes first: a check reads the tables, and nothing that another program put there may run.
std::optional<NotOpened> Workbook::judge() const {
    const int version = version_of(m_db);
    if (version < 1 || version > schema_version)
        return NotOpened::damaged;
    if (structure_of(m_db) != known_structure(version))
        return NotOpened::changed_structure;
    if (const auto refused = judge_pages())
        return refused;
    return uid().size() == 16 ? std::nullopt : std::optional<NotOpened>(NotOpened::damaged);
}

std::optional<NotOpened> Workbook::judge_for_looking(Pages pages) const {
    const int version = version_of(m_db);
    if (version < 1)
        return NotOpened::damaged;
    if (version < schema_version)
        return structure_of(m_db) == known_structure(version) ? NotOpened::not_brought_up : NotOpened::changed_structure;
    if (version == schema_version ? structure_of(m_db) != known_structure() : !can_be_read(m_db))
        return version == schema_version ? NotOpened::changed_structure : NotOpened::newer;
    return pages == Pages::sound ? judge_pages() : std::nullopt;
}

std::optional<NotOpened> Workbook::bring_up(const QString& copies) {
    const bool older = version_of(m_db) < schema_version;
    // Another tool may have left a log beside the file; a copy of the file alone would then lack what stands in it.
    const bool logged = text_of_pragma(m_db, QStringLiteral("journal_mode")) != QStringLiteral("delete");
    if (!older && !logged)
        return std::nullopt;
    if (const auto refused = copy_first(*this, copies))
        return refused;
    try {
        if (logged && text_of_pragma(m_db, QStringLiteral("journal_mode=DELETE")) != QStringLiteral("delete"))
            return NotOpened::busy;
        if (older)
            take_steps(m_db);
    } catch (const Busy&) {
        return NotOpened::busy;
    } catch (const StoreError&) {
        return NotOpened::not_brought_up;
    }
    return structure_of(m_db) == known_structure() ? std::nullopt : std::optional<NotOpened>(NotOpened::changed_structure);
}

tl::expected<std::unique_ptr<Workbook>, NotOpened> Workbook::open(const QString& path, const QString& copies) {
    if (const auto refused = judge_header(path))
        return tl::unexpected(*refused);
    try {
        std::unique_ptr<Workbook> workbook(new Workbook(path, connect_store(path)));
        auto refused = workbook->judge();
        if (!refused)
            refused = workbook->bring_up(copies);
        if (refused)
            return tl::unexpected(*refused);
        workbook->m_watch->note();
        return workbook;
    } catch (const StoreError& error) {
        return tl::unexpected(why_of(error, path));
    }
}

tl::expected<std::unique_ptr<Workbook>, NotOpened> Workbook::open_for_looking(const QString& path, Pages pages) {
    const auto head = judge_header(path);
    if (head && *head != NotOpened::newer)
        return tl::unexpected(*head);
    try {
        std::unique_ptr<Workbook> workbook(new Workbook(path, connect_store(path, Use::reading)));
        workbook->m_looking = true;
        if (const auto refused = workbook->judge_for_looking(pages))
            return tl::unexpected(*refused);
        workbook->m_watch->note();
        return workbook;
    } catch (const StoreError& error) {
        return tl::unexpected(head ? NotOpened::newer : why_of(error, path));
    }
}

bool Workbook::is_newer() const { return version_of(m_db) > schema_version; }

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

bool Workbook::changed_outside() const { return m_watch->look() != OutsideWatch::Seen::nothing; }

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
