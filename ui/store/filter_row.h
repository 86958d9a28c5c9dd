// SPDX-License-Identifier: GPL-3.0-or-later
// A row of choices of which one holds: which rows a table shows. Arrow keys go from one to the next.
#pragma once

#include <QWidget>

#include <vector>

class QButtonGroup;

namespace soakbook::ui {

class FlowLayout;

class FilterRow : public QWidget {
    Q_OBJECT

public:
    /// `name` is the object's name and begins those of its buttons: "bags_filter", "bags_filter_ready".
    FilterRow(const QString& name, const QString& spoken_name, QWidget* parent = nullptr);
    void add(int id, const QString& key, const QString& words);
    /// The number behind the words of a choice.
    void set_count(int id, const QString& count);
    int chosen() const;
    /// Chooses without emitting changed().
    void choose(int id);

Q_SIGNALS:
    void changed(int id);

private:
    QButtonGroup* m_group;
    FlowLayout* m_flow;
};

} // namespace soakbook::ui
