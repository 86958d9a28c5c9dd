// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/table_shapes.h"

#include "core/book/connection.h"
#include "core/book/schema.h"
#include "core/book/statement.h"

namespace soakbook::book {

TableShapes::TableShapes() : m_db(connect_store(QStringLiteral(":memory:"))) {
    run(m_db, QStringLiteral("PRAGMA foreign_keys=OFF"));
    for (const QString& text : known_structure()) {
        if (!text.startsWith(QStringLiteral("table ")) || text.startsWith(QStringLiteral("table sqlite_")))
            continue;
        run(m_db, text.mid(text.indexOf(QStringLiteral(": ")) + 2));
        const QString table = text.section(QLatin1Char(' '), 1, 1);
        m_columns[table] = columns_of(m_db, table);
        Statement kinds(m_db, QStringLiteral("SELECT group_concat(substr(type, 1, 1), '') FROM (SELECT type FROM pragma_table_info(?) ORDER BY cid)"));
        kinds.bind(table).run();
        if (kinds.next())
            m_kinds[table] = kinds.get<QString>(0).replace(QLatin1Char('I'), QLatin1Char('i')).replace(QLatin1Char('T'), QLatin1Char('s')).replace(QLatin1Char('B'), QLatin1Char('b'));
    }
}

TableShapes::~TableShapes() { disconnect_store(m_db); }

QStringList TableShapes::tables() const {
    QStringList names;
    for (const auto& [name, columns] : m_columns)
        names << name;
    return names;
}

// A table's own number stands before the row, and in it as nothing.
bool TableShapes::is_numbered(const QString& table) const {
    const QString& first = m_columns.at(table).first();
    return first == QStringLiteral("id") || first == QStringLiteral("seq") || first == QStringLiteral("last_seq");
}

bool TableShapes::looks_like(const QString& table, const StoredRow& row) const {
    const QString& kinds = m_kinds.at(table);
    if (static_cast<qsizetype>(row.cells.size()) != kinds.size())
        return false;
    for (qsizetype i = 0; i < kinds.size(); ++i) {
        const char kind = row.cells[static_cast<std::size_t>(i)].kind;
        if (kind != 'n' && QLatin1Char(kind) != kinds.at(i))
            return false;
    }
    return is_numbered(table) == (row.cells.front().kind == 'n');
}

bool TableShapes::fits(const QString& table, const StoredRow& row) {
    if (!looks_like(table, row))
        return false;
    QStringList marks;
    for (std::size_t i = 0; i < row.cells.size(); ++i)
        marks << QStringLiteral("?");
    bool taken = true;
    run(m_db, QStringLiteral("SAVEPOINT trial"));
    try {
        Statement s(m_db, QStringLiteral("INSERT INTO %1 VALUES(%2)").arg(table, marks.join(QLatin1Char(','))));
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const StoredCell& cell = row.cells[i];
            if (i == 0 && is_numbered(table))
                s.bind(row.id);
            else if (cell.kind == 'i')
                s.bind(cell.number);
            else if (cell.kind == 's')
                s.bind(QVariant(QString::fromUtf8(cell.bytes) + QStringLiteral("")));
            else if (cell.kind == 'b')
                s.bind(QVariant(cell.bytes));
            else
                s.bind(QVariant(QMetaType(QMetaType::LongLong)));
        }
        s.run();
    } catch (const StoreError&) {
        taken = false;
    }
    run(m_db, QStringLiteral("ROLLBACK TO trial"));
    run(m_db, QStringLiteral("RELEASE trial"));
    return taken;
}

QByteArray image_of(const QStringList& columns, const StoredRow& row) {
    QByteArray image;
    for (qsizetype i = 0; i < columns.size() && i < static_cast<qsizetype>(row.cells.size()); ++i) {
        const StoredCell& cell = row.cells[static_cast<std::size_t>(i)];
        if (i > 0)
            image += '\n';
        image += columns.at(i).toUtf8() + '=';
        if (i == 0)
            image += QByteArray::number(row.id);
        else if (cell.kind == 'i')
            image += QByteArray::number(cell.number);
        else if (cell.kind == 's')
            image += '\'' + cell.bytes.left(cell.bytes.contains('\0') ? cell.bytes.indexOf('\0') : cell.bytes.size()).replace("'", "''") + '\'';
        else if (cell.kind == 'b')
            image += "X'" + cell.bytes.toHex().toUpper() + '\'';
        else
            image += "NULL";
    }
    return image;
}

QByteArray canonical_of(const StoredRow& row) {
    QByteArray text;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const StoredCell& stored = row.cells[i];
        const bool number = i == 0 || stored.kind == 'i';
        const QByteArray bytes = i == 0 ? QByteArray::number(row.id) : number ? QByteArray::number(stored.number) : stored.bytes;
        text += number ? 'i' : stored.kind;
        text += QByteArray::number(bytes.size()) + ':' + bytes;
    }
    return text;
}

} // namespace soakbook::book
