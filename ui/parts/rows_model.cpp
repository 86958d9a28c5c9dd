// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/rows_model.h"

#include "ui/parts/theme.h"

#include <QBrush>
#include <QDate>
#include <QHash>
#include <QSet>

#include <algorithm>
#include <numeric>

namespace soakbook::ui {

int RowsModelBase::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_order.size());
}

qint64 RowsModelBase::id_at(int row) const {
    return row >= 0 && row < rowCount() ? m_ids[m_order[static_cast<std::size_t>(row)]] : 0;
}

int RowsModelBase::row_of(qint64 id) const {
    const auto found = std::find_if(m_order.begin(), m_order.end(), [this, id](std::size_t at) { return m_ids[at] == id; });
    return found == m_order.end() ? -1 : static_cast<int>(found - m_order.begin());
}

void RowsModelBase::sort(int column, Qt::SortOrder order) {
    m_sort_column = column;
    m_sort_order = order;
    put_in_order(sorted());
}

std::vector<std::size_t> RowsModelBase::sorted() const {
    std::vector<std::size_t> order(m_ids.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    if (m_sort_column >= 0 && m_sort_column < columnCount()) {
        const bool down = m_sort_order == Qt::DescendingOrder;
        std::stable_sort(order.begin(), order.end(), [this, down](std::size_t a, std::size_t b) {
            return down ? is_less(b, a, m_sort_column) : is_less(a, b, m_sort_column);
        });
    }
    return order;
}

void RowsModelBase::put_in_order(const std::vector<std::size_t>& order) {
    if (order == m_order) {
        return;
    }
    Q_EMIT layoutAboutToBeChanged({}, QAbstractItemModel::VerticalSortHint);
    QHash<std::size_t, int> line_of;
    for (std::size_t line = 0; line < order.size(); ++line) {
        line_of.insert(order[line], static_cast<int>(line));
    }
    const QModelIndexList before = persistentIndexList();
    QModelIndexList after;
    after.reserve(before.size());
    for (const QModelIndex& index : before) {
        after << this->index(line_of.value(m_order[static_cast<std::size_t>(index.row())]), index.column());
    }
    m_order = order;
    changePersistentIndexList(before, after);
    Q_EMIT layoutChanged({}, QAbstractItemModel::VerticalSortHint);
}

void RowsModelBase::note_typed(qint64 row, int column, const QString& text) {
    std::erase_if(m_typed, [row, column](const TypedCell& cell) { return cell.row == row && cell.column == column; });
    m_typed.push_back({row, column, text});
}

void RowsModelBase::exchange_rows(std::vector<qint64> ids) {
    if (ids.empty()) {
        m_typed.clear();
    }
    QHash<qint64, std::size_t> new_place;
    for (std::size_t i = 0; i < ids.size(); ++i) {
        new_place.insert(ids[i], i);
    }
    // Whole runs of lines at once, from the end, so that the lines above keep their numbers.
    const auto stays = [&](int line) { return new_place.contains(id_at(line)); };
    for (int last = rowCount() - 1; last >= 0; --last) {
        if (stays(last)) {
            continue;
        }
        int first = last;
        while (first > 0 && !stays(first - 1)) {
            --first;
        }
        beginRemoveRows({}, first, last);
        m_order.erase(m_order.begin() + first, m_order.begin() + last + 1);
        endRemoveRows();
        last = first;
    }
    // The same lines, now pointing at the new rows.
    QSet<std::size_t> shown;
    for (std::size_t& at : m_order) {
        at = new_place.value(m_ids[at]);
        shown.insert(at);
    }
    take_next();
    m_ids = std::move(ids);
    const int kept = rowCount();
    if (m_ids.size() > m_order.size()) {
        beginInsertRows({}, kept, static_cast<int>(m_ids.size()) - 1);
        for (std::size_t i = 0; i < m_ids.size(); ++i) {
            if (!shown.contains(i)) {
                m_order.push_back(i);
            }
        }
        endInsertRows();
    }
    put_in_order(sorted());
    if (rowCount() > 0 && columnCount() > 0) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

bool sort_key_less(const QVariant& a, const QVariant& b) {
    const auto is_none = [](const QVariant& key) {
        return !key.isValid() || key.isNull() || (key.typeId() == QMetaType::QString && key.toString().isEmpty());
    };
    if (is_none(a) || is_none(b)) {
        return !is_none(a) && is_none(b);
    }
    if (a.typeId() == QMetaType::QString && b.typeId() == QMetaType::QString) {
        return QString::localeAwareCompare(a.toString(), b.toString()) < 0;
    }
    if (a.typeId() == QMetaType::QDate) {
        return a.toDate() < b.toDate();
    }
    if (a.typeId() == QMetaType::Double || b.typeId() == QMetaType::Double) {
        return a.toDouble() < b.toDouble();
    }
    return a.toLongLong() < b.toLongLong();
}

QVariant marked_background() {
    return QBrush(colours().accent_wash);
}

} // namespace soakbook::ui
