// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/batch_parts.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BatchParts {
    Q_DECLARE_TR_FUNCTIONS(BatchParts)
};

constexpr int decimals_of_parts = 2;

QString degrees(const Desk& desk, const std::optional<maths::Temperature>& temperature) {
    return temperature ? desk.temperature(*temperature) : QString();
}

QString yes_or_no(std::optional<bool> answer) {
    if (!answer)
        return {};
    //: An answer on a sheet
    return *answer ? BatchParts::tr("yes")
                   //: An answer on a sheet
                   : BatchParts::tr("no");
}

} // namespace

BatchPart mix_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Mix");
    //: Column of a batch sheet: what went in
    part.table.columns = {{BatchParts::tr("What"), 3},
                          //: Column of a batch sheet
                          {BatchParts::tr("Planned"), 1, ColumnKind::number},
                          //: Column of a batch sheet
                          {BatchParts::tr("Weighed"), 1, ColumnKind::number}};
    for (const work::InputLine& input : batch.inputs) {
        //: A whole pail in a mix; %1 its code
        const QString what = input.pail ? BatchParts::tr("Pail %1, whole").arg(input.name) : input.name;
        part.table.rows.push_back({{what, desk.large(input.planned, decimals_of_parts), input.mass ? desk.large(*input.mass, decimals_of_parts) : QString()}});
    }
    return part;
}

BatchPart heat_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Readings of the tank");
    //: Column of a batch sheet: day and time
    part.table.columns = {{BatchParts::tr("When"), 2},
                          //: Column of a batch sheet: the temperature of the liquid
                          {BatchParts::tr("Probe"), 1, ColumnKind::number},
                          //: Column of a batch sheet: the thermostat
                          {BatchParts::tr("Dial"), 1, ColumnKind::number},
                          //: Column of a batch sheet
                          {BatchParts::tr("Room"), 1, ColumnKind::number},
                          //: Column of a batch sheet: water in the tank's jacket
                          {BatchParts::tr("Jacket water"), 1},
                          //: Column of a batch sheet
                          {BatchParts::tr("Note"), 2}};
    for (const work::ReadingLine& reading : batch.readings) {
        //: A reading over the ceiling, on a batch sheet
        const QString over = reading.over_ceiling ? BatchParts::tr("over the ceiling") : QString();
        part.table.rows.push_back({{desk.moment(reading.at), degrees(desk, reading.probe), degrees(desk, reading.dial),
                                    degrees(desk, reading.room), yes_or_no(reading.jacket_seen),
                                    reading.note.isEmpty() ? over : reading.note}});
    }
    return part;
}

BatchPart stir_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Stirs");
    //: Column of a batch sheet: day and time
    part.table.columns = {{BatchParts::tr("When"), 2},
                          //: Column of a batch sheet: how long it was stirred
                          {BatchParts::tr("Minutes"), 1, ColumnKind::number},
                          //: Column of a batch sheet: whether the liquid was clear
                          {BatchParts::tr("Clear"), 1},
                          //: Column of a batch sheet
                          {BatchParts::tr("Outlet poured back"), 1}};
    for (const work::StirLine& stir : batch.stirs) {
        part.table.rows.push_back({{desk.moment(stir.at), stir.minutes ? desk.count(*stir.minutes) : QString(),
                                    yes_or_no(stir.clear), yes_or_no(stir.outlet_poured_back)}});
    }
    return part;
}

BatchPart soak_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Soak");
    //: Column of a batch sheet
    part.table.columns = {{BatchParts::tr("Bin"), 2},
                          //: Column of a batch sheet
                          {BatchParts::tr("Strips"), 1, ColumnKind::number},
                          //: Column of a batch sheet: day and time
                          {BatchParts::tr("Flooded"), 2},
                          //: Column of a batch sheet: day and time
                          {BatchParts::tr("Taken out"), 2},
                          //: Column of a batch sheet
                          {BatchParts::tr("Room"), 1, ColumnKind::number}};
    for (const work::SoakLine& soak : batch.soaks) {
        part.table.rows.push_back({{soak.bin_name, desk.count(soak.strips), desk.moment(soak.started),
                                    soak.ended ? desk.moment(*soak.ended) : QString(), degrees(desk, soak.room)}});
    }
    return part;
}

