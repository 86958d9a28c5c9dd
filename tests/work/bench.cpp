// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench.h"

namespace soakbook::book {
void PrintTo(const Piece& piece, std::ostream* out) {
    *out << piece.key.toStdString() << " (" << piece.count << ", " << piece.subject.toStdString() << ")";
}
} // namespace soakbook::book

namespace soakbook::work {
void PrintTo(Why why, std::ostream* out) {
    *out << "Why " << static_cast<int>(why);
}
void PrintTo(const Refusal& refusal, std::ostream* out) {
    *out << "Why " << static_cast<int>(refusal.why) << " at '" << refusal.field.toStdString() << "' ["
         << refusal.facts.join(QStringLiteral(", ")).toStdString() << "]" << (refusal.can_confirm ? " (ask)" : "");
}
} // namespace soakbook::work

namespace soakbook::tests {

using namespace work;

maths::Instant moment(int n, int hour, int minute) {
    constexpr int wall = 120;
    const auto local =
        maths::days_after(first_day, n).time_since_epoch() + std::chrono::hours(hour) + std::chrono::minutes(minute);
    return {std::chrono::duration_cast<std::chrono::milliseconds>(local).count() - wall * 60'000, wall};
}

book::Doing on_day(int n, int hour, int minute) {
    return {moment(n, hour, minute), QStringLiteral("Ada"), {}, false};
}

book::Doing because(const QString& why, int n, int hour, int minute) {
    book::Doing doing = on_day(n, hour, minute);
    doing.why = why;
    return doing;
}

Bench::Bench(SetUp set_up) : m_path(m_folder.filePath(QStringLiteral("bench.soakbook"))) {
    auto made = book::Workbook::create(m_path, on_day(-10));
    if (!made)
        throw std::runtime_error("the workbook was not made");
    m_workbook = std::move(*made);
    if (set_up == SetUp::nothing)
        return;
    FirstSetUp first;
    first.operation = {QStringLiteral("Bench apiary"), QStringLiteral("1 Test lane"), QStringLiteral("T-1")};
    first.person = QStringLiteral("Ada");
    first.kind.name = QStringLiteral("card 11 g");
    first.kind.dry = maths::grams(11);
    first.kind.target = maths::grams(34);
    first.kind.tolerance = maths::grams(0.5);
    first.kind.strips_per_bag = 80;
    first.kind.dose_rule = DoseRule::frames_of_bees;
    first.kind.dose_frames_tenths = 25;
    first.tank.is_tank = true;
    first.tank.name = QStringLiteral("tank");
    first.tank.capacity = maths::kilograms(80);
    first.bin.is_tank = false;
    first.bin.name = QStringLiteral("bin 1");
    first.bin.strips_held = 480;
    first.bin.flood = maths::kilograms(30);
    must(first_set_up(book(), first, on_day(-10)));
    strip_kind = strip_kinds(book()).at(0).id;
    VesselEntry second = first.bin;
    second.name = QStringLiteral("bin 2");
    second_bin = must(save_vessel(book(), second, on_day(-10)));
    for (const VesselEntry& vessel : vessels(book()))
        (vessel.is_tank ? tank : vessel.id == second_bin ? second_bin : bin) = vessel.id;

    LotEntry lot;
    lot.received_on = maths::days_after(first_day, -10);
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("acid A1");
    lot.amount = maths::kilograms(100).count;
    lot.container_amount = maths::kilograms(25).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = maths::percent(100);
    acid = must(save_lot(book(), lot, on_day(-10)));
    lot = {};
    lot.received_on = maths::days_after(first_day, -10);
    lot.material = MaterialKind::glycerine;
    lot.name = QStringLiteral("glycerine G1");
    lot.amount = maths::kilograms(200).count;
    lot.container_amount = maths::kilograms(25).count;
    glycerine = must(save_lot(book(), lot, on_day(-10)));
    lot.material = MaterialKind::strips;
    lot.name = QStringLiteral("strips C1");
    lot.amount = 5000;
    lot.container_amount.reset();
    lot.strip_kind = strip_kind;
    strips = must(save_lot(book(), lot, on_day(-10)));
    lot.material = MaterialKind::bags;
    lot.name = QStringLiteral("bags Z1");
    lot.amount = 500;
    lot.strip_kind.reset();
    bags = must(save_lot(book(), lot, on_day(-10)));
}

void Bench::reopen() {
    m_workbook.reset();
    auto opened = book::Workbook::open(m_path);
    if (!opened)
        throw std::runtime_error("the workbook did not open again");
    m_workbook = std::move(*opened);
}

MixPlan Bench::plan() const {
    MixPlan plan;
    plan.amount = maths::kilograms(62.5);
    plan.tank = tank;
    plan.strip_kind = strip_kind;
    plan.acid_lot = acid;
    plan.glycerine_lot = glycerine;
    return plan;
}

BatchId Bench::mixed_batch(int n, std::optional<maths::Mass> total, const std::vector<PailId>& pails) {
    MixPlan wanted = plan();
    if (total)
        wanted.amount = total;
    wanted.pails = pails;
    const Confirmed yes{Why::tank_in_use};
    const BatchId batch = must(plan_mix(book(), wanted, on_day(n, 17), yes)).batch;
    WeighedMix weighed;
    weighed.batch = batch;
    for (const InputLine& input : inputs_of(batch))
        weighed.masses.push_back({input.id, input.planned});
    must(weigh_mix(book(), weighed, on_day(n, 18)));
    return batch;
}

BatchId Bench::clear_batch(int n, std::optional<maths::Mass> total, const std::vector<PailId>& pails) {
    const BatchId batch = mixed_batch(n, total, pails);
    ReadingEntry reading;
    reading.batch = batch;
    reading.probe = maths::celsius(52);
    reading.dial = maths::celsius(55);
    must(log_reading(book(), reading, on_day(n + 1, 8)));
    StirEntry stir;
    stir.batch = batch;
    stir.minutes = 5;
    stir.clear = true;
    stir.outlet_poured_back = true;
    must(log_stir(book(), stir, on_day(n + 1, 9)));
    return batch;
}

BatchId Bench::soaked_batch(int n, int bins) {
    const BatchId batch = clear_batch(n);
    SoakEntry soak;
    soak.batch = batch;
    soak.lot = strips;
    soak.bins.push_back({bin, 480, std::nullopt});
    if (bins > 1)
        soak.bins.push_back({second_bin, 480, std::nullopt});
    must(start_soak(book(), soak, on_day(n + 1, 10)));
    return batch;
}

BatchView Bench::view(BatchId batch) {
    return *batch_view(book(), batch, first_day);
}

std::vector<InputLine> Bench::inputs_of(BatchId batch) {
    return view(batch).inputs;
}

std::vector<SoakId> Bench::soaks_of(BatchId batch) {
    std::vector<SoakId> ids;
    const BatchView whole = view(batch);
    for (const SoakLine& soak : whole.soaks)
        ids.push_back(soak.id);
    return ids;
}

BatchId Bench::weighed_batch(int n, int bins) {
    const BatchId batch = soaked_batch(n, bins);
    for (const SoakId soak : soaks_of(batch)) {
        WeighEntry weighing;
        weighing.soak = soak;
        weighing.strips = 10;
        weighing.total = maths::grams(339);
        weighing.drip_minutes = 30;
        must(log_weighing(book(), weighing, on_day(n + 2, 10)));
        must(end_soak(book(), soak, std::nullopt, on_day(n + 2, 10)));
    }
    return batch;
}

BatchId Bench::bagged_batch(int n, int bins) {
    const BatchId batch = weighed_batch(n, bins);
    BagEntry entry;
    entry.batch = batch;
    entry.bags = 6 * bins;
    entry.bag_lot = bags;
    entry.stands = QStringLiteral("shelf 1");
    must(fill_bags(book(), entry, on_day(n + 2, 14)));
    return batch;
}

std::vector<BagId> Bench::bags_of(BatchId batch) {
    std::vector<BagId> ids;
    const BatchView whole = view(batch);
    for (const BatchBag& bag : whole.bags)
        ids.push_back(bag.id);
    return ids;
}

} // namespace soakbook::tests
