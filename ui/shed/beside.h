// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures and tables at the left, the form at the right; the form over the tables where there is no room for both.
#pragma once

#include <QWidget>

class QBoxLayout;
class QVBoxLayout;

namespace soakbook::ui {

class Beside : public QWidget {
    Q_OBJECT

public:
    explicit Beside(QWidget* parent = nullptr);
    QVBoxLayout* left() const { return m_left_column; }
    QVBoxLayout* right() const { return m_right_column; }
    /// Without the form the left side takes the whole width.
    void set_right_shown(bool shown);
    bool is_right_shown() const;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void arrange();

    QBoxLayout* m_row;
    QWidget* m_left;
    QWidget* m_right;
    QVBoxLayout* m_left_column;
    QVBoxLayout* m_right_column;
};

} // namespace soakbook::ui
