// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class DueShedTexts {
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
        return DueShedTexts::tr("due %1").arg(habits.moment(*row.by_hour));
    if (row.since)
        //: Since when; %1 is a day and an hour.
        return DueShedTexts::tr("last %1").arg(habits.moment(*row.since));
    return {};
}
} // namespace

std::optional<DueWords> due_shed_words(const work::DueRow& row, const Habits& habits) {
    //: %1 is the code of a batch.
    const QString batch = DueShedTexts::tr("Batch %1").arg(row.subject);
    switch (row.kind) {
    case work::DueKind::over_ceiling:
        return DueWords{//: A verb that begins a row of things to do: cool the tank down.
                        DueShedTexts::tr("Cool"), batch,
                        //: %1 is a temperature over the limit.
                        DueShedTexts::tr("%1 in the tank: heat off, air the room, do not lean over it")
                            .arg(row.temperature ? habits.temperature(*row.temperature) : QString()),
                        //: A button.
                        State::past, DueShedTexts::tr("Read again"), shed("reading", row)};
    case work::DueKind::read_tank:
        //: A verb that begins a row: read the temperature. And its button.
        return DueWords{DueShedTexts::tr("Read"),          batch,
                        since_words(row, habits),          std::nullopt,
                        DueShedTexts::tr("Read the tank"), shed("reading", row)};
    case work::DueKind::stir_tank:
        //: A verb that begins a row: stir the tank. And its button.
        return DueWords{DueShedTexts::tr("Stir"),       batch,
                        since_words(row, habits),       std::nullopt,
                        DueShedTexts::tr("Log a stir"), shed("stir", row)};
    case work::DueKind::weigh_planned:
        //: A verb that begins a row, what is to be done, and its button.
        return DueWords{DueShedTexts::tr("Mix"),
                        batch,
                        DueShedTexts::tr("planned: weigh the acid and the glycerine in"),
                        std::nullopt,
                        //: The button of that row.
                        DueShedTexts::tr("Weigh in"),
                        shed("weigh_mix", row)};
    case work::DueKind::weigh_strips:
        //: A verb that begins a row: weigh strips; %1 is the name of a bin. And its button.
        return DueWords{DueShedTexts::tr("Weigh"),        DueShedTexts::tr("strips in %1").arg(row.subject),
                        since_words(row, habits),         std::nullopt,
                        DueShedTexts::tr("Weigh strips"), shed("weigh", row)};
    case work::DueKind::bag_strips:
        return DueWords{//: A verb that begins a row: put strips into bags.
                        DueShedTexts::tr("Bag"), batch,
                        //: %n strips wait for their bags.
                        DueShedTexts::tr("%n strip(s) soaked and not bagged", nullptr, row.count), std::nullopt,
                        //: A button.
                        DueShedTexts::tr("Fill bags"), shed("bag", row)};
    case work::DueKind::fill_reserved:
        return DueWords{//: A verb that begins a row: fill bags whose labels are printed.
                        DueShedTexts::tr("Fill"), batch,
                        //: %n labels were given out before their bags were filled.
                        DueShedTexts::tr("%n label(s) without a bag", nullptr, row.count), std::nullopt,
                        //: A button.
                        DueShedTexts::tr("Fill them"), shed("fill_reserved", row)};
    case work::DueKind::pour_or_close:
        return DueWords{//: A verb that begins a row: finish a batch.
                        DueShedTexts::tr("Close"), batch,
                        //: What is open in a batch.
                        DueShedTexts::tr("all strips are bagged; leftovers are not settled"), std::nullopt,
                        //: A button.
                        DueShedTexts::tr("Settle leftovers"), shed("leftovers", row)};
    default:
        return std::nullopt;
    }
}

} // namespace soakbook::ui
