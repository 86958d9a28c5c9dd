// SPDX-License-Identifier: GPL-3.0-or-later
// A table with what belongs to it at the left, the card of the chosen row at the right, scrolling by itself; the card
// below, at its full height, where there is no room for both.
#pragma once

#include <QWidget>

class QBoxLayout;
class QScrollArea;
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
    /// A card that holds other things now may need another height.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void arrange();

    QBoxLayout* m_row;
    QVBoxLayout* m_left;
    QWidget* m_card;
    QScrollArea* m_scroll;
};

} // namespace soakbook::ui
