// SPDX-License-Identifier: GPL-3.0-or-later
// Refusals in words: what is wrong, with the facts, and the way out.
#pragma once

#include "core/exchange/quantity_text.h"
#include "core/work/outcome.h"

namespace soakbook::ui {

/// One or two short sentences for the user. Facts that are not there leave a shorter sentence, never a gap.
QString refusal_words(const work::Refusal& refusal);
/// Why a text does not read, and how to write it.
QString unreadable_words(exchange::Unreadable why);

} // namespace soakbook::ui
