// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_words.h"

#include "ui/shed/shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct MixWords {
    Q_DECLARE_TR_FUNCTIONS(MixWords)
};

QString saves_words(const Habits& habits, const work::PailAdvice& advice) {
    const QString acid = large(habits, advice.saves_acid);
    const QString glycerine = large(habits, advice.saves_glycerine);
    if (advice.saves_money && advice.saves_money->count > 0) {
        //: What leftover pails save in a mix; %1 a mass of acid, %2 of glycerine, %3 an amount of money
        return MixWords::tr("That saves %1 of acid and %2 of glycerine, %3 in money.")
            .arg(acid, glycerine, money(habits, *advice.saves_money));
    }
    //: What leftover pails save in a mix; %1 a mass of acid, %2 of glycerine
    return MixWords::tr("That saves %1 of acid and %2 of glycerine.").arg(acid, glycerine);
}

QString proof_words(const Habits& habits, const work::PailAdvice& advice) {
    if (advice.proved) {
        //: Why these pails and no others
        return MixWords::tr("No other choice of whole pails uses up more.");
    }
    //: When there are too many pails to try every choice; %1 a mass
    return MixWords::tr("There are too many pails to try every choice: another might use up to %1 more.")
        .arg(large(habits, advice.could_be_more));
}

} // namespace

QString advice_words(const Habits& habits, const work::PailAdvice& advice) {
    switch (advice.says) {
    case work::PailAdviceSays::no_pails:
        return {};
    case work::PailAdviceSays::none_fits:
        //: No leftover pail can go into this mix
        return MixWords::tr("None of these pails goes into this mix whole.");
    case work::PailAdviceSays::not_applicable:
        //: Why no pails are suggested
        return MixWords::tr("Pails are suggested where you start from the amount to make or from the strips wanted.");
    case work::PailAdviceSays::advised:
        break;
    }
    QStringList codes;
    for (const work::PailAdviceLine& line : advice.lines) {
        if (line.is == work::PailIs::used)
            codes << line.code;
    }
    //: Which leftover pails go into a mix; %n pails, %1 their codes, %2 the liquid in them
    QString text = MixWords::tr("%1: %2 of old liquid.", nullptr, static_cast<int>(codes.size()))
                       .arg(codes.join(QStringLiteral(", ")), large(habits, advice.old_liquid));
    text += QLatin1Char(' ') + saves_words(habits, advice);
    text += QLatin1Char(' ') + proof_words(habits, advice);
    return text;
}

QString stays_out_words(const work::PailAdviceLine& pail) {
    switch (pail.is) {
    case work::PailIs::used:
    case work::PailIs::strength_unknown:
        return {};
    case work::PailIs::set_not_whole:
        //: Why a leftover pail stays out of a mix
        return MixWords::tr("stays out: one of its set is gone");
    case work::PailIs::too_heavy:
        //: Why a leftover pail stays out of a mix
        return MixWords::tr("stays out: more than the whole mix");
    case work::PailIs::too_strong:
        //: Why a leftover pail stays out of a mix
        return MixWords::tr("stays out: alone too strong for this mix");
    case work::PailIs::too_weak:
        //: Why a leftover pail stays out of a mix
        return MixWords::tr("stays out: too weak, no room for the acid it needs");
    case work::PailIs::left_over:
        //: Why a leftover pail stays out of a mix
        return MixWords::tr("stays out: no room beside the others");
    }
    return {};
}

maths::Mass weighed_out(const work::InContainers& amount) {
    return amount.container && amount.container->count > 0 ? amount.rest : amount.total;
}

QString marks_words(const Habits& habits, const work::InContainers& glycerine) {
    const maths::Mass rest = weighed_out(glycerine);
    if (rest.count <= 0)
        return {};
    QStringList marks;
    for (const work::LevelMark& mark : work::glycerine_marks(rest)) {
        //: A mark on a can; %1 a volume, %2 the temperature at which it holds
        marks << MixWords::tr("%1 at %2").arg(volume(habits, mark.volume), habits.temperature(mark.at, 0));
    }
    if (marks.isEmpty())
        return {};
    //: A second look beside the scale; %1 a mass of glycerine, %2 marks such as "9.89 l at 20 °C"
    return MixWords::tr("On a can with marks %1 of glycerine stand at %2.")
        .arg(large(habits, rest), marks.join(QStringLiteral(", ")));
}

QString liquid_mark_words(const Habits& habits, const work::LevelMark& mark) {
    //: A second look beside the scale; %1 a temperature, %2 a volume
    return MixWords::tr("The whole liquid at %1: about %2, an estimate.")
        .arg(habits.temperature(mark.at, 0), volume(habits, mark.volume));
}

QString yield_words(const Habits& habits, const work::BinYields& yields, const QString& bin) {
    const work::BinYield& at_once = yields.side_by_side;
    const work::BinYield& in_turn = yields.one_after_another;
    if (at_once.bins == 0) {
        //: A mix is too small for a bin; %1 a bin, %2 the liquid that floods it
        return MixWords::tr("Too little to flood %1, which takes %2.").arg(bin, large(habits, yields.flood));
    }
    //: Strips in bins filled at the same time; %n strips, %1 a bin, %2 a mass
    QString text = MixWords::tr("Bins like %1, side by side: %n strips, at most %2 left.", nullptr, at_once.strips)
                       .arg(bin, large(habits, at_once.most_left));
    if (in_turn.strips > at_once.strips) {
        text += QLatin1Char(' ');
        //: The same with one bin filled again and again; %n strips, %1 a mass, %2 "2 more days"
        text += MixWords::tr("One after another, warmed and cleared between: %n strips, at most %1 left, %2.", nullptr,
                             in_turn.strips)
                    .arg(large(habits, in_turn.most_left),
                         //: How much longer it takes to fill one bin after another; %n days
                         MixWords::tr("%n more days", nullptr, in_turn.more_days));
    }
    return text;
}

} // namespace soakbook::ui
