// SPDX-License-Identifier: GPL-3.0-or-later
// A table's rows as plain structs: a page gives a list of columns and then rows, again and again; rows are told apart by
// their id, so that what was chosen stays chosen and the table does not jump.
#pragma once

#include "ui/parts/state.h"

#include <QAbstractTableModel>
#include <QVariant>

#include <functional>
#include <optional>
#include <utility>
#include <vector>

namespace soakbook::ui {

/// What the delegate asks a cell for, beside the usual roles.
enum RowRole : int {
    row_id_role = Qt::UserRole + 1,
    state_role,  ///< int of a State, where the cell has one
    type_role,   ///< how the text is set: CellType
    sort_role,
    below_role,  ///< what stands small under the text, where the cell has it
};
/// A note wraps over two lines.
enum class CellType { plain, strong, soft, code, note };

/// A text that was typed into a cell and is not entered yet.
struct TypedCell {
    qint64 row = 0; ///< the row's id
    int column = 0;
    QString text;
};

/// The part of the rows model that knows nothing of the row's type.
class RowsModelBase : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    void sort(int column, Qt::SortOrder order) override;
    qint64 id_at(int row) const;
    /// The row with that id, or -1.
    int row_of(qint64 id) const;
    int sorted_column() const { return m_sort_column; }
    Qt::SortOrder sort_order() const { return m_sort_order; }
    /// What was typed since the rows were last taken away, each cell once, in the order of typing.
    const std::vector<TypedCell>& typed_cells() const { return m_typed; }

protected:
    /// The order of the rows shown: indexes into the rows as given.
    const std::vector<std::size_t>& order() const { return m_order; }
    /// Exchanges the rows for those that take_next() will put there, whose ids these are; tells the views what went, came
    /// and moved.
    void exchange_rows(std::vector<qint64> ids);
    /// Whether the row given as `a` stands before the one given as `b` in that column.
    virtual bool is_less(std::size_t a, std::size_t b, int column) const = 0;
    void note_typed(qint64 row, int column, const QString& text);
    /// Puts the new rows in place of the old.
    virtual void take_next() = 0;

private:
    std::vector<std::size_t> sorted() const;
    void put_in_order(const std::vector<std::size_t>& order);

    std::vector<qint64> m_ids;
    std::vector<TypedCell> m_typed;
    std::vector<std::size_t> m_order;
    int m_sort_column = -1;
    Qt::SortOrder m_sort_order = Qt::AscendingOrder;
};

/// Compares two sort keys: numbers as numbers, days as days, words as this language orders them; what is not there last.
bool sort_key_less(const QVariant& a, const QVariant& b);

/// One column of a RowsModel.
template <class Row> struct Column {
    QString header = {};
    std::function<QString(const Row&)> text = {};
    Qt::Alignment align = Qt::AlignLeft;
    CellType type = CellType::plain;
    /// What the column is sorted by; without it, by its text.
    std::function<QVariant(const Row&)> sort_key = {};
    /// The shape before the word, in its colour.
    std::function<std::optional<State>(const Row&)> state = {};
    std::function<QString(const Row&)> tip = {};
    /// Takes what was typed into the cell; gives back false to keep the editor open. Without it the column is only read.
    std::function<bool(Row&, const QString&)> write = {};
    /// What is typed goes into the workbook at once: it is never a draft.
    bool at_once = false;
    /// Whether this row's cell may be typed into, where the column may be.
    std::function<bool(const Row&)> can_write = {};
    /// Whether the cell stands out because it was changed from what was planned.
    std::function<bool(const Row&)> marked = {};
    /// What stands small under the text, in a table of two lines a row.
    std::function<QString(const Row&)> below = {};
};

/// Qt::BackgroundRole answers for marked cells; the colour follows the theme.
QVariant marked_background();

