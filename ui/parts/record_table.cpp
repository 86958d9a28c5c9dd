// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/record_table.h"

#include "ui/parts/cell_delegate.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QSettings>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

namespace {

constexpr int narrowest_column = 48;
constexpr int first_guess = 120;
constexpr int header_height = 36;
constexpr int two_line_height = 54;
constexpr int most_grown = 260;   ///< a column grows to its text up to here
constexpr int most_measured = 400; ///< rows that are measured

QString widths_key(const QString& name) {
    const QString key = QStringLiteral("tables/") + QString(name).replace(QLatin1Char('/'), QLatin1Char('_'));
    return key;
}

} // namespace

RecordTable::RecordTable(const QString& name, const QString& spoken_name, QWidget* parent)
    : QTableView(parent), m_name(name) {
    setAccessibleName(spoken_name);
    setObjectName(name);
    setItemDelegate(new CellDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setShowGrid(false);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setWordWrap(false);
    setTabKeyNavigation(false);
    setCornerButtonEnabled(false);
    setSortingEnabled(true);
    verticalHeader()->hide();
    QHeaderView* header = horizontalHeader();
    header->setHighlightSections(false);
    header->setSectionsMovable(false);
    header->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    header->setMinimumSectionSize(narrowest_column);
    header->setSortIndicator(-1, Qt::AscendingOrder);
    header->setSortIndicatorShown(true);
    connect(header, &QHeaderView::sectionResized, this, [this](int column, int before, int width) {
        // Columns that are hidden and shown say so with a width of nothing.
        if (!m_laying && column != m_stretched && before > 0 && width > 0) {
            m_widths[static_cast<std::size_t>(column)] = width * 100 / text_percent();
            m_dragged[static_cast<std::size_t>(column)] = true;
            remember_widths();
            QTimer::singleShot(0, this, &RecordTable::lay_widths);
        }
    });
    connect(this, &QAbstractItemView::doubleClicked, this, [this](const QModelIndex& index) {
        if (index.isValid() && m_rows != nullptr && !index.flags().testFlag(Qt::ItemIsEditable)) {
            Q_EMIT opened(m_rows->id_at(index.row()));
        }
    });
    set_heights();
}

void RecordTable::set_rows_model(RowsModelBase* model) {
    m_rows = model;
    setModel(model);
    m_widths.assign(static_cast<std::size_t>(model->columnCount()), first_guess);
    m_dragged.assign(m_widths.size(), false);
    m_content.clear();
    set_start_widths(m_start_widths);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) { Q_EMIT current_changed(current.isValid() ? m_rows->id_at(current.row()) : 0); });
    connect(selectionModel(), &QItemSelectionModel::selectionChanged, this, &RecordTable::chosen_changed);
    for (const auto signal : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved}) {
        connect(model, signal, this, [this] {
            updateGeometry();
            viewport()->update();
            lay_widths_soon();
        });
    }
    connect(model, &QAbstractItemModel::dataChanged, this, &RecordTable::lay_widths_soon);
}

void RecordTable::set_empty_text(const QString& text) {
    m_empty_text = text;
    viewport()->update();
}

void RecordTable::set_stretched_column(int column) {
    m_stretched = column;
    lay_widths();
}

void RecordTable::set_start_widths(const std::vector<int>& widths) {
    m_start_widths = widths;
    for (std::size_t i = 0; i < std::min(widths.size(), m_widths.size()); ++i) {
        m_widths[i] = widths[i];
    }
    const QVariantList kept = QSettings().value(widths_key(m_name)).toList();
    if (static_cast<std::size_t>(kept.size()) == m_widths.size()) {
        for (std::size_t i = 0; i < m_widths.size(); ++i) {
            const int width = std::min(kept[static_cast<qsizetype>(i)].toInt(), 2000);
            if (width <= narrowest_column) {
                continue;
            }
            m_dragged[i] = width != m_widths[i];
            m_widths[i] = width;
        }
    }
    lay_widths();
}

void RecordTable::set_spared_columns(std::vector<int> columns) {
    m_spared = std::move(columns);
    lay_widths();
}

void RecordTable::set_two_lines(bool two) {
    m_two_lines = two;
    set_heights();
}

void RecordTable::set_many_can_be_chosen(bool many) {
    setSelectionMode(many ? QAbstractItemView::ExtendedSelection : QAbstractItemView::SingleSelection);
}

