// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of pails on the shelf. Each opens over `parent` and closes when its entry is made.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"

namespace soakbook::ui {

/// Some of it was used: from then on its strength is unknown.
void open_used_in_part_form(Desk& desk, const work::PailLine& pail, QWidget* parent);
void open_discard_pail_form(Desk& desk, const work::PailLine& pail, QWidget* parent);
/// Puts the mass right, with a reason.
void open_correct_pail_form(Desk& desk, const work::PailLine& pail, QWidget* parent);

} // namespace soakbook::ui
