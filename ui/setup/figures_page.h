// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: the figures one works by. Four have a value from the start; the rest is the user's to say.
#pragma once

#include "core/work/figures.h"
#include "ui/papers/history_dialog.h"
#include "ui/setup/setup_page.h"

namespace soakbook::ui {

class Desk;
class Field;
class FormFrame;
class TextField;

class FiguresPage : public SetupPage {
    Q_OBJECT

public:
    explicit FiguresPage(Desk& desk);
    void refresh() override;
    void take_focus() override;
    /// Puts the keyboard into the figure of that key.
    void go_to(const QString& key);

private:
    HistoryOf history(const std::vector<work::Figure>& figures) const;
    void add_figures(const QString& heading, const QString& help, const std::vector<work::Figure>& figures);

    Desk& m_desk;
    FormFrame* m_form;
    std::vector<std::pair<work::Figure, Field*>> m_fields;
    TextField* m_source;
};

} // namespace soakbook::ui
