// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy_pages.h"

#include "core/book/connection.h"

#include <QFile>

#include <sqlite3.h>

namespace soakbook::book {

NotCopied why_not_copied(int code) {
    switch (code & 0xff) {
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

PageCopy::PageCopy(const QSqlDatabase& from, const QString& to) {
    m_code = sqlite3_open_v2(QFile::encodeName(to).constData(), &m_target, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    if (m_code != SQLITE_OK)
        return;
    // Half a copy is thrown away, so it needs no journal; it is synced as a whole before it gets its name.
    sqlite3_exec(m_target, "PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF", nullptr, nullptr, nullptr);
    m_backup = sqlite3_backup_init(m_target, "main", static_cast<sqlite3*>(raw_handle(from)), "main");
    if (!m_backup)
        m_code = sqlite3_errcode(m_target);
}

PageCopy::~PageCopy() { close(); }

int PageCopy::close() {
    int code = m_code;
    if (m_backup) {
        const int finished = sqlite3_backup_finish(m_backup);
        m_backup = nullptr;
        code = code == SQLITE_DONE ? finished : code;
        // A workbook that another tool left with a log beside it is copied as one whole file.
        if (code == SQLITE_OK)
            code = sqlite3_exec(m_target, "PRAGMA journal_mode=DELETE", nullptr, nullptr, nullptr);
    }
    sqlite3_close(m_target);
    m_target = nullptr;
    return code;
}

tl::expected<PageCopy::Step, NotCopied> PageCopy::step(int pages) {
    if (m_backup && m_code == SQLITE_OK) {
        const int code = sqlite3_backup_step(m_backup, pages);
        m_pages = sqlite3_backup_pagecount(m_backup);
        m_left = sqlite3_backup_remaining(m_backup);
        if (code == SQLITE_OK)
            return Step::more;
        if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
            return Step::waits;
        m_code = code;
    }
    m_code = close();
    if (m_code != SQLITE_OK)
        return tl::unexpected(why_not_copied(m_code));
    return Step::done;
}

int PageCopy::percent() const { return m_pages > 0 ? static_cast<int>(100LL * (m_pages - m_left) / m_pages) : 0; }

tl::expected<void, NotCopied> copy_pages(const QSqlDatabase& from, const QString& to) {
    PageCopy copy(from, to);
    for (;;) {
        const auto step = copy.step(1024);
        if (!step)
            return tl::unexpected(step.error());
        if (*step == PageCopy::Step::waits)
            return tl::unexpected(NotCopied::busy);
        if (*step == PageCopy::Step::done)
            return {};
    }
}

} // namespace soakbook::book
