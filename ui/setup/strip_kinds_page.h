// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: kinds of strip.
#pragma once

#include "core/work/setup.h"
#include "ui/setup/list_page.h"

namespace soakbook::ui {

class StripKindsPage : public ListPage {
    Q_OBJECT

public:
    explicit StripKindsPage(Desk& desk);
    void refresh() override;

protected:
    void open_form(qint64 id) override;

private:
    RowsModel<work::StripKindEntry>* m_model;
};

} // namespace soakbook::ui
