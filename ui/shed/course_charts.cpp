// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/course_charts.h"

#include "ui/shed/weigh_form.h"
#include "ui/shed/weigh_words.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

void add_curve(const Desk& desk, const work::SoakCurve& curve, BinOfSamples& bin) {
    if (!curve.fit)
        return;
    for (const work::CurvePoint& point : curve.fit->points)
        bin.curve.push_back({point.hours, point.weight, point.low, point.high});
    // A mark beyond the end of the curve would stand in the air; the last step may fall short of the hour by a rounding.
    constexpr double rounding = 1e-6;
    if (curve.fit->target && !bin.curve.empty() && curve.fit->target->hours <= bin.curve.back().hours + rounding) {
        bin.reached = curve.fit->target->hours;
        bin.reached_words = reached_words(desk, *curve.fit->target);
    }
}

} // namespace

TankTemperature tank_temperature(const Desk& desk, const work::BatchView& batch) {
    TankTemperature data;
    data.ceiling = batch.ceiling;
    data.unit = desk.preferences().temperature;
    data.locale = desk.locale();
    for (const work::ReadingLine& reading : batch.readings)
        data.readings.push_back({reading.at, desk.moment(reading.at), reading.probe, reading.dial, false});
    for (const work::StirLine& stir : batch.stirs)
        data.readings.push_back({stir.at, desk.moment(stir.at), std::nullopt, std::nullopt, true});
    std::stable_sort(data.readings.begin(), data.readings.end(),
                     [](const TankReading& a, const TankReading& b) { return a.at < b.at; });
    return data;
}

StripWeight strip_weight(const Desk& desk, const work::BatchView& batch, const std::vector<work::SoakCurve>& curves) {
    StripWeight data;
    data.unit = desk.preferences().small_mass;
    data.locale = desk.locale();
    for (std::size_t i = 0; i < batch.soaks.size(); ++i) {
        const work::SoakLine& soak = batch.soaks[i];
        data.dry = soak.dry;
        data.wanted_from = soak.target - soak.tolerance;
        data.wanted_to = soak.target + soak.tolerance;
        data.target = soak.target;
        BinOfSamples bin;
        bin.name = soak.bin_name;
        add_curve(desk, curves[i], bin);
        for (const work::WeighLine& weighing : soak.weighings) {
            bin.samples.push_back({weighing.hours, desk.moment(weighing.at), weighing.figures.mean, weighing.strips,
                                   verdict_words(desk, weighing.figures).word});
        }
        data.bins.push_back(std::move(bin));
    }
    return data;
}

} // namespace soakbook::ui
