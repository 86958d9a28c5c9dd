// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/yard_sheets.h"

#include "ui/print/sheet_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct YardSheetsWords {
    Q_DECLARE_TR_FUNCTIONS(YardSheets)
};

void add_fact(SheetFacts& facts, const QString& name, const QString& value) {
    if (!value.isEmpty()) {
        facts.facts.push_back({name, value});
    }
}

QString subtitle(const QStringList& parts) {
    QStringList said = parts;
    said.removeAll(QString());
    return said.join(QStringLiteral(" · "));
}

SheetTable bag_table(const std::vector<BagToTake>& bags) {
    SheetTable table;
    //: heading on a run sheet or load-out
    table.title = YardSheetsWords::tr("Bags to take");
    table.row_height = 7;
    table.columns = {
        {QString(), 0.4, ColumnKind::tick, 5},
        //: column: a bag's code
        {YardSheetsWords::tr("Bag"), 1, ColumnKind::code},
        //: column: number of strips left in a bag
        {YardSheetsWords::tr("Strips in it"), 0.9, ColumnKind::number},
        //: column: a date
        {YardSheetsWords::tr("Use by"), 1.3, ColumnKind::date},
        //: column: where a bag stands
        {YardSheetsWords::tr("Stands"), 1.6},
        //: column
        {YardSheetsWords::tr("Note"), 2},
        //: column to write in: strips left in the bag when one comes back
        {YardSheetsWords::tr("Brought back"), 1.2, ColumnKind::write_in, 18},
    };
    for (const BagToTake& bag : bags) {
        table.rows.push_back({{QString(), bag.code, bag.strips, bag.use_by, bag.place, bag.note}});
    }
    //: instead of the table of bags
    table.words_when_empty = YardSheetsWords::tr("No bags are set aside yet.");
    return table;
}

SheetTable hive_table(const RunSheet& run) {
    SheetTable table;
    table.row_height = 9;
    table.columns = {
        //: column on a run sheet: number of a hive, or name of a group
        {YardSheetsWords::tr("Hive"), 1.2},
        //: column on a run sheet: frames of bees
        {YardSheetsWords::tr("Bees"), 0.7, ColumnKind::number},
        //: column on a run sheet: strips to hang
        {YardSheetsWords::tr("Strips"), 0.7, ColumnKind::number},
        //: column to tick: done as planned
        {YardSheetsWords::tr("As planned"), 0.7, ColumnKind::tick},
        //: column to write in: strips really hung
        {YardSheetsWords::tr("Hung"), 0.9, ColumnKind::write_in, 15},
        //: column to write in: the bag's code
        {YardSheetsWords::tr("From bag"), 1.2, ColumnKind::write_in, 20},
        //: column to write in, with what is known in small print
        {YardSheetsWords::tr("Note"), 3, ColumnKind::write_in},
    };
    for (const RunLine& line : run.lines) {
        table.rows.push_back({{line.hive, line.bees, line.strips, QString(), QString(), QString(), line.note}});
    }
    for (const SheetRow& row : empty_rows(run.spare_lines)) {
        table.rows.push_back(row);
    }
    return table;
}

SheetTicks things_to_take() {
    return {//: heading over things to tick
            YardSheetsWords::tr("In the car"),
            {//: to tick
             YardSheetsWords::tr("Acid-proof gloves and goggles, for each hand that helps"),
             //: to tick
             YardSheetsWords::tr("Water to rinse, at least ten litres"),
             //: to tick
             YardSheetsWords::tr("A bag or pail with a lid for what is pulled"),
             //: to tick
             YardSheetsWords::tr("This paper and a pencil")},
            false};
}

} // namespace

PaperSheet sheet_of(const RunSheet& run, const SheetHead& head) {
    //: title of a printed sheet: a line for each hive of a yard, to hang strips by
    PaperSheet sheet = sheet_with(head, YardSheetsWords::tr("Run sheet"), subtitle({run.yard, run.round, run.day}));
    SheetFacts facts;
    //: on a run sheet: strips for all hives together
    add_fact(facts, YardSheetsWords::tr("Strips in all"), run.total);
    //: on a run sheet: what the yard's calendar says of flows and supers
    add_fact(facts, YardSheetsWords::tr("Supers and flow"), run.supers);
    //: on a run sheet, before a line to write on
    facts.facts.push_back({YardSheetsWords::tr("Hung by"), {}});
    //: on a run sheet, before a line to write on
    facts.facts.push_back({YardSheetsWords::tr("On"), {}});
    sheet.blocks.push_back(facts);
    sheet.blocks.push_back(SheetCautions{hanging_cautions()});
    sheet.blocks.push_back(bag_table(run.bags));
    SheetTable hives = hive_table(run);
    //: heading on a run sheet
    hives.title = YardSheetsWords::tr("Hives");
    sheet.blocks.push_back(hives);
    return sheet;
}

