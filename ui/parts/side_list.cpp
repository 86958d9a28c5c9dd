// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/side_list.h"

#include "ui/parts/theme.h"

#include <QAbstractItemView>
#include <QAbstractListModel>
#include <QEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QStyledItemDelegate>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

class SideModel : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_items.size());
    }

    QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)) {
            return {};
        }
        const SideItem& item = at(index.row());
        QStringList words{item.code, item.head, item.below, state_text(item)};
        words.removeAll(QString());
        return words.join(QStringLiteral(", "));
    }

    void set_items(std::vector<SideItem> items) {
        beginResetModel();
        m_items = std::move(items);
        forget_measured();
        endResetModel();
    }

    /// What was measured over all rows for a width, until rows or letters change.
    template <class F> bool measured(int width, F&& measure) const {
        if (m_width != width) {
            m_fits_not = measure();
            m_width = width;
        }
        return m_fits_not;
    }
    void forget_measured() { m_width = -1; }

    const SideItem& at(int row) const { return m_items.at(static_cast<std::size_t>(row)); }

    int row_of(qint64 id) const {
        const auto found = std::find_if(m_items.begin(), m_items.end(), [id](const SideItem& i) { return i.id == id; });
        return found == m_items.end() ? -1 : static_cast<int>(found - m_items.begin());
    }

    static QString state_text(const SideItem& item) {
        if (!item.state) {
            return {};
        }
        return item.state_word.isEmpty() ? state_word(*item.state) : item.state_word;
    }

private:
    std::vector<SideItem> m_items;
    mutable int m_width = -1;
    mutable bool m_fits_not = false;
};

namespace {

class SideDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const bool three =
            index.isValid() && state_below(*static_cast<const SideModel*>(index.model()), width_of(option));
        const int lines = upper_height() + lower_height() * (three ? 2 : 1);
        return {scaled(200), lines + scaled(three ? 22 : 18)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const SideModel& items = *static_cast<const SideModel*>(index.model());
        const SideItem& item = items.at(index.row());
        const Colours& c = colours();
        painter->save();
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        painter->fillRect(option.rect, chosen                                           ? c.accent_wash
                                       : option.state.testFlag(QStyle::State_MouseOver) ? c.paper
                                                                                        : c.card);
        painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), c.line);
        QRect room = option.rect.adjusted(scaled(16), scaled(8), -scaled(16), -scaled(8));
        int right = room.right();
        if (item.state && state_below(items, option.rect.width())) {
            paint_state_and_word(*painter,
                                 QRect(room.left(), room.bottom() - lower_height(), room.width(), lower_height()),
                                 *item.state, SideModel::state_text(item), Qt::AlignLeft);
            room.setBottom(room.bottom() - lower_height() - scaled(4));
        } else if (item.state) {
            const QString word = SideModel::state_text(item);
            const int width = std::min(width_of_state_and_word(word), room.width());
            const int height = item.below.isEmpty() ? room.height() : upper_height();
            paint_state_and_word(*painter, QRect(right - width, room.top(), width + 1, height), *item.state, word,
                                 Qt::AlignRight);
            right -= width + scaled(8);
        }
        const int upper = item.below.isEmpty() ? room.height() : upper_height();
        int left = room.left();
        painter->setPen(c.ink);
        if (!item.code.isEmpty()) {
            painter->setFont(type_font(Type::code_strong));
            left += write(*painter, QRect(left, room.top(), right - left, upper), item.code);
            if (!item.head.isEmpty()) {
                painter->setFont(type_font(Type::body));
                left += write(*painter, QRect(left, room.top(), right - left, upper), separator());
            }
        }
        painter->setFont(head_font(item));
        write(*painter, QRect(left, room.top(), right - left, upper), item.head);
        if (!item.below.isEmpty()) {
            painter->setFont(type_font(Type::small));
            painter->setPen(c.soft_ink);
            write(*painter, QRect(room.left(), room.top() + upper + 2, room.width(), room.height() - upper - 2),
                  item.below);
        }
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setPen(QPen(c.accent, 2));
            painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
        }
        painter->restore();
    }

private:
    static int upper_height() { return QFontMetrics(type_font(Type::body)).height(); }
    static int lower_height() { return QFontMetrics(type_font(Type::small)).height(); }
    static QString separator() { return QStringLiteral(" · "); }
    static QFont head_font(const SideItem& item) { return type_font(item.code.isEmpty() ? Type::strong : Type::body); }

    /// The width that the list gives a row; a size is asked for before a row has any.
    static int width_of(const QStyleOptionViewItem& option) {
        const auto* list = qobject_cast<const QAbstractItemView*>(option.widget);
        return list != nullptr ? list->viewport()->width() : option.rect.width();
    }

    /// Whether one state stands too wide beside its head; then all rows have a third line for it.
    static bool state_below(const SideModel& items, int width) {
        return items.measured(width, [&] { return one_is_too_wide(items, width); });
    }

    static bool one_is_too_wide(const SideModel& items, int width) {
        const int room = width - 2 * scaled(16);
        for (int row = 0; row < items.rowCount(); ++row) {
            const SideItem& item = items.at(row);
            if (!item.state)
                continue;
            int wanted = QFontMetrics(head_font(item)).horizontalAdvance(item.head) + scaled(8) +
                         width_of_state_and_word(SideModel::state_text(item));
            if (!item.code.isEmpty())
                wanted += QFontMetrics(type_font(Type::code_strong)).horizontalAdvance(item.code) +
                          QFontMetrics(type_font(Type::body)).horizontalAdvance(separator());
            if (wanted > room)
                return true;
        }
        return false;
    }

    static int write(QPainter& painter, const QRect& rect, const QString& text) {
        const QString shown = painter.fontMetrics().elidedText(text, Qt::ElideRight, std::max(0, rect.width()));
        painter.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown);
        return painter.fontMetrics().horizontalAdvance(shown);
    }
};

} // namespace

SideList::SideList(const QString& spoken_name, QWidget* parent) : QListView(parent), m_items(new SideModel(this)) {
    setModel(m_items);
    setItemDelegate(new SideDelegate(this));
    setAccessibleName(spoken_name);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setMouseTracking(true);
    setUniformItemSizes(true);
}

void SideList::set_items(std::vector<SideItem> items) {
    const qint64 kept = current_id();
    const int scrolled = verticalScrollBar()->value();
    m_quiet = true;
    m_items->set_items(std::move(items));
    choose(kept);
    verticalScrollBar()->setValue(scrolled);
    m_quiet = false;
}

qint64 SideList::current_id() const {
    return currentIndex().isValid() ? m_items->at(currentIndex().row()).id : 0;
}

void SideList::choose(qint64 id) {
    const bool was_quiet = std::exchange(m_quiet, true);
    const int row = m_items->row_of(id);
    setCurrentIndex(row < 0 ? QModelIndex() : m_items->index(row));
    m_quiet = was_quiet;
}

int SideList::size() const {
    return m_items->rowCount();
}

void SideList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    if (!m_quiet && current.isValid()) {
        Q_EMIT chosen(m_items->at(current.row()).id);
    }
}

void SideList::keyPressEvent(QKeyEvent* event) {
    const bool is_enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (is_enter && !event->modifiers().testFlag(Qt::ControlModifier) && currentIndex().isValid()) {
        Q_EMIT entered_page(current_id());
        return;
    }
    QListView::keyPressEvent(event);
}

void SideList::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        m_items->forget_measured();
        scheduleDelayedItemsLayout();
    }
}

} // namespace soakbook::ui
