// SPDX-License-Identifier: GPL-3.0-or-later
// What is worked out of a bag beside what is kept of it: its strips by weight, the hazard its label states, and how each of
// its figures came about.
#pragma once

#include "core/work/count_check.h"
#include "core/work/how.h"
#include "core/work/store_view.h"
#include "ui/parts/desk.h"

#include <optional>
#include <vector>

namespace soakbook::ui {

/// The strips by weight, or why that is refused; nothing for a bag without a weight.
using BagCount = std::optional<work::Outcome<work::CountCheck>>;
BagCount bag_count(const Desk& desk, const work::BagLine& bag);
/// "80 as packed, 97 % sure." or why it cannot be told; empty for a bag without a weight.
QString bag_count_words(const Desk& desk, const BagCount& count);
/// "DANGER: H302, H318"; empty for a label without a bag and for a bag made void.
QString bag_hazard_words(const work::BagLine& bag);
/// Acid in a strip, rest, limit, strips by weight, hazard class; what the bag does not have is left out.
std::vector<work::How> bag_hows(const Desk& desk, const work::BagLine& bag, const BagCount& count);

} // namespace soakbook::ui
