// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/mite_words.h"

#include "ui/yards/yard_words.h"

namespace soakbook::ui {

using work::MiteChangeSays;

QString MiteWords::against_threshold(const work::MiteFigures& figures, const Habits& habits) {
    const QString rate = YardWords::rate(figures, habits);
    if (!figures.over_threshold) {
        return rate;
    }
    if (*figures.over_threshold) {
        //: %1 a mite rate with its range; the whole range lies over the threshold in Set-up
        return figures.is_sure ? tr("%1, over your threshold").arg(rate)
                               //: %1 a mite rate with its range; the range holds the threshold in Set-up
                               : tr("%1, perhaps over your threshold").arg(rate);
    }
    //: %1 a mite rate with its range; the whole range lies under the threshold in Set-up
    return figures.is_sure ? tr("%1, under your threshold").arg(rate)
                           //: %1 a mite rate with its range; the range holds the threshold in Set-up
                           : tr("%1, perhaps under your threshold").arg(rate);
}

QString MiteWords::change(const work::MiteChange& change, const Habits& habits) {
    if (!change.change) {
        return why_not(change);
    }
    const bool is_more = change.change->count < 0;
    const QString part = habits.percent(is_more ? maths::Fraction{-change.change->count} : *change.change, 0);
    //: How mites changed; %1 a share
    const QString changed = is_more ? tr("%1 more mites").arg(part)
                                    //: How mites changed; %1 a share
                                    : tr("%1 fewer mites").arg(part);
    const QString kind = YardWords::kind(change.kind);
    //: Hives in which mites were counted before and after a treatment
    const QString treated = tr("%n treated hives", nullptr, change.treated.hives);
    if (change.says == MiteChangeSays::without_untreated) {
        //: What a round did to the mites; %1 a way to count, %2 "85 % fewer mites", %3 "3 treated hives"
        return tr("By %1: %2 in %3 counted before and after. No untreated hive was counted beside them, so this is a change and says nothing of how "
                  "well the strips worked.")
            .arg(kind, changed, treated);
    }
    //: Untreated hives in which mites were counted before and after, to compare with
    const QString untreated = tr("%n untreated hives", nullptr, change.untreated.hives);
    //: What a round did to the mites; %1 a way to count, %2 "85 % fewer mites", %3 "3 treated hives", %4 "2 untreated hives"
    return tr("By %1: %2 than without strips, by %3 beside %4. It shows what happened here and promises nothing.").arg(kind, changed, treated, untreated);
}

QString MiteWords::why_not(const work::MiteChange& change) {
    if (change.says == MiteChangeSays::no_counts) {
        //: Why a change of mites cannot be computed
        return tr("How the mites changed cannot be computed: no treated hive was counted for this round both before its strips went in and after "
                  "they came out.");
    }
    const QString kind = YardWords::kind(change.kind);
    if (change.treated.before > 0) {
        //: Why a change of mites cannot be computed; %1 a way to count
        return tr("By %1: how the mites changed cannot be computed, since the untreated hives had none before or after.").arg(kind);
    }
    //: Why a change of mites cannot be computed; %1 a way to count
    return tr("By %1: how the mites changed cannot be computed, since the treated hives had none before.").arg(kind);
}

} // namespace soakbook::ui
