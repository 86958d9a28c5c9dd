// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/record_io.h"

#include "core/book/kept_statements.h"

#include <sqlite3.h>

namespace soakbook::book::detail {

namespace {

// The history holds each cell as SQL writes it, and that ends at a NUL; of half a character UTF-8 keeps nothing. Work
// refuses both before; should it not, nothing is written rather than less than was typed.
void expect_whole(const char* table, const QVariantList& values) {
    for (const QVariant& value : values) {
        if (value.typeId() != QMetaType::QString)
            continue;
        const QString text = value.toString();
        // SQLite gives U+FFFE and U+FFFF, which are no letters, back as U+FFFD.
        if (text.contains(QChar(0)) || text.contains(QChar(0xFFFE)) || text.contains(QChar(0xFFFF)) || !text.isValidUtf16())
            throw LawBroken(SQLITE_CONSTRAINT, std::string("law 9: a text that the history cannot hold whole, in ") + table);
    }
}

} // namespace

qint64 insert_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values) {
    expect_whole(table, values);
    QStringList marks;
    for (qsizetype i = 0; i < names.size(); ++i)
        marks << QStringLiteral("?");
    Statement& s = kept_statement(db, QStringLiteral("INSERT INTO %1(%2) VALUES(%3)").arg(QLatin1String(table), names.join(QLatin1Char(',')), marks.join(QLatin1Char(','))));
    for (const QVariant& v : values)
        s.bind(v);
    return s.run().new_id();
}

void update_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values, qint64 id) {
    expect_whole(table, values);
    QStringList sets;
    for (const QString& n : names)
        sets << n + QStringLiteral("=?");
    Statement& s = kept_statement(db, QStringLiteral("UPDATE %1 SET %2 WHERE id=?").arg(QLatin1String(table), sets.join(QLatin1Char(','))));
    for (const QVariant& v : values)
        s.bind(v);
    s.bind(id).run();
    if (s.rows_changed() != 1)
        throw StoreError(1, std::string("a record that should be there is not: ") + table);
}

} // namespace soakbook::book::detail
