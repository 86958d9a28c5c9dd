// SPDX-License-Identifier: GPL-3.0-or-later
// Deliveries of acid, glycerine, dry strips and bags, and what is left of each. Amounts are milligrams for acid and
// glycerine, pieces for strips and bags.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

/// Fields: name, supplier, received_on, amount, container_amount, assay, acid_form, strip_kind, dry, best_before, cost.
struct LotEntry {
    LotId id;
    MaterialKind material{};
    QString name;
    QString supplier;
    std::optional<maths::Day> received_on;
    std::optional<qint64> amount;
    std::optional<qint64> container_amount;
    std::optional<FormOfAcid> acid_form;
    std::optional<maths::Fraction> assay; ///< as the label says it, in its form; converted to dihydrate when written
    std::optional<StripKindId> strip_kind;
    std::optional<maths::Mass> dry;
    std::optional<maths::Day> best_before;
    std::optional<maths::Money> cost;
    QString note;
};
/// A new delivery (id 0), or a correction of one, which needs a reason in `doing`.
Outcome<LotId> save_lot(book::Workbook& workbook, const LotEntry& lot, const book::Doing& doing, const Confirmed& confirmed = {});

struct LotLine {
    LotEntry entry;
    maths::Fraction assay_as_dihydrate{}; ///< acid only
    qint64 used = 0;
    qint64 left = 0;
    bool finished = false;
    bool past_date = false;
};
/// Every lot that is not void, with what is left, newest first; `only_open` leaves out finished ones.
std::vector<LotLine> lots(const book::Workbook& workbook, maths::Day today, bool only_open = false);

/// Sets what is left after counting or weighing; fields: left, reason.
Outcome<int> recount_lot(book::Workbook& workbook, LotId lot, qint64 left, const QString& reason, const book::Doing& doing);
Outcome<int> finish_lot(book::Workbook& workbook, LotId lot, const book::Doing& doing);

} // namespace soakbook::work
