// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/more_to_weigh.h"

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/batch.h"
#include "core/book/records/soak.h"
#include "core/book/records/weigh_in.h"
#include "core/maths/count_by_weight.h"
#include "core/work/weigh_sums.h"

namespace soakbook::work {

namespace {

/// Which strips lie on the scale.
struct OnTheScale {
    StripKindId kind;
    std::optional<LotId> lot;
};
Outcome<OnTheScale> on_the_scale(const book::Workbook& workbook, const WeighEntry& entry) {
    std::optional<SoakId> soak_id = entry.soak && *entry.soak ? entry.soak : std::nullopt;
    OnTheScale strips;
    if (!soak_id && entry.bag && *entry.bag) {
        const auto bag = book::fetch(workbook, *entry.bag);
        if (!bag)
            return refuse(Why::not_found);
        strips.kind = bag->strip_kind;
        soak_id = bag->soak;
    }
    if (soak_id) {
        const auto soak = book::fetch(workbook, *soak_id);
        const auto batch = soak ? book::fetch(workbook, soak->batch) : std::nullopt;
        if (!batch)
            return refuse(Why::not_found);
        strips = {batch->strip_kind, soak->lot};
    }
    return strips.kind ? Outcome<OnTheScale>(strips) : refuse(Why::not_found);
}

void settle(MoreToWeigh& sample, maths::Verdict verdict, std::optional<std::int64_t> more, maths::Interval interval) {
    sample.verdict = static_cast<WeighVerdict>(verdict);
    sample.low = maths::grams(interval.low);
    sample.high = maths::grams(interval.high);
    if (more)
        sample.more = static_cast<int>(*more);
    sample.says = verdict != maths::Verdict::weigh_more ? SampleSays::settled
                  : more                                ? SampleSays::weigh_more
                                                        : SampleSays::too_near_a_limit;
}

} // namespace

Outcome<MoreToWeigh> more_to_weigh(const book::Workbook& workbook, const WeighEntry& entry) {
    const auto figures = reckon_weighing(workbook, entry);
    if (!figures)
        return unexpected(figures.error());
    const auto strips = on_the_scale(workbook, entry);
    if (!strips)
        return unexpected(strips.error());
    MoreToWeigh sample;
    sample.strips = figures->strips;
    sample.mean = figures->mean;
    sample.target = figures->target;
    sample.tolerance = figures->tolerance;
    const maths::Target target{figures->target, figures->tolerance};
    if (entry.singles.size() > 1) {
        if (const auto judged = maths::judge_one_by_one(entry.singles, target)) {
            settle(sample, judged->verdict, judged->more, judged->spread.interval);
            sample.spread = StripSpread{judged->spread.deviation, sample.strips - 1, sample.strips, 1};
        }
        return sample;
    }
    const auto known = known_spread(workbook, strips->kind, strips->lot);
    if (!known)
        return sample;
    const maths::KnownSpread spread{known->deviation, known->degrees};
    if (const auto judged = maths::judge_together({sample.mean, sample.strips}, target, spread)) {
        settle(sample, judged->verdict, judged->more, judged->interval);
        sample.spread = known;
        sample.learned = true;
    }
    return sample;
}

Outcome<MoreToWeigh> more_to_weigh(const book::Workbook& workbook, WeighInId weighing) {
    const auto record = book::fetch(workbook, weighing);
    if (!record || record->void_reason)
        return refuse(Why::not_found);
    WeighEntry entry;
    entry.soak = record->soak;
    entry.bag = record->bag;
    entry.strips = record->strips;
    entry.total = record->total;
    entry.singles = single_masses(workbook, weighing);
    return more_to_weigh(workbook, entry);
}

} // namespace soakbook::work
