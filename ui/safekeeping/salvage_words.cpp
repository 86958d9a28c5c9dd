// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/salvage_words.h"

#include "ui/papers/record_words.h"
#include "ui/parts/habits.h"

#include <QCoreApplication>
#include <QDir>
#include <QStringList>

namespace soakbook::ui {

namespace {

class SalvageTexts {
    Q_DECLARE_TR_FUNCTIONS(SalvageWords)
};

} // namespace

QString not_salvaged_words(work::NotSalvaged why, const QString& path) {
    const QString file = QDir::toNativeSeparators(path);
    switch (why) {
    case work::NotSalvaged::not_there:
        //: %1 is a file's path.
        return SalvageTexts::tr("There is no file %1. Look whether it was moved, or whether the stick is plugged in.").arg(file);
    case work::NotSalvaged::empty:
        //: %1 is a file's path.
        return SalvageTexts::tr("%1 is empty: nothing is left in it. Open the newest safe copy instead.").arg(file);
    case work::NotSalvaged::not_a_workbook:
        //: %1 is a file's path.
        return SalvageTexts::tr("Nothing in %1 looks like a record of Soakbook.").arg(file);
    case work::NotSalvaged::unreadable:
        //: %1 is a file's path.
        return SalvageTexts::tr("%1 cannot be read at all. Try the disk or stick on another computer, or open the newest safe copy.").arg(file);
    case work::NotSalvaged::stopped:
        //: The user stopped the reading of a damaged file.
        return SalvageTexts::tr("The reading was stopped. Nothing was changed.");
    }
    return {};
}

QString left_table_words(const work::LeftTable& table) {
    QStringList parts;
    if (table.agreeing > 0)
        //: Records of one kind in a damaged workbook: so many say the same as the history.
        parts << SalvageTexts::tr("%n agree with the history", nullptr, static_cast<int>(table.agreeing));
    if (table.from_history > 0)
        //: Records of one kind in a damaged workbook: so many are lost and told by the history alone.
        parts << SalvageTexts::tr("%n are told by the history", nullptr, static_cast<int>(table.from_history));
    if (table.unproven > 0)
        //: Records of one kind in a damaged workbook: so many could be read, and nothing is left to hold them against.
        parts << SalvageTexts::tr("%n could not be checked", nullptr, static_cast<int>(table.unproven));
    if (table.lost > 0)
        //: Records of one kind in a damaged workbook: of so many nothing is left.
        parts << SalvageTexts::tr("of %n more nothing is left", nullptr, static_cast<int>(table.lost));
    //: Records of one kind in a damaged workbook.
    return parts.isEmpty() ? SalvageTexts::tr("There was none.") : parts.join(QStringLiteral(", ")) + QLatin1Char('.');
}

QString left_words(const work::WhatIsLeft& left) {
    qint64 rows = 0;
    qint64 lost = 0;
    for (const work::LeftTable& table : left.tables()) {
        rows += table.rows;
        lost += table.lost;
    }
    //: What was read of a damaged workbook.
    QString words = SalvageTexts::tr("%n records were read.", nullptr, static_cast<int>(rows));
    if (lost > 0)
        //: What was read of a damaged workbook; a sentence of its own.
        words += QLatin1Char(' ') + SalvageTexts::tr("Of %n records nothing is left.", nullptr, static_cast<int>(lost));
    if (left.entries_read() < left.entries_there_were())
        //: The history of a damaged workbook; %1 and %2 are numbers of changes.
        words += QLatin1Char(' ') + SalvageTexts::tr("Of the history, %1 of %2 changes are left.").arg(left.entries_read()).arg(left.entries_there_were());
    return words;
}

QString left_column_words(const QString& column) {
    //: Header of a column: the number by which the workbook counts a record.
    return column == QStringLiteral("id") ? SalvageTexts::tr("number") : column_words(column);
}

QString how_sure_words(work::HowSure sure) {
    switch (sure) {
    case work::HowSure::agrees:
        //: How sure a record of a damaged workbook is.
        return SalvageTexts::tr("agrees with the history");
    case work::HowSure::from_history:
        //: How sure a record of a damaged workbook is.
        return SalvageTexts::tr("from the history");
    case work::HowSure::unproven:
        //: How sure a record of a damaged workbook is.
        return SalvageTexts::tr("could not be checked");
    }
    return {};
}

work::TableWording table_wording(const Habits& habits) {
    work::TableWording wording;
    wording.table = [](const QString& table) { return record_kind_words(table); };
    wording.column = [](const QString& column) { return left_column_words(column); };
    wording.value = [&habits](const QString& column, const QString& value) {
        const QString words = value_words(column, value, habits);
        // What is no quantity and no day stands as it is: a number for the spreadsheet, otherwise a text.
        bool is_number = false;
        words.toLongLong(&is_number);
        const bool is_name = column == QStringLiteral("name") || column == QStringLiteral("code") || column.endsWith(QStringLiteral("_id"));
        return exchange::CsvCell{words, is_number && words == value && !is_name};
    };
    wording.sure = [](work::HowSure sure) { return how_sure_words(sure); };
    //: A column of a table of records from a damaged workbook.
    wording.sure_column = SalvageTexts::tr("how sure");
    const bool comma = habits.locale().decimalPoint() == QStringLiteral(",");
    wording.style = {comma ? QLatin1Char(';') : QLatin1Char(','), true};
    return wording;
}

} // namespace soakbook::ui
