// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/weigh_words.h"

#include "ui/shed/shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct WeighWords {
    Q_DECLARE_TR_FUNCTIONS(WeighWords)
};

QString reaches(const Habits& habits, const QString& bin, maths::Mass weight, const work::WeightReached& reached) {
    const QString when = reached_words(habits, reached);
    if (reached.at < habits.now()) {
        //: What the curve of a bin says; %1 the bin, %2 a weight, %3 when, such as "at about 04:10 today, between ..."
        return WeighWords::tr("By its curve %1 reached %2 %3: weigh it now.").arg(bin, small(habits, weight), when);
    }
    //: What the curve of a bin says; %1 the bin, %2 a weight, %3 when, such as "at about 14:10 today, between ..."
    return WeighWords::tr("%1 reaches %2 %3.").arg(bin, small(habits, weight), when);
}

/// The least that is good, where the target itself is out of reach or without an hour.
QString least_words(const Habits& habits, const work::SoakCurve& curve) {
    if (!curve.fit->least)
        return {};
    //: After a sentence on a bin whose target has no hour; %1 a weight, %2 when, such as "at about 14:10 today, ..."
    return QLatin1Char(' ') + WeighWords::tr("The least that is good, %1, comes %2.")
                                  .arg(small(habits, curve.least_weight), reached_words(habits, *curve.fit->least));
}

QString no_curve_words(work::SoakCurveSays says, const QString& bin) {
    switch (says) {
    case work::SoakCurveSays::too_few:
        //: Why no hour is told for a bin; %1 the bin
        return WeighWords::tr("%1: when it is done can be told from three weighings on, at different hours.").arg(bin);
    case work::SoakCurveSays::no_rise:
        //: Why no hour is told for a bin; %1 the bin
        return WeighWords::tr("%1 grows no heavier, so no hour can be told.").arg(bin);
    case work::SoakCurveSays::plateau_not_in_sight:
        //: Why no hour is told for a bin; %1 the bin
        return WeighWords::tr("%1 still gains as fast as at first: where that ends cannot be told yet. Weigh again later.")
            .arg(bin);
    case work::SoakCurveSays::all_on_plateau:
        //: Why no hour is told for a bin; %1 the bin
        return WeighWords::tr("%1 was full at its first weighing: how fast it filled cannot be told.").arg(bin);
    default:
        return {};
    }
}

} // namespace

QString reached_words(const Habits& habits, const work::WeightReached& reached) {
    //: When a weight is reached; %1 an hour such as "14:10 today", %2 how sure: "between 13:00 and 16:00"
    return WeighWords::tr("at about %1, %2")
        .arg(hour_words(habits, reached.at), between_hours(habits, reached.low_at, reached.high_at, reached.at));
}

QString curve_words(const Habits& habits, const work::SoakLine& soak, const work::SoakCurve& curve) {
    const bool settled = soak.ended || soak.weighings.empty() ||
                         soak.weighings.back().figures.verdict == work::WeighVerdict::on_target ||
                         soak.weighings.back().figures.verdict == work::WeighVerdict::heavy;
    if (settled)
        return {};
    if (!curve.fit)
        return no_curve_words(curve.says, soak.bin_name);
    if (curve.fit->target)
        return reaches(habits, soak.bin_name, curve.target_weight, *curve.fit->target);
    const QString target = small(habits, curve.target_weight);
    if (curve.fit->plateau < soak.weighings.back().figures.mean) {
        //: Why no hour is told for a bin; %1 the bin
        return WeighWords::tr("%1: its weighings lie on no one curve, so no hour can be told.").arg(soak.bin_name);
    }
    if (curve.says == work::SoakCurveSays::target_above_plateau) {
        //: What the curve of a bin says; %1 the bin, %2 the weight it comes to, %3 the weight wanted
        return WeighWords::tr("%1 levels off at about %2, below the %3 wanted.")
                   .arg(soak.bin_name, small(habits, curve.fit->plateau), target) +
               least_words(habits, curve);
    }
    //: What the curve of a bin says; %1 the bin, %2 the weight wanted
    return WeighWords::tr("%1 comes close to %2 so slowly that its hour cannot be told.").arg(soak.bin_name, target) +
           least_words(habits, curve);
}

QString sample_words(const Habits& habits, const work::MoreToWeigh& sample) {
    switch (sample.says) {
    case work::SampleSays::settled:
        return {};
    case work::SampleSays::weigh_more:
        if (!sample.more)
            return {};
        return sample.learned
                   //: How many more strips to weigh; %n strips, %1 by how much single strips of this kind lie apart
                   ? WeighWords::tr("%n more would settle it at 95 %, going by the %1 that single strips of this kind lie apart.",
                                    nullptr, *sample.more)
                         .arg(small(habits, sample.spread ? sample.spread->deviation_mass() : maths::Mass{}))
                   //: How many more strips to weigh; %n strips
                   : WeighWords::tr("%n more would settle it at 95 %.", nullptr, *sample.more);
    case work::SampleSays::too_near_a_limit:
        //: A sample whose mean lies next to a limit
        return WeighWords::tr("It lies so near the limit that no number of strips would settle it.");
    case work::SampleSays::no_spread_known:
        //: Why it is not said how sure a sample is
        return WeighWords::tr("How sure that is cannot be told until some strips of this kind were weighed one by one.");
    }
    return {};
}

QString cold_words(const Habits& habits, const work::ColdHint& hint) {
    const QString room = habits.temperature(hint.room);
    const QString usual = habits.temperature(hint.usual);
    if (!hint.times_as_long) {
        //: A hint; %1 the temperature of the room, %2 the least of Set-up
        return WeighWords::tr("The room was %1, colder than your %2: it will take longer.").arg(room, usual);
    }
    //: A hint; %1 the temperature of the room, %2 the least of Set-up, %3 a number such as 1.4
    return WeighWords::tr("The room was %1, colder than your %2: reckon with %3 times the hours.")
        .arg(room, usual, habits.locale().toString(*hint.times_as_long, 'f', 1));
}

} // namespace soakbook::ui
