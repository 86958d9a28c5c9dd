// SPDX-License-Identifier: GPL-3.0-or-later
// What Find answers from the open workbook: which place each thing found belongs to.
#pragma once

#include "ui/shell/find_box.h"

namespace soakbook::ui {

class Desk;

/// Looks the text up in the desk's workbook.
Find find_at(const Desk& desk);

} // namespace soakbook::ui
