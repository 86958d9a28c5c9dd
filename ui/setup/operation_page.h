// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: whose workbook it is.
#pragma once

#include "ui/setup/setup_page.h"

namespace soakbook::ui {

class Desk;
class FormFrame;
class NoteField;
class TextField;

class OperationPage : public SetupPage {
    Q_OBJECT

public:
    explicit OperationPage(Desk& desk);
    void refresh() override;
    void take_focus() override;

private:
    Desk& m_desk;
    FormFrame* m_form;
    TextField* m_name;
    NoteField* m_maker;
    TextField* m_registration;
};

} // namespace soakbook::ui
