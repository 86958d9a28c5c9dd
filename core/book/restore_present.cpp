// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/restore_present.h"

#include "core/book/raw_rows.h"
#include "core/book/reading_store.h"
#include "core/book/safe_copy_files.h"
#include "core/book/safe_copy_steps.h"
#include "core/book/statement.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cstdio>

namespace soakbook::book {

namespace {

bool copy_file_whole(const QString& from, const QString& to) {
    const QString part = to + QStringLiteral(".part");
    QFile::remove(part);
    if (!QFile::copy(from, part) || !sync_to_disk(part) || QFileInfo(part).size() != QFileInfo(from).size() ||
        std::rename(QFile::encodeName(part).constData(), QFile::encodeName(to).constData()) != 0) {
        QFile::remove(part);
        return false;
    }
    return true;
}

/// Copies a damaged file as it is, with what lies beside it, under a name that no safe copy has.
tl::expected<QString, NotRestored> put_aside(const RestoreRequest& request) {
    if (!QDir().mkpath(request.copies))
        return tl::unexpected(NotRestored::present_not_kept);
    const QString stem = QFileInfo(request.file).completeBaseName();
    QString name;
    for (int n = 1; name.isEmpty() || QFileInfo::exists(name); ++n)
        name = QDir(request.copies).absoluteFilePath(stem + QStringLiteral(" put aside %1.soakbook").arg(n));
    for (const char* beside : {"-journal", "-wal", ""})
        if (QFileInfo::exists(request.file + QLatin1String(beside)) && !copy_file_whole(request.file + QLatin1String(beside), name + QLatin1String(beside)))
            return tl::unexpected(NotRestored::present_not_kept);
    sync_to_disk(request.copies);
    return name;
}

tl::expected<Present, NotRestored> keep_damaged(const RestoreRequest& request) {
    Present present;
    read_what_can_be(request.file, [&](const QSqlDatabase& db) {
        {
            RawRows uid(db, "SELECT uid FROM workbook");
            if (uid.next())
                present.uid = uid.bytes(0);
        }
        RawRows newest(db, "SELECT coalesce(max(seq), 0) FROM change");
        if (newest.next())
            present.last_seq = newest.number(0);
    });
    const auto kept = put_aside(request);
    if (!kept)
        return tl::unexpected(kept.error());
    present.kept = *kept;
    // What was left of work that broke off belongs to the old file: beside another one it would be played into that.
    for (const char* beside : {"-journal", "-wal", "-shm"})
        if (QFileInfo::exists(request.file + QLatin1String(beside)) && !QFile::remove(request.file + QLatin1String(beside)))
            return tl::unexpected(NotRestored::folder);
    return present;
}

} // namespace

void add_given_codes(const QString& path, GivenCodes& codes) {
    read_what_can_be(path, [&](const QSqlDatabase& db) {
        RawRows given(db, "SELECT code, kind, number, given_ms, given_off FROM given_code");
        while (given.next())
            codes.try_emplace(QString::fromUtf8(given.bytes(0)),
                              GivenCode{QString::fromUtf8(given.bytes(1)), given.number(2), {given.number(3), static_cast<int>(given.number(4))}});
    });
}

bool lies_there(const QString& path) {
    for (const char* beside : {"", "-journal", "-wal", "-shm"})
        if (QFileInfo::exists(path + QLatin1String(beside)))
            return true;
    return false;
}

tl::expected<Present, NotRestored> keep_present(const RestoreRequest& request) {
    // Opened as for work, so that SQLite puts right what was broken off before anything is copied.
    const auto opened = Workbook::open(request.file, request.copies);
    if (!opened) {
        if (opened.error() == NotOpened::busy)
            return tl::unexpected(NotRestored::busy);
        if (opened.error() == NotOpened::unreadable || opened.error() == NotOpened::read_only || opened.error() == NotOpened::broken_off ||
            opened.error() == NotOpened::not_a_file)
            return tl::unexpected(NotRestored::folder);
        return keep_damaged(request);
    }
    // Afresh, so that the file itself is found sound or not.
    const auto kept = copy_afresh(**opened, request.copies);
    if (!kept) {
        if (kept.error() == NotCopied::busy)
            return tl::unexpected(NotRestored::busy);
        return kept.error() == NotCopied::check_failed ? keep_damaged(request) : tl::unexpected(NotRestored::present_not_kept);
    }
    Present present;
    present.kept = kept->path;
    present.sound = true;
    present.uid = (*opened)->uid();
    present.last_seq = (*opened)->last_seq();
    present.seal = newest_seal((*opened)->db()).hash;
    return present;
}

} // namespace soakbook::book
