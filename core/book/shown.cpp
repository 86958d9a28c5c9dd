// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/shown.h"

#include "core/book/kept_statements.h"

namespace soakbook::book {

void note_shown(Writing& writing, const QString& table, const std::vector<qint64>& ids, const QString& paper) {
    const maths::Instant& at = writing.doing().at;
    for (const qint64 id : ids)
        kept_statement(writing.db(), QStringLiteral("INSERT INTO shown(tbl, row_id, paper, at_ms, at_off) VALUES(?, ?, ?, ?, ?) ON CONFLICT DO NOTHING"))
            .bind(table).bind(id).bind(paper).bind(static_cast<qint64>(at.utc_ms)).bind(at.offset_minutes).run();
}

bool was_shown(const Workbook& workbook, const QString& table, qint64 id) {
    Statement s(workbook.db(), QStringLiteral("SELECT 1 FROM shown WHERE tbl = ? AND row_id = ?"));
    s.bind(table).bind(id).run();
    return s.next();
}

} // namespace soakbook::book
