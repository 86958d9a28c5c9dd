// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/dial_words.h"

#include "ui/shed/shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct DialWords {
    Q_DECLARE_TR_FUNCTIONS(DialWords)
};

QString offset_words(const Habits& habits, const work::DialAdvice& advice) {
    if (!advice.offset_low || !advice.offset_high)
        return {};
    const QString low = degrees_apart(habits, *advice.offset_low);
    if (*advice.offset_low == *advice.offset_high) {
        //: How a tank's dial stands to its probe; %1 a difference of temperatures with its sign, %n readings
        return DialWords::tr("Dial less probe in this tank once it is warm: %1, from %n readings.", nullptr, advice.pairs)
            .arg(low);
    }
    //: How a tank's dial stands to its probe; %1 and %2 differences of temperatures with their signs, %n readings
    return DialWords::tr("Dial less probe in this tank once it is warm: %1 to %2, from %n readings.", nullptr, advice.pairs)
        .arg(low, degrees_apart(habits, *advice.offset_high));
}

QString held_words(const Habits& habits, const work::DialAdvice& advice) {
    switch (advice.held_by) {
    case work::DialHeldBy::ceiling:
        //: Why the dial is not set higher; %1 a temperature
        return DialWords::tr("Not higher, because of the ceiling of %1.").arg(habits.temperature(*advice.ceiling));
    case work::DialHeldBy::dials_seen:
        //: Why the dial is set no further away
        return DialWords::tr("No further than one step beyond the dials seen so far.");
    case work::DialHeldBy::nothing:
        break;
    }
    return {};
}

QString set_words(const Habits& habits, const work::DialAdvice& advice) {
    //: The dial to set; %1 the dial, %2 the temperature wanted in the tank
    QString text = DialWords::tr("<b>Set the dial to %1</b> for %2 in the tank.")
                       .arg(habits.temperature(advice.dial), habits.temperature(*advice.wanted));
    text += QLatin1Char(' ');
    text += advice.by_line
                //: What to expect of the dial that is advised; %1 and %2 temperatures
                ? DialWords::tr("Expect %1 to %2 (95 %).")
                      .arg(habits.temperature(advice.expected_low), habits.temperature(advice.expected_high))
            : advice.expected_low == advice.expected_high
                //: What to expect of the dial that is advised; %1 a temperature
                ? DialWords::tr("Expect about %1, going by a single offset.").arg(habits.temperature(advice.expected_low))
                //: What to expect of the dial that is advised; %1 and %2 temperatures
                : DialWords::tr("Expect %1 to %2: so few readings give a range, not a line.")
                      .arg(habits.temperature(advice.expected_low), habits.temperature(advice.expected_high));
    return text;
}

} // namespace

QString dial_words(const Habits& habits, const work::DialAdvice& advice) {
    const QString offset = offset_words(habits, advice);
    QStringList said;
    switch (advice.says) {
    case work::DialSays::advised:
        said << set_words(habits, advice) << held_words(habits, advice) << offset;
        break;
    case work::DialSays::no_pairs:
        //: Why no dial is named for a tank
        said << DialWords::tr("Once the tank is warm, read dial and probe together: then the dial to set stands here.");
        break;
    case work::DialSays::nothing_wanted:
        // Without them the readings while it warmed cannot be told from the others, and an offset would say nothing.
        //: Why no dial is named for a tank
        said << DialWords::tr("The temperatures wanted in the tank stand in Set-up; with them the dial follows.");
        break;
    case work::DialSays::above_ceiling:
        //: Why no dial is named for a tank
        said << offset << DialWords::tr("The temperature wanted is above the ceiling, so no dial is named.");
        break;
    case work::DialSays::nothing_safe:
        //: Why no dial is named for a tank
        said << offset << DialWords::tr("No dial near those seen so far is sure to keep under the ceiling: set it low, and read often.");
        break;
    case work::DialSays::odd_figures:
        said << offset;
        break;
    }
    said.removeAll(QString());
    return said.join(QLatin1Char(' '));
}

} // namespace soakbook::ui
