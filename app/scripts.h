// SPDX-License-Identifier: GPL-3.0-or-later
// What scripts ask for: a check and a safe copy, without a display. Each gives the exit status.
#pragma once

#include <QString>

namespace soakbook::app {

/// Checks the workbook on a copy and prints a line for each check. 0 sound, 1 damaged, 2 cannot be read.
int verify_file(const QString& path);
/// Makes a checked copy as the new file `to`. 0 copied, 1 damaged and not copied, 2 not read or not written.
int copy_file(const QString& path, const QString& to);

} // namespace soakbook::app
