// SPDX-License-Identifier: GPL-3.0-or-later
// Why a safe copy could not be made, in words.
#pragma once

#include "core/book/safe_copy.h"

namespace soakbook::app {

/// `place` is the folder or file that was to be written.
QString copy_words(book::NotCopied why, const QString& place);
/// The same for the second place, which may just not be there.
QString second_place_words(book::NotCopied why, const QString& folder);

} // namespace soakbook::app
