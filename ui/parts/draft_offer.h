// SPDX-License-Identifier: GPL-3.0-or-later
// Over the fields of a form: what was typed here before and not entered, to be taken up or thrown away.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace soakbook::ui {

struct Draft;
class Habits;

class DraftOffer : public QFrame {
    Q_OBJECT

public:
    explicit DraftOffer(QWidget* parent = nullptr);
    /// Offers it: when it was typed, and the beginning of what.
    void offer(const Draft& draft, const Habits& habits);
    /// Says which of what was typed found no field any more; it can only be put away.
    void tell_left(const QString& words);
    bool is_offering() const;
    /// Puts the keyboard on the button that takes it up.
    void take_focus();
    QPushButton* take_up() const { return m_take_up; }
    QPushButton* throw_away() const { return m_throw_away; }

Q_SIGNALS:
    void taken_up();
    void thrown_away();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLabel* m_words;
    QLabel* m_typed;
    QPushButton* m_take_up;
    QPushButton* m_throw_away;
    bool m_offering = false;
};

} // namespace soakbook::ui
