// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/salvage.h"

#include "core/book/history_triggers.h"
#include "core/book/history_left.h"
#include "core/book/row_image.h"

#include <QFileInfo>

#include <algorithm>

namespace soakbook::book {

/// The place that is believed for a record.
struct SettledRow {
    StoredAt at;
    Sure sure{};
    bool in_history = false; ///< `at` is a change that tells the row
};

namespace {

std::optional<StoredRow> row_of_image(const QStringList& columns, const QByteArray& image) {
    const Cells cells = read_cells(QString::fromUtf8(image));
    StoredRow row;
    row.id = cell(cells, QStringLiteral("id")).toLongLong();
    for (const QString& column : columns) {
        if (!cells.count(column))
            return std::nullopt;
        const QVariant value = cell(cells, column);
        StoredCell stored;
        if (value.isValid() && column != columns.first()) {
            stored.kind = value.typeId() == QMetaType::LongLong ? 'i' : value.typeId() == QMetaType::QString ? 's' : 'b';
            stored.number = stored.kind == 'i' ? value.toLongLong() : 0;
            stored.bytes = stored.kind == 's' ? value.toString().toUtf8() : stored.kind == 'b' ? value.toByteArray() : QByteArray();
        }
        row.cells.push_back(std::move(stored));
    }
    return row;
}

/// Settles for each record which of the places that tell it is believed.
class Settlement {
public:
    Settlement(PageFile& file, TableShapes& shapes, const HistoryLeft& history) : m_file(file), m_shapes(shapes), m_history(history) {}

    std::vector<SettledRow> settle(const QString& table, const std::vector<FoundRow>& found, SalvagedTable& counts, qint64 highest) {
        const QStringList& columns = m_shapes.columns(table);
        const auto& changes = m_history.of(table);
        std::vector<SettledRow> chosen;
        qint64 known = 0;
        auto row = found.begin();
        auto change = changes.begin();
        while (row != found.end() || change != changes.end()) {
            const qint64 id = row == found.end() || (change != changes.end() && change->first < row->id) ? change->first : row->id;
            auto end = row;
            while (end != found.end() && end->id == id)
                ++end;
            const LastChange* last = change != changes.end() && change->first == id ? &change->second : nullptr;
            const auto one = settle_one(table, columns, {row, end}, last);
            known += one || last ? 1 : 0;
            highest = std::max(highest, id);
            if (one) {
                chosen.push_back(*one);
                ++(one->sure == Sure::agrees ? counts.agreeing : one->sure == Sure::from_history ? counts.from_history : counts.unproven);
            }
            row = end;
            change = last ? std::next(change) : change;
        }
        counts.rows = static_cast<qint64>(chosen.size());
        // Each lost record takes an entry with it: a number that was damaged does not make thousands of them.
        counts.lost = std::clamp<qint64>(highest - known, 0, std::max<qint64>(0, m_history.highest() - m_history.entries()));
        return chosen;
    }

private:
    using Group = std::pair<std::vector<FoundRow>::const_iterator, std::vector<FoundRow>::const_iterator>;

    std::optional<SettledRow> settle_one(const QString& table, const QStringList& columns, const Group& group, const LastChange* last) {
        const bool nothing_later = last && m_history.is_last(last->seq);
        const QByteArray image = last ? m_history.after(*last) : QByteArray();
        if (last && !last->removed)
            for (auto row = group.first; row != group.second; ++row)
                if (const auto stored = m_file.row(row->at); stored && image_of(columns, *stored) == image)
                    return SettledRow{row->at, row->in_tree || nothing_later ? Sure::agrees : Sure::unproven, false};
        if (nothing_later && m_history.is_proven(last->seq))
            return last->removed ? std::nullopt : std::optional<SettledRow>({last->at, Sure::from_history, true});
        if (!last && m_history.is_whole())
            return std::nullopt;
        for (auto row = group.first; row != group.second; ++row)
            if (const auto stored = m_file.row(row->at); stored && row->alone && row->in_tree && m_shapes.fits(table, *stored))
                return SettledRow{row->at, Sure::unproven, false};
        if (last && !last->removed)
            if (const auto told = row_of_image(columns, image); told && told->id == group_id(group, *told) && m_shapes.fits(table, *told))
                return SettledRow{last->at, Sure::unproven, true};
        for (auto row = group.first; row != group.second; ++row)
            if (const auto stored = m_file.row(row->at); stored && row->alone && !last && m_shapes.fits(table, *stored))
                return SettledRow{row->at, Sure::unproven, false};
        return std::nullopt;
    }

