// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/date_text.h"
#include "ui/papers/record_words.h"
#include "ui/papers/register_paper.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class Words {
    Q_DECLARE_TR_FUNCTIONS(RegisterCsv)
};

exchange::CsvCell text(const QString& t) { return {t, false}; }
exchange::CsvCell number(const QString& t) { return {t, !t.isEmpty()}; }
exchange::CsvCell day(const std::optional<maths::Day>& d) { return {d ? exchange::write_day_iso(*d) : QString(), false}; }
exchange::CsvCell count(std::optional<int> n) { return number(n ? QString::number(*n) : QString()); }

exchange::CsvRow head_row() {
    exchange::CsvRow row;
    //: Columns of the register as a table for a spreadsheet.
    for (const QString& name : {Words::tr("day in"), Words::tr("yard"), Words::tr("hive"), Words::tr("hives"), Words::tr("strips"), Words::tr("bag"), Words::tr("batch"),
                                //: A column: mass of oxalic acid dihydrate, in grams.
                                Words::tr("acid g"),
                                //: Columns of the register as a table for a spreadsheet.
                                Words::tr("strength %"), Words::tr("use by"), Words::tr("pull by"), Words::tr("day out"), Words::tr("pulled"), Words::tr("missing"),
                                Words::tr("no harvest before"), Words::tr("placed by"), Words::tr("pulled by"), Words::tr("round"), Words::tr("void"), Words::tr("notes")})
        row.push_back(text(name));
    return row;
}
} // namespace

QByteArray register_csv(const Desk& desk, const work::RegisterFilter& filter) {
    const QLocale locale = desk.locale();
    const bool comma = locale.decimalPoint() == QStringLiteral(",");
    std::vector<exchange::CsvRow> rows{head_row()};
    for (const work::RegisterLine& line : work::treatments(desk.workbook(), filter)) {
        rows.push_back({day(line.placed_on), text(line.yard), text(line.hive), count(line.hives), count(line.strips), text(line.bag_code), text(line.batch_code),
                        number(line.acid ? exchange::write_mass_number(*line.acid, exchange::MassUnit::gram, locale) : QString()),
                        number(line.strength ? locale.toString(maths::in_percent(*line.strength), 'f', 2) : QString()), day(line.use_by), day(line.pull_by), day(line.pulled_on),
                        count(line.pulled), count(line.missing), day(line.no_harvest_before), text(line.placed_by), text(line.pulled_by), text(line.round), text(line.void_reason),
                        text(treatment_notes(line, desk))});
    }
    return exchange::write_csv(rows, {comma ? QLatin1Char(';') : QLatin1Char(','), true});
}

} // namespace soakbook::ui
