// SPDX-License-Identifier: GPL-3.0-or-later
// Batch beside batch: what strips took up, the acid in a strip, and what is unexplained, with the limits within which
// batches of one kind lie by themselves.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <QString>

#include <optional>
#include <vector>

namespace soakbook::work {

struct BatchFigures {
    BatchId batch;
    QString code;
    maths::Day day{}; ///< mixed
    StripKindId strip_kind;
    std::optional<maths::Mass> taken_up;        ///< a strip, by the last weighing of each bin before bagging
    std::optional<maths::Mass> acid_per_strip;  ///< dihydrate
    std::optional<maths::Fraction> unexplained; ///< share of what went in, with its sign; closed batches only
};
/// Every mixed batch that is not void, in order of its day.
std::vector<BatchFigures> batch_figures(const book::Workbook& workbook);

enum class BatchMeasure { taken_up, acid_per_strip, unexplained };
/// What stands out: beyond a limit, or the eighth or later in a row on one side of the mean.
enum class BatchSignal { outside, run_of_eight };
struct BatchPoint {
    BatchId batch;
    QString code;
    maths::Day day{};
    qint64 value = 0; ///< mg, or ppm of what went in
    std::vector<BatchSignal> stands_out;
};
/// In the unit of the points.
struct BatchLimits {
    qint64 mean = 0;
    qint64 lower = 0;
    qint64 upper = 0;
    qint64 mean_range = 0; ///< between one batch and the next
};
struct BatchChart {
    BatchMeasure measure{};
    StripKindId strip_kind;
    std::vector<BatchPoint> points;    ///< batches of the kind that have the figure
    std::optional<BatchLimits> limits; ///< from three batches on
};
constexpr int batches_for_limits = 3;
/// Individuals chart, mean +- 3 MRbar / d2: NIST/SEMATECH e-Handbook 6.3.2.2; runs of eight: Western Electric rules.
BatchChart batch_chart(const book::Workbook& workbook, BatchMeasure measure, StripKindId kind);

} // namespace soakbook::work
