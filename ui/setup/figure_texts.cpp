// SPDX-License-Identifier: GPL-3.0-or-later
// What each figure is called in Set-up, and what it is for.
#include "ui/setup/figure_fields.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class FigureTextsWords {
    Q_DECLARE_TR_FUNCTIONS(FigureTexts)
};
struct Text {
    QString label;
    QString help;
};

Text text_of(work::Figure figure) {
    using enum work::Figure;
    switch (figure) {
    case strength:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Strength of the liquid"),
                FigureTextsWords::tr("Oxalic acid, counted as dihydrate, by mass of the finished liquid.")};
    case tank_ceiling:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Tank never above"),
                FigureTextsWords::tr(
                    "Above it the acid starts to break down and gives off gas. A reading over it is said at once.")};
    case pails_whole:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Leftovers go into a mix"),
                FigureTextsWords::tr("Acid settles in a pail: the upper half may be almost pure glycerine. A part of a "
                                     "pail is never taken.")};
    case use_within_months:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Use strips within"),
                FigureTextsWords::tr("Counted from the day a bag was sealed.")};
    case heat_low:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Wanted in the tank, from"),
                FigureTextsWords::tr("Where you want the probe while acid dissolves.")};
    case heat_high:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Wanted in the tank, to"), FigureTextsWords::tr("Stays under the ceiling.")};
    case reading_gap_minutes:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Read the tank every"),
                FigureTextsWords::tr("Due says when no reading was made for longer.")};
    case stir_every_minutes:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Stir every"), FigureTextsWords::tr("While the liquid is not yet clear.")};
    case stir_for_minutes:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Stirring takes about"),
                FigureTextsWords::tr("All stirs together, until the liquid is clear.")};
    case room_low:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Room at least"),
                FigureTextsWords::tr("A colder room soaks slowly, and the form says so.")};
    case first_weigh_hours:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("First weighing after"),
                FigureTextsWords::tr("From the start of the soak; Due reminds you.")};
    case weigh_every_hours:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Then weigh every"), FigureTextsWords::tr("Until the strips are on target.")};
    case sample_strips:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Strips in one weighing"), FigureTextsWords::tr("Stands in the form already.")};
    case rest_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Bags rest for"),
                FigureTextsWords::tr("From sealing, while strips take up what is still wet in the bag.")};
    case rest_refuses:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Strips that still rest are"),
                FigureTextsWords::tr("When somebody wants to hang them.")};
    case near_limit_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Warn before the limit"),
                FigureTextsWords::tr("Bags that near their use-by day are marked and said in Due.")};
    case opened_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Use an opened bag within"), FigureTextsWords::tr("From the day it was opened.")};
    case pail_wait_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("A pail waits at most"), FigureTextsWords::tr("Longer is said in Due.")};
    case unexplained_limit:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Unexplained loss up to"),
                FigureTextsWords::tr("Of what went into a batch; more is asked about when it is closed.")};
    case pull_from_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Strips come out from day"),
                FigureTextsWords::tr("Days after they were hung: the window opens.")};
    case pull_by_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Strips are out by day"),
                FigureTextsWords::tr("Days after they were hung: the latest day.")};
    case pull_warn_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Warn before the latest day"), FigureTextsWords::tr("Yards near it are marked.")};
    case withdrawal_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("No harvest after pulling for"),
                FigureTextsWords::tr("By the label, your vet and local law; 0 only if they say so.")};
    case count_after_days:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Count mites after pulling"),
                FigureTextsWords::tr("Due reminds you so many days after the strips came out.")};
    case mite_threshold:
        //: A figure of Set-up and what it is for.
        return {FigureTextsWords::tr("Too many mites above"),
                FigureTextsWords::tr("Mites for each hundred bees; name where you have it from.")};
    }
    return {};
}
} // namespace

QString figure_label(work::Figure figure) {
    return text_of(figure).label;
}
QString figure_help(work::Figure figure) {
    return text_of(figure).help;
}

} // namespace soakbook::ui
