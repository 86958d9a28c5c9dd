// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/record_history.h"

#include "core/book/history.h"
#include "core/book/queries/figures.h"
#include "core/work/corrections.h"

#include <algorithm>

namespace soakbook::work {

namespace {

/// Codes given out and papers shown follow from the entry; they are no records a person knows.
bool is_own_note(const book::Change& change) {
    return change.table == QStringLiteral("given_code") || change.table == QStringLiteral("shown");
}

} // namespace

std::vector<CorrectionLine> history(const book::Workbook& workbook, const std::vector<RecordRef>& records) {
    std::vector<book::RowRef> rows;
    rows.reserve(records.size());
    for (const RecordRef& record : records)
        rows.push_back({record.table, record.id});
    std::vector<CorrectionLine> lines;
    const std::vector<book::Change> changes = book::history_of(workbook, rows);
    for (auto change = changes.rbegin(); change != changes.rend(); ++change)
        for (CorrectionLine& line : lines_of(workbook, *change))
            lines.push_back(std::move(line));
    return lines;
}

std::vector<RecordRef> records_around(const book::Workbook& workbook, const RecordRef& record) {
    std::vector<RecordRef> records;
    for (const book::RowRef& row : book::rows_around(workbook, {record.table, record.id}))
        records.push_back({row.table, row.id});
    return records;
}

std::vector<RecordRef> record_of(const book::Workbook& workbook, Figure figure) {
    const auto found = book::figure_by_key(workbook, QLatin1String(info(figure).key));
    return found ? std::vector<RecordRef>{{QStringLiteral("figure"), found->id.value}} : std::vector<RecordRef>{};
}

RecordRef record_of_operation() { return {QStringLiteral("operation"), 1}; }

std::vector<RecordRef> records_of_entry(const book::Workbook& workbook, qint64 seq) {
    std::vector<RecordRef> records;
    for (const book::Change& change : book::changes_of_entry(workbook, seq)) {
        const bool known = std::any_of(records.begin(), records.end(), [&change](const RecordRef& record) {
            return record.table == change.table && record.id == change.row;
        });
        if (!known && !is_own_note(change))
            records.push_back({change.table, change.row});
    }
    return records;
}

std::vector<CorrectionLine> lines_of_entry(const book::Workbook& workbook, qint64 seq) {
    std::vector<CorrectionLine> lines;
    for (const book::Change& change : book::changes_of_entry(workbook, seq)) {
        if (is_own_note(change))
            continue;
        for (CorrectionLine& line : lines_of(workbook, change))
            lines.push_back(std::move(line));
    }
    return lines;
}

OutsideNews outside_news(const book::Workbook& workbook, qint64 after) {
    OutsideNews news;
    news.count = book::count_outside(workbook, after);
    const std::vector<book::Change> newest = book::changes_outside(workbook, after, 1);
    if (!newest.empty()) {
        news.newest_seq = newest.front().seq;
        news.newest = newest.front().at;
    }
    return news;
}

std::vector<JournalLine> outside_journal(const book::Workbook& workbook, int most) {
    std::vector<JournalLine> lines;
    for (const book::Change& change : book::changes_outside(workbook, 0, most))
        lines.push_back({change.seq, change.work, change.who, change.why, change.at, 1, true});
    return lines;
}

} // namespace soakbook::work
