// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/batch_limits.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/batches.h"
#include "core/maths/charts_limits.h"
#include "core/maths/sampling.h"
#include "core/work/batch_checks.h"
#include "core/work/weigh_sums.h"

#include <algorithm>
#include <cmath>

namespace soakbook::work {

namespace {

/// The day of the last bag; while none is filled every weighing counts.
maths::Day last_bagging(const book::Workbook& workbook, BatchId batch) {
    std::optional<maths::Day> last;
    for (const book::Bag& bag : book::bags_of(workbook, batch))
        if (!bag.void_reason && bag.sealed_on)
            last = std::max(last.value_or(*bag.sealed_on), *bag.sealed_on);
    return last.value_or(maths::day(9999, 12, 31));
}

BatchFigures figures_of_batch(const book::Workbook& workbook, const book::Batch& batch) {
    BatchFigures figures{batch.id, batch.code, batch.mixed->local_day(), batch.strip_kind, {}, {}, {}};
    const StripWeights weights = strip_weights(workbook, batch, std::nullopt, last_bagging(workbook, batch.id));
    if (weights.strip) {
        if (const auto taken = maths::uptake(*weights.strip, weights.dry))
            figures.taken_up = *taken;
        figures.acid_per_strip = weights.acid;
    }
    const maths::Mass in = liquid_of(workbook, batch.id).total;
    if (batch.closed && batch.unexplained && in.count > 0)
        figures.unexplained = maths::share(*batch.unexplained, in);
    return figures;
}

std::optional<qint64> value_of(const BatchFigures& figures, BatchMeasure measure) {
    switch (measure) {
    case BatchMeasure::taken_up:
        return figures.taken_up ? std::optional<qint64>(figures.taken_up->count) : std::nullopt;
    case BatchMeasure::acid_per_strip:
        return figures.acid_per_strip ? std::optional<qint64>(figures.acid_per_strip->count) : std::nullopt;
    case BatchMeasure::unexplained:
        break;
    }
    return figures.unexplained ? std::optional<qint64>(figures.unexplained->count) : std::nullopt;
}

} // namespace

std::vector<BatchFigures> batch_figures(const book::Workbook& workbook) {
    std::vector<BatchFigures> all;
    for (const book::Batch& batch : book::batches_open_first(workbook, false))
        if (batch.mixed)
            all.push_back(figures_of_batch(workbook, batch));
    std::sort(all.begin(), all.end(), [](const BatchFigures& a, const BatchFigures& b) {
        return a.day != b.day ? a.day < b.day : a.batch < b.batch;
    });
    return all;
}

BatchChart batch_chart(const book::Workbook& workbook, BatchMeasure measure, StripKindId kind) {
    BatchChart chart{measure, kind, {}, {}};
    std::vector<double> values;
    for (const BatchFigures& figures : batch_figures(workbook)) {
        const auto value = value_of(figures, measure);
        if (figures.strip_kind != kind || !value)
            continue;
        chart.points.push_back({figures.batch, figures.code, figures.day, *value, {}});
        values.push_back(static_cast<double>(*value));
    }
    if (values.size() < static_cast<std::size_t>(batches_for_limits))
        return chart;
    const auto limits = maths::individuals_limits(values);
    if (!limits)
        return chart;
    chart.limits = BatchLimits{std::llround(limits->mean), std::llround(limits->lower), std::llround(limits->upper),
                               std::llround(limits->mean_range)};
    if (const auto marks = maths::chart_marks(values, limits->mean, limits->lower, limits->upper))
        for (const maths::ChartMark& mark : *marks)
            chart.points[mark.index].stands_out.push_back(static_cast<BatchSignal>(mark.signal));
    return chart;
}

} // namespace soakbook::work
