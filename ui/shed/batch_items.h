// SPDX-License-Identifier: GPL-3.0-or-later
// The batches as the list at the left shows them.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/side_list.h"

namespace soakbook::ui {

SideItem batch_item(const Desk& desk, const work::BatchLine& batch);

} // namespace soakbook::ui
