// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_yard_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class DueYardTexts {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

Intent yards(const char* task, const work::DueRow& row) {
    Intent intent{PlaceName::yards, QLatin1String(task), {row.yard.value}, {}};
    if (row.round)
        intent.ids.push_back(row.round.value);
    return intent;
}

QString hives_in(const work::DueRow& row) {
    //: %n hives; %1 is the name of a yard.
    return DueYardTexts::tr("%n hive(s), %1", nullptr, row.count).arg(row.subject);
}

QString window(const work::DueRow& row, const Habits& habits) {
    if (!row.from || !row.by)
        return row.by ? habits.day_short(*row.by) : QString();
    //: The days between which strips come out; %1 and %2 are days.
    return DueYardTexts::tr("window %1 to %2").arg(habits.day_short(*row.from), habits.day_short(*row.by));
}
} // namespace

std::optional<DueWords> due_yard_words(const work::DueRow& row, const Habits& habits) {
    //: A verb that begins a row: take strips out of hives.
    const QString pull = DueYardTexts::tr("Pull");
    //: A button: enter that strips came out.
    const QString out = DueYardTexts::tr("Strips out");
    switch (row.kind) {
    case work::DueKind::pull_past:
        return DueWords{pull,
                        hives_in(row),
                        row.since && row.by
                            //: %1 and %2 are days.
                            ? DueYardTexts::tr("strips in since %1, latest day was %2")
                                  .arg(habits.day_short(row.since->local_day()), habits.day_short(*row.by))
                            //: %1 is a day.
                            : DueYardTexts::tr("latest day was %1").arg(row.by ? habits.day_short(*row.by) : QString()),
                        State::past,
                        out,
                        yards("strips_out", row)};
    case work::DueKind::pull_open:
        return DueWords{pull,
                        hives_in(row),
                        window(row, habits),
                        row.group == work::DueGroup::now || row.group == work::DueGroup::today
                            ? std::optional(State::near)
                            : std::nullopt,
                        out,
                        yards("strips_out", row)};
    case work::DueKind::pull_opens:
        //: A button: the list of hives to visit.
        return DueWords{pull,
                        hives_in(row),
                        window(row, habits),
                        std::nullopt,
                        //: The button of that row: the list of hives to visit.
                        DueYardTexts::tr("Pull list"),
                        yards("pull_list", row)};
    case work::DueKind::pull_dead:
        //: What is wrong: strips hang in hives that died.
        return DueWords{pull,        hives_in(row), DueYardTexts::tr("dead, and strips still hang there"),
                        State::near, out,           yards("strips_out", row)};
    case work::DueKind::count_mites:
        return DueWords{
            //: A verb that begins a row: count mites.
            DueYardTexts::tr("Count"), hives_in(row),
            //: %1 is a day.
            row.since ? DueYardTexts::tr("mites; strips came out %1").arg(habits.day_short(row.since->local_day()))
                      : QString(),
            std::nullopt,
            //: A button.
            DueYardTexts::tr("Enter counts"), yards("count", row)};
    case work::DueKind::visit_yard:
        return DueWords{//: A verb that begins a row: hang strips in a yard.
                        DueYardTexts::tr("Hang"), row.subject,
                        //: %n strips; %1 is the day planned.
                        DueYardTexts::tr("%n strip(s), planned %1", nullptr, row.strips)
                            .arg(row.by ? habits.day_short(*row.by) : QString()),
                        std::nullopt,
                        //: A button: enter that strips went in.
                        DueYardTexts::tr("Strips in"), yards("strips_in", row)};
    case work::DueKind::round_short: {
        Intent batch{PlaceName::shed, QStringLiteral("new_batch"), {}, {{QStringLiteral("strips"), row.strips}}};
        return DueWords{//: A verb that begins a row: start a batch. And a button.
                        DueYardTexts::tr("Start"), DueYardTexts::tr("a batch for %1").arg(row.subject),
                        //: %n strips are short; %1 is the day planned.
                        DueYardTexts::tr("%n strip(s) short on %1", nullptr, row.strips)
                            .arg(row.by ? habits.day_short(*row.by) : QString()),
                        State::near, DueYardTexts::tr("New batch"), batch};
    }
    default:
        return std::nullopt;
    }
}

} // namespace soakbook::ui
