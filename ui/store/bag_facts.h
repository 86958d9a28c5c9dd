// SPDX-License-Identifier: GPL-3.0-or-later
// All that is known of a bag, and of several together.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/store/bag_hows.h"
#include "ui/store/fact_grid.h"

#include <vector>

namespace soakbook::ui {

std::vector<CardFact> bag_facts(const Desk& desk, const work::BagLine& bag, const BagCount& count);
/// Of two and more: their number, strips, codes.
std::vector<CardFact> facts_of_several(const Desk& desk, const std::vector<work::BagLine>& bags);

} // namespace soakbook::ui
