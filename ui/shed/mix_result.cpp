// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mix_result.h"

#include "core/work/bin_yield.h"
#include "core/work/how_liquid.h"
#include "core/work/level_marks.h"
#include "core/work/setup.h"
#include "ui/parts/form.h"
#include "ui/parts/result_card.h"
#include "ui/shed/mix_words.h"
#include "ui/shed/shed_words.h"

#include <QCoreApplication>

#include <vector>

namespace soakbook::ui {

namespace {

struct MixResultWords {
    Q_DECLARE_TR_FUNCTIONS(MixResultWords)
};

/// Less than this is no leftover worth a word.
constexpr maths::Mass worth_saying = maths::milligrams(100'000);

struct YieldOfBins {
    work::BinYields yields;
    QString bin;
};

/// With bins like the first one whose flood was ever measured or said.
std::optional<YieldOfBins> yield_of_bins(const Desk& desk, const work::MixPlan& plan, maths::Mass total) {
    if (!plan.strip_kind)
        return std::nullopt;
    for (const work::VesselEntry& vessel : work::vessels(desk.workbook())) {
        if (vessel.is_tank)
            continue;
        if (const auto yields = work::bin_yields(desk.workbook(), vessel.id, *plan.strip_kind, total))
            return YieldOfBins{*yields, vessel.name};
    }
    return std::nullopt;
}

QString amounts_text(const Desk& desk, const work::MixFigures& figures) {
    const auto part = [&desk](const work::InContainers& amount, bool acid) {
        const QString containers = in_containers(desk, amount, acid);
        const QString total = QStringLiteral("<b>%1</b>").arg(large(desk, amount.total));
        return containers.isEmpty() ? total : QStringLiteral("%1 (%2)").arg(total, containers);
    };
    QStringList lines{
        //: A line of a mix; %1 the mass, with whole cans in brackets
        MixResultWords::tr("Acid %1").arg(part(figures.acid, true)),
        //: A line of a mix; %1 the mass, with whole cans in brackets
        MixResultWords::tr("Glycerine %1").arg(part(figures.glycerine, false)),
    };
    if (figures.from_pails.count > 0) {
        //: A line of a mix; %1 the mass of all pails
        lines.push_back(MixResultWords::tr("From pails <b>%1</b>").arg(large(desk, figures.from_pails)));
    }
    //: The sum of a mix; %1 the mass, %2 the strength
    lines.push_back(MixResultWords::tr("Together <b>%1 at %2</b>").arg(large(desk, figures.total), desk.percent(figures.strength)));
    return lines.join(QStringLiteral("<br>"));
}

QString follows_text(const Desk& desk, const work::MixFigures& figures, bool bins_known) {
    QStringList follows;
    if (figures.strips) {
        //: What a mix is enough for; %n strips
        follows.push_back(MixResultWords::tr("Soaks up to %n strips", nullptr, *figures.strips));
    }
    if (!bins_known && figures.most_left && figures.most_left->count > worth_saying.count) {
        //: %1 the most liquid that can stay in the bins
        follows.push_back(MixResultWords::tr("at most %1 left").arg(large(desk, *figures.most_left)));
    }
    if (figures.tank_room) {
        //: %1 a mass
        follows.push_back(MixResultWords::tr("room for %1 more in the tank").arg(large(desk, *figures.tank_room)));
    }
    return joined(follows);
}

} // namespace

void show_mix_plan(FormFrame& form, const Desk& desk, const work::MixPlan& plan, const work::MixFigures& figures,
                   const std::optional<work::PailAdvice>& advice) {
    std::vector<work::How> hows{work::how_mix_amounts(desk.workbook(), plan, figures)};
    if (advice && advice->says == work::PailAdviceSays::advised)
        hows.push_back(work::how_pails_chosen(*advice));
    const auto bins = yield_of_bins(desk, plan, figures.total);
    QStringList lines{follows_text(desk, figures, bins.has_value())};
    if (const auto how = work::how_yield(desk.workbook(), plan, figures))
        hows.push_back(*how);
    if (bins)
        lines.push_back(yield_words(desk, bins->yields, bins->bin));
    lines.push_back(marks_words(desk, figures.glycerine));
    const auto marks = work::glycerine_marks(weighed_out(figures.glycerine));
    // One temperature shows the sum for all of them.
    if (marks.size() > 1 && !lines.back().isEmpty())
        hows.push_back(work::how_level_mark(marks[1]));
    if (const auto warm = work::liquid_mark(desk.workbook(), figures.total, figures.strength)) {
        lines.push_back(liquid_mark_words(desk, *warm));
        hows.push_back(work::how_level_mark(*warm));
    }
    lines.removeAll(QString());
    ResultCard* card = form.result();
    card->clear();
    card->set_text(amounts_text(desk, figures));
    card->set_next(lines.join(QLatin1Char('\n')));
    card->set_how(hows, desk);
}

void show_mix_result(FormFrame& form, const Desk& desk, const work::MixResult& mix) {
    ResultCard* card = form.result();
    //: What was weighed in; %1 the mass, %2 the strength it has, %3 the strength wanted
    card->set_text(MixResultWords::tr("<b>%1 at %2</b>, wanted %3")
                       .arg(large(desk, mix.total), desk.percent(mix.strength, 2), desk.percent(mix.wanted, 2)));
    std::vector<work::How> hows{work::how_mix_correction(mix)};
    const auto warm = work::liquid_mark(desk.workbook(), mix.total, mix.strength);
    const QString warm_words = warm ? liquid_mark_words(desk, *warm) : QString();
    if (warm)
        hows.push_back(work::how_level_mark(*warm));
    card->set_how(hows, desk);
    if (!mix.add_acid && !mix.add_glycerine) {
        //: A weighed mix has the strength that was wanted
        card->set_verdict(State::ready, MixResultWords::tr("On strength"),
                          //: After "On strength": no correction is needed
                          MixResultWords::tr("nothing to correct."));
        card->set_next(warm_words);
        return;
    }
    const QString what = mix.add_acid
                             //: A correction of a mix; %1 a mass
                             ? MixResultWords::tr("add %1 of the acid").arg(large(desk, *mix.add_acid))
                             //: A correction of a mix; %1 a mass
                             : MixResultWords::tr("add %1 of glycerine").arg(large(desk, *mix.add_glycerine));
    card->set_verdict(State::near,
                      mix.add_acid
                          //: A weighed mix has less acid than wanted
                          ? MixResultWords::tr("Too weak")
                          //: A weighed mix has more acid than wanted
                          : MixResultWords::tr("Too strong"),
                      what);
    card->set_next(mix.correction_fits
                       //: After a correction of a mix was named
                       ? MixResultWords::tr("It fits into this tank.")
                       //: After a correction of a mix was named
                       : MixResultWords::tr("It does not fit into this tank: take some of the mix out first, or leave it as it "
                                            "is."));
}

} // namespace soakbook::ui
