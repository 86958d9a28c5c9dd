// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/mixing_sheet.h"

#include "ui/print/sheet_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct MixingSheetWords {
    Q_DECLARE_TR_FUNCTIONS(MixingSheet)
};

SheetFacts facts_of(const MixingSheet& mixing) {
    SheetFacts facts;
    const auto add = [&](const QString& name, const QString& value) {
        if (!value.isEmpty()) {
            facts.facts.push_back({name, value});
        }
    };
    //: on the mixing sheet
    add(MixingSheetWords::tr("Batch"), mixing.batch);
    //: on the mixing sheet: the day it is planned for
    add(MixingSheetWords::tr("Planned for"), mixing.day);
    //: on the mixing sheet: the tank
    add(MixingSheetWords::tr("Tank"), mixing.vessel);
    //: on the mixing sheet
    add(MixingSheetWords::tr("Strength"), mixing.strength);
    //: on the mixing sheet: the whole mass
    add(MixingSheetWords::tr("All together"), mixing.total);
    //: on the mixing sheet: how high the liquid stands in the tank
    add(MixingSheetWords::tr("Level mark"), mixing.level_mark);
    //: on the mixing sheet: the highest temperature allowed
    add(MixingSheetWords::tr("Keep under"), mixing.ceiling);
    //: on the mixing sheet: how much more the tank would hold
    add(MixingSheetWords::tr("Room left in the tank"), mixing.room_left);
    //: on the mixing sheet, before a line to write on
    facts.facts.push_back({MixingSheetWords::tr("Mixed by"), {}});
    //: on the mixing sheet, before a line to write on
    facts.facts.push_back({MixingSheetWords::tr("Begun on, at"), {}});
    return facts;
}

SheetTable weighing_table(const MixingSheet& mixing) {
    SheetTable table;
    //: heading on the mixing sheet
    table.title = MixingSheetWords::tr("Weigh in");
    table.row_height = 9;
    table.columns = {
        {QString(), 0.4, ColumnKind::tick, 5},
        //: column on the mixing sheet: what goes in
        {MixingSheetWords::tr("What"), 2.2},
        //: column on the mixing sheet: the lot it is from
        {MixingSheetWords::tr("Lot"), 1.3},
        //: column on the mixing sheet
        {MixingSheetWords::tr("Planned"), 1.2, ColumnKind::number},
        //: column on the mixing sheet: the planned amount in whole containers and a last weighing
        {MixingSheetWords::tr("In containers"), 2},
        //: column on the mixing sheet, to write in
        {MixingSheetWords::tr("Weighed"), 1.6, ColumnKind::write_in, 24},
        //: column on the mixing sheet, to write in: time of day
        {MixingSheetWords::tr("At"), 1, ColumnKind::write_in, 16},
    };
    for (const MixingLine& line : mixing.lines) {
        table.rows.push_back({{QString(), line.what, line.lot, line.planned, line.containers}});
    }
    //: instead of the table on a mixing sheet without amounts
    table.words_when_empty = MixingSheetWords::tr("No amounts are planned yet.");
    return table;
}

SheetTable reading_table(int lines) {
    SheetTable table;
    //: heading on the mixing sheet
    table.title = MixingSheetWords::tr("Heat and clear");
    table.row_height = 7.4;
    table.columns = {
        //: column to write in: day and time of day
        {MixingSheetWords::tr("Day, time"), 1.4, ColumnKind::write_in},
        //: column to write in: temperature by the probe in the liquid
        {MixingSheetWords::tr("Probe"), 1, ColumnKind::write_in},
        //: column to write in: what the thermostat's dial is set to
        {MixingSheetWords::tr("Dial"), 1, ColumnKind::write_in},
        //: column to write in: temperature of the room
        {MixingSheetWords::tr("Room"), 1, ColumnKind::write_in},
        //: column to tick: the liquid was stirred
        {MixingSheetWords::tr("Stirred"), 0.8, ColumnKind::tick},
        //: column to tick: no crystal to be seen
        {MixingSheetWords::tr("Clear"), 0.8, ColumnKind::tick},
        //: column to write in
        {MixingSheetWords::tr("Note"), 2.4, ColumnKind::write_in},
    };
    table.rows = empty_rows(lines);
    return table;
}

} // namespace

PaperSheet sheet_of(const MixingSheet& mixing, const SheetHead& head) {
    //: title of a printed sheet
    PaperSheet sheet = sheet_with(head, MixingSheetWords::tr("Mixing sheet"), mixing.batch);
    sheet.blocks.push_back(facts_of(mixing));
    sheet.blocks.push_back(SheetCautions{mixing_cautions()});
    sheet.blocks.push_back(
        SheetTicks{//: heading on the mixing sheet, over things to tick
                   MixingSheetWords::tr("Before"),
                   {//: to tick before heating
                    MixingSheetWords::tr("Water seen in the jacket, then the power"),
                    //: to tick before handling acid
                    MixingSheetWords::tr("Goggles, gloves and mask on, rinsing water and eye wash beside"),
                    //: to tick before weighing
                    MixingSheetWords::tr("Scale at zero with the empty vessel, funnel tared away")},
                   false,
                   2});
    sheet.blocks.push_back(weighing_table(mixing));
    sheet.blocks.push_back(reading_table(mixing.reading_lines));
    sheet.blocks.push_back(SheetTicks{//: heading on the mixing sheet
                                      MixingSheetWords::tr("Before the soak"),
                                      {//: to tick: undissolved acid hides in the tank's outlet
                                       MixingSheetWords::tr("Outlet drawn off and poured back"),
                                       //: to tick
                                       MixingSheetWords::tr("Clear through, no crystal to be seen")},
                                      false,
                                      2});
    //: heading on a printed sheet, over lines to write on
    sheet.blocks.push_back(SheetNotes{MixingSheetWords::tr("Notes"), 2});
    return sheet;
}

} // namespace soakbook::ui
