// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/codes.h"

#include "core/book/statement.h"

namespace soakbook::book {

qint64 last_code_number(const Workbook& workbook, QChar kind) {
    Statement s(workbook.db(), QStringLiteral("SELECT coalesce(max(number), 0) FROM given_code WHERE kind = ?"));
    s.bind(QString(kind)).run();
    return s.next() ? s.get<qint64>(0) : 0;
}

void give_code(Writing& writing, const QString& code, QChar kind, qint64 number) {
    const maths::Instant& at = writing.doing().at;
    Statement(writing.db(), QStringLiteral("INSERT INTO given_code(code, kind, number, given_ms, given_off) VALUES(?, ?, ?, ?, ?)"))
        .bind(code).bind(QString(kind)).bind(number).bind(static_cast<qint64>(at.utc_ms)).bind(at.offset_minutes).run();
}

std::optional<maths::Instant> code_given(const Workbook& workbook, const QString& code) {
    Statement s(workbook.db(), QStringLiteral("SELECT given_ms, given_off FROM given_code WHERE code = ?"));
    s.bind(code).run();
    return s.next() ? std::optional<maths::Instant>{{s.get<qint64>(0), s.get<int>(1)}} : std::nullopt;
}

} // namespace soakbook::book
