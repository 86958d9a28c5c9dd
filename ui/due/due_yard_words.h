// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of Due that belong to yards, and those of the store and of Set-up.
#pragma once

#include "ui/due/due_words.h"

namespace soakbook::ui {

/// Nothing where the row is not a yard's.
std::optional<DueWords> due_yard_words(const work::DueRow& row, const Habits& habits);
/// Forms that were begun, and changes by other programs; nothing where the row is not one of those.
std::optional<DueWords> due_window_words(const work::DueRow& row, const Habits& habits);
/// The store, Set-up and safe copies: all that is left.
DueWords due_store_words(const work::DueRow& row, const Habits& habits);

} // namespace soakbook::ui
