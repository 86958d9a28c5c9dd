// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a batch sheet, a table each.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/print/record_sheets.h"

namespace soakbook::ui {

BatchPart mix_part(const Desk& desk, const work::BatchView& batch);
BatchPart heat_part(const Desk& desk, const work::BatchView& batch);
BatchPart stir_part(const Desk& desk, const work::BatchView& batch);
BatchPart soak_part(const Desk& desk, const work::BatchView& batch);
BatchPart weigh_part(const Desk& desk, const work::BatchView& batch);
BatchPart bag_part(const Desk& desk, const work::BatchView& batch);
/// Pails, named losses, and what is unexplained.
BatchPart balance_part(const Desk& desk, const work::BatchView& batch);

} // namespace soakbook::ui
