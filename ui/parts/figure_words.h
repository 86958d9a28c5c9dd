// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of Set-up in words.
#pragma once

#include "core/work/figures.h"

namespace soakbook::ui {

/// The figure as it stands within a sentence: "the days of rest after sealing".
QString figure_name(work::Figure figure);
/// The same by its key in the store; a key that is none stays as it is.
QString figure_name(const QString& key);

} // namespace soakbook::ui
