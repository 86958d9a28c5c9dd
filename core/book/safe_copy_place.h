// SPDX-License-Identifier: GPL-3.0-or-later
// A second place for safe copies, such as a stick or a folder on another computer: it may not be there, and it may be slow.
// For a thread of its own; what is copied there is a safe copy that nobody has open, never the workbook.
#pragma once

#include "core/book/safe_copy.h"

#include <functional>

namespace soakbook::book {

/// Carries the safe copy at `copy` into `folder`, which has to be there: written aside, waited for until it is on that disk,
/// read back and compared, and only then named as it is at home; then those go that need not stay. One that is there
/// already and the same is kept. `go_on` is asked often, with how far it is in percent; false ends it, as `busy`.
tl::expected<SafeCopy, NotCopied> carry_copy(const SafeCopy& copy, const QString& folder, const QString& mark, const QString& live,
                                             const std::function<bool(int percent)>& go_on = {});

} // namespace soakbook::book
