// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/salvage.h"

#include "core/book/other_copy.h"
#include "core/book/salvage.h"
#include "core/work/facts.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <map>

namespace soakbook::work {

namespace {

NotSalvaged why_not_salvaged(book::NotOpened why) {
    switch (why) {
    case book::NotOpened::not_there:
        return NotSalvaged::not_there;
    case book::NotOpened::empty_file:
        return NotSalvaged::empty;
    case book::NotOpened::not_a_workbook:
    case book::NotOpened::not_a_file:
        return NotSalvaged::not_a_workbook;
    case book::NotOpened::busy:
        return NotSalvaged::stopped;
    default:
        return NotSalvaged::unreadable;
    }
}

// The table that a key points at, by the column's name: hive_id, from_yard_id, tank_id.
QString table_pointed_at(const QString& column) {
    static const std::map<QString, QString> named{
        {QStringLiteral("tank_id"), QStringLiteral("vessel")},        {QStringLiteral("bin_id"), QStringLiteral("vessel")},
        {QStringLiteral("lot_id"), QStringLiteral("material_lot")},   {QStringLiteral("bag_lot_id"), QStringLiteral("material_lot")},
        {QStringLiteral("from_yard_id"), QStringLiteral("yard")},     {QStringLiteral("to_yard_id"), QStringLiteral("yard")},
    };
    const auto found = named.find(column);
    if (found != named.end())
        return found->second;
    return column.endsWith(QStringLiteral("_id")) ? column.chopped(3) : QString();
}

tl::expected<void, Refusal> write_new(const QString& path, const QByteArray& bytes) {
    QFile file(path + QStringLiteral(".part"));
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly))
        return refuse(Why::read_only, {}, {fact(QFileInfo(path).absolutePath())});
    const bool written = file.write(bytes) == bytes.size() && file.flush();
    file.close();
    if (written && file.error() == QFileDevice::NoError && file.rename(path))
        return {};
    file.remove();
    return QFileInfo::exists(path) ? refuse(Why::name_taken, {}, {fact(QFileInfo(path).fileName())}) : refuse(Why::disk_full);
}

QByteArray csv_of(const WhatIsLeft& left, std::size_t table, const TableWording& wording) {
    const LeftTable& about = left.tables()[table];
    std::vector<exchange::CsvRow> rows(1);
    for (const QString& column : about.columns)
        rows.front().push_back({wording.column(column), false});
    rows.front().push_back({wording.sure_column, false});
    for (qint64 place = 0; place < about.rows; ++place) {
        const LeftRow row = left.row(table, place);
        exchange::CsvRow cells;
        for (qsizetype c = 0; c < about.columns.size(); ++c) {
            const auto& cell = row.cells[static_cast<std::size_t>(c)];
            cells.push_back(cell ? wording.value(about.columns.at(c), left.spoken(table, c, *cell)) : exchange::CsvCell{});
        }
        cells.push_back({wording.sure(row.sure), false});
        rows.push_back(std::move(cells));
    }
    return exchange::write_csv(rows, wording.style);
}

} // namespace

struct WhatIsLeft::Inside {
    QString path;
    std::unique_ptr<book::Salvage> salvage;
    std::vector<LeftTable> tables;
    std::vector<std::vector<std::size_t>> cells; ///< by table: which cells are shown
    std::map<QString, std::map<QString, QString>> names; ///< by table and number
};

WhatIsLeft::WhatIsLeft(std::unique_ptr<Inside> inside) : m_inside(std::move(inside)) {}
WhatIsLeft::~WhatIsLeft() = default;

