// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: where safe copies are kept, and one made now.
#pragma once

#include "ui/setup/setup_page.h"

class QLabel;
class QPushButton;

namespace soakbook::ui {

class Desk;
class NoticeBar;

class SafeCopiesPage : public SetupPage {
    Q_OBJECT

public:
    SafeCopiesPage(Desk& desk, const QString& folder);
    void refresh() override;
    void take_focus() override;

private:
    void copy_now();

    Desk& m_desk;
    QString m_folder;
    QLabel* m_state;
    QLabel* m_answer;
    QPushButton* m_button;
};

} // namespace soakbook::ui
