// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy_steps.h"

#include "core/book/safe_copy_files.h"
#include "core/book/schema.h"
#include "core/book/statement.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cstdio>

#include <unistd.h>

namespace soakbook::book {

namespace {

tl::expected<SafeCopy, NotCopied> given_up(const PartCopy& copy, NotCopied why) {
    QFile::remove(copy.part);
    return tl::unexpected(why);
}

/// Gives the part its name. One that is sent elsewhere takes no other file's name.
bool rename_part(const PartCopy& copy) {
    const QByteArray part = QFile::encodeName(copy.part);
    const QByteArray name = QFile::encodeName(copy.name);
    if (!copy.folder.isEmpty())
        return std::rename(part.constData(), name.constData()) == 0;
    if (::link(part.constData(), name.constData()) == 0)
        return ::unlink(part.constData()) == 0;
    // A stick may know no second name of a file.
    return !QFileInfo::exists(copy.name) && std::rename(part.constData(), name.constData()) == 0;
}

tl::expected<QString, NotCopied> mark_of(const Workbook& workbook) {
    try {
        return mark_of_copies(workbook.uid());
    } catch (const StoreError& error) {
        return tl::unexpected(why_not_copied(error.code));
    }
}

} // namespace

CopyUnderWay::CopyUnderWay(const Workbook& workbook, PartCopy copy)
    : m_workbook(workbook), m_copy(std::move(copy)), m_pages(workbook.db(), m_copy.part) {}

CopyUnderWay::~CopyUnderWay() {
    if (!m_taken)
        QFile::remove(m_copy.part);
}

tl::expected<std::unique_ptr<CopyUnderWay>, NotCopied> CopyUnderWay::begin(const Workbook& workbook, const QString& folder) {
    if (!QDir().mkpath(folder))
        return tl::unexpected(NotCopied::folder);
    const auto mark = mark_of(workbook);
    if (!mark)
        return tl::unexpected(mark.error());
    PartCopy copy;
    copy.folder = folder;
    copy.mark = *mark;
    copy.live = workbook.path();
    sweep_copy_parts(folder, copy.mark);
    const QString stem = QFileInfo(workbook.path()).completeBaseName();
    copy.part = QDir(folder).filePath(stem + QLatin1Char(' ') + copy.mark + QStringLiteral(" being copied.soakbook.part"));
    return std::unique_ptr<CopyUnderWay>(new CopyUnderWay(workbook, std::move(copy)));
}

tl::expected<std::unique_ptr<CopyUnderWay>, NotCopied> CopyUnderWay::begin_at(const Workbook& workbook, const QString& to) {
    if (QFileInfo::exists(to))
        return tl::unexpected(NotCopied::exists_already);
    const auto mark = mark_of(workbook);
    if (!mark)
        return tl::unexpected(mark.error());
    PartCopy copy;
    copy.mark = *mark;
    copy.live = workbook.path();
    copy.name = QFileInfo(to).absoluteFilePath();
    copy.part = copy.name + QStringLiteral(".part");
    QFile::remove(copy.part);
    return std::unique_ptr<CopyUnderWay>(new CopyUnderWay(workbook, std::move(copy)));
}

tl::expected<PartCopy, NotCopied> CopyUnderWay::take() {
    try {
        m_copy.last_seq = m_workbook.last_seq();
        m_copy.head = head_of(m_workbook.db());
        m_copy.version = version_of(m_workbook.db());
    } catch (const StoreError& error) {
        return tl::unexpected(why_not_copied(error.code));
    }
    if (!m_copy.folder.isEmpty()) {
        const QString stem = QFileInfo(m_copy.live).completeBaseName();
        m_copy.name = QDir(m_copy.folder).absoluteFilePath(copy_file_name(stem, m_copy.mark, m_copy.last_seq, m_copy.head));
    }
    m_taken = true;
    return m_copy;
}

tl::expected<SafeCopy, NotCopied> copy_afresh(const Workbook& workbook, const QString& folder, const std::optional<VerifiedUntil>& from) {
    auto copying = CopyUnderWay::begin(workbook, folder);
    if (!copying)
        return tl::unexpected(copying.error());
    for (;;) {
        const auto step = (*copying)->step(1024);
        if (!step)
            return tl::unexpected(step.error());
        if (*step == PageCopy::Step::waits)
            return tl::unexpected(NotCopied::busy);
        if (*step == PageCopy::Step::done)
            break;
    }
    return (*copying)->take().and_then([&from](const PartCopy& part) { return name_part(part, check_part(part, from)); });
}

Verdict check_part(const PartCopy& copy, const std::optional<VerifiedUntil>& from) {
    if (!settle_on_disk(copy.part)) {
        Verdict failed;
        failed.readable = false;
        return failed;
    }
    Verdict verdict = verify(copy.part, from);
    const bool is_that_state = verdict.last_seq == copy.last_seq && (copy.version < 2 || verdict.until.seal == copy.head);
    if (verdict.sound() && !is_that_state) {
        CheckResult other;
        other.check = Check::anchor;
        other.looked_at = 1;
        other.bad = 1;
        verdict.checks.push_back(other);
    }
    return verdict;
}

tl::expected<SafeCopy, NotCopied> name_part(const PartCopy& copy, const Verdict& verdict) {
    if (!verdict.sound())
        return given_up(copy, verdict.readable ? NotCopied::check_failed : NotCopied::disk_full);
    if (copy.folder.isEmpty() && QFileInfo::exists(copy.name))
        return given_up(copy, NotCopied::exists_already);
    if (!rename_part(copy))
        return given_up(copy, NotCopied::folder);
    sync_to_disk(QFileInfo(copy.name).absolutePath());
    if (!copy.folder.isEmpty())
        rotate_copies(copy.folder, copy.mark, copy.name, copy.live);
    return SafeCopy{copy.name, copy.last_seq, true};
}

} // namespace soakbook::book
