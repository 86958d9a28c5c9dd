// SPDX-License-Identifier: GPL-3.0-or-later
// Refusals in words: what is wrong, with the facts in the user's own units, and the way out.
#pragma once

#include "core/exchange/quantity_text.h"
#include "core/work/outcome.h"

#include <span>

namespace soakbook::ui {

class Habits;

/// One or two short sentences for the user. Facts that are not there leave a shorter sentence, never a gap.
QString refusal_words(const work::Refusal& refusal, const Habits& habits);
/// Why a text does not read, and how to write it.
QString unreadable_words(exchange::Unreadable why);
/// One fact of a refusal as the user writes it: "m:12500000" is "12.5 kg", a name stays as it is.
QString fact_words(const QString& fact, const Habits& habits);

/// The words of one reason, not translated yet. `with` holds %1, %2 for the facts; `without` needs none.
struct RefusalText {
    work::Why why;
    int facts;
    const char* with;
    const char* without;
};
// The rooms' reasons, one file each.
std::span<const RefusalText> form_refusals();
std::span<const RefusalText> batch_refusals();
std::span<const RefusalText> soak_refusals();
std::span<const RefusalText> yard_refusals();

} // namespace soakbook::ui
