// SPDX-License-Identifier: GPL-3.0-or-later
// The head over every page: its title, Find, undo and redo by name, and the page's own quiet buttons.
#pragma once

#include <QAction>
#include <QList>
#include <QWidget>

class QHBoxLayout;
class QPushButton;

namespace soakbook::ui {

class FindBox;
class TitleLine;

class Head : public QWidget {
    Q_OBJECT

public:
    explicit Head(QWidget* parent = nullptr);
    void set_title(const QString& title);
    void set_actions(const QList<QAction*>& actions);
    /// The names of what undo and redo would do; empty where there is nothing.
    void set_undo(const QString& undo_name, const QString& redo_name);
    FindBox* find() const { return m_find; }

Q_SIGNALS:
    void undo_wanted();
    void redo_wanted();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void settle();
    void make_room();
    QPushButton* add_action(QAction* action);

    TitleLine* m_title;
    FindBox* m_find;
    QPushButton* m_undo;
    QPushButton* m_redo;
    QString m_undo_name;
    QString m_redo_name;
    QHBoxLayout* m_row;
    QList<QPushButton*> m_actions;
};

} // namespace soakbook::ui
