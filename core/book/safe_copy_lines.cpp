// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/safe_copy_lines.h"

#include "core/book/raw_rows.h"
#include "core/book/reading_store.h"
#include "core/book/row_image.h"
#include "core/book/statement.h"

#include <algorithm>

namespace soakbook::book {

namespace {

/// What was left behind when an older copy was put back: the history that ends with `head`, as far as that of `told_by`,
/// which went on from there, does not hold it.
struct LeftBehind {
    CopyFile head; ///< without a path where no copy of it is there
    CopyFile told_by;
};

std::vector<LeftBehind> left_behind(const std::vector<CopyFile>& copies) {
    std::vector<LeftBehind> left;
    for (const CopyFile& copy : copies)
        read_what_can_be(copy.path, [&](const QSqlDatabase& db) {
            RawRows rows(db, "SELECT before FROM change WHERE tbl = 'workbook' AND row_id = 1 AND work = 'restored'");
            while (rows.next()) {
                const Cells before = read_cells(QString::fromUtf8(rows.bytes(0)));
                LeftBehind one;
                one.told_by = copy;
                one.head.last_seq = cell(before, QStringLiteral("newest_entry")).toLongLong();
                one.head.seal = cell(before, QStringLiteral("seal")).toString().left(8);
                // The copies that went on all tell the same; the newest of them comes first.
                if (std::none_of(left.begin(), left.end(), [&](const LeftBehind& known) { return known.head.last_seq == one.head.last_seq && known.head.seal == one.head.seal; }))
                    left.push_back(one);
            }
        });
    for (LeftBehind& one : left)
        for (const CopyFile& copy : copies)
            if (copy.last_seq == one.head.last_seq && copy.seal == one.head.seal)
                one.head.path = copy.path;
    return left;
}

bool is_in_history_of(const CopyFile& whole, const CopyFile& copy) {
    bool is_of_it = false;
    read_what_can_be(whole.path, [&](const QSqlDatabase& db) { is_of_it = is_of_line(db, copy); });
    return is_of_it;
}

bool was_left(const CopyFile& copy, const LeftBehind& left) {
    return copy.last_seq <= left.head.last_seq && !left.head.path.isEmpty() && is_in_history_of(left.head, copy) && !is_in_history_of(left.told_by, copy);
}

} // namespace

std::optional<CopyFile> newest_copy_going_on(const QString& folder, const QString& mark, const QString& live) {
    const std::vector<CopyFile> copies = copy_files(folder, mark, live);
    const std::vector<LeftBehind> left = left_behind(copies);
    for (const CopyFile& copy : copies)
        if (std::none_of(left.begin(), left.end(), [&](const LeftBehind& one) { return was_left(copy, one); }))
            return copy;
    return copies.empty() ? std::nullopt : std::optional<CopyFile>(copies.front());
}

} // namespace soakbook::book
