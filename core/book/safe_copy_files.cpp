// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy_files.h"

#include "core/book/copy_rotation.h"
#include "core/book/raw_rows.h"
#include "core/book/reading_store.h"
#include "core/book/schema.h"
#include "core/book/statement.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

#include <fcntl.h>
#include <unistd.h>

namespace soakbook::book {

namespace {

constexpr int seal_letters = 8;

QString beginning_of(const Seal& seal) { return QString::fromLatin1(seal.hash.toHex().left(seal_letters)); }

QString pattern(const QString& mark, const QString& ending) { return QStringLiteral("* ") + mark + QStringLiteral(" *.soakbook") + ending; }

// Whether the file is as long as its own head says. Nothing has it open: it is a copy with its name.
bool is_of_full_length(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return false;
    const QByteArray head = file.read(100);
    if (head.size() < 100)
        return false;
    const auto byte = [&](int at) { return static_cast<qint64>(static_cast<unsigned char>(head.at(at))); };
    const qint64 stored = byte(16) << 8 | byte(17);
    const qint64 page = stored == 1 ? 65536 : stored;
    const qint64 pages = byte(28) << 24 | byte(29) << 16 | byte(30) << 8 | byte(31);
    return page > 0 && page * pages == file.size();
}

maths::Day day_made(const QString& path) {
    const QDateTime at = QFileInfo(path).lastModified();
    return maths::Instant{at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60}.local_day();
}

bool sync_file(const QString& path, bool let_go) {
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    if (file < 0)
        return false;
    const bool synced = ::fsync(file) == 0;
    if (let_go)
        ::posix_fadvise(file, 0, 0, POSIX_FADV_DONTNEED);
    ::close(file);
    return synced;
}

void remove_those_that_go(const std::vector<CopyFile>& files) {
    std::vector<DatedCopy> copies;
    copies.reserve(files.size());
    for (const CopyFile& file : files)
        copies.push_back({file.last_seq, day_made(file.path), is_of_full_length(file.path)});
    const std::vector<bool> stay = which_copies_stay(copies);
    for (std::size_t i = 0; i < files.size(); ++i)
        if (!stay[i])
            QFile::remove(files[i].path);
}

} // namespace

QString mark_of_copies(const QByteArray& uid) { return QString::fromLatin1(uid.toHex().left(8)); }

QString copy_file_name(const QString& stem, const QString& mark, qint64 last_seq, const Seal& head) {
    return stem + QLatin1Char(' ') + mark + QLatin1Char(' ') + QString::number(last_seq) + QLatin1Char('-') + beginning_of(head) +
           QStringLiteral(".soakbook");
}

std::vector<CopyFile> copy_files(const QString& folder, const QString& mark, const QString& live) {
    std::vector<CopyFile> copies;
    const QString open = live.isEmpty() ? QString() : QFileInfo(live).canonicalFilePath();
    for (const QFileInfo& file : QDir(folder).entryInfoList({pattern(mark, {})}, QDir::Files)) {
        const QString last = file.completeBaseName().section(QLatin1Char(' '), -1);
        bool number = false;
        const qint64 seq = last.section(QLatin1Char('-'), 0, 0).toLongLong(&number);
        if (number && (open.isEmpty() || file.canonicalFilePath() != open))
            copies.push_back({file.absoluteFilePath(), seq, last.section(QLatin1Char('-'), 1)});
    }
    std::sort(copies.begin(), copies.end(), [](const CopyFile& a, const CopyFile& b) { return a.last_seq > b.last_seq; });
    return copies;
}

void sweep_copy_parts(const QString& folder, const QString& mark) {
    for (const char* ending : {".part", ".part-journal"})
        for (const QFileInfo& file : QDir(folder).entryInfoList({pattern(mark, QLatin1String(ending))}, QDir::Files))
            QFile::remove(file.absoluteFilePath());
}

Seal head_of(const QSqlDatabase& db) { return version_of(db) < 2 ? before_first_seal(db) : newest_seal(db); }

maths::Instant made_at(const QSqlDatabase& db) {
    RawRows made(db, "SELECT made_ms, made_off FROM workbook");
    return made.next() ? maths::Instant{made.number(0), static_cast<int>(made.number(1))} : maths::Instant{};
}

bool is_of_line(const QSqlDatabase& db, const CopyFile& copy) {
    {
        RawRows newest(db, "SELECT coalesce(max(seq), 0) FROM change");
        if (!newest.next() || newest.number(0) < copy.last_seq)
            return false;
    }
    if (copy.seal.isEmpty())
        return true;
    if (version_of(db) >= 2) {
        RawRows seal(db, "SELECT last_seq, hash FROM seal WHERE last_seq <= ? ORDER BY last_seq DESC LIMIT 1");
        seal.start({copy.last_seq});
        if (seal.next())
            return beginning_of({seal.number(0), seal.bytes(1)}) == copy.seal;
    }
    return beginning_of(before_first_seal(db)) == copy.seal;
}

void rotate_copies(const QString& folder, const QString& mark, const QString& newest, const QString& live) {
    std::vector<CopyFile> of_line;
    std::vector<CopyFile> left_behind;
    try {
        const ReadingStore line(newest);
        for (const CopyFile& copy : copy_files(folder, mark, live))
            (is_of_line(line.db(), copy) ? of_line : left_behind).push_back(copy);
    } catch (const StoreError&) {
        return; // which line a copy belongs to is not known: all stay
    }
    remove_those_that_go(of_line);
    remove_those_that_go(left_behind);
}

bool sync_to_disk(const QString& path) { return sync_file(path, false); }

bool settle_on_disk(const QString& path) { return sync_file(path, true); }

} // namespace soakbook::book
