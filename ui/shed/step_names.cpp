// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/step_names.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct StepNames {
    Q_DECLARE_TR_FUNCTIONS(StepNames)
};

bool is_done(StepName step, const work::BatchView& batch) {
    switch (step) {
    case StepName::mix:
        return batch.mixed.has_value();
    case StepName::heat:
        return batch.clear_at.has_value();
    case StepName::soak:
        return !batch.soaks.empty();
    case StepName::weigh:
        return !batch.soaks.empty() && all_taken_out(batch);
    case StepName::bag:
        return all_taken_out(batch) && batch.strips_soaked > 0 && batch.strips_bagged >= batch.strips_soaked;
    case StepName::leftovers:
        return batch.closed.has_value();
    }
    return false;
}

} // namespace

QString step_name(StepName step) {
    switch (step) {
    case StepName::mix:
        //: The first step of a batch: acid and glycerine are weighed together
        return StepNames::tr("Mix");
    case StepName::heat:
        //: The second step of a batch: the tank is warmed and stirred until the liquid is clear
        return StepNames::tr("Heat and clear");
    case StepName::soak:
        //: The third step of a batch: dry strips are flooded in bins
        return StepNames::tr("Soak");
    case StepName::weigh:
        //: The fourth step of a batch: wet strips on the scale
        return StepNames::tr("Weigh");
    case StepName::bag:
        //: The fifth step of a batch: strips are sealed in bags
        return StepNames::tr("Bag");
    case StepName::leftovers:
        //: The last step of a batch: liquid that is left goes into pails
        return StepNames::tr("Leftovers");
    }
    return {};
}

StepName current_step(const work::BatchView& batch) {
    const auto first = std::find_if(all_steps.begin(), all_steps.end(),
                                    [&batch](StepName step) { return !is_done(step, batch); });
    return first == all_steps.end() ? StepName::leftovers : *first;
}

bool can_open(StepName step, const work::BatchView& batch) {
    switch (step) {
    case StepName::mix:
        return true;
    case StepName::heat:
        return batch.mixed.has_value() || !batch.readings.empty() || !batch.stirs.empty();
    case StepName::soak:
        return batch.clear_at.has_value() || !batch.soaks.empty();
    case StepName::weigh:
        return !batch.soaks.empty();
    case StepName::bag:
        return !batch.soaks.empty() || !batch.bags.empty();
    case StepName::leftovers:
        return !batch.soaks.empty() || !batch.pails.empty() || batch.closed.has_value();
    }
    return false;
}

Step::Stage stage_of(StepName step, const work::BatchView& batch) {
    if (is_done(step, batch))
        return Step::Stage::done;
    return step == current_step(batch) ? Step::Stage::going_on : Step::Stage::to_come;
}

bool is_open(const work::BatchView& batch) {
    return !batch.closed && batch.line.state != work::BatchState::made_void;
}

bool all_taken_out(const work::BatchView& batch) { return next_soak(batch) == nullptr; }

const work::SoakLine* next_soak(const work::BatchView& batch) {
    const auto first = std::find_if(batch.soaks.begin(), batch.soaks.end(),
                                    [](const work::SoakLine& soak) { return !soak.ended.has_value(); });
    return first == batch.soaks.end() ? nullptr : &*first;
}

bool wants_correction(const work::BatchView& batch) {
    return batch.mixed && batch.mix && (batch.mix->add_acid || batch.mix->add_glycerine) && batch.soaks.empty();
}

} // namespace soakbook::ui
