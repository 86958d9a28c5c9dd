// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/bad_input/full_house.h"

#include "core/work/count.h"
#include "core/work/stock.h"

namespace soakbook::tests {

using namespace work;

FullHouse::FullHouse() {
    LotEntry lot;
    lot.received_on = day_n(last_day);
    lot.material = MaterialKind::acid;
    lot.name = QStringLiteral("acid A2");
    lot.amount = maths::kilograms(300).count;
    lot.container_amount = maths::kilograms(25).count;
    lot.acid_form = FormOfAcid::dihydrate;
    lot.assay = maths::percent(100);
    acid = must(save_lot(book(), lot, on_day(last_day)));
    lot = {};
    lot.received_on = day_n(last_day);
    lot.material = MaterialKind::glycerine;
    lot.name = QStringLiteral("glycerine G2");
    lot.amount = maths::kilograms(400).count;
    glycerine = must(save_lot(book(), lot, on_day(last_day)));

    const Confirmed yes{Why::tank_in_use, Why::strength_off, Why::loss_unexplained, Why::window_not_open};
    planned = must(plan_mix(book(), plan(), on_day(today - 1), yes)).batch;
    too_strong = must(plan_mix(book(), plan(), on_day(today - 1), yes)).batch;
    WeighedMix short_of_glycerine;
    short_of_glycerine.batch = too_strong;
    for (const InputLine& input : inputs_of(too_strong))
        short_of_glycerine.masses.push_back(
            {input.id, input.is_acid ? input.planned : maths::Mass{input.planned.count - maths::kilograms(5).count}});
    must(weigh_mix(book(), short_of_glycerine, on_day(today - 1), yes));
    warm = mixed_batch(today - 2);
    ReadingEntry reading;
    reading.batch = warm;
    reading.probe = maths::celsius(48);
    reading.dial = maths::celsius(55);
    must(log_reading(book(), reading, on_day(today - 1, 8)));
    StirEntry stir;
    stir.batch = warm;
    stir.minutes = 5;
    stir.clear = false;
    must(log_stir(book(), stir, on_day(today - 1, 9)));
    clear = clear_batch(today - 2);
    weighed = weighed_batch(today - 3, 1);
    must(reserve_labels(book(), weighed, 3, on_day(today - 1)));
    soaking = soaked_batch(today - 2, 1);
    closed = past;
    must(close_batch(book(), closed, on_day(last_day), yes));

    for (const RoundLine& line : rounds(book())) {
        if (line.name == QStringLiteral("Autumn"))
            autumn = line.id;
    }
    must(save_yard(book(), {{}, QStringLiteral("Hill top"), {}, {}, true}, on_day(last_day)));
    pulled_hive = hives.at(2);
    PullEntry out;
    out.on = day_n(260);
    out.rows.push_back({placement(pulled_hive), 3, 1, {}});
    must(enter_pull(book(), out, on_day(260), yes));
    CountEntry count;
    count.on = day_n(270);
    count.kind = MiteCountKind::wash;
    count.rows.push_back({pulled_hive, 3, 300, {}, {}});
    must(enter_counts(book(), count, on_day(270)));
}

} // namespace soakbook::tests
