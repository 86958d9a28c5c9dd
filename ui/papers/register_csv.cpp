// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/date_text.h"
#include "core/work/watch.h"
#include "ui/papers/record_words.h"
#include "ui/papers/register_paper.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class RegisterCsvWords {
    Q_DECLARE_TR_FUNCTIONS(RegisterCsv)
};

exchange::CsvCell text(const QString& t) {
    return {t, false};
}
exchange::CsvCell number(const QString& t) {
    return {t, !t.isEmpty()};
}
exchange::CsvCell day(const std::optional<maths::Day>& d) {
    return {d ? exchange::write_day_iso(*d) : QString(), false};
}
exchange::CsvCell count(std::optional<int> n) {
    return number(n ? QString::number(*n) : QString());
}

exchange::CsvRow head_row() {
    exchange::CsvRow row;
    //: Columns of the register as a table for a spreadsheet.
    for (const QString& name :
         {RegisterCsvWords::tr("day in"), RegisterCsvWords::tr("yard"), RegisterCsvWords::tr("hive"),
          RegisterCsvWords::tr("hives"), RegisterCsvWords::tr("strips"), RegisterCsvWords::tr("bag"),
          //: Columns of the register as a table for a spreadsheet.
          RegisterCsvWords::tr("batch"),
          //: A column: mass of oxalic acid dihydrate, in grams.
          RegisterCsvWords::tr("acid g"),
          //: Columns of the register as a table for a spreadsheet.
          RegisterCsvWords::tr("strength %"), RegisterCsvWords::tr("use by"), RegisterCsvWords::tr("pull by"),
          RegisterCsvWords::tr("day out"), RegisterCsvWords::tr("pulled"), RegisterCsvWords::tr("missing"),
          RegisterCsvWords::tr("no harvest before"), RegisterCsvWords::tr("placed by"),
          //: Columns of the register as a table for a spreadsheet.
          RegisterCsvWords::tr("pulled by"), RegisterCsvWords::tr("round"), RegisterCsvWords::tr("void"),
          RegisterCsvWords::tr("notes"),
          //: Columns of the register as a table for a spreadsheet: number of the newest entry, and the beginning of its seal.
          RegisterCsvWords::tr("entry"), RegisterCsvWords::tr("seal")})
        row.push_back(text(name));
    return row;
}
} // namespace

QByteArray register_csv(const Desk& desk, const work::RegisterFilter& filter) {
    const QLocale locale = desk.locale();
    const bool comma = locale.decimalPoint() == QStringLiteral(",");
    const work::Anchor anchor = work::anchor(desk.workbook());
    std::vector<exchange::CsvRow> rows{head_row()};
    for (const work::RegisterLine& line : work::treatments(desk.workbook(), filter)) {
        rows.push_back(
            {day(line.placed_on),
             text(line.yard),
             text(line.hive),
             count(line.hives),
             count(line.strips),
             text(line.bag_code),
             text(line.batch_code),
             number(line.acid ? exchange::write_mass_number(*line.acid, exchange::MassUnit::gram, locale) : QString()),
             number(line.strength ? locale.toString(maths::in_percent(*line.strength), 'f', 2) : QString()),
             day(line.use_by),
             day(line.pull_by),
             day(line.pulled_on),
             count(line.pulled),
             count(line.missing),
             day(line.no_harvest_before),
             text(line.placed_by),
             text(line.pulled_by),
             text(line.round),
             text(line.void_reason),
             text(treatment_notes(line, desk)),
             number(QString::number(anchor.entry)),
             text(anchor.seal)});
    }
    return exchange::write_csv(rows, {comma ? QLatin1Char(';') : QLatin1Char(','), true});
}

} // namespace soakbook::ui
