// SPDX-License-Identifier: GPL-3.0-or-later
// The ground of a page: a column with the page's margin that scrolls when it is tall; or a list at the left and the page at
// the right.
#pragma once

#include <QScrollArea>
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QSplitter;
class QVBoxLayout;

namespace soakbook::ui {

class PageScroll : public QScrollArea {
    Q_OBJECT

public:
    enum class Width { full, text };
    /// Width::text keeps the column within 1,000 px, for pages that are read.
    explicit PageScroll(Width width = Width::full, QWidget* parent = nullptr);
    QVBoxLayout* column() const { return m_column; }

private:
    QVBoxLayout* m_column;
};

/// Scrolls the page that a widget stands on until it is seen.
void bring_into_view(QWidget* widget);

/// A list at the left, 250 px wide at 100 % text, under a head with a title and one button; the page at the right.
class SplitPage : public QWidget {
    Q_OBJECT

public:
    /// An empty `button` leaves it out. The widgets become the page's own.
    SplitPage(const QString& title, const QString& button, QWidget* list, QWidget* page, QWidget* parent = nullptr);
    QPushButton* button() const { return m_button; }
    void set_page(QWidget* page);
    QWidget* page() const { return m_page; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void settle();
    QWidget* m_side;
    QHBoxLayout* m_head = nullptr;
    QPushButton* m_button = nullptr;
    QWidget* m_page;
    QHBoxLayout* m_row;
};

} // namespace soakbook::ui
