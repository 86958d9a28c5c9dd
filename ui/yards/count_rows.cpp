// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/count_rows.h"

#include "ui/yards/mite_words.h"
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

namespace {

using Number = NumberCell CountRow::*;

Column<CountRow> number_column(const QString& header, Number number, const std::function<void()>& changed) {
    Column<CountRow> column;
    column.header = header;
    column.align = Qt::AlignRight;
    column.text = [number](const CountRow& row) { return (row.*number).shown(); };
    column.write = [number, changed](CountRow& row, const QString& text) {
        (row.*number).type(text);
        changed();
        return true;
    };
    return column;
}

} // namespace

QString CountRow::unread() const {
    if (mites.is_wrong()) {
        return QStringLiteral("mites");
    }
    return bees.is_wrong() ? QStringLiteral("bees") : days.is_wrong() ? QStringLiteral("days") : QString();
}

void CountRow::take_typing(const CountRow& other) {
    mites = other.mites;
    bees = other.bees;
    days = other.days;
    note = other.note;
}

std::vector<int> CountGrid::widths() {
    return {110, 200, 80, 80, 80, 250, 120};
}

std::vector<Column<CountRow>> CountGrid::columns(const Desk& desk, std::function<void()> changed) {
    std::vector<Column<CountRow>> columns(7);
    const Desk* ways = &desk;

    Column<CountRow>& hive = columns[count_hive];
    //: Column
    hive.header = tr("Hive");
    hive.type = CellType::code;
    hive.text = [](const CountRow& row) { return YardWords::hive(row.line.entry.name, row.line.entry.hives); };

    Column<CountRow>& last = columns[count_last];
    //: Column: the last mite count and its day
    last.header = tr("Last count");
    last.type = CellType::soft;
    last.text = [ways](const CountRow& row) {
        const auto& count = row.line.last_count;
        //: %1 a day, %2 mites on a hundred bees
        return count ? tr("%1: %2").arg(YardWords::day(count->on, *ways), YardWords::rate(count->figures, *ways)) : QString();
    };

    //: Column: mites counted
    columns[count_mites] = number_column(tr("Mites"), &CountRow::mites, changed);
    columns[count_mites].type = CellType::strong;
    //: Column: bees in the sample
    columns[count_bees] = number_column(tr("Bees"), &CountRow::bees, changed);
    columns[count_bees].text = [](const CountRow& row) { return row.bees.shown(row.usual_bees); };
    //: Column: days that the board lay
    columns[count_days] = number_column(tr("Days"), &CountRow::days, changed);

    Column<CountRow>& rate = columns[count_rate];
    //: Column: mites on a hundred bees, or mites a day
    rate.header = tr("Rate and 95 % interval");
    rate.text = [ways](const CountRow& row) {
        return MiteWords::against_threshold(row.figures, *ways);
    };

    Column<CountRow>& note = columns[count_note];
    //: Column
    note.header = tr("Note");
    note.type = CellType::soft;
    note.text = [](const CountRow& row) { return row.note; };
    note.write = [changed](CountRow& row, const QString& text) {
        row.note = text.trimmed();
        changed();
        return true;
    };
    return columns;
}

} // namespace soakbook::ui
