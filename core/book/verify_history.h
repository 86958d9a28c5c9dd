// SPDX-License-Identifier: GPL-3.0-or-later
// The checks of the history: its numbers, its seals, and the records against it. For verify alone.
#pragma once

#include "core/book/verify.h"

namespace soakbook::book {

/// Entries after `after_seq` are numbered without a gap, nothing is under way, and every counter is where the history says.
/// Gives the newest number.
qint64 check_numbers(const QSqlDatabase& db, qint64 after_seq, CheckResult& result);
/// Every seal after `start`, one by one; fills in the verdict's counts and what to remember.
void check_seals(const QSqlDatabase& db, const Seal& start, Verdict& verdict, CheckResult& result);
/// Every record that an entry after `after_seq` is about; from 0 on, every row of every table.
void check_records(const QSqlDatabase& db, qint64 after_seq, CheckResult& result);

} // namespace soakbook::book
