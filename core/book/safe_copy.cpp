// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy.h"

#include "core/book/connection.h"
#include "core/book/statement.h"
#include "core/book/verify.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <cstdio>

#include <fcntl.h>
#include <sqlite3.h>
#include <unistd.h>

namespace soakbook::book {

namespace {

QString mark_of(const Workbook& workbook) { return QString::fromLatin1(workbook.uid().toHex().left(8)); }

// Ordered by the number of the newest change, never by the clock.
std::vector<SafeCopy> copies_in(const Workbook& workbook, const QString& folder) {
    std::vector<SafeCopy> copies;
    const QString mark = mark_of(workbook);
    for (const QFileInfo& file : QDir(folder).entryInfoList({QStringLiteral("* ") + mark + QStringLiteral(" *.soakbook")}, QDir::Files)) {
        bool number = false;
        const qint64 seq = file.completeBaseName().section(QLatin1Char(' '), -1).toLongLong(&number);
        if (number)
            copies.push_back({file.absoluteFilePath(), seq});
    }
    std::sort(copies.begin(), copies.end(), [](const SafeCopy& a, const SafeCopy& b) { return a.last_seq > b.last_seq; });
    return copies;
}

bool sync_to_disk(const QString& path) {
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY);
    if (file < 0)
        return false;
    const bool synced = ::fsync(file) == 0;
    ::close(file);
    return synced;
}

NotCopied why_not(int rc) {
    switch (rc & 0xff) {
    case SQLITE_FULL:
    case SQLITE_IOERR:
        return NotCopied::disk_full;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return NotCopied::busy;
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return NotCopied::check_failed;
    default:
        return NotCopied::folder;
    }
}

int copy_pages(const QSqlDatabase& from, const QString& to) {
    sqlite3* target = nullptr;
    int rc = sqlite3_open_v2(QFile::encodeName(to).constData(), &target, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    if (rc == SQLITE_OK) {
        // Half a copy is thrown away, so it needs no journal; it is synced as a whole before it gets its name.
        sqlite3_exec(target, "PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF", nullptr, nullptr, nullptr);
        sqlite3_backup* backup = sqlite3_backup_init(target, "main", static_cast<sqlite3*>(raw_handle(from)), "main");
        if (backup) {
            while ((rc = sqlite3_backup_step(backup, 1024)) == SQLITE_OK) {
            }
            const int finished = sqlite3_backup_finish(backup);
            rc = rc == SQLITE_DONE ? finished : rc;
            // A workbook that another tool left with a log beside it is copied as one whole file.
            if (rc == SQLITE_OK)
                rc = sqlite3_exec(target, "PRAGMA journal_mode=DELETE", nullptr, nullptr, nullptr);
        } else {
            rc = sqlite3_errcode(target);
        }
    }
    sqlite3_close(target);
    return rc;
}

/// Copies, checks and syncs beside `path`, and only then gives it that name, in one step. Gives the newest entry.
tl::expected<qint64, NotCopied> copy_checked(const QSqlDatabase& from, const QString& path) {
    const QString part = path + QStringLiteral(".part");
    const auto give_up = [&part](NotCopied why) {
        QFile::remove(part);
        return tl::unexpected(why);
    };
    QFile::remove(part);
    if (const int rc = copy_pages(from, part); rc != SQLITE_OK)
        return give_up(why_not(rc));
    const Verdict verdict = verify(part);
    if (!verdict.sound())
        return give_up(NotCopied::check_failed);
    if (!sync_to_disk(part) || ::rename(QFile::encodeName(part).constData(), QFile::encodeName(path).constData()) != 0)
        return give_up(NotCopied::folder);
    sync_to_disk(QFileInfo(path).absolutePath());
    return verdict.last_seq;
}

/// Opens `from` for reading alone and runs `f(db)`, which gives an expected.
template <class F> auto reading(const QString& from, F&& f) -> decltype(f(QSqlDatabase())) {
    QSqlDatabase db;
    try {
        db = connect_store(from, Use::reading);
        auto result = f(db);
        disconnect_store(db);
        return result;
    } catch (const StoreError& error) {
        if (db.isValid())
            disconnect_store(db);
        const NotCopied why = why_not(error.code);
        return tl::unexpected(why == NotCopied::busy || why == NotCopied::check_failed ? why : NotCopied::unreadable);
    }
}

// What a copy that was broken off left behind.
void sweep_parts(const QString& mark, const QString& folder) {
    for (const QFileInfo& file : QDir(folder).entryInfoList({QStringLiteral("* ") + mark + QStringLiteral(" *.soakbook.part")}, QDir::Files))
        QFile::remove(file.absoluteFilePath());
}

} // namespace

tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder, int keep) {
    if (!QDir().mkpath(folder))
        return tl::unexpected(NotCopied::folder);
    const qint64 seq = workbook.last_seq();
    const QString name = QFileInfo(workbook.path()).completeBaseName() + QLatin1Char(' ') + mark_of(workbook) + QLatin1Char(' ') +
                         QString::number(seq) + QStringLiteral(".soakbook");
    const QString path = QDir(folder).filePath(name);
    sweep_parts(mark_of(workbook), folder);
    if (QFile::exists(path)) {
        const Verdict there = verify(path);
        if (there.sound() && there.last_seq == seq)
            return SafeCopy{path, seq};
    }
    if (const auto copied = copy_checked(workbook.db(), path); !copied)
        return tl::unexpected(copied.error());
    const auto copies = copies_in(workbook, folder);
    for (std::size_t i = static_cast<std::size_t>(keep); i < copies.size(); ++i)
        QFile::remove(copies[i].path);
    return SafeCopy{path, seq};
}

tl::expected<SafeCopy, NotCopied> make_safe_copy_at(const QString& from, const QString& to) {
    if (QFileInfo::exists(to))
        return tl::unexpected(NotCopied::exists_already);
    return reading(from, [&](const QSqlDatabase& db) {
        return copy_checked(db, to).map([&](qint64 last_seq) { return SafeCopy{to, last_seq}; });
    });
}

tl::expected<void, NotCopied> copy_for_checking(const QString& from, const QString& to) {
    return reading(from, [&](const QSqlDatabase& db) -> tl::expected<void, NotCopied> {
        // Asked first for the file alone, so that its faults are told from those of the place for the copy.
        pragma_number(db, QStringLiteral("schema_version"));
        if (const int rc = copy_pages(db, to); rc != SQLITE_OK)
            return tl::unexpected(why_not(rc));
        return {};
    });
}

std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder) {
    const auto copies = copies_in(workbook, folder);
    return copies.empty() ? std::nullopt : std::optional<SafeCopy>(copies.front());
}

} // namespace soakbook::book
