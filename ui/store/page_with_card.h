// SPDX-License-Identifier: GPL-3.0-or-later
// A table with what belongs to it at the left, the card of the chosen row at the right; the card below where there is no
// room for both.
#pragma once

#include <QWidget>

class QBoxLayout;
class QVBoxLayout;

namespace soakbook::ui {

class PageWithCard : public QWidget {
    Q_OBJECT

public:
    explicit PageWithCard(QWidget* card, QWidget* parent = nullptr);
    QVBoxLayout* left() const { return m_left; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void arrange();

    QBoxLayout* m_row;
    QVBoxLayout* m_left;
    QWidget* m_card;
};

} // namespace soakbook::ui