PaperSheet sheet_of(const PullList& pull, const SheetHead& head) {
    //: title of a printed sheet: which strips to take out of which hives
    PaperSheet sheet = sheet_with(head, YardSheetsWords::tr("Pull list"), subtitle({pull.yard, pull.day}));
    SheetFacts facts;
    //: on a pull list: strips hanging in all hives together
    add_fact(facts, YardSheetsWords::tr("Strips hanging"), pull.total);
    //: on a pull list, before a line to write on
    facts.facts.push_back({YardSheetsWords::tr("Pulled by"), {}});
    //: on a pull list, before a line to write on
    facts.facts.push_back({YardSheetsWords::tr("On"), {}});
    sheet.blocks.push_back(facts);
    sheet.blocks.push_back(SheetCautions{pulling_cautions()});
    SheetTable table;
    table.row_height = 9;
    // With yards before them the hives need the room that notes can spare.
    const bool long_names = std::any_of(pull.lines.begin(), pull.lines.end(), [](const PullLine& line) { return line.hive.size() > 10; });
    table.columns = {
        //: column on a pull list: number of a hive, or name of a group
        {YardSheetsWords::tr("Hive"), long_names ? 2.2 : 1.2},
        //: column on a pull list: strips hanging
        {YardSheetsWords::tr("Strips"), 0.7, ColumnKind::number},
        //: column: a bag's code
        {YardSheetsWords::tr("Bag"), 0.9, ColumnKind::code},
        //: column on a pull list: the day they were hung
        {YardSheetsWords::tr("Since"), 1, ColumnKind::date},
        //: column on a pull list: from when to when they come out, and how that stands today
        {YardSheetsWords::tr("Pull"), 1.7},
        //: column to tick: all of them came out
        {YardSheetsWords::tr("All out"), 0.7, ColumnKind::tick},
        //: column to write in: strips pulled
        {YardSheetsWords::tr("Pulled"), 0.9, ColumnKind::write_in, 14},
        //: column to write in: strips not found
        {YardSheetsWords::tr("Missing"), 0.9, ColumnKind::write_in, 14},
        //: column to write in, with what is known in small print
        {YardSheetsWords::tr("Note"), long_names ? 1.4 : 2.2, ColumnKind::write_in},
    };
    for (const PullLine& line : pull.lines) {
        const QString window = line.state.isEmpty() ? line.window : line.window + QStringLiteral(", ") + line.state;
        table.rows.push_back(
            {{line.hive, line.strips, line.bag, line.since, window, QString(), QString(), QString(), line.note}});
    }
    //: instead of the table on a pull list
    table.words_when_empty = YardSheetsWords::tr("No strips hang in this yard.");
    sheet.blocks.push_back(table);
    //: on a pull list, over lines to write on
    sheet.blocks.push_back(SheetNotes{YardSheetsWords::tr("Weight of what was pulled, and notes"), 3});
    return sheet;
}

PaperSheet sheet_of(const LoadOut& load, const SheetHead& head) {
    //: title of a printed sheet: what goes into the car for a round
    PaperSheet sheet = sheet_with(head, YardSheetsWords::tr("Load-out"), subtitle({load.round, load.day}));
    SheetFacts facts;
    //: on a load-out: strips for all yards together
    add_fact(facts, YardSheetsWords::tr("Strips in all"), load.total);
    sheet.blocks.push_back(facts);
    sheet.blocks.push_back(SheetCautions{carrying_cautions()});
    sheet.blocks.push_back(bag_table(load.bags));
    SheetTable yards;
    //: heading on a load-out
    yards.title = YardSheetsWords::tr("Yards");
    yards.row_height = 8;
    yards.columns = {
        //: column on a load-out
        {YardSheetsWords::tr("Yard"), 2},
        //: column on a load-out: how many
        {YardSheetsWords::tr("Hives"), 0.8, ColumnKind::number},
        //: column on a load-out: how many
        {YardSheetsWords::tr("Strips"), 0.8, ColumnKind::number},
        //: column on a load-out: a date
        {YardSheetsWords::tr("Day"), 1.2, ColumnKind::date},
        //: column
        {YardSheetsWords::tr("Note"), 3, ColumnKind::write_in},
    };
    for (const YardStop& stop : load.yards) {
        yards.rows.push_back({{stop.yard, stop.hives, stop.strips, stop.day, stop.note}});
    }
    //: instead of the table of yards
    yards.words_when_empty = YardSheetsWords::tr("No yards are on this round yet.");
    sheet.blocks.push_back(yards);
    sheet.blocks.push_back(things_to_take());
    return sheet;
}

} // namespace soakbook::ui
