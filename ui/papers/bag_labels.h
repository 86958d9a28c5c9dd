// SPDX-License-Identifier: GPL-3.0-or-later
// Labels of bags, from what the workbook holds.
#pragma once

#include "core/work/ids.h"
#include "ui/parts/desk.h"
#include "ui/print/label_content.h"

#include <vector>

namespace soakbook::ui {

/// What the labels of these bags say, in the order given; void bags are left out. A label whose bag is not filled has lines
/// to write on.
std::vector<LabelContent> bag_labels(const Desk& desk, const std::vector<work::BagId>& bags);
/// Opens the preview with printer and PDF, and notes the labels as printed once they are. Nothing to print opens nothing.
void offer_bag_labels(Desk& desk, const std::vector<work::BagId>& bags, QWidget* parent);

} // namespace soakbook::ui
