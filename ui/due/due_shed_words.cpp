// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class Words {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

Intent shed(const char* task, const work::DueRow& row) {
    Intent intent{PlaceName::shed, QLatin1String(task), {row.batch.value}, {}};
    if (row.soak)
        intent.ids.push_back(row.soak.value);
    return intent;
}

/// "since yesterday's reading" without the relative words: the moment as the user writes it.
QString since_words(const work::DueRow& row, const Habits& habits) {
    if (row.by_hour)
        //: When something in the shed was or is due; %1 is a day and an hour.
        return Words::tr("due %1").arg(habits.moment(*row.by_hour));
    if (row.since)
        //: Since when; %1 is a day and an hour.
        return Words::tr("last %1").arg(habits.moment(*row.since));
    return {};
}
} // namespace

std::optional<DueWords> due_shed_words(const work::DueRow& row, const Habits& habits) {
    //: %1 is the code of a batch.
    const QString batch = Words::tr("Batch %1").arg(row.subject);
    switch (row.kind) {
    case work::DueKind::over_ceiling:
        return DueWords{
            //: A verb that begins a row of things to do: cool the tank down.
            Words::tr("Cool"), batch,
            //: %1 is a temperature over the limit.
            Words::tr("%1 in the tank: heat off, air the room, do not lean over it").arg(row.temperature ? habits.temperature(*row.temperature) : QString()),
            //: A button.
            State::past, Words::tr("Read again"), shed("reading", row)};
    case work::DueKind::read_tank:
        //: A verb that begins a row: read the temperature. And its button.
        return DueWords{Words::tr("Read"), batch, since_words(row, habits), std::nullopt, Words::tr("Read the tank"), shed("reading", row)};
    case work::DueKind::stir_tank:
        //: A verb that begins a row: stir the tank. And its button.
        return DueWords{Words::tr("Stir"), batch, since_words(row, habits), std::nullopt, Words::tr("Log a stir"), shed("stir", row)};
    case work::DueKind::weigh_planned:
        //: A verb that begins a row, what is to be done, and its button.
        return DueWords{Words::tr("Mix"), batch, Words::tr("planned: weigh the acid and the glycerine in"), std::nullopt, Words::tr("Weigh in"), shed("weigh_mix", row)};
    case work::DueKind::weigh_strips:
        //: A verb that begins a row: weigh strips; %1 is the name of a bin. And its button.
        return DueWords{Words::tr("Weigh"), Words::tr("strips in %1").arg(row.subject), since_words(row, habits), std::nullopt, Words::tr("Weigh strips"), shed("weigh", row)};
    case work::DueKind::bag_strips:
        return DueWords{
            //: A verb that begins a row: put strips into bags.
            Words::tr("Bag"), batch,
            //: %n strips wait for their bags.
            Words::tr("%n strip(s) soaked and not bagged", nullptr, row.count), std::nullopt,
            //: A button.
            Words::tr("Fill bags"), shed("bag", row)};
    case work::DueKind::fill_reserved:
        return DueWords{
            //: A verb that begins a row: fill bags whose labels are printed.
            Words::tr("Fill"), batch,
            //: %n labels were given out before their bags were filled.
            Words::tr("%n label(s) without a bag", nullptr, row.count), std::nullopt,
            //: A button.
            Words::tr("Fill them"), shed("fill_reserved", row)};
    case work::DueKind::pour_or_close:
        return DueWords{
            //: A verb that begins a row: finish a batch.
            Words::tr("Close"), batch,
            //: What is open in a batch.
            Words::tr("all strips are bagged; leftovers are not settled"), std::nullopt,
            //: A button.
            Words::tr("Settle leftovers"), shed("leftovers", row)};
    default:
        return std::nullopt;
    }
}

} // namespace soakbook::ui
