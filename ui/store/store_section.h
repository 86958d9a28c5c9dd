// SPDX-License-Identifier: GPL-3.0-or-later
// One page of the Store: bags, pails or deliveries.
#pragma once

#include "ui/parts/intent.h"
#include "ui/parts/page_scroll.h"

namespace soakbook::ui {

class StoreSection : public PageScroll {
    Q_OBJECT

public:
    using PageScroll::PageScroll;
    /// What stands over the page.
    virtual QString heading() const = 0;
    /// Asks the workbook again.
    virtual void refresh() = 0;
    virtual void take_focus() = 0;

Q_SIGNALS:
    void wishes(const soakbook::ui::Intent& intent);
};

} // namespace soakbook::ui
