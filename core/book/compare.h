// SPDX-License-Identifier: GPL-3.0-or-later
// Two copies of one workbook side by side: how far they are the same, and what stands in only one of them.
#pragma once

#include "core/book/doing.h"
#include "core/book/workbook.h"

#include <optional>
#include <set>
#include <vector>

namespace soakbook::book {

class OtherCopy;

/// One piece of work that only one of two copies holds; changes of another program, which have no piece, stand together.
struct LonePiece {
    qint64 first_seq = 0; ///< names the piece within its copy
    qint64 last_seq = 0;
    bool outside = false; ///< by another program
    Piece work;
    QString who;
    QString why;
    maths::Instant at;
    int records = 0;          ///< how many it is about, each counted once
    std::set<QString> tables; ///< of records
};

enum class Kinship {
    same,      ///< both hold the same entries
    there_older, ///< what the other holds stands here too, and more
    there_newer, ///< the other way round
    apart,     ///< each holds entries that the other has not
    stranger,  ///< a workbook of its own
};

struct Comparison {
    Kinship kinship{};
    qint64 common_seq = 0; ///< the newest entry that both hold, with all before it; never within a piece of work
    std::vector<LonePiece> only_here;  ///< oldest first
    std::vector<LonePiece> only_there; ///< oldest first
};

/// Compares the open workbook with the one at `there`, which nobody may have open and of which not a byte is written. Quick
/// on large files: the newest seal that both hold is searched for, and only what came after it is read. Throws StoreError
/// when the open workbook cannot be read.
tl::expected<Comparison, NotOpened> compare(const Workbook& here, const QString& there);
/// The same with a copy that is open already.
tl::expected<Comparison, NotOpened> compare(const Workbook& here, const OtherCopy& there);

} // namespace soakbook::book
