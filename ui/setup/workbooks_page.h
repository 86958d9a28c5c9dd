// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: the way to another workbook.
#pragma once

#include "ui/setup/setup_page.h"
#include "ui/setup/setup_place.h"

class QPushButton;

namespace soakbook::ui {

class WorkbooksPage : public SetupPage {
    Q_OBJECT

public:
    WorkbooksPage(Desk& desk, const WorkbookDoors& doors);
    void refresh() override {}
    void take_focus() override;

private:
    QPushButton* m_first = nullptr;
};

} // namespace soakbook::ui
