// SPDX-License-Identifier: GPL-3.0-or-later
// Opens whatever file it is given and lists all that is in it, as pages and papers would.
#pragma once

#include <QString>

namespace soakbook::faults {

/// Whether it opened. What a hostile file makes the store say is taken; a crash, an endless run or an undefined step is not.
bool open_and_list(const QString& path);

} // namespace soakbook::faults
