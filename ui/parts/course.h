// SPDX-License-Identifier: GPL-3.0-or-later
// The course of a batch, top to bottom: numbered steps on a line, each a card that folds to one sentence when it is done.
#pragma once

#include <QFrame>
#include <QWidget>

#include <vector>

class QBoxLayout;
class QLabel;
class QPropertyAnimation;
class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

/// One step: its circle is filled once it is begun.
class Step : public QWidget {
    Q_OBJECT

public:
    enum class Stage { to_come, going_on, done };

    Step(int number, const QString& name, QWidget* parent = nullptr);
    /// The one sentence that stands in the head, folded or not.
    void set_summary(const QString& text);
    void set_stage(Stage stage);
    Stage stage() const { return m_stage; }
    /// What stands in the card while it is open. Exchanging it deletes the old one.
    void set_body(QWidget* body);
    QWidget* body() const { return m_body; }
    /// A step without a body does not open.
    void set_open(bool open, bool at_once = false);
    bool is_open() const { return m_open; }
    const QString& name() const { return m_name; }
    /// The height of the circle's middle, where the line runs through.
    int circle_middle() const;

Q_SIGNALS:
    void open_changed(bool open);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    friend class StepCourse;
    void settle_margins();
    void name_aloud();

    int m_number;
    QString m_name;
    Stage m_stage = Stage::to_come;
    QFrame* m_card;
    QPushButton* m_head;
    QLabel* m_title;
    QLabel* m_summary;
    QWidget* m_fold;
    QVBoxLayout* m_fold_column;
    QWidget* m_body = nullptr;
    QPropertyAnimation* m_motion;
    bool m_open = false;
    bool m_first = true;
    bool m_last = true;
};

class StepCourse : public QWidget {
    Q_OBJECT

public:
    explicit StepCourse(QWidget* parent = nullptr);
    Step* add_step(const QString& name);
    Step* step(int number) const { return m_steps.at(static_cast<std::size_t>(number - 1)); }
    const std::vector<Step*>& steps() const { return m_steps; }

private:
    QVBoxLayout* m_column;
    std::vector<Step*> m_steps;
};

} // namespace soakbook::ui
