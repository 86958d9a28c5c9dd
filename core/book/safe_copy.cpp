// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy.h"

#include "core/book/connection.h"
#include "core/book/statement.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

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

void sync_to_disk(const QString& path) {
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY);
    if (file >= 0) {
        ::fsync(file);
        ::close(file);
    }
}

int copy_pages(const QSqlDatabase& from, const QString& to) {
    sqlite3* target = nullptr;
    int rc = sqlite3_open_v2(QFile::encodeName(to).constData(), &target, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    if (rc == SQLITE_OK) {
        sqlite3_backup* backup = sqlite3_backup_init(target, "main", static_cast<sqlite3*>(raw_handle(from)), "main");
        if (backup) {
            while ((rc = sqlite3_backup_step(backup, 1024)) == SQLITE_OK) {
            }
            const int finished = sqlite3_backup_finish(backup);
            rc = rc == SQLITE_DONE ? finished : rc;
        } else {
            rc = sqlite3_errcode(target);
        }
    }
    sqlite3_close(target);
    return rc;
}

bool is_good(const QString& path, qint64 last_seq) {
    sqlite3* copy = nullptr;
    bool good = sqlite3_open_v2(QFile::encodeName(path).constData(), &copy, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK;
    const auto first_cell = [copy](const char* sql) {
        sqlite3_stmt* s = nullptr;
        QByteArray cell;
        if (sqlite3_prepare_v2(copy, sql, -1, &s, nullptr) == SQLITE_OK && sqlite3_step(s) == SQLITE_ROW)
            cell = QByteArray(reinterpret_cast<const char*>(sqlite3_column_text(s, 0)));
        sqlite3_finalize(s);
        return cell;
    };
    good = good && first_cell("PRAGMA integrity_check") == "ok" && first_cell("SELECT coalesce(max(seq), 0) FROM change") == QByteArray::number(last_seq);
    sqlite3_close(copy);
    return good;
}

} // namespace

tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder, int keep) {
    if (!QDir().mkpath(folder))
        return tl::unexpected(NotCopied::folder);
    const qint64 seq = workbook.last_seq();
    const QString name = QFileInfo(workbook.path()).completeBaseName() + QLatin1Char(' ') + mark_of(workbook) + QLatin1Char(' ') +
                         QString::number(seq) + QStringLiteral(".soakbook");
    const QString path = QDir(folder).filePath(name);
    if (QFile::exists(path) && is_good(path, seq))
        return SafeCopy{path, seq};
    const QString part = path + QStringLiteral(".part");
    QFile::remove(part);
    const int rc = copy_pages(workbook.db(), part);
    if (rc != SQLITE_OK) {
        QFile::remove(part);
        return tl::unexpected(rc == SQLITE_FULL || (rc & 0xff) == SQLITE_IOERR ? NotCopied::disk_full
                              : rc == SQLITE_BUSY || rc == SQLITE_LOCKED       ? NotCopied::busy
                                                                               : NotCopied::folder);
    }
    if (!is_good(part, seq)) {
        QFile::remove(part);
        return tl::unexpected(NotCopied::check_failed);
    }
    sync_to_disk(part);
    QFile::remove(path);
    if (!QFile::rename(part, path)) {
        QFile::remove(part);
        return tl::unexpected(NotCopied::folder);
    }
    sync_to_disk(folder);
    const auto copies = copies_in(workbook, folder);
    for (std::size_t i = static_cast<std::size_t>(keep); i < copies.size(); ++i)
        QFile::remove(copies[i].path);
    return SafeCopy{path, seq};
}

std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder) {
    const auto copies = copies_in(workbook, folder);
    return copies.empty() ? std::nullopt : std::optional<SafeCopy>(copies.front());
}

} // namespace soakbook::book
