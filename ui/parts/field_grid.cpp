// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/field_grid.h"

#include "ui/parts/field.h"
#include "ui/parts/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int narrowest_column = 240;
constexpr int column_gap = 24;

} // namespace

FieldGrid::FieldGrid(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(column_gap);
    m_grid->setVerticalSpacing(16);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    setSizePolicy(policy);
}

void FieldGrid::add(const QString& label, Field* field, bool wide) {
    auto* cell = new QWidget(this);
    auto* column = new QVBoxLayout(cell);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* name = make_label(label, Type::small_strong, cell, true);
    name->setBuddy(field->editor());
    column->addWidget(name);
    column->addWidget(field);
    column->addStretch(1);
    m_cells.push_back({cell, field, wide, true});
    lay_out(m_columns);
}

void FieldGrid::add_wide(QWidget* widget) {
    m_cells.push_back({widget, widget, true, true});
    lay_out(m_columns);
}

void FieldGrid::set_shown(const QWidget* widget, bool shown) {
    for (Cell& cell : m_cells) {
        if (cell.content == widget && cell.shown != shown) {
            cell.shown = shown;
            lay_out(m_columns);
        }
    }
}

void FieldGrid::set_columns(int most) {
    m_most = std::clamp(most, 1, 2);
    lay_out(columns_at(width()));
}

QSize FieldGrid::minimumSizeHint() const {
    // As narrow as one column: where the form gets narrower the second column goes below the first.
    QSize least = QWidget::minimumSizeHint();
    int narrowest = 0;
    for (const Cell& cell : m_cells) {
        narrowest = cell.shown ? std::max(narrowest, cell.widget->minimumSizeHint().width()) : narrowest;
    }
    return {narrowest, least.height()};
}

void FieldGrid::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const int columns = columns_at(event->size().width());
    if (columns == m_columns) {
        return;
    }
    lay_out(columns);
    // Whatever stands around it was being laid out just now, and still goes by the height of the other columns.
    QTimer::singleShot(0, this, [this] {
        for (QWidget* around = this; around != nullptr && !around->isWindow(); around = around->parentWidget()) {
            if (around->layout() != nullptr) {
                around->layout()->invalidate();
            }
            around->updateGeometry();
        }
    });
}

int FieldGrid::columns_at(int width) const {
    return width >= 2 * scaled(narrowest_column) + column_gap ? m_most : 1;
}

void FieldGrid::lay_out(int columns) {
    m_columns = columns;
    for (const Cell& cell : m_cells) {
        m_grid->removeWidget(cell.widget);
    }
    int row = 0;
    int column = 0;
    for (const Cell& cell : m_cells) {
        cell.widget->setVisible(cell.shown);
        if (!cell.shown) {
            continue;
        }
        const bool whole = cell.wide || columns == 1;
        if (whole && column > 0) {
            ++row;
            column = 0;
        }
        m_grid->addWidget(cell.widget, row, column, 1, whole ? columns : 1);
        column = whole ? columns : column + 1;
        if (column >= columns) {
            ++row;
            column = 0;
        }
    }
    m_grid->setColumnStretch(0, 1);
    m_grid->setColumnStretch(1, columns == 2 ? 1 : 0);
    m_grid->setHorizontalSpacing(columns == 2 ? column_gap : 0);
    updateGeometry();
}

} // namespace soakbook::ui
