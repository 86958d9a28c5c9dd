// SPDX-License-Identifier: GPL-3.0-or-later
#include "years_player.h"

#include "core/work/bag.h"
#include "core/work/heat.h"
#include "core/work/leftovers.h"
#include "core/work/mix.h"
#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "core/work/soak.h"
#include "core/work/stock.h"
#include "core/work/store_view.h"
#include "core/work/weigh.h"

#include <algorithm>

namespace soakbook::tests {

using namespace work;

// Mixed in the evening, clear in the morning, soaked over a day, bagged and poured the day after.
void YearsPlayer::make_batch(maths::Day day) {
    const BatchId batch = mix(day);
    clear(batch, day);
    soak_and_weigh(batch, day);
    bag_and_close(batch, maths::days_after(day, 2));
    ++m_made.batches;
}

BatchId YearsPlayer::mix(maths::Day day) {
    MixPlan plan;
    plan.amount = maths::kilograms(31.25 * static_cast<double>(m_bins.size()));
    plan.tank = m_tank;
    plan.strip_kind = m_kind;
    plan.acid_lot = m_acid;
    plan.glycerine_lot = m_glycerine;
    plan.pails = m_pails;
    const BatchId batch = must([&](const Confirmed& yes) { return plan_mix(m_book, plan, at(day, 17), yes); }).batch;
    m_pails.clear();
    WeighedMix weighed;
    weighed.batch = batch;
    const auto view = batch_view(m_book, batch, day);
    for (const InputLine& input : view->inputs)
        weighed.masses.push_back({input.id, input.planned});
    must([&](const Confirmed& yes) { return weigh_mix(m_book, weighed, at(day, 18), yes); });
    return batch;
}

void YearsPlayer::clear(BatchId batch, maths::Day day) {
    const maths::Day next = maths::days_after(day, 1);
    for (const int hour : {19, 22, 24 + 7}) {
        ReadingEntry reading;
        reading.batch = batch;
        reading.probe = maths::celsius(49 + 0.1 * below(40));
        reading.dial = maths::celsius(55);
        if (hour == 19)
            reading.room = maths::celsius(17);
        must([&](const Confirmed& yes) { return log_reading(m_book, reading, at(hour < 24 ? day : next, hour % 24, below(50)), yes); });
    }
    if (one_in(5)) {
        const auto view = batch_view(m_book, batch, day);
        const ReadingId wrong = view->readings.front().id;
        must_because([&](const Confirmed&) { return void_reading(m_book, wrong, because(QStringLiteral("read at the wrong tank"), next, 8)); });
    }
    for (const bool is_clear : {false, true}) {
        StirEntry stir;
        stir.batch = batch;
        stir.minutes = 5;
        stir.clear = is_clear;
        stir.outlet_poured_back = true;
        must([&](const Confirmed& yes) { return log_stir(m_book, stir, at(next, is_clear ? 9 : 8, 30), yes); });
    }
}

void YearsPlayer::soak_and_weigh(BatchId batch, maths::Day day) {
    const maths::Day next = maths::days_after(day, 1);
    SoakEntry soak;
    soak.batch = batch;
    soak.lot = m_strips;
    soak.room = maths::celsius(18);
    for (const VesselId bin : m_bins)
        soak.bins.push_back({bin, 480, {}});
    const auto soaks = must([&](const Confirmed& yes) { return start_soak(m_book, soak, at(next, 10), yes); });
    m_made.soaks += static_cast<int>(soaks.size());
    for (const SoakId id : soaks) {
        for (const int hour : {16, 20, 24 + 9}) {
            const double mean = hour == 16 ? 27.0 : hour == 20 ? 31.0 : 33.8;
            WeighEntry weighing;
            weighing.soak = id;
            weighing.drip_minutes = 30;
            if (hour > 24 && one_in(3))
                for (int i = 0; i < 10; ++i)
                    weighing.singles.push_back(maths::grams(mean + 0.01 * (below(60) - 30)));
            else {
                weighing.strips = 10;
                weighing.total = maths::grams(10 * mean + 0.1 * below(20));
            }
            must([&](const Confirmed& yes) { return log_weighing(m_book, weighing, at(maths::days_after(next, hour / 24), hour % 24, below(20)), yes); });
            ++m_made.weighings;
        }
        must([&](const Confirmed&) { return end_soak(m_book, id, {}, at(maths::days_after(next, 1), 10)); });
    }
    if (!one_in(4))
        return;
    const auto view = batch_view(m_book, batch, day);
    const WeighLine& wrong = view->soaks.front().weighings.front();
    WeighEntry right;
    right.soak = view->soaks.front().id;
    right.strips = wrong.strips;
    right.total = wrong.total + maths::grams(3);
    must_because([&](const Confirmed&) {
        return correct_weighing(m_book, wrong.id, right, because(QStringLiteral("the tray was not tared"), maths::days_after(next, 1), 11));
    });
}

void YearsPlayer::bag_and_close(BatchId batch, maths::Day day) {
    BagEntry entry;
    entry.batch = batch;
    entry.bags = 6 * static_cast<int>(m_bins.size());
    entry.bag_lot = m_bags;
    entry.stands = QStringLiteral("shelf %1").arg(1 + below(4));
    auto filled = must([&](const Confirmed& yes) { return fill_bags(m_book, entry, at(day, 14), yes); });
    m_made.bags += static_cast<int>(filled.bags.size());
    must([&](const Confirmed&) { return labels_printed(m_book, filled.bags, {}, at(day, 15)); });
    if (one_in(6)) {
        must_because([&](const Confirmed&) { return void_bag(m_book, filled.bags.back(), because(QStringLiteral("the seam burst"), day, 15, 20)); });
        filled.bags.pop_back();
        ++m_made.bags_void;
    }
    if (one_in(6))
        must([&](const Confirmed&) { return recount_bag(m_book, filled.bags.front(), 79, QStringLiteral("one torn"), at(day, 15, 30)); });
    if (one_in(5))
        must([&](const Confirmed&) { return move_bags(m_book, filled.bags, QStringLiteral("cold room"), at(day, 15, 40)); });

    // The liquid that the strips left goes into pails whole, for the next batch.
    const double taken = 480.0 * static_cast<double>(m_bins.size()) * 0.0229;
    const double left = 31.25 * static_cast<double>(m_bins.size()) - taken;
    const int pails = std::min(12, 2 * static_cast<int>(m_bins.size()));
    PourEntry pour;
    pour.batch = batch;
    pour.pails.assign(static_cast<std::size_t>(pails), maths::kilograms(0.98 * left / pails));
    pour.warm_and_clear = true;
    pour.scraped = true;
    pour.stands = QStringLiteral("under the bench");
    const auto poured = must([&](const Confirmed& yes) { return pour_leftovers(m_book, pour, at(day, 16), yes); });
    m_pails = poured.pails;
    m_made.pails += pails;
    must([&](const Confirmed&) { return log_loss(m_book, batch, NamedLoss::drips, maths::kilograms(0.01 * left), {}, at(day, 16, 10)); });
    must([&](const Confirmed& yes) { return close_batch(m_book, batch, at(day, 16, 30), yes); });
    must([&](const Confirmed&) { return sheet_printed(m_book, QStringLiteral("batch sheet"), {batch}, {}, {}, at(day, 16, 40)); });
}

void YearsPlayer::discard_past_limit(maths::Day day) {
    std::vector<BagId> past;
    for (const BagLine& bag : bags(m_book, day, BagFilter::past_limit)) {
        past.push_back(bag.id);
        m_made.strips_discarded += bag.left;
    }
    if (!past.empty())
        must([&](const Confirmed&) { return discard_bags(m_book, past, day, QStringLiteral("past the limit"), at(day, 9)); });
}

} // namespace soakbook::tests
