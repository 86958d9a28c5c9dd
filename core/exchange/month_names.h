// SPDX-License-Identifier: GPL-3.0-or-later
// Months by name, in English and in the user's language.
#pragma once

#include "core/exchange/quantity_text.h"

#include <QLocale>
#include <QString>

namespace soakbook::exchange {

/// The month, 1 to 12, that a word names: in full, in short, or by its first three letters or more, in any case, with
/// or without accents and the closing dot. The locale's own short names come first; a beginning that fits several
/// months is refused as two_meanings.
Read<unsigned> read_month(const QString& word, const QLocale& locale);

/// The locale's short name of the month, where that is a name that read_month reads; otherwise the English one.
QString write_month(unsigned month, const QLocale& locale);

} // namespace soakbook::exchange
