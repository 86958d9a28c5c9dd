// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/flow_layout.h"

#include <QWidget>

#include <algorithm>

namespace soakbook::ui {

FlowLayout::FlowLayout(int gap_across, int gap_down, QWidget* parent)
    : QLayout(parent), m_gap_across(gap_across), m_gap_down(gap_down) {
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
    for (QLayoutItem* item : m_items) {
        delete item;
    }
}

void FlowLayout::addItem(QLayoutItem* item) {
    m_items.push_back(item);
}

int FlowLayout::count() const {
    return static_cast<int>(m_items.size());
}

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)] : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    QLayoutItem* item = itemAt(index);
    if (item != nullptr) {
        m_items.erase(m_items.begin() + index);
        invalidate();
    }
    return item;
}

int FlowLayout::heightForWidth(int width) const {
    return flow(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items) {
        size = size.expandedTo(item->minimumSize());
    }
    return size;
}

QSize FlowLayout::sizeHint() const {
    int width = 0;
    int height = 0;
    for (const QLayoutItem* item : m_items) {
        width += item->sizeHint().width() + (width > 0 ? m_gap_across : 0);
        height = std::max(height, item->sizeHint().height());
    }
    return {width, height};
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    flow(rect, true);
}

int FlowLayout::flow(const QRect& rect, bool place) const {
    int x = rect.left();
    int y = rect.top();
    int line_height = 0;
    std::vector<std::pair<QLayoutItem*, QRect>> line;
    const auto end_line = [&] {
        for (auto& [item, at] : line) {
            if (place) {
                at.moveTop(y + (line_height - at.height()) / 2);
                item->setGeometry(at);
            }
        }
        line.clear();
    };
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty()) {
            continue;
        }
        QSize size = item->sizeHint();
        size.setWidth(std::min(size.width(), std::max(rect.width(), item->minimumSize().width())));
        if (x > rect.left() && x + size.width() > rect.right() + 1) {
            end_line();
            y += line_height + m_gap_down;
            x = rect.left();
            line_height = 0;
        }
        line.emplace_back(item, QRect(QPoint(x, y), size));
        x += size.width() + m_gap_across;
        line_height = std::max(line_height, size.height());
    }
    end_line();
    return y + line_height - rect.top();
}

} // namespace soakbook::ui
