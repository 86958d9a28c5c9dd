// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/copies_table.h"

#include "ui/parts/habits.h"

#include <QDir>
#include <QHash>

#include <algorithm>

namespace soakbook::ui {

namespace {

QString where_words(const work::CopyLine& line) {
    if (line.elsewhere)
        //: Where a safe copy lies: in the second place that the user chose
        return CopiesTable::tr("second place");
    //: Where a safe copy lies
    return CopiesTable::tr("this computer");
}

QString since_words(const Habits& habits, const work::CopyLine& line) {
    if (!line.of_this_line)
        //: In a table, of a safe copy: of a state from before an older copy was put back
        return CopiesTable::tr("another history");
    if (line.entries_since == 0)
        //: In a table: no entries were made since that copy
        return CopiesTable::tr("none");
    return habits.count(line.entries_since);
}

std::vector<Column<work::CopyLine>> columns(const Habits& habits) {
    using Line = work::CopyLine;
    std::vector<Column<Line>> all;
    //: A table column: when a safe copy was made
    all.push_back({.header = CopiesTable::tr("Made"),
                   .text = [&habits](const Line& line) { return habits.moment(line.made); },
                   .type = CellType::strong,
                   .sort_key = [](const Line& line) { return QVariant(static_cast<qlonglong>(line.made.utc_ms)); },
                   .tip = [](const Line& line) { return QDir::toNativeSeparators(line.path); }});
    //: A table column: the number of the newest entry in a safe copy
    all.push_back({.header = CopiesTable::tr("Newest entry"),
                   .text = [&habits](const Line& line) { return habits.count(line.newest_entry); },
                   .align = Qt::AlignRight,
                   .sort_key = [](const Line& line) { return QVariant(line.newest_entry); }});
    //: A table column: how many entries the workbook got since that copy
    all.push_back({.header = CopiesTable::tr("Entries since"),
                   .text = [&habits](const Line& line) { return since_words(habits, line); },
                   .align = Qt::AlignRight,
                   .sort_key = [](const Line& line) { return QVariant(line.of_this_line ? line.entries_since : -1); },
                   .state = [](const Line& line) { return line.of_this_line ? std::optional<State>{} : State::gone; }});
    //: A table column: where a safe copy lies
    all.push_back({.header = CopiesTable::tr("Where"), .text = where_words});
    //: A table column: the size of a file
    all.push_back({.header = CopiesTable::tr("Size"),
                   .text = [&habits](const Line& line) { return habits.locale().formattedDataSize(line.bytes, 1, QLocale::DataSizeTraditionalFormat); },
                   .align = Qt::AlignRight,
                   .type = CellType::soft,
                   .sort_key = [](const Line& line) { return QVariant(line.bytes); }});
    return all;
}

} // namespace

CopiesTable::CopiesTable(const Habits& habits, QWidget* parent)
    //: Name of a table, read aloud
    : RecordTable(QStringLiteral("setup/safe_copies"), tr("Safe copies of this workbook"), parent) {
    setObjectName(QStringLiteral("safe_copies"));
    m_model = new RowsModel<work::CopyLine>(columns(habits), [](const work::CopyLine& line) {
        return static_cast<qint64>(qHash(line.path) & 0x7fff'ffffU) + 1;
    }, this);
    set_rows_model(m_model);
    set_start_widths({170, 130, 150, 140, 100});
    set_spared_columns({4, 3});
    set_full_height(true);
    //: Stands in an empty table
    set_empty_text(tr("There is no safe copy yet. The first one is made shortly after the workbook was opened."));
}

void CopiesTable::set_copies(std::vector<work::CopyLine> copies) {
    std::stable_sort(copies.begin(), copies.end(), [](const work::CopyLine& a, const work::CopyLine& b) {
        return std::pair(a.of_this_line, a.newest_entry) > std::pair(b.of_this_line, b.newest_entry);
    });
    m_model->set_rows(std::move(copies));
}

const work::CopyLine* CopiesTable::current() const { return m_model->find(current_id()); }

} // namespace soakbook::ui
