// SPDX-License-Identifier: GPL-3.0-or-later
// Two or three forms in one place, of which one is seen: a row of joined buttons says which. So each step keeps one filled
// button.
#pragma once

#include <QWidget>

#include <vector>

class QButtonGroup;
class QHBoxLayout;
class QVBoxLayout;

namespace soakbook::ui {

class FormFrame;

class FormSwitch : public QWidget {
    Q_OBJECT

public:
    explicit FormSwitch(QWidget* parent = nullptr);
    /// Adds a form under its short name; gives its number. `object_name` is the button's.
    int add(const QString& name, FormFrame* form, const QString& object_name);
    /// Puts another form in the place of one, which goes.
    void put(int way, FormFrame* form);
    /// Takes a form out of reach, or brings it back. While only one is left the buttons are not seen.
    void set_reachable(int way, bool reachable);
    bool is_reachable(int way) const;
    void show_way(int way);
    int way() const { return m_way; }
    FormFrame* form() const;
    void rename(int way, const QString& name);

Q_SIGNALS:
    /// The user turned to another form.
    void turned(int way);

private:
    void settle();

    struct Way {
        FormFrame* form = nullptr;
        bool reachable = true;
    };
    QButtonGroup* m_group;
    QWidget* m_bar;
    QHBoxLayout* m_buttons;
    QVBoxLayout* m_column;
    std::vector<Way> m_ways;
    int m_way = -1;
};

} // namespace soakbook::ui
