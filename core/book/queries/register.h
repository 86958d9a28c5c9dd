// SPDX-License-Identifier: GPL-3.0-or-later
// What the Register asks of the history.
#pragma once

#include "core/book/history.h"
#include "core/book/records/hive.h"
#include "core/book/records/placement.h"

#include <functional>
#include <optional>
#include <set>

namespace soakbook::book {

/// Corrections, voids and their undoing: changes of rows that were there, made with a reason or by undo, of these
/// tables, oldest first. An undo counts only where it took back one of those, or where the record had been shown
/// outside. With `wanted`, those alone.
std::vector<Change> corrections_in(const Workbook& workbook, const QStringList& tables, const std::function<bool(const ChangeHead&)>& wanted = {});

/// Records that stand behind some batches, through pails and the batches they came from.
struct Behind {
    std::set<qint64> batches;
    std::set<qint64> inputs;
    std::set<qint64> lots;
    std::set<qint64> soaks;
    std::set<qint64> weigh_ins;
    std::set<qint64> bags;
    std::set<qint64> pails;
    std::set<qint64> losses;
};
Behind behind(const Workbook& workbook, const std::set<qint64>& batches);

/// Whether strips were ever hung in that yard (0: in any), what was made void counted too.
bool is_anything_hung(const Workbook& workbook, Id<Yard> yard);

/// The code or name of a record, for the history; empty when it is not there or has none.
QString name_of(const Workbook& workbook, const QString& table, qint64 id);

/// Hives dead or gone, and hives left without strips though their yard was visited.
struct HiveStateRow {
    maths::Day on{};
    Id<Hive> hive;
    QString name;
    QString yard;
    QString state; ///< "dead", "gone", or "none_hung"
    QString note;
};
/// From and to that day, where they are said.
std::vector<HiveStateRow> hives_found(const Workbook& workbook, Id<Yard> yard, Id<Batch> batch, std::optional<maths::Day> from = {},
                                      std::optional<maths::Day> to = {});

/// One piece of work in the history, newest first.
struct JournalRow {
    qint64 seq = 0;
    Piece piece;
    QString who;
    QString why;
    maths::Instant at;
    int records = 0;
    bool outside = false;
};
std::vector<JournalRow> newest_pieces(const Workbook& workbook, int most);

} // namespace soakbook::book
