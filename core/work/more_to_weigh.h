// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a sample of strips settles the verdict, and if not, how many more to weigh.
#pragma once

#include "core/work/strip_spread.h"
#include "core/work/weigh.h"

namespace soakbook::work {

enum class SampleSays {
    settled,          ///< the verdict stands at 95 %
    weigh_more,       ///< the interval lies across a limit: `more` strips would settle it
    too_near_a_limit, ///< a thousand more would not settle it
    no_spread_known,  ///< weighed together, and no strip of this kind and lot was ever weighed alone
};
/// What a sample of strips settles.
struct MoreToWeigh {
    SampleSays says = SampleSays::no_spread_known;
    WeighVerdict verdict = WeighVerdict::weigh_more;
    std::optional<int> more; ///< strips to weigh on top of these, if mean and spread stay as they are
    int strips = 0;          ///< weighed in this sample
    maths::Mass mean{};
    std::optional<maths::Mass> low; ///< 95 % interval of the mean
    std::optional<maths::Mass> high;
    std::optional<StripSpread> spread; ///< the one it stands on: of these very strips, or learned of their kind and lot
    bool learned = false;              ///< from other weighings
    maths::Mass target{};
    maths::Mass tolerance{};
};
/// For the form while it is typed. Strips weighed one by one are judged by their own spread; weighed together, by the
/// spread known of their kind and lot. Refuses as reckon_weighing, and pulled strips (not_found): they have no target.
Outcome<MoreToWeigh> more_to_weigh(const book::Workbook& workbook, const WeighEntry& entry);
/// For a weighing in the workbook.
Outcome<MoreToWeigh> more_to_weigh(const book::Workbook& workbook, WeighInId weighing);

} // namespace soakbook::work
