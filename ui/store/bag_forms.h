// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of bags on the shelf. Each opens over `parent` and closes when its entry is made.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"

#include <vector>

namespace soakbook::ui {

/// Throws strips of one bag away, or all that is left in several.
void open_discard_form(Desk& desk, const std::vector<work::BagLine>& bags, QWidget* parent);
/// Sets what is left after counting.
void open_recount_form(Desk& desk, const work::BagLine& bag, QWidget* parent);
void open_bag_opened_form(Desk& desk, const work::BagLine& bag, QWidget* parent);
void open_bag_resealed_form(Desk& desk, const work::BagLine& bag, QWidget* parent);
/// Puts strips packed, weight and day sealed right, with a reason.
void open_correct_bag_form(Desk& desk, const work::BagLine& bag, QWidget* parent);
void open_void_bag_form(Desk& desk, const work::BagLine& bag, QWidget* parent);

} // namespace soakbook::ui
