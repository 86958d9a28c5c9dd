// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/figure_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

QString figure_name(const QString& key) {
    const auto figure = work::figure_of(key);
    return figure ? figure_name(*figure) : key;
}

QString figure_name(work::Figure figure) {
    using work::Figure;
    const char* text = "";
    switch (figure) {
    case Figure::strength:
        //: A figure of Set-up, within a sentence: Set-up must know ...
        text = QT_TRANSLATE_NOOP("Figure", "the strength of the liquid");
        break;
    case Figure::tank_ceiling:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the ceiling of the tank");
        break;
    case Figure::pails_whole:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "how pails go into a mix");
        break;
    case Figure::use_within_months:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the months within which strips are used");
        break;
    case Figure::heat_low:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the lowest temperature wanted in the tank");
        break;
    case Figure::heat_high:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the highest temperature wanted in the tank");
        break;
    case Figure::reading_gap_minutes:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the longest time between two readings of the probe");
        break;
    case Figure::stir_every_minutes:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the time from one stir to the next");
        break;
    case Figure::stir_for_minutes:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "how long to go on stirring");
        break;
    case Figure::room_low:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the lowest room temperature for soaking");
        break;
    case Figure::first_weigh_hours:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the hours until the first weighing");
        break;
    case Figure::weigh_every_hours:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the hours from one weighing to the next");
        break;
    case Figure::sample_strips:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the number of strips in one weighing");
        break;
    case Figure::rest_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days of rest after sealing");
        break;
    case Figure::rest_refuses:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "what to do with strips that still rest");
        break;
    case Figure::near_limit_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days of warning before a bag reaches its limit");
        break;
    case Figure::opened_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days within which an opened bag is used");
        break;
    case Figure::pail_wait_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days that a pail may wait");
        break;
    case Figure::unexplained_limit:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the most liquid that may be unaccounted for");
        break;
    case Figure::pull_from_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days after which strips may come out");
        break;
    case Figure::pull_by_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days by which strips must be out");
        break;
    case Figure::pull_warn_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days of warning before strips must be out");
        break;
    case Figure::withdrawal_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the withdrawal days");
        break;
    case Figure::count_after_days:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the days from pulling to the mite count");
        break;
    case Figure::mite_threshold:
        //: A figure of Set-up, within a sentence
        text = QT_TRANSLATE_NOOP("Figure", "the mite threshold");
        break;
    }
    return QCoreApplication::translate("Figure", text);
}

} // namespace soakbook::ui
