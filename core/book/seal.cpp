// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/seal.h"

#include "core/book/seal_chain.h"
#include "core/book/statement.h"

#include <QCryptographicHash>

namespace soakbook::book {

Seal before_first_seal(const QSqlDatabase& db) {
    RawRows own(db, "SELECT id, uid, made_ms, made_off FROM workbook");
    QByteArray text("soakbook");
    while (own.next())
        text += own.canonical();
    return {0, QCryptographicHash::hash(text, QCryptographicHash::Sha256)};
}

Seal newest_seal(const QSqlDatabase& db) {
    RawRows newest(db, "SELECT last_seq, hash FROM seal ORDER BY last_seq DESC LIMIT 1");
    if (newest.next())
        return {newest.number(0), newest.bytes(1)};
    return before_first_seal(db);
}

bool holds_seal(const QSqlDatabase& db, const Seal& seal) {
    if (seal.last_seq == 0)
        return before_first_seal(db) == seal;
    RawRows row(db, "SELECT hash FROM seal WHERE last_seq = ?");
    row.start({seal.last_seq});
    return row.next() && row.bytes(0) == seal.hash;
}

SealChain::SealChain(const QSqlDatabase& db)
    : m_changes(db, "SELECT seq, piece, work, count, subject, who, why, version, at_ms, at_off, clock_doubtful, tbl, row_id, what, before, after "
                    "FROM change WHERE seq > ? AND seq <= ? ORDER BY seq") {}

SealChain::Link SealChain::link(const Seal& before, qint64 last_seq, const std::function<void(const RawRows&)>& look) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(before.hash);
    Link link;
    m_changes.start({before.last_seq, last_seq});
    while (m_changes.next()) {
        ++link.changes;
        link.outside += m_changes.optional_number(1) ? 0 : 1;
        hash.addData(m_changes.canonical());
        if (look)
            look(m_changes);
    }
    const QByteArray close = "seal " + QByteArray::number(last_seq) + ' ' + QByteArray::number(link.outside);
    hash.addData(close);
    link.seal = {last_seq, hash.result()};
    return link;
}

std::optional<Seal> seal_changes(const QSqlDatabase& db) {
    const Seal before = newest_seal(db);
    qint64 last_seq = 0;
    {
        RawRows newest(db, "SELECT coalesce(max(seq), 0) FROM change");
        if (newest.next())
            last_seq = newest.number(0);
    }
    if (last_seq <= before.last_seq)
        return std::nullopt;
    const auto link = SealChain(db).link(before, last_seq);
    Statement(db, QStringLiteral("INSERT INTO seal(last_seq, outside, hash) VALUES(?, ?, ?)"))
        .bind(last_seq).bind(link.outside).bind(QVariant(link.seal.hash)).run();
    return link.seal;
}

} // namespace soakbook::book
