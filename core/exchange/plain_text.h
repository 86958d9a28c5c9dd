// SPDX-License-Identifier: GPL-3.0-or-later
// Typed text brought into one form before it is read as a number or a day.
#pragma once

#include <QString>

#include <optional>

namespace soakbook::exchange {

/// The text, trimmed, with every kind of space as ' ', minus signs as '-', full-width marks as '.', ',', '/' and ':',
/// and the digits of the Arabic, Persian and full-width sets as 0 to 9. Nothing if it holds what could make it read
/// otherwise than it looks: control and direction characters inside it, halves of surrogate pairs, superscripts and
/// fractions, and digits of other sets. Direction marks at either end, which keyboards and clipboards add, are dropped.
std::optional<QString> plain_text(const QString& text);

} // namespace soakbook::exchange
