// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: how this user reads and writes. Kept for the user, not in the workbook; a change takes hold at once.
#pragma once

#include "ui/setup/setup_page.h"

namespace soakbook::ui {

class ChoiceField;
class Desk;
class FormFrame;

class HabitsPage : public SetupPage {
    Q_OBJECT

public:
    explicit HabitsPage(Desk& desk);
    void refresh() override;
    void take_focus() override;

private:
    void take_over();

    Desk& m_desk;
    FormFrame* m_form;
    ChoiceField* m_large;
    ChoiceField* m_small;
    ChoiceField* m_temperature;
    ChoiceField* m_language;
    ChoiceField* m_text;
    ChoiceField* m_look;
    ChoiceField* m_paper;
};

} // namespace soakbook::ui
