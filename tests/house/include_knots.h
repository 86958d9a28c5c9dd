// SPDX-License-Identifier: GPL-3.0-or-later
// Files that include each other in a ring.
#pragma once

#include "tests/house/source_tree.h"

namespace soakbook::house {

/// One breach for each ring, naming the way round.
std::vector<Breach> include_knots(const std::vector<SourceFile>& files);

} // namespace soakbook::house
