// SPDX-License-Identifier: GPL-3.0-or-later
#include "page_reads.h"

#include "core/work/bin_yield.h"
#include "core/work/count.h"
#include "core/work/dial_advice.h"
#include "core/work/due.h"
#include "core/work/find.h"
#include "core/work/materials.h"
#include "core/work/mite_change.h"
#include "core/work/register_view.h"
#include "core/work/round.h"
#include "core/work/setup.h"
#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "core/work/strip_spread.h"
#include "core/work/visit.h"
#include "core/work/watch.h"
#include "core/work/yards_view.h"

namespace soakbook::tests {

using namespace work;

std::vector<PageRead> page_reads(const book::Workbook& w, maths::Day today) {
    const auto noon = std::chrono::duration_cast<std::chrono::milliseconds>(today.time_since_epoch() + std::chrono::hours{10});
    const maths::Instant now{noon.count(), 120};
    // Of each kind the newest stands for all of it.
    const auto batch_lines = batches(w, today);
    const BatchId batch = batch_lines.empty() ? BatchId{} : batch_lines.front().id;
    const auto stock = bags(w, today);
    const BagId bag = stock.empty() ? BagId{} : stock.front().id;
    const auto pails_there = pails(w, today);
    const PailId pail_there = pails_there.empty() ? PailId{} : pails_there.front().id;
    const auto yards_there = yards(w);
    const YardId yard = yards_there.empty() ? YardId{} : yards_there.back().id;
    const auto hives_there = hives(w, yard);
    const HiveId hive = hives_there.empty() ? HiveId{} : hives_there.front().id;
    const QString hive_name = hives_there.empty() ? QString() : hives_there.front().name;
    const auto rounds_there = rounds(w);
    const RoundId round = rounds_there.empty() ? RoundId{} : rounds_there.front().id;
    const RoundId pulled = rounds_there.size() < 2 ? round : rounds_there[1].id;
    const auto hung = hanging(w, yard, today);
    const PlacementId placement = hung.empty() ? PlacementId{} : hung.front().placement;
    VesselId tank;
    VesselId bin;
    for (const VesselEntry& vessel : vessels(w))
        (vessel.is_tank ? tank : bin) = vessel.id;
    const auto kinds = strip_kinds(w);
    const StripKindId kind = kinds.empty() ? StripKindId{} : kinds.front().id;
    const QString bag_code = stock.empty() ? QString() : stock.front().code;

    RegisterFilter of_a_year;
    of_a_year.from = maths::days_after(today, -365);
    of_a_year.to = today;
    RegisterFilter of_a_yard = of_a_year;
    of_a_yard.yard = yard;
    RegisterFilter of_a_batch;
    of_a_batch.batch = batch_lines.size() < 2 ? batch : batch_lines.back().id;

    return {
        {"due", [=, &w] { return due(w, now).size(); }},
        {"due, its figures", [=, &w] { return static_cast<std::size_t>(due_figures(w, today).hives_carrying); }},
        {"due, the year ahead", [=, &w] { return year_ahead(w, today).months.size(); }},
        {"status line: newest entry", [&w] { return static_cast<std::size_t>(entry_number(w)); }},
        {"find a code", [=, &w] { return find(w, bag_code).found.size(); }},
        {"find a name", [=, &w] { return find(w, hive_name.left(3)).found.size(); }},
        {"shed: batches", [=, &w] { return batches(w, today).size(); }},
        {"shed: one batch", [=, &w] { return batch_view(w, batch, today)->bags.size(); }},
        {"shed: a new mix", [=, &w] { return mix_start(w, today).pails_that_can.size(); }},
        {"shed: dial advice", [=, &w] { return static_cast<std::size_t>(dial_advice(w, tank).pairs); }},
        {"shed: yields of a bin", [=, &w] { return static_cast<std::size_t>(bin_yields(w, bin, kind, maths::kilograms(60)).has_value()); }},
        {"shed: spread of strips", [=, &w] { return static_cast<std::size_t>(known_spread(w, kind, {}).has_value()); }},
        {"store: bags", [=, &w] { return bags(w, today).size(); }},
        {"store: bags, all of them", [=, &w] { return bags(w, today, BagFilter::all).size(); }},
        {"store: a bag's card", [=, &w] { return bag_events(w, bag).size(); }},
        {"store: pails", [=, &w] { return pails(w, today).size(); }},
        {"store: a pail", [=, &w] { return static_cast<std::size_t>(pail(w, pail_there, today).has_value()); }},
        {"store: deliveries", [=, &w] { return lots(w, today).size(); }},
        {"yards", [=, &w] { return yard_lines(w, today).size(); }},
        {"yards: hives of one", [=, &w] { return hive_lines(w, yard, today).size(); }},
        {"yards: hives of all", [=, &w] { return hive_lines(w, {}, today).size(); }},
        {"yards: a hive's story", [=, &w] { return hive_events(w, hive).size(); }},
        {"yards: what hangs", [=, &w] { return hanging(w, {}, today).size(); }},
        {"yards: rounds", [=, &w] { return rounds(w).size(); }},
        {"yards: a visit planned", [=, &w] { return plan_visit(w, round, yard, today)->lines.size(); }},
        {"yards: counts of one", [=, &w] { return counts(w, {}, yard).size(); }},
        {"yards: what a round did", [=, &w] { return static_cast<std::size_t>(mite_change(w, pulled, MiteCountKind::wash).treated.hives); }},
        {"register: treatments, a year", [=, &w] { return treatments(w, of_a_year).size(); }},
        {"register: treatments, a yard", [=, &w] { return treatments(w, of_a_yard).size(); }},
        {"register: treatments, a batch", [=, &w] { return treatments(w, of_a_batch).size(); }},
        {"register: corrections, a year", [=, &w] { return corrections(w, of_a_year).size(); }},
        {"register: corrections, a yard", [=, &w] { return corrections(w, of_a_yard).size(); }},
        {"register: corrections, all", [=, &w] { return corrections(w, {}).size(); }},
        {"register: hives found, a year", [=, &w] { return hive_states(w, of_a_year).size(); }},
        {"register: journal", [&w] { return journal(w, 200).size(); }},
        {"history of a placement", [=, &w] { return history(w, QStringLiteral("placement"), placement.value).size(); }},
        {"history of a bag", [=, &w] { return history(w, QStringLiteral("bag"), bag.value).size(); }},
    };
}

} // namespace soakbook::tests
