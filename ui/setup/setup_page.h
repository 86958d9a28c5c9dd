// SPDX-License-Identifier: GPL-3.0-or-later
// One page of Set-up.
#pragma once

#include "ui/parts/page_scroll.h"

namespace soakbook::ui {

class SetupPage : public PageScroll {
    Q_OBJECT

public:
    SetupPage() : PageScroll(Width::text) {}
    /// Asks the workbook again, unless something typed would be lost.
    virtual void refresh() = 0;
    virtual void take_focus() = 0;
};

} // namespace soakbook::ui