    static qint64 group_id(const Group& group, const StoredRow& told) { return group.first == group.second ? told.id : group.first->id; }

    PageFile& m_file;
    TableShapes& m_shapes;
    const HistoryLeft& m_history;
};

} // namespace

struct Salvage::Inside {
    mutable PageFile file;
    std::vector<SalvagedTable> tables;
    std::vector<QStringList> all_columns;
    std::vector<std::vector<SettledRow>> rows;
    qint64 entries = 0;
    qint64 highest = 0;
    qint64 pages_lost = 0;
};

Salvage::Salvage(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
Salvage::~Salvage() = default;

tl::expected<std::unique_ptr<Salvage>, NotOpened> Salvage::read(const QString& path, const std::function<bool(int)>& go_on) {
    const QFileInfo info(path);
    if (!info.exists())
        return tl::unexpected(NotOpened::not_there);
    if (!info.isFile())
        return tl::unexpected(NotOpened::not_a_file);
    auto inside = std::make_unique<Inside>();
    if (!inside->file.open(path))
        return tl::unexpected(info.size() == 0 && info.isReadable() ? NotOpened::empty_file : NotOpened::unreadable);
    TableShapes shapes;
    const PageScan scan = scan_pages(inside->file, shapes, go_on);
    if (scan.stopped)
        return tl::unexpected(NotOpened::busy);
    const HistoryLeft history(inside->file, scan);
    Settlement settlement(inside->file, shapes, history);
    qint64 rows = history.entries();
    for (const QString& table : record_tables()) {
        static const std::vector<FoundRow> none;
        const auto found = scan.rows.find(table);
        const auto highest = scan.highest.find(table);
        SalvagedTable counts;
        counts.name = table;
        counts.columns = shapes.columns(table);
        inside->all_columns.push_back(counts.columns);
        counts.columns.removeAll(QStringLiteral("uid"));
        inside->rows.push_back(settlement.settle(table, found == scan.rows.end() ? none : found->second, counts, highest == scan.highest.end() ? 0 : highest->second));
        rows += counts.rows;
        inside->tables.push_back(std::move(counts));
    }
    if (rows == 0)
        return tl::unexpected(NotOpened::not_a_workbook);
    inside->entries = history.entries();
    inside->highest = history.highest();
    inside->pages_lost = scan.pages_lost;
    return std::unique_ptr<Salvage>(new Salvage(std::move(inside)));
}

const std::vector<SalvagedTable>& Salvage::tables() const { return m_inside->tables; }
qint64 Salvage::entries_read() const { return m_inside->entries; }
qint64 Salvage::entries_there_were() const { return m_inside->highest; }
qint64 Salvage::pages_lost() const { return m_inside->pages_lost; }
qint64 Salvage::pages() const { return m_inside->file.pages(); }

SalvagedRow Salvage::row(std::size_t table, qint64 place) const {
    const SettledRow& chosen = m_inside->rows.at(table).at(static_cast<std::size_t>(place));
    const QStringList& columns = m_inside->all_columns[table];
    auto stored = m_inside->file.row(chosen.at);
    if (stored && chosen.in_history)
        stored = row_of_image(columns, HistoryLeft::after_in(*stored));
    SalvagedRow row;
    row.sure = chosen.sure;
    for (qsizetype i = 0; i < columns.size(); ++i) {
        if (columns.at(i) == QStringLiteral("uid"))
            continue;
        std::optional<QString> text;
        if (stored && i == 0)
            text = QString::number(stored->id);
        else if (stored && i < static_cast<qsizetype>(stored->cells.size())) {
            const StoredCell& cell = stored->cells[static_cast<std::size_t>(i)];
            if (cell.kind == 'i')
                text = QString::number(cell.number);
            else if (cell.kind != 'n')
                text = cell.kind == 's' ? QString::fromUtf8(cell.bytes) : QString::fromLatin1(cell.bytes.toHex());
        }
        row.cells.push_back(std::move(text));
    }
    return row;
}

} // namespace soakbook::book
