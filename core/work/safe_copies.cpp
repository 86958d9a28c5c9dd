// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/safe_copies.h"

#include "core/book/safe_copy.h"
#include "core/book/safe_copy_files.h"
#include "core/book/safe_copy_lines.h"

#include <QDateTime>
#include <QFileInfo>

namespace soakbook::work {

namespace {
CopyLine line_of(const book::CopyFile& copy) {
    const QFileInfo file(copy.path);
    const QDateTime at = file.lastModified();
    CopyLine line;
    line.path = copy.path;
    line.newest_entry = copy.last_seq;
    line.seal = copy.seal;
    line.bytes = file.size();
    line.made = {at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
    return line;
}
} // namespace

SafeCopyState safe_copy_state(const book::Workbook& workbook, const QString& folder) {
    const auto newest = book::newest_safe_copy(workbook, folder);
    const qint64 now = workbook.last_seq();
    return newest ? SafeCopyState{newest->path, now - newest->last_seq} : SafeCopyState{{}, now};
}

Outcome<SafeCopyState> make_safe_copy(const book::Workbook& workbook, const QString& folder) {
    const auto made = book::make_safe_copy(workbook, folder);
    if (made)
        return SafeCopyState{made->path, workbook.last_seq() - made->last_seq};
    switch (made.error()) {
    case book::NotCopied::disk_full:
        return refuse(Why::disk_full);
    case book::NotCopied::busy:
        return refuse(Why::busy);
    case book::NotCopied::check_failed:
        return refuse(Why::copy_unsound, {}, {folder});
    case book::NotCopied::folder:
    case book::NotCopied::exists_already:
    case book::NotCopied::unreadable:
        break;
    }
    return refuse(Why::read_only, {}, {folder});
}

std::vector<CopyLine> copies_in(const QString& folder, const QString& mark, const QString& live) {
    std::vector<CopyLine> lines;
    for (const book::CopyFile& copy : book::copy_files(folder, mark, live))
        lines.push_back(line_of(copy));
    return lines;
}

std::optional<CopyLine> newest_copy(const QString& folder, const QString& mark, const QString& live) {
    const auto copy = book::newest_copy_going_on(folder, mark, live);
    return copy ? std::optional<CopyLine>(line_of(*copy)) : std::nullopt;
}

void place_in_line(const book::Workbook& workbook, std::vector<CopyLine>& lines) {
    const qint64 now = workbook.last_seq();
    for (CopyLine& line : lines) {
        line.of_this_line = book::is_of_line(workbook.db(), {line.path, line.newest_entry, line.seal});
        line.entries_since = line.of_this_line ? now - line.newest_entry : 0;
    }
}

std::vector<CopyLine> safe_copies(const book::Workbook& workbook, const QString& folder) {
    std::vector<CopyLine> lines = copies_in(folder, mark_of_copies(workbook), workbook.path());
    place_in_line(workbook, lines);
    return lines;
}

QString mark_of_copies(const book::Workbook& workbook) { return book::mark_of_copies(workbook.uid()); }

maths::Instant workbook_made(const book::Workbook& workbook) { return book::made_at(workbook.db()); }

} // namespace soakbook::work