BatchPart weigh_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Weighings");
    //: Column of a batch sheet: day and time
    part.table.columns = {{BatchParts::tr("When"), 2},
                          //: Column of a batch sheet
                          {BatchParts::tr("Bin"), 1},
                          //: Column of a batch sheet
                          {BatchParts::tr("Strips"), 1, ColumnKind::number},
                          //: Column of a batch sheet: weight of all strips on the scale
                          {BatchParts::tr("Together"), 1, ColumnKind::number},
                          //: Column of a batch sheet: mean weight
                          {BatchParts::tr("Each"), 1, ColumnKind::number},
                          //: Column of a batch sheet: acid in a strip
                          {BatchParts::tr("Acid a strip"), 1, ColumnKind::number},
                          //: Column of a batch sheet: the first writing said something else
                          {BatchParts::tr("Corrected"), 1}};
    for (const work::SoakLine& soak : batch.soaks) {
        for (const work::WeighLine& weighing : soak.weighings) {
            part.table.rows.push_back({{desk.moment(weighing.at), soak.bin_name, desk.count(weighing.strips),
                                        desk.small(weighing.total, decimals_of_parts), desk.small(weighing.figures.mean, decimals_of_parts),
                                        desk.small(weighing.figures.acid_per_strip, decimals_of_parts),
                                        weighing.corrected ? yes_or_no(true) : QString()}});
        }
    }
    return part;
}

BatchPart bag_part(const Desk& desk, const work::BatchView& batch) {
    const auto day = [&desk](const std::optional<maths::Day>& d) { return d ? desk.day(*d) : QString(); };
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Bags");
    //: Column of a batch sheet
    part.table.columns = {{BatchParts::tr("Bag"), 1, ColumnKind::code},
                          //: Column of a batch sheet
                          {BatchParts::tr("Strips"), 1, ColumnKind::number},
                          //: Column of a batch sheet: weight of what is in a bag
                          {BatchParts::tr("Contents"), 1, ColumnKind::number},
                          //: Column of a batch sheet: a day
                          {BatchParts::tr("Sealed"), 1},
                          //: Column of a batch sheet: a day
                          {BatchParts::tr("Rests until"), 1},
                          //: Column of a batch sheet: a day
                          {BatchParts::tr("Use by"), 1}};
    for (const work::BatchBag& bag : batch.bags) {
        SheetRow row{{bag.code, bag.packed ? desk.count(*bag.packed) : QString(), bag.net ? desk.large(*bag.net, decimals_of_parts) : QString(),
                      day(bag.sealed_on), day(bag.rest_until), day(bag.use_by)}};
        row.struck = bag.made_void;
        part.table.rows.push_back(row);
    }
    return part;
}

BatchPart balance_part(const Desk& desk, const work::BatchView& batch) {
    BatchPart part;
    //: A part of the batch sheet
    part.title = BatchParts::tr("Where every kilogram went");
    //: Column of a batch sheet: what became of the liquid
    part.table.columns = {{BatchParts::tr("Where it went"), 4},
                          //: Column of a batch sheet
                          {BatchParts::tr("Mass"), 1, ColumnKind::number}};
    const auto add = [&](const QString& what, maths::Mass mass) {
        part.table.rows.push_back({{what, desk.large(mass, decimals_of_parts)}});
    };
    if (batch.balance) {
        //: A line of a balance
        add(BatchParts::tr("Went in"), batch.balance->in);
        //: A line of a balance
        add(BatchParts::tr("Taken up by bagged strips"), batch.balance->in_strips);
        //: A line of a balance: liquid that lies free in bags
        add(BatchParts::tr("Free in the bags"), batch.balance->free_in_bags);
    }
    for (const work::BatchPail& pail : batch.pails) {
        add(pail.went_to.isEmpty()
                //: A line of a balance: a pail; %1 its code
                ? BatchParts::tr("Pail %1").arg(pail.code)
                //: A line of a balance: a pail; %1 its code, %2 the batch it went into
                : BatchParts::tr("Pail %1, gone into %2").arg(pail.code, pail.went_to),
            pail.mass);
    }
    if (batch.balance) {
        //: A line of a balance
        add(BatchParts::tr("Named losses"), batch.balance->named_losses);
        //: A line of a balance: what nothing accounts for
        add(BatchParts::tr("Unexplained"), batch.balance->unexplained);
        part.table.rows.back().strong = true;
    }
    return part;
}

} // namespace soakbook::ui
