// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/record_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class RecordTexts {
    Q_DECLARE_TR_FUNCTIONS(RecordWords)
};

// Hours in the store are milliseconds UTC with the wall's offset in a column of its own; the offset alone is not shown.
QString moment_words(const QString& value, const Habits& habits) {
    bool is_number = false;
    const qint64 ms = value.toLongLong(&is_number);
    return is_number ? habits.moment({ms, habits.now().offset_minutes}) : value;
}
} // namespace

QString value_words(const QString& column, const QString& value, const Habits& habits) {
    if (value.isEmpty())
        return value;
    const auto number = value.toLongLong();
    if (column.endsWith(QStringLiteral("_mg"))) {
        static const QStringList small{QStringLiteral("dry_mg"),       QStringLiteral("target_mg"),
                                       QStringLiteral("tolerance_mg"), QStringLiteral("strip_mg"),
                                       QStringLiteral("mean_mg"),      QStringLiteral("acid_per_strip_mg"),
                                       QStringLiteral("total_mg")};
        return small.contains(column) ? habits.small({number}) : habits.large({number});
    }
    if (column.endsWith(QStringLiteral("_ppm")))
        return habits.percent({number});
    if (column.endsWith(QStringLiteral("_cc")))
        return habits.temperature({number});
    if (column.endsWith(QStringLiteral("_ms")))
        return moment_words(value, habits);
    const QDate day = QDate::fromString(value, Qt::ISODate);
    if (day.isValid() && value.size() == 10)
        return habits.day(from_qdate(day));
    if (column == QStringLiteral("supers_on") || column == QStringLiteral("clear") ||
        column == QStringLiteral("warm_and_clear") || column == QStringLiteral("scraped") ||
        column == QStringLiteral("outlet_poured_back") || column == QStringLiteral("jacket_seen") ||
        column == QStringLiteral("untreated"))
        //: A value in a correction.
        return number != 0 ? RecordTexts::tr("yes") : RecordTexts::tr("no");
    return value;
}

QString correction_words(const work::CorrectionLine& line, const Habits& habits) {
    if (line.made_void)
        //: A record was made void; its reason stands beside it.
        return line.undone ? RecordTexts::tr("undone after it was printed")
                           : RecordTexts::tr("made void");
    if (line.column == QStringLiteral("added"))
        //: The first line of a record's history.
        return RecordTexts::tr("entered");
    if (line.column == QStringLiteral("removed"))
        //: A line of a record's history.
        return RecordTexts::tr("taken back");
    const QString after = value_words(line.column, line.after, habits);
    const QString before = value_words(line.column, line.before, habits);
    //: What stands where nothing was said.
    const QString nothing = RecordTexts::tr("nothing");
    //: A correction; %1 is what was corrected, %2 what it says now, %3 what it said before.
    return RecordTexts::tr("%1: %2, before %3")
        .arg(column_words(line.column), after.isEmpty() ? nothing : after, before.isEmpty() ? nothing : before);
}

QString pulled_words(const work::RegisterLine& line) {
    if (!line.pulled_on)
        return {};
    if (line.missing.value_or(0) == 0)
        return QString::number(line.pulled.value_or(0));
    //: Strips that came out; %1 and %2 are numbers of strips.
    return RecordTexts::tr("%1 of %2, %3 missing").arg(line.pulled.value_or(0)).arg(line.strips).arg(*line.missing);
}

QString treatment_notes(const work::RegisterLine& line, const Habits& habits) {
    QStringList notes;
    if (!line.void_reason.isEmpty())
        //: A note on a treatment; %1 is the reason.
        notes << RecordTexts::tr("VOID: %1")
                     .arg(line.void_reason == QStringLiteral("undone") ? RecordTexts::tr("undone after it was printed")
                                                                       : line.void_reason);
    if (line.written_late)
        //: A note on a treatment; %1 is the day it was entered.
        notes << RecordTexts::tr("entered late, %1").arg(habits.day(line.written.local_day()));
    if (line.pulled_late)
        //: A note on a treatment whose strips came out after the last day of their window.
        notes << RecordTexts::tr("pulled after the latest day");
    if (!line.past_limit_reason.isEmpty())
        //: A note on a treatment; %1 is the reason.
        notes << RecordTexts::tr("strips past their limit: %1").arg(line.past_limit_reason);
    if (line.supers_on.value_or(false))
        //: A note on a treatment.
        notes << RecordTexts::tr("supers on");
    for (const work::CorrectionLine& correction : line.corrections)
        if (!correction.made_void)
            //: A note on a treatment: its correction, and the reason.
            notes << RecordTexts::tr("corrected, %1 (%2)").arg(correction_words(correction, habits), correction.why);
    if (!line.note.isEmpty())
        notes << line.note;
    return notes.join(QStringLiteral("; "));
}

QString hive_state_words(const QString& state) {
    if (state == QStringLiteral("dead"))
        //: State of a hive.
        return RecordTexts::tr("dead");
    if (state == QStringLiteral("gone"))
        //: State of a hive: sold or taken away.
        return RecordTexts::tr("gone");
    if (state == QStringLiteral("untreated"))
        //: A hive left untreated on purpose.
        return RecordTexts::tr("left untreated");
    //: A hive in which no strips were hung on a visit.
    return RecordTexts::tr("no strips hung");
}

} // namespace soakbook::ui
