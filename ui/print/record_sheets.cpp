// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/record_sheets.h"

#include "ui/print/sheet_cautions.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct RecordSheetsWords {
    Q_DECLARE_TR_FUNCTIONS(RecordSheets)
};

} // namespace

PaperSheet sheet_of(const BatchSheet& batch, const SheetHead& head) {
    //: title of a printed sheet; %1 is a batch's code
    PaperSheet sheet = sheet_with(head, RecordSheetsWords::tr("Batch %1").arg(batch.batch), batch.state);
    sheet.blocks.push_back(SheetFacts{batch.facts, 2});
    for (const BatchPart& part : batch.parts) {
        if (part.table.columns.empty()) {
            sheet.blocks.push_back(SheetText{part.title, true});
            sheet.blocks.push_back(SheetText{part.sentence});
            continue;
        }
        SheetTable table = part.table;
        table.title = part.sentence.isEmpty() ? part.title : part.title + QStringLiteral(" · ") + part.sentence;
        if (table.words_when_empty.isEmpty()) {
            //: instead of a table of a batch sheet
            table.words_when_empty = RecordSheetsWords::tr("Nothing is written down.");
        }
        sheet.blocks.push_back(table);
    }
    return sheet;
}

PaperSheet sheet_of(const RegisterSheet& book, const SheetHead& head) {
    //: title of a printed sheet: the register of treatments
    PaperSheet sheet = sheet_with(head, RecordSheetsWords::tr("Register of treatments"), book.range, true);
    SheetFacts facts;
    if (!book.keeper.isEmpty()) {
        //: on the register
        facts.facts.push_back({RecordSheetsWords::tr("Keeper"), book.keeper});
    }
    if (!book.total.isEmpty()) {
        //: on the register
        facts.facts.push_back({RecordSheetsWords::tr("Together"), book.total});
    }
    sheet.blocks.push_back(facts);
    SheetTable table;
    table.columns = {
        //: column of the register: the day strips were hung
        {RecordSheetsWords::tr("In"), 1, ColumnKind::date},
        //: column of the register: the day strips were pulled
        {RecordSheetsWords::tr("Out"), 1, ColumnKind::date},
        //: column of the register
        {RecordSheetsWords::tr("Yard"), 1.2},
        //: column of the register: number or group, and how many colonies
        {RecordSheetsWords::tr("Hives"), 1},
        //: column of the register: what was used
        {RecordSheetsWords::tr("Product"), 1.7},
        //: column of the register: a code
        {RecordSheetsWords::tr("Bag"), 0.8, ColumnKind::code},
        //: column of the register: a code
        {RecordSheetsWords::tr("Batch"), 0.8, ColumnKind::code},
        //: column of the register: how many
        {RecordSheetsWords::tr("Strips"), 0.6, ColumnKind::number},
        //: column of the register; %1 is a unit of mass
        {RecordSheetsWords::tr("Acid, %1").arg(book.acid_unit), 0.7, ColumnKind::number},
        //: column of the register: strips pulled and missing
        {RecordSheetsWords::tr("Pulled"), 1},
        //: column of the register: the first day on which honey may be taken
        {RecordSheetsWords::tr("No harvest before"), 1, ColumnKind::date},
        //: column of the register: who did it
        {RecordSheetsWords::tr("By"), 1},
        //: column of the register
        {RecordSheetsWords::tr("Note"), 1.6},
    };
    for (const RegisterLine& line : book.lines) {
        SheetRow row;
        row.cells = {line.day_in, line.day_out, line.yard,   line.hives,      line.product, line.bag, line.batch,
                     line.strips, line.acid,    line.pulled, line.withdrawal, line.by,      line.note};
        row.struck = line.made_void;
        table.rows.push_back(row);
    }
    //: instead of the table of the register
    table.words_when_empty = RecordSheetsWords::tr("No treatment falls into this range.");
    sheet.blocks.push_back(table);
    sheet.blocks.push_back(SheetCautions{register_cautions()});
    return sheet;
}

} // namespace soakbook::ui
