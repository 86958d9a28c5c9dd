// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/mixing_sheet.h"

#include "ui/print/sheet_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct Words {
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
    add(Words::tr("Batch"), mixing.batch);
    //: on the mixing sheet: the day it is planned for
    add(Words::tr("Planned for"), mixing.day);
    //: on the mixing sheet: the tank
    add(Words::tr("Tank"), mixing.vessel);
    //: on the mixing sheet
    add(Words::tr("Strength"), mixing.strength);
    //: on the mixing sheet: the whole mass
    add(Words::tr("All together"), mixing.total);
    //: on the mixing sheet: how high the liquid stands in the tank
    add(Words::tr("Level mark"), mixing.level_mark);
    //: on the mixing sheet: the highest temperature allowed
    add(Words::tr("Keep under"), mixing.ceiling);
    //: on the mixing sheet: how much more the tank would hold
    add(Words::tr("Room left in the tank"), mixing.room_left);
    //: on the mixing sheet, before a line to write on
    facts.facts.push_back({Words::tr("Mixed by"), {}});
    //: on the mixing sheet, before a line to write on
    facts.facts.push_back({Words::tr("Begun on, at"), {}});
    return facts;
}

SheetTable weighing_table(const MixingSheet& mixing) {
    SheetTable table;
    //: heading on the mixing sheet
    table.title = Words::tr("Weigh in");
    table.row_height = 9;
    table.columns = {
        {QString(), 0.4, ColumnKind::tick, 5},
        //: column on the mixing sheet: what goes in
        {Words::tr("What"), 2.2},
        //: column on the mixing sheet: the lot it is from
        {Words::tr("Lot"), 1.3},
        //: column on the mixing sheet
        {Words::tr("Planned"), 1.2, ColumnKind::number},
        //: column on the mixing sheet: the planned amount in whole containers and a last weighing
        {Words::tr("In containers"), 2},
        //: column on the mixing sheet, to write in
        {Words::tr("Weighed"), 1.6, ColumnKind::write_in, 24},
        //: column on the mixing sheet, to write in: time of day
        {Words::tr("At"), 1, ColumnKind::write_in, 16},
    };
    for (const MixingLine& line : mixing.lines) {
        table.rows.push_back({{QString(), line.what, line.lot, line.planned, line.containers}});
    }
    //: instead of the table on a mixing sheet without amounts
    table.words_when_empty = Words::tr("No amounts are planned yet.");
    return table;
}

SheetTable reading_table(int lines) {
    SheetTable table;
    //: heading on the mixing sheet
    table.title = Words::tr("Heat and clear");
    table.row_height = 7.4;
    table.columns = {
        //: column to write in: day and time of day
        {Words::tr("Day, time"), 1.4, ColumnKind::write_in},
        //: column to write in: temperature by the probe in the liquid
        {Words::tr("Probe"), 1, ColumnKind::write_in},
        //: column to write in: what the thermostat's dial is set to
        {Words::tr("Dial"), 1, ColumnKind::write_in},
        //: column to write in: temperature of the room
        {Words::tr("Room"), 1, ColumnKind::write_in},
        //: column to tick: the liquid was stirred
        {Words::tr("Stirred"), 0.8, ColumnKind::tick},
        //: column to tick: no crystal to be seen
        {Words::tr("Clear"), 0.8, ColumnKind::tick},
        //: column to write in
        {Words::tr("Note"), 2.4, ColumnKind::write_in},
    };
    table.rows = empty_rows(lines);
    return table;
}

} // namespace

PaperSheet sheet_of(const MixingSheet& mixing, const SheetHead& head) {
    //: title of a printed sheet
    PaperSheet sheet = sheet_with(head, Words::tr("Mixing sheet"), mixing.batch);
    sheet.blocks.push_back(facts_of(mixing));
    sheet.blocks.push_back(SheetCautions{mixing_cautions()});
    sheet.blocks.push_back(SheetTicks{
        //: heading on the mixing sheet, over things to tick
        Words::tr("Before"),
        {//: to tick before heating
         Words::tr("Water seen in the jacket, then the power"),
         //: to tick before handling acid
         Words::tr("Goggles, gloves and mask on, rinsing water and eye wash beside"),
         //: to tick before weighing
         Words::tr("Scale at zero with the empty vessel, funnel tared away")},
        false,
        2});
    sheet.blocks.push_back(weighing_table(mixing));
    sheet.blocks.push_back(reading_table(mixing.reading_lines));
    sheet.blocks.push_back(SheetTicks{
        //: heading on the mixing sheet
        Words::tr("Before the soak"),
        {//: to tick: undissolved acid hides in the tank's outlet
         Words::tr("Outlet drawn off and poured back"),
         //: to tick
         Words::tr("Clear through, no crystal to be seen")},
        false,
        2});
    //: heading on a printed sheet, over lines to write on
    sheet.blocks.push_back(SheetNotes{Words::tr("Notes"), 2});
    return sheet;
}

} // namespace soakbook::ui
