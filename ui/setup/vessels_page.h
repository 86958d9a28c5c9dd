// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: tanks and bins.
#pragma once

#include "core/work/setup.h"
#include "ui/setup/list_page.h"

namespace soakbook::ui {

class VesselsPage : public ListPage {
    Q_OBJECT

public:
    explicit VesselsPage(Desk& desk);
    void refresh() override;

protected:
    void open_form(qint64 id) override;

private:
    void open_vessel(const work::VesselEntry& vessel);
    RowsModel<work::VesselEntry>* m_model;
};

} // namespace soakbook::ui
