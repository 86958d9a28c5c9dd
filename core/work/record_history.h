// SPDX-License-Identifier: GPL-3.0-or-later
// What records said before, who changed them, when and why; and what other programs changed.
#pragma once

#include "core/work/figures.h"
#include "core/work/register_view.h"

#include <vector>

namespace soakbook::work {

/// A record by its table and key, as in the store: "batch", "reading", "placement" ...
struct RecordRef {
    QString table;
    qint64 id = 0;
};

/// The history of several records as lines, newest first.
std::vector<CorrectionLine> history(const book::Workbook& workbook, const std::vector<RecordRef>& records);
/// A record and what was entered for it: of a batch all up to its bags and pails, of a hive its strips, counts and moves;
/// void ones too.
std::vector<RecordRef> records_around(const book::Workbook& workbook, const RecordRef& record);
/// The record of a figure of Set-up; none while it was never said.
std::vector<RecordRef> record_of(const book::Workbook& workbook, Figure figure);
/// What the operation is called, its address and number: one record.
RecordRef record_of_operation();

/// The records that an entry of the journal touched, each once.
std::vector<RecordRef> records_of_entry(const book::Workbook& workbook, qint64 seq);
/// What that entry changed, as lines, first things first.
std::vector<CorrectionLine> lines_of_entry(const book::Workbook& workbook, qint64 seq);

/// Changes by other programs after change `after`: how many, and the newest.
struct OutsideNews {
    int count = 0;
    qint64 newest_seq = 0;
    maths::Instant newest;
};
OutsideNews outside_news(const book::Workbook& workbook, qint64 after);
/// The journal of those changes alone, newest first, a line each.
std::vector<JournalLine> outside_journal(const book::Workbook& workbook, int most);

} // namespace soakbook::work
