// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/step_summaries.h"

#include "ui/shed/shed_words.h"
#include "ui/shed/weigh_form.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct StepSummaries {
    Q_DECLARE_TR_FUNCTIONS(StepSummaries)
};

QString mix_inputs(const Desk& desk, const work::BatchView& batch) {
    maths::Mass acid{};
    maths::Mass glycerine{};
    QStringList parts;
    for (const work::InputLine& input : batch.inputs) {
        const maths::Mass mass = input.mass.value_or(input.planned);
        if (input.pail) {
            //: A pail that went into a mix; %1 its code, %2 its mass
            parts.push_back(StepSummaries::tr("pail %1 whole (%2)").arg(input.name, large(desk, mass)));
        } else {
            (input.is_acid ? acid : glycerine) += mass;
        }
    }
    if (acid.count > 0) {
        //: Acid that went into a mix; %1 a mass
        parts.push_back(StepSummaries::tr("%1 acid").arg(large(desk, acid)));
    }
    if (glycerine.count > 0) {
        //: Glycerine that went into a mix; %1 a mass
        parts.push_back(StepSummaries::tr("%1 glycerine").arg(large(desk, glycerine)));
    }
    return parts.join(QStringLiteral(" + "));
}

QString mix_summary(const Desk& desk, const work::BatchView& batch) {
    const maths::Fraction strength = batch.mixed ? batch.strength.value_or(batch.wanted) : batch.wanted;
    //: What a mix came to; %1 the mass, %2 the strength
    const QString made = StepSummaries::tr("%1 at %2").arg(large(desk, batch.total), desk.percent(strength));
    if (!batch.mixed) {
        //: A mix that is planned and not weighed in
        return joined({made, mix_inputs(desk, batch), StepSummaries::tr("to be weighed in")});
    }
    const bool agree = std::all_of(batch.inputs.begin(), batch.inputs.end(),
                                   [](const work::InputLine& input) { return input.mass == input.planned; });
    QString end;
    if (wants_correction(batch)) {
        //: The strength of a mix is not what was wanted; %1 the strength wanted
        end = StepSummaries::tr("wanted %1").arg(desk.percent(batch.wanted));
    } else if (agree) {
        //: Every weight is as it was planned
        end = StepSummaries::tr("planned and weighed agree");
    }
    return joined({made, mix_inputs(desk, batch), end});
}

QString heat_summary(const Desk& desk, const work::BatchView& batch) {
    const int stirs = static_cast<int>(batch.stirs.size());
    //: How often a tank was stirred
    const QString stirred = stirs > 0 ? StepSummaries::tr("%n stirs", nullptr, stirs) : QString();
    //: The highest temperature of a tank; %1 a temperature
    const QString highest = batch.highest ? StepSummaries::tr("highest %1").arg(desk.temperature(*batch.highest)) : QString();
    if (batch.clear_at) {
        //: When a tank's liquid was seen clear; %1 day and time
        return joined({StepSummaries::tr("clear at %1").arg(desk.moment(*batch.clear_at)), stirred, highest});
    }
    if (batch.readings.empty())
        //: What is to be done now
        return joined({StepSummaries::tr("read the tank as it warms"), stirred});
    const work::ReadingLine& last = batch.readings.back();
    const QString now = last.probe
                            //: The last reading of a tank; %1 a temperature, %2 day and time
                            ? StepSummaries::tr("%1 at %2").arg(desk.temperature(*last.probe), desk.moment(last.at))
                            : QString();
    //: The liquid of a tank has not been seen clear
    return joined({now, stirred, StepSummaries::tr("not clear yet")});
}

QString soak_summary(const Desk& desk, const work::BatchView& batch) {
    if (batch.soaks.empty())
        //: What is to be done now
        return StepSummaries::tr("the liquid is clear: strips can go in");
    std::optional<maths::Temperature> room;
    for (const work::SoakLine& soak : batch.soaks)
        room = soak.room ? soak.room : room;
    //: How many bins were flooded
    return joined({StepSummaries::tr("%n bins", nullptr, static_cast<int>(batch.soaks.size())),
                   //: How many strips soak
                   StepSummaries::tr("%n strips", nullptr, batch.strips_soaked),
                   //: Since when strips soak; %1 day and time
                   StepSummaries::tr("since %1").arg(desk.moment(batch.soaks.front().started)),
                   //: The temperature of the room; %1 a temperature
                   room ? StepSummaries::tr("room %1").arg(desk.temperature(*room)) : QString()});
}

