// SPDX-License-Identifier: GPL-3.0-or-later
// The ground of a step: two columns beside each other, one over the other where there is no room for both, and what needs
// the whole width below them.
#pragma once

#include <QWidget>

class QBoxLayout;
class QVBoxLayout;

namespace soakbook::ui {

class Beside : public QWidget {
    Q_OBJECT

public:
    /// The right column has a width of its own, for 100 % text: a form's, or a caution's.
    static constexpr int form_width = 360;
    static constexpr int caution_width = 240;
    explicit Beside(int right_width, QWidget* parent = nullptr);

    QVBoxLayout* left() const { return m_left_column; }
    QVBoxLayout* right() const { return m_right_column; }
    QVBoxLayout* below() const { return m_below; }
    /// Without the right column the left one takes the whole width.
    void set_right_shown(bool shown);
    bool is_right_shown() const;
    void set_left_shown(bool shown);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void arrange();
    void settle_heights();

    int m_right_width;
    QBoxLayout* m_row;
    QWidget* m_left;
    QWidget* m_right;
    QVBoxLayout* m_left_column;
    QVBoxLayout* m_right_column;
    QVBoxLayout* m_below;
};

} // namespace soakbook::ui
