// SPDX-License-Identifier: GPL-3.0-or-later
// What prints and exports have shown outside: from then on it is made void, never removed.
#pragma once

#include "core/book/workbook.h"

namespace soakbook::book {

/// Notes that a paper or file of kind `paper` ("bag label", "register" ...) shows these rows of a table.
void note_shown(Writing& writing, const QString& table, const std::vector<qint64>& ids, const QString& paper);
bool was_shown(const Workbook& workbook, const QString& table, qint64 id);

} // namespace soakbook::book
