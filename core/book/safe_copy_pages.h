// SPDX-License-Identifier: GPL-3.0-or-later
// Copies the pages of an open store into a new file, some at a time. SQLite does it, so that what the same connection
// writes meanwhile gets into the copy, too, and what another one writes begins it anew.
#pragma once

#include "core/book/safe_copy.h"

#include <QSqlDatabase>

struct sqlite3;
struct sqlite3_backup;

namespace soakbook::book {

/// What SQLite's result code means for a copy.
NotCopied why_not_copied(int code);

class PageCopy {
public:
    /// Begins to copy the store of `from`, which has to stay open as long as this lives, to `to`. Throws nothing: the first
    /// step says what is wrong.
    PageCopy(const QSqlDatabase& from, const QString& to);
    ~PageCopy();
    PageCopy(const PageCopy&) = delete;
    PageCopy& operator=(const PageCopy&) = delete;

    enum class Step {
        more,
        waits, ///< another program is writing just now
        done,  ///< every page is there and the file is closed
    };
    tl::expected<Step, NotCopied> step(int pages);
    int percent() const;

private:
    int close();

    sqlite3* m_target = nullptr;
    sqlite3_backup* m_backup = nullptr;
    int m_code = 0;
    int m_pages = 0;
    int m_left = 0;
};

/// All of them at once.
tl::expected<void, NotCopied> copy_pages(const QSqlDatabase& from, const QString& to);

} // namespace soakbook::book
