// SPDX-License-Identifier: GPL-3.0-or-later
// The live result of a form.
#pragma once

#include "ui/parts/state.h"

#include <QFrame>

#include <vector>

class QLabel;

namespace soakbook::work {
struct How;
}

namespace soakbook::ui {

class Habits;
class HowButton;

/// What a form says while it is typed: what follows, how that stands, what to do now, and how it was worked out.
class ResultCard : public QFrame {
    Q_OBJECT

public:
    explicit ResultCard(QWidget* parent = nullptr);
    /// What follows from what was typed; rich text.
    void set_text(const QString& rich_text);
    /// How that stands: shape and word, with the rest of the sentence after it.
    void set_verdict(State state, const QString& word, const QString& rest = {});
    void clear_verdict();
    /// What to do now.
    void set_next(const QString& text);
    /// The formula and its source, behind "How?".
    void set_how(const QString& text);
    /// The same, worded from the sums themselves: formula, this case's numbers, source. F3 opens and closes it.
    void set_how(const std::vector<work::How>& hows, const Habits& habits);
    void clear();
    /// All that stands there, as plain words.
    QString words() const;

private:
    void settle();
    QLabel* m_text;
    StateMark* m_mark;
    QLabel* m_rest;
    QLabel* m_next;
    HowButton* m_how;
};

} // namespace soakbook::ui
