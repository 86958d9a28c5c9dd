// SPDX-License-Identifier: GPL-3.0-or-later
// The quiet surfaces a page is made of: cards, cautions, sentences of figures, the live result, an empty page, a notice.
#pragma once

#include "ui/parts/state.h"

#include <QFrame>

class QBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

/// A white card with a thin line; its head, if it has one, is a heading with quiet buttons at the right.
class Card : public QFrame {
    Q_OBJECT

public:
    explicit Card(const QString& heading = {}, QWidget* parent = nullptr);
    QVBoxLayout* column() const { return m_column; }
    void set_heading(const QString& heading);
    QPushButton* add_head_button(const QString& words, bool primary = false);
    void add_head_widget(QWidget* widget);
    /// A card around a table has no padding at its sides.
    void set_flush();

private:
    void make_head();
    QVBoxLayout* m_column;
    QWidget* m_head = nullptr;
    QLabel* m_heading = nullptr;
    QBoxLayout* m_head_row = nullptr;
};

/// What hurts people, said where it happens: a red rule and two lines, always there.
class Caution : public QFrame {
    Q_OBJECT

public:
    explicit Caution(const QString& text, QWidget* parent = nullptr);
    void set_text(const QString& text);

private:
    QLabel* m_text;
};

/// The page's figures as one sentence: parts beside each other, each plain, or with a state's shape before it. Figures are
/// given in bold as `<b>14</b> hives`.
class Sentence : public QWidget {
    Q_OBJECT

public:
    explicit Sentence(QWidget* parent = nullptr);
    void clear();
    void add(const QString& rich_text);
    void add(State state, const QString& text);
    /// A soft remark at the right end.
    void set_remark(const QString& text);

private:
    QBoxLayout* m_row;
    QLabel* m_remark;
};

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
    void clear();
    /// All that stands there, as plain words.
    QString words() const;

private:
    void settle();
    QLabel* m_text;
    StateMark* m_mark;
    QLabel* m_rest;
    QLabel* m_next;
    QPushButton* m_how_button;
    QLabel* m_how;
};

/// An empty page teaches: what will stand here, and the one button that starts it.
class EmptyPage : public QWidget {
    Q_OBJECT

public:
    EmptyPage(const QString& icon_name, const QString& title, const QString& text, const QString& button, QWidget* parent = nullptr);
    QPushButton* button() const { return m_button; }

Q_SIGNALS:
    void started();

protected:
    void changeEvent(QEvent* event) override;

private:
    QString m_icon_name;
    QLabel* m_icon;
    QPushButton* m_button;
};

/// One line of news with a button or two, such as a question that does not block anything.
class NoticeBar : public QFrame {
    Q_OBJECT

public:
    explicit NoticeBar(const QString& text, QWidget* parent = nullptr);
    void set_text(const QString& text);
    QPushButton* add_button(const QString& words, bool primary = false);
    /// A small cross that puts the notice away.
    void set_can_be_closed(bool can);

private:
    QLabel* m_text;
    QBoxLayout* m_buttons;
    QWidget* m_close = nullptr;
};

/// A thin line across.
QFrame* make_rule(QWidget* parent = nullptr);

} // namespace soakbook::ui
