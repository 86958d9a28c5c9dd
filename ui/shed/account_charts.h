// SPDX-License-Identifier: GPL-3.0-or-later
// What the charts of a batch's accounts show, in the user's units.
#pragma once

#include "core/work/batch_limits.h"
#include "core/work/shed_view.h"
#include "ui/charts/batch_chart.h"
#include "ui/charts/mass_flow_chart.h"
#include "ui/parts/desk.h"

namespace soakbook::ui {

/// Where every kilogram went: in, strips, bags, pails, each named loss, and the rest.
MassFlow mass_flow(const Desk& desk, const work::BatchView& batch);
/// Whether the rest still stands in tank and bins, as before anything was poured.
bool too_early_to_explain(const work::BatchView& batch);
/// Batch beside batch, with the one that is looked at.
BatchSeries batch_series(const Desk& desk, const work::BatchChart& chart, work::BatchId looked_at);

} // namespace soakbook::ui
