// SPDX-License-Identifier: GPL-3.0-or-later
// Up to which entry this user has looked at the changes other programs made; kept in the user's settings.
#pragma once

#include <QString>

namespace soakbook::ui {

/// 0 while nobody looked. `workbook` is the workbook's uid.
qint64 outside_looked_at(const QString& workbook);
void set_outside_looked_at(const QString& workbook, qint64 seq);

} // namespace soakbook::ui
