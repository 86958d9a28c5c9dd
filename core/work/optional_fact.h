// SPDX-License-Identifier: GPL-3.0-or-later
// Facts that may be unknown. For core/work's own use.
#pragma once

#include "core/work/facts.h"

#include <optional>

namespace soakbook::work {

/// Empty when it is not known.
template <class T> QString fact_or_none(const std::optional<T>& value) {
    return value ? fact(*value) : QString();
}

} // namespace soakbook::work