QString weigh_summary(const Desk& desk, const work::BatchView& batch) {
    QStringList parts;
    for (const work::SoakLine& soak : batch.soaks) {
        QString how;
        if (!soak.weighings.empty()) {
            const work::WeighFigures& figures = soak.weighings.back().figures;
            how = QStringLiteral("%1, %2").arg(small(desk, figures.mean), verdict_words(desk, figures).word.toLower());
        } else if (soak.ended) {
            //: Strips were taken out of a bin without a weighing
            how = StepSummaries::tr("taken out, not weighed");
        } else {
            //: Strips soak and were not weighed yet; %1 how long
            how = StepSummaries::tr("%1 in").arg(how_long(maths::hours_between(soak.started, desk.now())));
        }
        //: How the strips of a bin stand; %1 the bin, %2 how
        parts.push_back(StepSummaries::tr("%1: %2").arg(soak.bin_name, how));
    }
    return joined(parts);
}

QString bag_summary(const Desk& desk, const work::BatchView& batch) {
    int bags = 0;
    std::optional<maths::Day> use_by;
    for (const work::BatchBag& bag : batch.bags) {
        if (!bag.packed || bag.made_void)
            continue;
        ++bags;
        if (bag.use_by && (!use_by || *bag.use_by < *use_by))
            use_by = bag.use_by;
    }
    const int left = batch.strips_soaked - batch.strips_bagged;
    QStringList parts;
    if (bags > 0) {
        //: How many bags were filled
        parts.push_back(StepSummaries::tr("%n bags", nullptr, bags));
        //: How many strips are in bags
        parts.push_back(StepSummaries::tr("%n strips", nullptr, batch.strips_bagged));
    }
    if (batch.labels_reserved > 0) {
        //: Labels whose bags are not filled yet
        parts.push_back(StepSummaries::tr("%n labels wait for their bags", nullptr, batch.labels_reserved));
    }
    if (left > 0) {
        //: Strips that are in no bag yet
        parts.push_back(StepSummaries::tr("%n strips to bag", nullptr, left));
    }
    if (use_by) {
        //: The last day bags may be used; %1 a day
        parts.push_back(StepSummaries::tr("use by %1").arg(desk.day(*use_by)));
    }
    return joined(parts);
}

QString leftovers_summary(const Desk& desk, const work::BatchView& batch) {
    QStringList parts;
    if (!batch.pails.empty()) {
        maths::Mass together{};
        for (const work::BatchPail& pail : batch.pails)
            together += pail.mass;
        //: Liquid in pails; %n pails, %1 a mass
        parts.push_back(StepSummaries::tr("%1 in %n pails", nullptr, static_cast<int>(batch.pails.size()))
                            .arg(large(desk, together)));
    }
    if (batch.balance && (!batch.pails.empty() || batch.closed)) {
        //: What nothing accounts for; %1 a mass with its sign
        parts.push_back(StepSummaries::tr("%1 unexplained").arg(large_signed(desk, batch.balance->unexplained)));
    } else if (batch.balance) {
        //: Liquid that can still be poured; %1 a mass
        parts.push_back(StepSummaries::tr("%1 not accounted for yet").arg(large(desk, batch.balance->unexplained)));
    }
    if (batch.closed) {
        //: A batch was closed; %1 day and time
        parts.push_back(StepSummaries::tr("closed %1").arg(desk.moment(*batch.closed)));
    }
    return joined(parts);
}

} // namespace

QString step_summary(const Desk& desk, StepName step, const work::BatchView& batch) {
    if (!can_open(step, batch))
        return waiting_summary(step);
    switch (step) {
    case StepName::mix:
        return mix_summary(desk, batch);
    case StepName::heat:
        return heat_summary(desk, batch);
    case StepName::soak:
        return soak_summary(desk, batch);
    case StepName::weigh:
        return weigh_summary(desk, batch);
    case StepName::bag:
        return bag_summary(desk, batch);
    case StepName::leftovers:
        return leftovers_summary(desk, batch);
    }
    return {};
}

QString waiting_summary(StepName step) {
    switch (step) {
    case StepName::mix:
        //: What the first step of a new batch asks for
        return StepSummaries::tr("what to make, and out of what");
    case StepName::heat:
        //: What a step of a batch waits for
        return StepSummaries::tr("waits for the amounts to be weighed in");
    case StepName::soak:
        //: What a step of a batch waits for
        return StepSummaries::tr("waits for the liquid to be seen clear");
    case StepName::weigh:
        //: What a step of a batch waits for
        return StepSummaries::tr("waits for strips in a bin");
    case StepName::bag:
        //: What a step of a batch waits for
        return StepSummaries::tr("waits for strips that have soaked");
    case StepName::leftovers:
        //: What a step of a batch waits for
        return StepSummaries::tr("waits for the strips to take up their share");
    }
    return {};
}

} // namespace soakbook::ui
