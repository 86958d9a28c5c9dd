// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/count_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace soakbook::ui {

namespace {

struct CountWords {
    Q_DECLARE_TR_FUNCTIONS(CountWords)
};

/// Rounded down, and never quite all: no weighing is certain.
QString sure_words(const Habits& habits, double sureness) {
    constexpr double most = 0.99;
    if (sureness > most) {
        //: How sure a count by weight is; %1 is 99 %
        return CountWords::tr("over %1").arg(habits.percent(maths::percent(99), 0));
    }
    return habits.percent(maths::percent(std::floor(std::max(sureness, 0.0) * 100)), 0);
}

} // namespace

QString count_words(const Habits& habits, const work::CountCheck& check) {
    if (!check.spread || !check.likeliest || !check.sureness) {
        //: Why the strips of a bag cannot be counted by their weight
        return CountWords::tr("By weight the count cannot be told until some strips of this kind were weighed one by one.");
    }
    const QString sure = sure_words(habits, *check.sureness);
    const QString likeliest = habits.count(*check.likeliest);
    switch (check.says) {
    case work::CountSays::as_packed:
        //: A count by weight; %1 a number of strips, %2 how sure: "97 %" or "over 99 %"
        return CountWords::tr("%1 as packed, %2 sure.").arg(likeliest, sure);
    case work::CountSays::fewer:
    case work::CountSays::more:
        //: A count by weight; %1 the number of strips, %2 the number packed, %3 how sure: "97 %" or "over 99 %"
        return CountWords::tr("%1 by weight, not %2: %3 sure. Count again.").arg(likeliest, habits.count(check.packed), sure);
    case work::CountSays::cannot_tell:
        break;
    }
    if (check.least && check.most && *check.least != *check.most) {
        //: A count by weight; %1 the least and %2 the most strips it can be
        return CountWords::tr("Between %1 and %2 by weight: cannot tell.").arg(habits.count(*check.least), habits.count(*check.most));
    }
    //: A count by weight; %1 the likeliest number of strips, %2 how sure: "72 %"
    return CountWords::tr("Perhaps %1 by weight, only %2 sure: cannot tell.").arg(likeliest, sure);
}

} // namespace soakbook::ui
