// SPDX-License-Identifier: GPL-3.0-or-later
// The papers of one batch: the mixing sheet before, the batch sheet after.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"
#include "ui/print/mixing_sheet.h"
#include "ui/print/record_sheets.h"

#include <optional>

namespace soakbook::ui {

/// Nothing when there is no such batch.
std::optional<MixingSheet> mixing_sheet(const Desk& desk, work::BatchId batch);
std::optional<BatchSheet> batch_sheet(const Desk& desk, work::BatchId batch);
/// Opens the preview with printer and PDF, and notes the sheet as printed once it is.
void offer_mixing_sheet(Desk& desk, work::BatchId batch, QWidget* parent);
void offer_batch_sheet(Desk& desk, work::BatchId batch, QWidget* parent);

} // namespace soakbook::ui
