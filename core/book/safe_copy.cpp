// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy.h"

#include "core/book/connection.h"
#include "core/book/reading_store.h"
#include "core/book/safe_copy_files.h"
#include "core/book/safe_copy_steps.h"
#include "core/book/statement.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace soakbook::book {

namespace {

/// Opens `from` for reading alone and runs `f(db)`, which gives an expected.
template <class F> auto reading(const QString& from, F&& f) -> decltype(f(QSqlDatabase())) {
    try {
        const ReadingStore store(from);
        return f(store.db());
    } catch (const StoreError& error) {
        const NotCopied why = why_not_copied(error.code);
        return tl::unexpected(why == NotCopied::busy || why == NotCopied::check_failed ? why : NotCopied::unreadable);
    }
}

/// Copies, checks and syncs beside `path`, and only then gives it that name, in one step.
tl::expected<SafeCopy, NotCopied> copy_checked(const QSqlDatabase& from, const QString& path) {
    PartCopy copy;
    copy.name = path;
    copy.part = path + QStringLiteral(".part");
    QFile::remove(copy.part);
    if (const auto copied = copy_pages(from, copy.part); !copied) {
        QFile::remove(copy.part);
        return tl::unexpected(copied.error());
    }
    if (!settle_on_disk(copy.part)) {
        QFile::remove(copy.part);
        return tl::unexpected(NotCopied::disk_full);
    }
    const Verdict verdict = verify(copy.part);
    copy.last_seq = verdict.last_seq;
    return name_part(copy, verdict);
}

/// A copy of the present state that is there already and sound.
std::optional<SafeCopy> made_before(const Workbook& workbook, const QString& folder) {
    const QString stem = QFileInfo(workbook.path()).completeBaseName();
    const qint64 last_seq = workbook.last_seq();
    const QString name = copy_file_name(stem, mark_of_copies(workbook.uid()), last_seq, head_of(workbook.db()));
    const QString path = QDir(folder).absoluteFilePath(name);
    if (!QFileInfo::exists(path) || QFileInfo(path).canonicalFilePath() == QFileInfo(workbook.path()).canonicalFilePath())
        return std::nullopt;
    const Verdict there = verify(path);
    return there.sound() && there.last_seq == last_seq ? std::optional<SafeCopy>(SafeCopy{path, last_seq, true}) : std::nullopt;
}

} // namespace

tl::expected<SafeCopy, NotCopied> make_safe_copy(const Workbook& workbook, const QString& folder) {
    try {
        const auto before = made_before(workbook, folder);
        return before ? *before : copy_afresh(workbook, folder);
    } catch (const StoreError& error) {
        // The workbook itself could not be read.
        return tl::unexpected(why_not_copied(error.code));
    }
}

tl::expected<SafeCopy, NotCopied> make_safe_copy_at(const QString& from, const QString& to) {
    if (QFileInfo::exists(to))
        return tl::unexpected(NotCopied::exists_already);
    return reading(from, [&](const QSqlDatabase& db) { return copy_checked(db, to); });
}

tl::expected<void, NotCopied> copy_for_checking(const QString& from, const QString& to) {
    return reading(from, [&](const QSqlDatabase& db) -> tl::expected<void, NotCopied> {
        // Asked first for the file alone, so that its faults are told from those of the place for the copy.
        pragma_number(db, QStringLiteral("schema_version"));
        return copy_pages(db, to);
    });
}

std::vector<SafeCopy> safe_copies_of(const Workbook& workbook, const QString& folder) {
    std::vector<SafeCopy> copies;
    for (const CopyFile& file : copy_files(folder, mark_of_copies(workbook.uid()), workbook.path()))
        copies.push_back({file.path, file.last_seq, is_of_line(workbook.db(), file)});
    return copies;
}

std::optional<SafeCopy> newest_safe_copy(const Workbook& workbook, const QString& folder) {
    for (const CopyFile& file : copy_files(folder, mark_of_copies(workbook.uid()), workbook.path()))
        if (is_of_line(workbook.db(), file))
            return SafeCopy{file.path, file.last_seq, true};
    return std::nullopt;
}

} // namespace soakbook::book
