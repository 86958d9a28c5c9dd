// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/register_paper.h"

#include "core/work/hives.h"
#include "core/work/papers.h"
#include "core/work/setup.h"
#include "core/work/short_questions.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/record_words.h"
#include "ui/print/ask_file.h"
#include "ui/print/pdf_file.h"
#include "ui/print/record_sheets.h"

#include <QCoreApplication>
#include <QDir>

#include <algorithm>

namespace soakbook::ui {

namespace {
class RegisterPaperWords {
    Q_DECLARE_TR_FUNCTIONS(RegisterPaper)
};

std::optional<work::Refusal> note_shown(Desk& desk, const work::RegisterFilter& filter, const QString& paper) {
    std::vector<work::PlacementId> ids;
    for (const work::RegisterLine& line : work::treatments(desk.workbook(), filter))
        ids.push_back(line.placement);
    return refusal_of(work::sheet_printed(desk.workbook(), paper, {}, {}, ids, desk.doing()));
}

RegisterLine paper_line(const Desk& desk, const work::RegisterLine& line) {
    RegisterLine paper;
    paper.day_in = desk.day(line.placed_on);
    paper.day_out = line.pulled_on ? desk.day(*line.pulled_on) : QString();
    paper.yard = line.yard;
    //: A group of hives in the register; %1 is its name, %2 how many hives it is.
    paper.hives = line.hives > 1 ? RegisterPaperWords::tr("%1 (%2 hives)").arg(line.hive).arg(line.hives) : line.hive;
    //: What was hung, in the register; %1 is the strength.
    paper.product = line.strength
                        ? RegisterPaperWords::tr("oxalic acid in glycerine, %1").arg(desk.percent(*line.strength))
                        : RegisterPaperWords::tr("oxalic acid in glycerine");
    paper.bag = line.bag_code;
    paper.batch = line.batch_code;
    paper.strips = desk.count(line.strips);
    paper.acid = line.acid ? exchange::write_mass_number(*line.acid, desk.preferences().small_mass, desk.locale(), 1)
                           : QString();
    paper.pulled = pulled_words(line);
    if (line.no_harvest_before)
        paper.withdrawal = desk.day(*line.no_harvest_before);
    paper.by = line.pulled_by.isEmpty() || line.pulled_by == line.placed_by
                   ? line.placed_by
                   : line.placed_by + QStringLiteral(" / ") + line.pulled_by;
    paper.note = treatment_notes(line, desk);
    paper.made_void = !line.void_reason.isEmpty();
    return paper;
}

SheetTable corrections_table(const Desk& desk, const work::RegisterFilter& filter) {
    SheetTable table;
    //: Head of a table in the printed register.
    table.title = RegisterPaperWords::tr("Corrections and records made void");
    //: Columns of a table in the printed register.
    table.columns = {{RegisterPaperWords::tr("When"), 1.4, ColumnKind::date, 0},
                     {RegisterPaperWords::tr("Record"), 1.2, ColumnKind::text, 0},
                     {RegisterPaperWords::tr("What"), 3, ColumnKind::text, 0},
                     //: Columns of a table in the printed register.
                     {RegisterPaperWords::tr("Why"), 3, ColumnKind::text, 0},
                     {RegisterPaperWords::tr("By"), 1.2, ColumnKind::text, 0}};
    for (const work::CorrectionLine& line : shown_corrections(desk, filter))
        table.rows.push_back({{desk.moment(line.at), line.record, correction_words(line, desk), line.why, line.who},
                              false,
                              false,
                              false});
    //: Instead of an empty table in the printed register.
    table.words_when_empty = RegisterPaperWords::tr("None.");
    return table;
}

SheetTable hives_table(const Desk& desk, const work::RegisterFilter& filter) {
    SheetTable table;
    //: Head of a table in the printed register.
    table.title = RegisterPaperWords::tr("Hives found dead or gone, and hives left without strips");
    //: Columns of a table in the printed register.
    table.columns = {{RegisterPaperWords::tr("Day"), 1.4, ColumnKind::date, 0},
                     {RegisterPaperWords::tr("Hive"), 1.2, ColumnKind::text, 0},
                     {RegisterPaperWords::tr("Yard"), 2, ColumnKind::text, 0},
                     //: Columns of a table in the printed register.
                     {RegisterPaperWords::tr("State"), 1.6, ColumnKind::text, 0},
                     {RegisterPaperWords::tr("Note"), 3, ColumnKind::text, 0}};
    for (const work::HiveStateLine& line : work::hive_states(desk.workbook(), filter))
        table.rows.push_back(
            {{desk.day(line.on), line.hive, line.yard, hive_state_words(line.state), line.note}, false, false, false});
    //: Instead of an empty table in the printed register.
    table.words_when_empty = RegisterPaperWords::tr("None.");
    return table;
}
} // namespace

std::vector<work::CorrectionLine> shown_corrections(const Desk& desk, const work::RegisterFilter& filter) {
    return work::corrections_and_those_made_then(desk.workbook(), filter);
}

QString range_words(const Desk& desk, const work::RegisterFilter& filter) {
    QString days;
    if (filter.from && filter.to)
        //: A range of days; %1 and %2 are days.
        days = RegisterPaperWords::tr("%1 to %2").arg(desk.day(*filter.from), desk.day(*filter.to));
    else if (filter.from)
        //: A range of days; %1 is a day.
        days = RegisterPaperWords::tr("from %1").arg(desk.day(*filter.from));
    else if (filter.to)
        //: A range of days; %1 is a day.
        days = RegisterPaperWords::tr("up to %1").arg(desk.day(*filter.to));
    else
        //: A range of days.
        days = RegisterPaperWords::tr("all days");
    //: No yard is chosen.
    QString yard = RegisterPaperWords::tr("all yards");
    for (const work::YardEntry& y : work::yards(desk.workbook(), true))
        if (y.id == filter.yard)
            yard = y.name;
    return days + QStringLiteral(", ") + yard;
}

PaperSheet register_sheet(const Desk& desk, const work::RegisterFilter& filter) {
    const work::Operation operation = work::operation(desk.workbook());
    RegisterSheet book;
    book.range = range_words(desk, filter);
    book.acid_unit = exchange::sign(desk.preferences().small_mass);
    book.keeper = operation.name;
    if (!operation.registration.isEmpty())
        book.keeper += QStringLiteral(", ") + operation.registration;
    int strips = 0;
    int count = 0;
    maths::Mass acid{};
    for (const work::RegisterLine& line : work::treatments(desk.workbook(), filter)) {
        book.lines.push_back(paper_line(desk, line));
        if (line.void_reason.isEmpty()) {
            ++count;
            strips += line.strips;
            acid += line.acid.value_or(maths::Mass{});
        }
    }
    //: The sum under the register; %1 treatments, %2 strips, %3 is a mass of acid.
    book.total = RegisterPaperWords::tr("%1 treatments, %2 strips, %3 oxalic acid dihydrate")
                     .arg(desk.count(count), desk.count(strips), desk.large(acid, 2));
    PaperSheet sheet = sheet_of(book, paper_head(desk));
    sheet.blocks.push_back(corrections_table(desk, filter));
    sheet.blocks.push_back(hives_table(desk, filter));
    const QString told = entry_and_seal(desk) + QStringLiteral(". ") + seal_words();
    sheet.blocks.push_back(SheetText{told, false});
    return sheet;
}

void offer_register(Desk& desk, const work::RegisterFilter& filter, QWidget* parent) {
    //: Name of the file offered for the printed register.
    offer_sheet(desk, register_sheet(desk, filter), RegisterPaperWords::tr("register"), parent,
                [&desk, filter] { return note_shown(desk, filter, QStringLiteral("register")); });
}

QString save_register_csv(Desk& desk, const work::RegisterFilter& filter, QWidget* parent) {
    //: Title of the window that asks for a file; and the kind of file.
    const QString path =
        ask_file_to_write(parent, {RegisterPaperWords::tr("Save the register for a spreadsheet"),
                                   plain_file_name(RegisterPaperWords::tr("register"), QStringLiteral("csv")),
                                   //: The kind of file to save in.
                                   {RegisterPaperWords::tr("Table (*.csv)")}});
    if (path.isEmpty())
        return {};
    if (const auto failure = write_whole_file(path, register_csv(desk, filter)))
        return paper_failure_words(*failure);
    if (note_shown(desk, filter, QStringLiteral("register csv")))
        //: Said when the file is written but the workbook is held by another program.
        return RegisterPaperWords::tr("Saved, but the workbook is held by another program and could not note it.");
    //: Said after a file was written; %1 is its name.
    return RegisterPaperWords::tr("Saved: %1").arg(QDir::toNativeSeparators(path));
}

} // namespace soakbook::ui
