// SPDX-License-Identifier: GPL-3.0-or-later
// What the liquid of a batch cost, with what its pails brought along. For core/work's own use.
#pragma once

#include "core/book/records/batch.h"
#include "core/book/records/material_lot.h"
#include "core/maths/cost.h"
#include "core/work/batch_cost.h"

#include <map>
#include <set>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

/// The liquid of one batch, and where it went.
struct LiquidAccount {
    maths::LiquidCost cost;    ///< of all that went in; what is missing counts as nothing here
    maths::LiquidCost in_bags; ///< its part in strips and bags
    std::vector<PailCost> pails;
    maths::Money in_work; ///< of an open batch: what is not accounted for yet
    bool acid_known = true;
    bool glycerine_known = true;
    bool carried_known = true;
    std::vector<MissingCost> missing;

    bool known() const { return acid_known && glycerine_known && carried_known; }
};

/// What `used` of a lot costs (milligrams or pieces), or nothing; then it is put on the list of the missing.
std::optional<maths::Money> lot_cost(const book::Workbook& workbook, std::optional<LotId> lot, qint64 used,
                                     MaterialKind material, const QString& batch_code,
                                     std::vector<MissingCost>& missing);

/// Accounts of batches and of those their pails came from, each reckoned once.
class LiquidAccounts {
public:
    explicit LiquidAccounts(const book::Workbook& workbook) : m_workbook(workbook) {}
    const LiquidAccount& of(const book::Batch& batch);

private:
    LiquidAccount reckon(const book::Batch& batch);
    void add_pail(LiquidAccount& account, PailId pail);

    const book::Workbook& m_workbook;
    std::map<qint64, LiquidAccount> m_accounts;
    std::set<qint64> m_under_way; ///< a batch that would be an input of itself ends here
};

} // namespace soakbook::work