template <class Row> class RowsModel : public RowsModelBase {
public:
    using IdOf = std::function<qint64(const Row&)>;

    RowsModel(std::vector<Column<Row>> columns, IdOf id_of, QObject* parent = nullptr)
        : RowsModelBase(parent), m_columns(std::move(columns)), m_id_of(std::move(id_of)) {}

    /// Shows these rows instead; those whose id stays keep their selection.
    void set_rows(std::vector<Row> rows) {
        std::vector<qint64> ids;
        ids.reserve(rows.size());
        for (const Row& row : rows) {
            ids.push_back(m_id_of(row));
        }
        m_next = std::move(rows);
        exchange_rows(std::move(ids));
    }
    /// The rows in the order in which they were given.
    const std::vector<Row>& rows() const { return m_rows; }
    /// The row shown at that line of the table.
    const Row& row_at(int line) const { return m_rows.at(order().at(static_cast<std::size_t>(line))); }
    const Row* find(qint64 id) const {
        const int line = row_of(id);
        return line < 0 ? nullptr : &row_at(line);
    }

    int columnCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
    }

    QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
        if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) {
            return {};
        }
        if (role == Qt::DisplayRole) {
            return column(section).header;
        }
        return role == Qt::TextAlignmentRole ? QVariant(static_cast<int>(column(section).align | Qt::AlignVCenter)) : QVariant();
    }

    QVariant data(const QModelIndex& index, int role) const override {
        if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
            return {};
        }
        const Row& row = row_at(index.row());
        const Column<Row>& c = column(index.column());
        switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            return c.text ? c.text(row) : QString();
        case Qt::TextAlignmentRole:
            return static_cast<int>(c.align | Qt::AlignVCenter);
        case Qt::ToolTipRole:
            return c.tip ? QVariant(c.tip(row)) : QVariant();
        case Qt::BackgroundRole:
            return c.marked && c.marked(row) ? marked_background() : QVariant();
        case Qt::AccessibleTextRole:
            return spoken(row, c);
        case row_id_role:
            return m_id_of(row);
        case type_role:
            return static_cast<int>(c.type);
        case state_role: {
            const std::optional<State> state = c.state ? c.state(row) : std::nullopt;
            return state ? QVariant(static_cast<int>(*state)) : QVariant();
        }
        case below_role:
            return c.below ? QVariant(c.below(row)) : QVariant();
        case sort_role:
            return sort_key(row, c);
        default:
            return {};
        }
    }

    Qt::ItemFlags flags(const QModelIndex& index) const override {
        Qt::ItemFlags flags = QAbstractTableModel::flags(index);
        if (index.isValid()) {
            const Column<Row>& c = column(index.column());
            if (c.write && (!c.can_write || c.can_write(row_at(index.row())))) {
                flags |= Qt::ItemIsEditable;
            }
        }
        return flags;
    }

    bool setData(const QModelIndex& index, const QVariant& value, int role) override {
        if (role != Qt::EditRole || !index.isValid() || !flags(index).testFlag(Qt::ItemIsEditable)) {
            return false;
        }
        Row& row = m_rows.at(order().at(static_cast<std::size_t>(index.row())));
        const qint64 id = m_id_of(row);
        if (!column(index.column()).at_once) {
            // Before it is written: whoever is told of the typing asks what was typed.
            note_typed(id, index.column(), value.toString());
        }
        if (!column(index.column()).write(row, value.toString())) {
            return false;
        }
        Q_EMIT dataChanged(this->index(index.row(), 0), this->index(index.row(), columnCount() - 1));
        return true;
    }

protected:
    bool is_less(std::size_t a, std::size_t b, int at) const override {
        return sort_key_less(sort_key(m_rows[a], column(at)), sort_key(m_rows[b], column(at)));
    }
    void take_next() override { m_rows = std::move(m_next); }

private:
    const Column<Row>& column(int at) const { return m_columns.at(static_cast<std::size_t>(at)); }
    /// The text with what stands small under it.
    static QString spoken(const Row& row, const Column<Row>& c) {
        const QString text = c.text ? c.text(row) : QString();
        const QString below = c.below ? c.below(row) : QString();
        return text.isEmpty() || below.isEmpty() ? QString(text + below) : QString(text + QStringLiteral(", ") + below);
    }
    static QVariant sort_key(const Row& row, const Column<Row>& c) {
        return c.sort_key ? c.sort_key(row) : QVariant(c.text ? c.text(row) : QString());
    }

    std::vector<Column<Row>> m_columns;
    IdOf m_id_of;
    std::vector<Row> m_rows;
    std::vector<Row> m_next;
};

} // namespace soakbook::ui
