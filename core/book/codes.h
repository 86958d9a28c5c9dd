// SPDX-License-Identifier: GPL-3.0-or-later
// Codes given out: each once and for ever, outside undo.
#pragma once

#include "core/book/workbook.h"

#include <optional>

namespace soakbook::book {

/// The highest number given out for that letter so far; 0 before the first.
qint64 last_code_number(const Workbook& workbook, QChar kind);
/// Writes down that the code was given. The caller made it from the next number.
void give_code(Writing& writing, const QString& code, QChar kind, qint64 number);
/// When the code was given out; nothing if it never was.
std::optional<maths::Instant> code_given(const Workbook& workbook, const QString& code);

} // namespace soakbook::book
