// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_yard_words.h"
#include "ui/parts/figure_words.h"

#include <QCoreApplication>
#include <QDir>

namespace soakbook::ui {

namespace {
class DueStoreTexts {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

Intent store(const char* task, const work::DueRow& row) {
    Intent intent{PlaceName::store, QLatin1String(task), row.ids, {}};
    if (row.of_pails)
        intent.prefill[QStringLiteral("pails")] = true;
    return intent;
}

QString bags(const work::DueRow& row) {
    //: %n bags of strips.
    return DueStoreTexts::tr("%n bag(s)", nullptr, row.count);
}
QString strips(const work::DueRow& row) {
    //: %n strips.
    return DueStoreTexts::tr("%n strip(s)", nullptr, row.strips);
}

DueWords near_limit(const work::DueRow& row, const Habits& habits) {
    QString when;
    if (row.from && row.by && *row.from != *row.by)
        //: %1 and %2 are days.
        when = DueStoreTexts::tr("limit between %1 and %2").arg(habits.day_short(*row.from), habits.day_short(*row.by));
    else if (row.by)
        //: %1 is a day.
        when = DueStoreTexts::tr("limit %1").arg(habits.day_short(*row.by));
    const QString what = bags(row) + QStringLiteral(", ") + strips(row);
    //: A verb that begins a row: use strips before their limit. And its button.
    return {DueStoreTexts::tr("Use"), what, when, State::near, DueStoreTexts::tr("Show the bags"), store("bags", row)};
}
} // namespace

DueWords due_store_words(const work::DueRow& row, const Habits& habits) {
    switch (row.kind) {
    case work::DueKind::rest_ends: {
        //: %1 is a day; %n strips become ready.
        const QString when = DueStoreTexts::tr("rest ends %1: %n strip(s) become ready", nullptr, row.strips)
                                 .arg(row.by ? habits.day_short(*row.by) : QString());
        //: %1 is a number of bags, %2 the code of a batch.
        const QString what =
            row.subject.isEmpty() ? bags(row) : DueStoreTexts::tr("%1 of batch %2").arg(bags(row), row.subject);
        //: A verb that begins a row: put rested bags on their shelf. And its button.
        return {DueStoreTexts::tr("Shelve"), what, when, std::nullopt, DueStoreTexts::tr("Move them"),
                store("move", row)};
    }
    case work::DueKind::bags_near_limit:
        return near_limit(row, habits);
    case work::DueKind::bags_past_limit: {
        const QString what = bags(row) + QStringLiteral(", ") + strips(row);
        //: %1 is a day.
        const QString when =
            DueStoreTexts::tr("past their limit since %1").arg(row.by ? habits.day_short(*row.by) : QString());
        //: A verb that begins a row: throw away. And its button.
        return {DueStoreTexts::tr("Discard"), what, when, State::past, DueStoreTexts::tr("Discard"),
                store("discard", row)};
    }
    case work::DueKind::opened_too_long:
        //: A row of things to do: use opened bags; and its button.
        return {DueStoreTexts::tr("Use"),
                bags(row),
                DueStoreTexts::tr("opened longer than you allow"),
                State::near,
                //: The button of that row.
                DueStoreTexts::tr("Show the bags"),
                store("bags", row)};
    case work::DueKind::pail_waits:
        return {//: A row of things to do: use leftover pails.
                DueStoreTexts::tr("Use"),
                //: %n pails of leftover liquid.
                DueStoreTexts::tr("%n pail(s)", nullptr, row.count),
                //: %1 is a day.
                row.since ? DueStoreTexts::tr("the oldest waits since %1").arg(habits.day_short(row.since->local_day()))
                          : QString(),
                std::nullopt,
                //: A button.
                DueStoreTexts::tr("Show the pails"), store("pails", row)};
    case work::DueKind::print_label_again:
        return {//: A row of things to do: print labels again.
                DueStoreTexts::tr("Print"),
                //: %n labels.
                DueStoreTexts::tr("%n label(s) again", nullptr, row.count),
                //: Why a label is to be printed again.
                DueStoreTexts::tr("something on them was corrected"), State::near,
                //: A button.
                DueStoreTexts::tr("Print labels"), store("labels", row)};
    case work::DueKind::figure_missing:
        return {//: A row of things to do: say a figure in Set-up.
                DueStoreTexts::tr("Say"),
                figure_name(row.subject),
                //: Why a figure of Set-up is asked for.
                DueStoreTexts::tr("not said yet, so Soakbook cannot warn you by it"),
                std::nullopt,
                //: A button.
                DueStoreTexts::tr("Set-up"),
                {PlaceName::setup, QStringLiteral("figure"), {}, {{QStringLiteral("key"), row.subject}}}};
    case work::DueKind::safe_copy_late:
        return {//: A row of things to do: make a safe copy.
                DueStoreTexts::tr("Copy"),
                //: What is to be copied.
                DueStoreTexts::tr("the workbook"),
                //: %n entries were made after the newest safe copy.
                DueStoreTexts::tr("%n entries since the last safe copy", nullptr, row.count),
                State::near,
                //: A button.
                DueStoreTexts::tr("Copy now"),
                {PlaceName::setup, QStringLiteral("safe_copies"), {}, {}}};
    case work::DueKind::second_place: {
        const Intent where{PlaceName::setup, QStringLiteral("safe_copies"), {}, {}};
        if (row.subject.isEmpty())
            return {//: A row of things to do: choose a second place for safe copies.
                    DueStoreTexts::tr("Choose"),
                    //: What is to be chosen.
                    DueStoreTexts::tr("a second place for safe copies"),
                    //: Why it is to be chosen.
                    DueStoreTexts::tr("they all lie on this computer"), std::nullopt,
                    //: A button.
                    DueStoreTexts::tr("Choose, or say none"), where};
        return {//: A row of things to do: put the stick in on which the second safe copies lie.
                DueStoreTexts::tr("Connect"), QDir::toNativeSeparators(row.subject),
                //: Why a stick is to be put in; %1 is a day.
                DueStoreTexts::tr("no safe copy was put there since %1").arg(row.since ? habits.day_short(row.since->local_day()) : QString()), State::near,
                //: A button.
                DueStoreTexts::tr("Safe copies"), where};
    }
    default:
        return {};
    }
}

} // namespace soakbook::ui
