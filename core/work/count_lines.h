// SPDX-License-Identifier: GPL-3.0-or-later
// Counts as lines with a threshold asked for once. For core/work's own use.
#pragma once

#include "core/book/queries/counts.h"
#include "core/work/count.h"

namespace soakbook::work {

MiteFigures mite_figures_against(std::optional<qint64> threshold_ppm, MiteCountKind kind, int mites,
                                 std::optional<int> bees, std::optional<int> days);
CountLine line_of(const book::CountRow& row, std::optional<qint64> threshold_ppm);

} // namespace soakbook::work
