// SPDX-License-Identifier: GPL-3.0-or-later
// Leftovers: what stays in the bins goes into pails; where every kilogram went; the batch is closed.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: pails/<i>, warm_and_clear, scraped, at, stands.
struct PourEntry {
    BatchId batch;
    std::vector<maths::Mass> pails;       ///< net mass of each
    std::optional<bool> warm_and_clear;   ///< poured warm and clear?
    std::optional<bool> scraped;          ///< the bin scraped to the bottom?
    std::optional<maths::Instant> at;
    QString stands;
};
struct PailsPoured {
    std::vector<PailId> pails;
    QStringList codes;
    bool only_together = false; ///< not warm and clear, or not scraped: one set
};
/// Refuses more than the batch can have left (beyond the unexplained limit asked, beyond what went in refused).
Outcome<PailsPoured> pour_leftovers(book::Workbook& workbook, const PourEntry& entry, const book::Doing& doing, const Confirmed& confirmed = {});

enum class NamedLoss { drips, tank_heel, spill, other };
/// Fields: mass.
Outcome<LossId> log_loss(book::Workbook& workbook, BatchId batch, NamedLoss kind, std::optional<maths::Mass> mass, const QString& note, const book::Doing& doing);
/// A loss that was written wrongly; reason in `doing`. Refuses a closed batch.
Outcome<int> void_loss(book::Workbook& workbook, LossId loss, const book::Doing& doing);

/// Where every kilogram of a batch went.
struct Balance {
    maths::Mass in{};
    maths::Mass in_strips{};       ///< taken up by bagged strips, at the last weighing's mean
    maths::Mass free_in_bags{};    ///< net weight of bags less dry strips less what strips took up; only for weighed bags
    maths::Mass in_pails{};
    maths::Mass named_losses{};
    maths::Mass unexplained{};     ///< with a sign
    std::optional<maths::Fraction> limit; ///< the figure, if it was said
    bool beyond_limit = false;
};
Outcome<Balance> balance(const book::Workbook& workbook, BatchId batch);
/// Refuses strips still soaking; asks (loss_unexplained) beyond the limit.
Outcome<Balance> close_batch(book::Workbook& workbook, BatchId batch, const book::Doing& doing, const Confirmed& confirmed = {});
/// Opens a closed batch again, reason in `doing`.
Outcome<int> reopen_batch(book::Workbook& workbook, BatchId batch, const book::Doing& doing);

// Pails on the shelf.
/// A pail that was used in part: its strength is unknown from then on, and it goes into no mix.
Outcome<int> pail_used_in_part(book::Workbook& workbook, PailId pail, std::optional<maths::Day> on, const book::Doing& doing);
Outcome<int> discard_pail(book::Workbook& workbook, PailId pail, std::optional<maths::Day> on, const QString& reason, const book::Doing& doing);
Outcome<int> move_pails(book::Workbook& workbook, const std::vector<PailId>& pails, const QString& stands, const book::Doing& doing);
/// Corrects a pail's mass, reason in `doing`.
Outcome<int> correct_pail(book::Workbook& workbook, PailId pail, maths::Mass mass, const book::Doing& doing);

} // namespace soakbook::work