void RecordTable::set_full_height(bool full) {
    m_full_height = full;
    setVerticalScrollBarPolicy(full ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    setSizePolicy(QSizePolicy::Expanding, full ? QSizePolicy::Fixed : QSizePolicy::Expanding);
    updateGeometry();
}

qint64 RecordTable::current_id() const {
    return m_rows != nullptr && currentIndex().isValid() ? m_rows->id_at(currentIndex().row()) : 0;
}

std::vector<qint64> RecordTable::chosen_ids() const {
    std::vector<int> lines;
    for (const QModelIndex& index : selectionModel() != nullptr ? selectionModel()->selectedRows() : QModelIndexList()) {
        lines.push_back(index.row());
    }
    std::sort(lines.begin(), lines.end());
    std::vector<qint64> ids;
    for (const int line : lines) {
        ids.push_back(m_rows->id_at(line));
    }
    return ids;
}

void RecordTable::choose(qint64 id) {
    if (!choose_rows({id}) && selectionModel() != nullptr) {
        selectionModel()->setCurrentIndex({}, QItemSelectionModel::Clear);
    }
}

bool RecordTable::choose_rows(const std::vector<qint64>& ids) {
    QItemSelection rows;
    QModelIndex first;
    for (const qint64 id : ids) {
        const int line = m_rows != nullptr ? m_rows->row_of(id) : -1;
        if (line < 0) {
            continue;
        }
        const QModelIndex index = m_rows->index(line, std::max(0, currentIndex().column()));
        first = first.isValid() ? first : index;
        rows.select(index, index);
    }
    if (!first.isValid()) {
        return false;
    }
    // The view's own setCurrentIndex() would toggle the row while Ctrl is held, as it is after Ctrl+Enter.
    selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
    selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    scrollTo(first);
    return true;
}

QWidget* RecordTable::refused_cell() const {
    for (QWidget* editor : viewport()->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (editor->isVisible() && editor->property("wrong").toBool()) {
            return editor;
        }
    }
    return nullptr;
}

QSize RecordTable::sizeHint() const {
    const int header = horizontalHeader()->isHidden() ? 0 : scaled(header_height);
    const int rows = m_rows != nullptr ? m_rows->rowCount() : 0;
    const int lines = m_full_height ? std::max(rows, m_empty_text.isEmpty() ? 0 : 1) : 6;
    return {scaled(400), header + lines * verticalHeader()->defaultSectionSize() + 2};
}

QSize RecordTable::minimumSizeHint() const {
    return {scaled(200), m_full_height ? sizeHint().height() : scaled(3 * row_height)};
}

void RecordTable::keyPressEvent(QKeyEvent* event) {
    const bool is_enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (is_enter && !event->modifiers().testFlag(Qt::ControlModifier) && state() != QAbstractItemView::EditingState) {
        const QModelIndex here = currentIndex();
        if (here.isValid() && here.flags().testFlag(Qt::ItemIsEditable)) {
            edit_below(here.row(), here.column());
        } else if (here.isValid() && !event->isAutoRepeat()) {
            Q_EMIT opened(current_id());
        }
        return;
    }
    QTableView::keyPressEvent(event);
}

void RecordTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const QModelIndex here = currentIndex();
    // Text that was not taken is kept, in its cell, until it is mended or given up with Esc.
    if (editor->property("wrong").toBool() && hint != QAbstractItemDelegate::RevertModelCache) {
        return;
    }
    const bool by_enter = hint == QAbstractItemDelegate::SubmitModelCache;
    QTableView::closeEditor(editor, by_enter ? QAbstractItemDelegate::NoHint : hint);
    if (by_enter && here.isValid()) {
        edit_below(here.row(), here.column());
    }
}

void RecordTable::edit_below(int row, int column) {
    for (int below = row + 1; below < model()->rowCount(); ++below) {
        const QModelIndex next = model()->index(below, column);
        if (next.flags().testFlag(Qt::ItemIsEditable)) {
            setCurrentIndex(next);
            return;
        }
    }
}

void RecordTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (!currentIndex().isValid() && model() != nullptr && model()->rowCount() > 0 && event->reason() != Qt::MouseFocusReason) {
        setCurrentIndex(model()->index(0, 0));
    }
}

void RecordTable::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    if (m_empty_text.isEmpty() || (m_rows != nullptr && m_rows->rowCount() > 0)) {
        return;
    }
    QPainter painter(viewport());
    painter.setPen(colours().soft_ink);
    painter.drawText(viewport()->rect().adjusted(scaled(12), scaled(8), -scaled(12), -scaled(8)),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, m_empty_text);
}

void RecordTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        m_content.clear();
        set_heights();
        lay_widths();
    }
}

void RecordTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    lay_widths();
}

void RecordTable::showEvent(QShowEvent* event) {
    QTableView::showEvent(event);
    lay_widths();
}

void RecordTable::set_heights() {
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    const int height = scaled(m_two_lines ? two_line_height : row_height);
    verticalHeader()->setMinimumSectionSize(height);
    verticalHeader()->setDefaultSectionSize(height);
    horizontalHeader()->setFixedHeight(scaled(header_height));
    updateGeometry();
}

void RecordTable::lay_widths_soon() {
    m_content.clear();
    if (!m_lay_soon) {
        m_lay_soon = true;
        QTimer::singleShot(0, this, [this] {
            m_lay_soon = false;
            lay_widths();
        });
    }
}

void RecordTable::measure() {
    m_content.clear();
    const QStyleOptionViewItem option;
    const int rows = m_rows->rowCount();
    const int step = 1 + rows / most_measured;
    for (int column = 0; column < static_cast<int>(m_widths.size()); ++column) {
        const QString head = model()->headerData(column, Qt::Horizontal).toString();
        // The header's own hint keeps room for an arrow that only the sorted column shows.
        const bool sorted = column == horizontalHeader()->sortIndicatorSection();
        int wanted = sorted ? horizontalHeader()->sectionSizeHint(column)
                            : QFontMetrics(type_font(Type::small)).horizontalAdvance(head) + scaled(30);
        for (int row = 0; row < rows; row += step) {
            wanted = std::max(wanted, itemDelegate()->sizeHint(option, m_rows->index(row, column)).width());
        }
        m_content.push_back(wanted);
    }
}

/// The widths of the columns when they share that room. Columns that cannot be kept are hidden.
std::vector<int> RecordTable::fitted(int room) {
    const std::size_t count = m_widths.size();
    std::size_t stretched = m_stretched >= 0 ? static_cast<std::size_t>(m_stretched) : count - 1;
    std::vector<bool> gone(count);
    std::vector<int> start(count);
    std::vector<int> wanted(count);
    for (std::size_t i = 0; i < count; ++i) {
        gone[i] = isColumnHidden(static_cast<int>(i));
        start[i] = scaled(m_widths[i]);
        const int most = i == stretched ? start[i] : std::max(start[i], scaled(most_grown));
        wanted[i] = m_dragged[i] ? start[i] : std::min(m_content[i], most);
    }
    const auto together = [&gone, count](const std::vector<int>& widths) {
        int sum = 0;
        for (std::size_t i = 0; i < count; ++i) {
            sum += gone[i] ? 0 : widths[i];
        }
        return sum;
    };
    for (const int column : m_spared) {
        gone[static_cast<std::size_t>(column)] = false;
    }
    for (const int column : m_spared) {
        gone[static_cast<std::size_t>(column)] = together(wanted) > room;
        if (isColumnHidden(column) != gone[static_cast<std::size_t>(column)]) {
            setColumnHidden(column, !isColumnHidden(column));
        }
    }
    while (gone[stretched] && stretched > 0) {
        --stretched;
    }
    std::vector<int> widths = wanted;
    if (together(wanted) > room) {
        for (std::size_t i = 0; i < count; ++i) {
            widths[i] = std::min(start[i], wanted[i]);
        }
    }
    int left = std::max(0, room - together(widths));
    const auto grow = [&](std::size_t i, int to) {
        const int more = gone[i] ? 0 : std::clamp(to - widths[i], 0, left);
        widths[i] += more;
        left -= more;
    };
    // First to what stands there, then to the widths that were set.
    for (std::size_t i = 0; i < count; ++i) {
        grow(i, wanted[i]);
    }
    grow(stretched, m_content[stretched]);
    for (std::size_t i = 0; i < count; ++i) {
        grow(i, start[i]);
    }
    widths[stretched] += left;
    return widths;
}

void RecordTable::lay_widths() {
    if (m_rows == nullptr || m_widths.empty() || m_laying) {
        return;
    }
    m_laying = true;
    if (m_content.size() != m_widths.size()) {
        measure();
    }
    const std::vector<int> widths = fitted(viewport()->width());
    for (std::size_t column = 0; column < widths.size(); ++column) {
        setColumnWidth(static_cast<int>(column), widths[column]);
    }
    m_laying = false;
}

void RecordTable::remember_widths() {
    QVariantList kept;
    for (const int width : m_widths) {
        kept << width;
    }
    QSettings().setValue(widths_key(m_name), kept);
}

} // namespace soakbook::ui
