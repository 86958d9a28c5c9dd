// SPDX-License-Identifier: GPL-3.0-or-later
// Which safe copy is the newest where the workbook itself cannot be asked, since it is damaged or gone.
#pragma once

#include "core/book/safe_copy_files.h"

#include <optional>

namespace soakbook::book {

/// The newest copy of a state that was not left behind: the copies made after an older one was put back say in their
/// histories what was left, and the highest number alone may be that of a copy kept then.
std::optional<CopyFile> newest_copy_going_on(const QString& folder, const QString& mark, const QString& live = {});

} // namespace soakbook::book
