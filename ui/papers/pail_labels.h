// SPDX-License-Identifier: GPL-3.0-or-later
// Labels of pails, from what the workbook holds.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"
#include "ui/print/label_content.h"

#include <vector>

namespace soakbook::ui {

/// What the labels of these pails say, in the order given.
std::vector<LabelContent> pail_labels(const Desk& desk, const std::vector<work::PailId>& pails);
/// Opens the preview with printer and PDF, and notes the labels as printed once they are. Nothing to print opens nothing.
void offer_pail_labels(Desk& desk, const std::vector<work::PailId>& pails, QWidget* parent);

} // namespace soakbook::ui
