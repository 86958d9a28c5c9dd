// SPDX-License-Identifier: GPL-3.0-or-later
// The whole check of a workbook: its store, its links, its history and seals, and each record against the history.
#pragma once

#include "core/book/seal.h"

#include <QString>

#include <vector>

namespace soakbook::book {

class Workbook;

/// What is looked at, in this order. A bad structure ends the checks; after any other bad one the rest is looked at.
enum class Check {
    structure, ///< tables, indexes, views and triggers are those of its version
    store,     ///< SQLite's own check of every page, index and constraint
    links,     ///< no record points at one that is not there
    anchor,    ///< what was verified before is still there, and whose file it is
    numbers,   ///< the history's numbers run from 1 without a gap, and no counter was set back
    seals,     ///< every seal follows from the one before it and from the changes between
    records,   ///< every record is as the history has it last
};

/// An entry of the history, or a record that has none (seq 0).
struct Entry {
    qint64 seq = 0;
    std::optional<qint64> piece; ///< the piece of work; empty: from another program, or not known
    QString table;
    qint64 row = 0;
};

struct CheckResult {
    Check check{};
    qint64 looked_at = 0;       ///< how many tables, entries, seals, records
    qint64 bad = 0;
    std::optional<Entry> first; ///< the first bad one, where it can be named
};

/// How far a workbook was verified before, remembered outside it.
struct VerifiedUntil {
    QByteArray uid;
    Seal seal;
};

struct Verdict {
    bool readable = true;     ///< false: the file could not be opened or the disk failed; nothing is said about it
    int version = 0;          ///< of its schema; version 1 has no seals, and its records cannot be compared
    std::vector<CheckResult> checks;
    qint64 last_seq = 0;      ///< entries in the history
    qint64 outside = 0;       ///< of those looked at, from other programs
    qint64 unsealed = 0;      ///< newest entries without a seal yet; sound only when all are from other programs
    VerifiedUntil until;      ///< what to remember when it is sound

    bool sound() const;
    const CheckResult* first_bad() const;
};

/// Checks the workbook at `path`, which must be a copy that nobody has open: reading it takes long and would hold up
/// work, and closing a file drops the locks of others in the same process. Not a byte of it is written. With `from`, the
/// entries up to there are taken as verified, provided that they are still there; otherwise everything is looked at.
Verdict verify(const QString& path, const std::optional<VerifiedUntil>& from = {});

/// Checks, on the open workbook itself, only what came after `from`: a few milliseconds, since no more than `most` entries
/// are looked at; nothing is given back where there are more. The anchor is bad where that seal does not stand in it.
std::optional<Verdict> verify_since(const Workbook& workbook, const VerifiedUntil& from, qint64 most = 20'000);

} // namespace soakbook::book
