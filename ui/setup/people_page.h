// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: who makes entries.
#pragma once

#include "core/work/setup.h"
#include "ui/setup/list_page.h"

namespace soakbook::ui {

class PeoplePage : public ListPage {
    Q_OBJECT

public:
    explicit PeoplePage(Desk& desk);
    void refresh() override;

protected:
    void open_form(qint64 id) override;

private:
    RowsModel<work::PersonLine>* m_model;
};

} // namespace soakbook::ui
