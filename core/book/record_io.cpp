// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/record_io.h"

namespace soakbook::book::detail {

qint64 insert_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values) {
    QStringList marks;
    for (qsizetype i = 0; i < names.size(); ++i)
        marks << QStringLiteral("?");
    Statement s(db, QStringLiteral("INSERT INTO %1(%2) VALUES(%3)").arg(QLatin1String(table), names.join(QLatin1Char(',')), marks.join(QLatin1Char(','))));
    for (const QVariant& v : values)
        s.bind(v);
    return s.run().new_id();
}

void update_row(const QSqlDatabase& db, const char* table, const QStringList& names, const QVariantList& values, qint64 id) {
    QStringList sets;
    for (const QString& n : names)
        sets << n + QStringLiteral("=?");
    Statement s(db, QStringLiteral("UPDATE %1 SET %2 WHERE id=?").arg(QLatin1String(table), sets.join(QLatin1Char(','))));
    for (const QVariant& v : values)
        s.bind(v);
    s.bind(id).run();
    if (s.rows_changed() != 1)
        throw StoreError(1, std::string("a record that should be there is not: ") + table);
}

} // namespace soakbook::book::detail
