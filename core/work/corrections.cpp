// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/corrections.h"

#include "core/book/queries/placements.h"
#include "core/book/queries/register.h"
#include "core/maths/sampling.h"
#include "core/work/short_questions.h"

#include <algorithm>
#include <map>

namespace soakbook::work {

namespace {

/// Columns that follow from others or are the program's own: no correction to read.
bool is_silent(const QString& column) {
    return column.endsWith(QStringLiteral("_off")) || column == QStringLiteral("label") ||
           column == QStringLiteral("opened_on") || column == QStringLiteral("written_ms") ||
           column == QStringLiteral("asked");
}

/// A key of another record as its code or name.
QString named(const book::Workbook& workbook, const QString& column, const QString& value) {
    static const std::map<QString, QString> tables{
        {QStringLiteral("batch_id"), QStringLiteral("batch")},
        {QStringLiteral("tank_id"), QStringLiteral("vessel")},
        {QStringLiteral("bin_id"), QStringLiteral("vessel")},
        {QStringLiteral("strip_kind_id"), QStringLiteral("strip_kind")},
        {QStringLiteral("lot_id"), QStringLiteral("material_lot")},
        {QStringLiteral("bag_lot_id"), QStringLiteral("material_lot")},
        {QStringLiteral("pail_id"), QStringLiteral("pail")},
        {QStringLiteral("soak_id"), QStringLiteral("soak")},
        {QStringLiteral("bag_id"), QStringLiteral("bag")},
        {QStringLiteral("pour_id"), QStringLiteral("pour")},
        {QStringLiteral("yard_id"), QStringLiteral("yard")},
        {QStringLiteral("from_yard_id"), QStringLiteral("yard")},
        {QStringLiteral("to_yard_id"), QStringLiteral("yard")},
        {QStringLiteral("hive_id"), QStringLiteral("hive")},
        {QStringLiteral("round_id"), QStringLiteral("round")},
        {QStringLiteral("placement_id"), QStringLiteral("placement")},
        {QStringLiteral("weigh_in_id"), QStringLiteral("weigh_in")},
    };
    const auto table = tables.find(column);
    return table == tables.end() || value.isEmpty() ? value
                                                    : book::name_of(workbook, table->second, value.toLongLong());
}

CorrectionLine head_of(const book::Workbook& workbook, const book::Change& change) {
    CorrectionLine line;
    line.record = book::name_of(workbook, change.table, change.row);
    line.why = change.why;
    line.who = change.who;
    line.at = change.at;
    line.outside = !change.piece;
    line.row = change.row;
    line.table = change.table;
    line.undone = change.work.key.startsWith(QStringLiteral("undo:"));
    return line;
}

/// Total and strips of a weighing before and after, also where only one of them changed.
std::optional<CorrectionLine> mean_of(const book::Workbook& workbook, const book::Change& change,
                                      const CorrectionLine& head) {
    const auto find = [&](const char* column) {
        return std::find_if(change.columns.begin(), change.columns.end(),
                            [&](const book::ColumnChange& c) { return c.column == QLatin1String(column); });
    };
    const auto total = find("total_mg");
    const auto strips = find("strips");
    if (total == change.columns.end() && strips == change.columns.end())
        return std::nullopt;
    // What did not change here is told by the history up to here.
    qint64 total_now = 0;
    qint64 strips_now = 0;
    for (const book::Change& earlier : book::history_of(workbook, change.table, change.row)) {
        if (earlier.seq > change.seq)
            break;
        for (const book::ColumnChange& c : earlier.columns) {
            if (c.column == QStringLiteral("total_mg"))
                total_now = c.after.value_or(QString()).toLongLong();
            if (c.column == QStringLiteral("strips"))
                strips_now = c.after.value_or(QString()).toLongLong();
        }
    }
    const qint64 total_before =
        total == change.columns.end() ? total_now : total->before.value_or(QString()).toLongLong();
    const qint64 strips_before =
        strips == change.columns.end() ? strips_now : strips->before.value_or(QString()).toLongLong();
    const auto before = maths::mean_together({total_before}, strips_before);
    const auto after = maths::mean_together({total_now}, strips_now);
    if (!before || !after || *before == *after)
        return std::nullopt;
    CorrectionLine line = head;
    line.column = QStringLiteral("mean_mg");
    line.before = QString::number(before->count);
    line.after = QString::number(after->count);
    return line;
}

const QStringList& tables_behind() {
    static const QStringList tables{QStringLiteral("placement"),    QStringLiteral("material_lot"), QStringLiteral("batch"),
                                    QStringLiteral("batch_input"),  QStringLiteral("soak"),
                                    QStringLiteral("weigh_in"),     QStringLiteral("bag"),
                                    QStringLiteral("pail"),         QStringLiteral("batch_loss")};
    return tables;
}

bool is_behind(const book::Behind& behind, const book::ChangeHead& change) {
    const std::map<QString, const std::set<qint64>*> sets{
        {QStringLiteral("material_lot"), &behind.lots},  {QStringLiteral("batch"), &behind.batches},
        {QStringLiteral("batch_input"), &behind.inputs}, {QStringLiteral("soak"), &behind.soaks},
        {QStringLiteral("weigh_in"), &behind.weigh_ins}, {QStringLiteral("bag"), &behind.bags},
        {QStringLiteral("pail"), &behind.pails},         {QStringLiteral("batch_loss"), &behind.losses}};
    const auto set = sets.find(change.table);
    return set != sets.end() && set->second->count(change.row) != 0;
}

} // namespace

std::vector<CorrectionLine> lines_of(const book::Workbook& workbook, const book::Change& change) {
    std::vector<CorrectionLine> lines;
    const CorrectionLine head = head_of(workbook, change);
    if (change.what != book::ChangeWhat::changed) {
        CorrectionLine line = head;
        line.column = change.what == book::ChangeWhat::added ? QStringLiteral("added") : QStringLiteral("removed");
        return {line};
    }
    for (const book::ColumnChange& column : change.columns) {
        if (is_silent(column.column))
            continue;
        CorrectionLine line = head;
        line.column = column.column;
        line.before = named(workbook, column.column, column.before.value_or(QString()));
        line.after = named(workbook, column.column, column.after.value_or(QString()));
        line.made_void = column.column == QStringLiteral("void_reason") && column.after;
        // "undone" is the reason the store writes where a shown record cannot be taken away.
        line.undone = line.undone || (line.made_void && column.after == QStringLiteral("undone"));
        lines.push_back(std::move(line));
    }
    if (change.table == QStringLiteral("weigh_in"))
        if (auto mean = mean_of(workbook, change, head))
            lines.push_back(std::move(*mean));
    return lines;
}

namespace {

enum class MadeThen { left_out, too };

std::vector<CorrectionLine> corrections_where(const book::Workbook& workbook, const RegisterFilter& filter, MadeThen made_then) {
    const bool all = !filter.from && !filter.to && !filter.yard && !filter.batch;
    book::Behind behind;
    std::set<qint64> treated;
    if (!all) {
        book::PlacementFilter placed{false, filter.also_void, {}, filter.yard, {},
                                     {},    filter.batch,     {}, filter.from, filter.to, false};
        std::set<qint64> batches;
        for (const auto& [placement, batch] : book::placements_and_batches(workbook, placed)) {
            batches.insert(batch.value);
            treated.insert(placement.value);
        }
        behind = book::behind(workbook, batches);
    }
    const auto is_wanted = [&](const book::ChangeHead& change) {
        if (all || (change.table == QStringLiteral("placement") ? treated.count(change.row) != 0 : is_behind(behind, change)))
            return true;
        const maths::Day day = change.at.local_day();
        return made_then == MadeThen::too && (!filter.from || *filter.from <= day) && (!filter.to || day <= *filter.to);
    };
    std::vector<CorrectionLine> lines;
    for (const book::Change& change : book::corrections_in(workbook, tables_behind(), is_wanted))
        for (CorrectionLine& line : lines_of(workbook, change))
            lines.push_back(std::move(line));
    return lines;
}

} // namespace

std::vector<CorrectionLine> corrections(const book::Workbook& workbook, const RegisterFilter& filter) {
    return corrections_where(workbook, filter, MadeThen::left_out);
}

std::vector<CorrectionLine> corrections_and_those_made_then(const book::Workbook& workbook, const RegisterFilter& filter) {
    const bool by_days_alone = !filter.yard && !filter.batch;
    return corrections_where(workbook, filter, by_days_alone ? MadeThen::too : MadeThen::left_out);
}

std::vector<CorrectionLine> history(const book::Workbook& workbook, const QString& table, qint64 id) {
    std::vector<CorrectionLine> lines;
    const std::vector<book::Change> changes = book::history_of(workbook, table, id);
    for (auto change = changes.rbegin(); change != changes.rend(); ++change)
        for (CorrectionLine& line : lines_of(workbook, *change))
            lines.push_back(std::move(line));
    return lines;
}

std::vector<JournalLine> journal(const book::Workbook& workbook, int most) {
    std::vector<JournalLine> lines;
    for (const book::JournalRow& row : book::newest_pieces(workbook, most))
        lines.push_back({row.seq, row.piece, row.who, row.why, row.at, row.records, row.outside});
    return lines;
}

} // namespace soakbook::work
