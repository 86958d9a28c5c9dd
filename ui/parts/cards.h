// SPDX-License-Identifier: GPL-3.0-or-later
// The quiet surfaces a page is made of: cards, cautions, sentences of figures, an empty page, a notice.
#pragma once

#include "ui/parts/state.h"

#include <QFrame>

class QBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace soakbook::ui {

class FlowLayout;

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
    FlowLayout* m_parts;
    QLabel* m_remark;
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
    void settle();
    QString m_icon_name;
    QLabel* m_icon;
    QWidget* m_middle = nullptr;
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
