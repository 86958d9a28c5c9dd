// SPDX-License-Identifier: GPL-3.0-or-later
// The list of Due: groups with a head each, a row with its verb, what, when, and its button.
#pragma once

#include "ui/due/due_words.h"

#include <QWidget>

#include <vector>

class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

class DueList : public QWidget {
    Q_OBJECT

public:
    explicit DueList(QWidget* parent = nullptr);
    void set_rows(const std::vector<work::DueRow>& rows, const Habits& habits);
    /// Puts the keyboard on the first row's button.
    void take_focus();
    int size() const { return static_cast<int>(m_buttons.size()); }

Q_SIGNALS:
    void wishes(const soakbook::ui::Intent& intent);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void add_row(QVBoxLayout* rows, const DueWords& words);
    std::vector<QPushButton*> m_buttons;
    QVBoxLayout* m_layout;
    QWidget* m_content = nullptr;
};

} // namespace soakbook::ui