tl::expected<std::unique_ptr<WhatIsLeft>, NotSalvaged> WhatIsLeft::read(const QString& path, const std::function<bool(int)>& go_on) {
    auto salvage = book::Salvage::read(path, go_on);
    if (!salvage)
        return tl::unexpected(why_not_salvaged(salvage.error()));
    auto inside = std::make_unique<Inside>();
    inside->path = path;
    inside->salvage = std::move(*salvage);
    const auto& tables = inside->salvage->tables();
    for (std::size_t t = 0; t < tables.size(); ++t) {
        const book::SalvagedTable& table = tables[t];
        // An hour has the wall's offset beside it, which says nothing by itself.
        QStringList columns;
        std::vector<std::size_t> cells;
        for (qsizetype c = 0; c < table.columns.size(); ++c)
            if (!table.columns.at(c).endsWith(QStringLiteral("_off"))) {
                columns << table.columns.at(c);
                cells.push_back(static_cast<std::size_t>(c));
            }
        inside->cells.push_back(std::move(cells));
        inside->tables.push_back({table.name, columns, table.rows, table.agreeing, table.from_history, table.unproven, table.lost});
        const qsizetype code = table.columns.indexOf(QStringLiteral("code"));
        const qsizetype name = code >= 0 ? code : table.columns.indexOf(QStringLiteral("name"));
        if (name < 0)
            continue;
        for (qint64 place = 0; place < table.rows; ++place) {
            const book::SalvagedRow row = inside->salvage->row(t, place);
            inside->names[table.name][row.cells.front().value_or(QString())] = row.cells[static_cast<std::size_t>(name)].value_or(QString());
        }
    }
    return std::unique_ptr<WhatIsLeft>(new WhatIsLeft(std::move(inside)));
}

const QString& WhatIsLeft::path() const { return m_inside->path; }
const std::vector<LeftTable>& WhatIsLeft::tables() const { return m_inside->tables; }
qint64 WhatIsLeft::entries_read() const { return m_inside->salvage->entries_read(); }
qint64 WhatIsLeft::entries_there_were() const { return m_inside->salvage->entries_there_were(); }

LeftRow WhatIsLeft::row(std::size_t table, qint64 place) const {
    book::SalvagedRow row = m_inside->salvage->row(table, place);
    const HowSure sure = row.sure == book::Sure::agrees ? HowSure::agrees : row.sure == book::Sure::from_history ? HowSure::from_history : HowSure::unproven;
    LeftRow left{sure, {}};
    for (const std::size_t cell : m_inside->cells[table])
        left.cells.push_back(std::move(row.cells[cell]));
    return left;
}

QString WhatIsLeft::spoken(std::size_t table, qsizetype column, const QString& value) const {
    const auto names = m_inside->names.find(table_pointed_at(m_inside->tables[table].columns.at(column)));
    if (names == m_inside->names.end())
        return value;
    const auto name = names->second.find(value);
    return name == names->second.end() ? value : name->second;
}

Outcome<int> save_as_tables(const WhatIsLeft& left, const QString& folder, const TableWording& wording) {
    const QDir dir(folder);
    if (!dir.exists())
        return refuse(Why::read_only, {}, {fact(folder)});
    const QString stem = QFileInfo(left.path()).completeBaseName();
    std::vector<std::pair<std::size_t, QString>> files;
    for (std::size_t t = 0; t < left.tables().size(); ++t)
        if (left.tables()[t].rows > 0)
            files.emplace_back(t, dir.filePath(stem + QStringLiteral(" - ") + wording.table(left.tables()[t].name) + QStringLiteral(".csv")));
    for (const auto& [table, path] : files)
        if (QFileInfo::exists(path))
            return refuse(Why::name_taken, {}, {fact(QFileInfo(path).fileName())});
    QStringList written;
    for (const auto& [table, path] : files) {
        if (const auto done = write_new(path, csv_of(left, table, wording)); !done) {
            for (const QString& file : written)
                QFile::remove(file);
            return tl::unexpected(done.error());
        }
        written << path;
    }
    return static_cast<int>(written.size());
}

bool is_one_file(const QString& one, const QString& other) { return book::is_same_file(one, other); }

} // namespace soakbook::work
