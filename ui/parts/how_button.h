// SPDX-License-Identifier: GPL-3.0-or-later
// "How?" beside a figure: a quiet panel under it with the formula, this case's numbers and the source. F3 opens and closes
// those nearest to the keyboard: of the form one types in, else of the card, else of the page. Esc closes.
#pragma once

#include <QPointer>
#include <QPushButton>

#include <vector>

class QFrame;
class QLabel;

namespace soakbook::work {
struct How;
}

namespace soakbook::ui {

class Habits;

class HowButton : public QPushButton {
    Q_OBJECT

public:
    /// Not seen until it has something to tell.
    explicit HowButton(QWidget* parent = nullptr);
    HowButton(const std::vector<work::How>& hows, const Habits& habits, QWidget* parent = nullptr);
    ~HowButton() override;

    /// What it tells, and that in the user's units; `of` is the hive or bag whose figures they are, where that could be
    /// one of several. An open panel stays open and tells the new.
    void set_hows(const std::vector<work::How>& hows, const Habits& habits, const QString& of = {});
    /// The same in words of one's own.
    void set_text(const QString& text);
    bool has_text() const;
    /// What the panel says, as plain words.
    QString plain_text() const { return m_plain; }

    /// Where the button's row stands in a column, the panel goes under that row by itself. To put it elsewhere, lay it out
    /// before it is opened.
    QFrame* panel() const;
    bool is_open() const { return isChecked(); }
    void set_open(bool open);

    enum class Toggled { nothing, opened, closed };
    /// As F3 with the keyboard at `from`.
    static Toggled toggle_nearest(QWidget* from);
    /// Gives back whether any was open.
    static bool close_nearest(QWidget* from);

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tell(const QString& text, const QString& plain, const QString& about);
    void show_panel(bool open);
    void place_panel();

    QPointer<QFrame> m_panel;
    QLabel* m_label;
    QString m_plain;
    QString m_about;
};

} // namespace soakbook::ui
