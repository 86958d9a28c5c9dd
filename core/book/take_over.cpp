// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/take_over.h"

#include "core/book/other_copy.h"
#include "core/book/statement.h"

namespace soakbook::book {

namespace {

// Writes the changes of the other copy one by one, in the order in which they were made there: so each finds what it
// stands on, and the laws look at every step.
class Transcript {
public:
    Transcript(Writing& writing, TheirChanges& changes, const std::function<QString(QChar)>& new_code, TookOver& result)
        : m_db(writing.db()), m_changes(changes), m_new_code(new_code), m_result(result) {}

    void take_codes() {
        std::vector<const TheirChange*> twice;
        for (const TheirChange& change : m_changes.of_growing()) {
            if (change.row.table != QStringLiteral("given_code") || !m_changes.is_chosen(change))
                continue;
            if (is_free(change.after))
                give(change.after);
            else if (is_given_otherwise(change.after))
                twice.push_back(&change);
        }
        for (const TheirChange* change : twice)
            m_twice.insert(cell(change->after, QStringLiteral("code")).toString());
        if (m_twice.count(QString()))
            throw LawBroken(1, "a code without a sign");
    }

    /// The label of a record whose code was given out twice is stale from the start.
    void mind_label(const TheirChange& change) { m_code_of[change.row] = cell(change.after, QStringLiteral("code")).toString(); }

    void add(const TheirChange& change) {
        QStringList names;
        QStringList marks;
        std::vector<QVariant> values;
        const QString& table = change.row.table;
        for (const QString& column : m_changes.columns(table)) {
            if (column == QStringLiteral("id") && table != QStringLiteral("operation"))
                continue;
            names << column;
            marks << QStringLiteral("?");
            values.push_back(mapped(change.row, column, cell(change.after, column)));
        }
        Statement s(m_db, QStringLiteral("INSERT INTO %1(%2) VALUES(%3)").arg(table, names.join(QLatin1Char(',')), marks.join(QLatin1Char(','))));
        for (const QVariant& value : values)
            s.bind(value);
        m_changes.set_id_here(change.row, s.run().new_id());
    }

    /// Writes the columns that `change` changed there; all of them with `whole`.
    void update(const TheirChange& change, qint64 here, bool whole) {
        QStringList sets;
        std::vector<QVariant> values;
        const Cells now = m_changes.row_here({change.row.table, here});
        const bool renamed = cell(now, QStringLiteral("code")) != cell(change.after, QStringLiteral("code"));
        for (const QString& column : m_changes.columns(change.row.table)) {
            if (column == QStringLiteral("id") || column == QStringLiteral("uid") || column == QStringLiteral("code") ||
                (renamed && column == QStringLiteral("label")))
                continue;
            if (!whole && cell(change.before, column) == cell(change.after, column))
                continue;
            sets << column + QStringLiteral(" = ?");
            values.push_back(mapped(change.row, column, cell(change.after, column)));
        }
        if (sets.isEmpty())
            return;
        Statement s(m_db, QStringLiteral("UPDATE %1 SET %2 WHERE id = ?").arg(change.row.table, sets.join(QStringLiteral(", "))));
        for (const QVariant& value : values)
            s.bind(value);
        s.bind(here).run();
    }

    void remove(const TheirChange& change, qint64 here) {
        Statement(m_db, QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(change.row.table)).bind(here).run();
        m_changes.set_id_here(change.row, 0);
    }

    void show(const TheirChange& change) {
        const RowKey there{cell(change.after, QStringLiteral("tbl")).toString(), cell(change.after, QStringLiteral("row_id")).toLongLong()};
        const qint64 here = m_changes.id_here(there);
        if (here == 0)
            return;
        Statement s(m_db, QStringLiteral("INSERT INTO shown(tbl, row_id, paper, at_ms, at_off) VALUES(?, ?, ?, ?, ?) ON CONFLICT DO NOTHING"));
        s.bind(there.table).bind(here);
        for (const char* column : {"paper", "at_ms", "at_off"})
            s.bind(cell(change.after, QLatin1String(column)));
        s.run();
    }

private:
    bool any(const char* clause, const Cells& code, std::initializer_list<const char*> columns) const {
        Statement s(m_db, QStringLiteral("SELECT 1 FROM given_code WHERE ") + QLatin1String(clause));
        for (const char* column : columns)
            s.bind(cell(code, QLatin1String(column)));
        s.run();
        return s.next();
    }
    bool is_free(const Cells& code) const { return !any("code = ? OR (kind = ? AND number = ?)", code, {"code", "kind", "number"}); }
    // Given at the same moment it is the same giving, taken over before; unless something else bears it here.
    bool is_given_otherwise(const Cells& code) const {
        return !any("code = ? AND given_ms = ? AND given_off = ?", code, {"code", "given_ms", "given_off"}) ||
               any("code = ? AND EXISTS (SELECT 1 FROM batch WHERE code = given_code.code UNION ALL SELECT 1 FROM bag WHERE code = given_code.code "
                   "UNION ALL SELECT 1 FROM pail WHERE code = given_code.code)",
                   code, {"code"});
    }
    void give(const Cells& code) {
        Statement s(m_db, QStringLiteral("INSERT INTO given_code(code, kind, number, given_ms, given_off) VALUES(?, ?, ?, ?, ?)"));
        for (const char* column : {"code", "kind", "number", "given_ms", "given_off"})
            s.bind(cell(code, QLatin1String(column)));
        s.run();
    }
    QString code_here(const QString& there) {
        if (!m_twice.count(there))
            return there;
        QString& now = m_codes[there];
        if (now.isEmpty()) {
            now = m_new_code(there.at(0));
            m_result.new_codes.push_back({there, now});
        }
        return now;
    }
    QVariant mapped(const RowKey& there, const QString& column, const QVariant& value) {
        if (!value.isValid())
            return QVariant(QMetaType(QMetaType::LongLong));
        if (const QString to = m_changes.link(there.table, column); !to.isEmpty()) {
            const qint64 here = m_changes.id_here({to, value.toLongLong()});
            if (here == 0)
                throw LawBroken(1, "what it belongs to is not here");
            return here;
        }
        if (column == QStringLiteral("code"))
            return code_here(value.toString());
        if (column == QStringLiteral("label") && m_twice.count(m_code_of[there]))
            return QStringLiteral("stale");
        return value;
    }

    const QSqlDatabase& m_db;
    TheirChanges& m_changes;
    const std::function<QString(QChar)>& m_new_code;
    TookOver& m_result;
    std::set<QString> m_twice;
    std::map<QString, QString> m_codes;
    std::map<RowKey, QString> m_code_of;
};

bool in_both(Meets meets) { return meets == Meets::differs || meets == Meets::same_name || meets == Meets::gone_here; }

// `place` counts the chosen changes of the record.
void write_change(Transcript& transcript, const TheirChange& change, const MetRecord& record, std::size_t place, qint64 here, bool theirs) {
    transcript.mind_label(change);
    if (record.meets == Meets::added) {
        if (change.what == ChangeWhat::added)
            transcript.add(change);
        else if (change.what == ChangeWhat::changed)
            transcript.update(change, here, false);
        else
            transcript.remove(change, here);
    } else if (record.meets == Meets::follows) {
        // What was taken back there and done again was never away here.
        if (place >= record.first_to_do && change.what != ChangeWhat::removed)
            transcript.update(change, here, change.what == ChangeWhat::added);
    } else if (in_both(record.meets) && theirs && change.seq == record.last_seq) {
        if (record.meets == Meets::gone_here)
            transcript.add(change);
        else
            transcript.update(change, here, true);
    }
}

void count(TookOver& result, const MetRecord& record, bool theirs) {
    if (record.meets == Meets::added || (record.meets == Meets::gone_here && theirs))
        ++result.added;
    else if (record.meets == Meets::follows || (in_both(record.meets) && theirs))
        ++result.changed;
    else if (in_both(record.meets))
        ++result.left;
}

std::vector<qint64> unbalanced_batches(const QSqlDatabase& db) {
    std::vector<qint64> batches;
    Statement closed(db, QStringLiteral(
        "SELECT id FROM batch b WHERE closed_ms IS NOT NULL AND void_reason IS NULL AND "
        "(SELECT coalesce(sum(mass_mg), 0) FROM batch_input WHERE batch_id = b.id AND void_reason IS NULL) <> taken_mg + unexplained_mg "
        "+ (SELECT coalesce(sum(mass_mg), 0) FROM pail WHERE batch_id = b.id AND void_reason IS NULL) "
        "+ (SELECT coalesce(sum(mass_mg), 0) FROM batch_loss WHERE batch_id = b.id AND void_reason IS NULL)"));
    closed.run();
    while (closed.next())
        batches.push_back(closed.get<qint64>(0));
    return batches;
}

} // namespace

tl::expected<TookOver, NotTakenOver> TakeOver::write(Writing& writing, const std::set<qint64>& pieces,
                                                     const std::set<std::pair<QString, QByteArray>>& theirs,
                                                     const std::function<QString(QChar)>& new_code) {
    const auto met = meet(pieces);
    if (!met)
        return tl::unexpected(met.error());
    TookOver result;
    std::map<RowKey, const MetRecord*> record_of;
    const auto is_theirs = [&](const MetRecord& record) { return theirs.count({record.there.table, record.uid}) > 0; };
    for (const MetRecord& record : *met) {
        record_of[record.there] = &record;
        count(result, record, is_theirs(record));
    }
    Transcript transcript(writing, m_changes, new_code, result);
    const TheirChange* at = nullptr;
    try {
        transcript.take_codes();
        std::map<RowKey, std::size_t> places;
        for (const TheirChange& change : m_changes.of_records()) {
            if (!m_changes.is_chosen(change))
                continue;
            at = &change;
            const MetRecord& record = *record_of.at(change.row);
            write_change(transcript, change, record, places[change.row]++, m_changes.id_here(change.row), is_theirs(record));
        }
        for (const TheirChange& change : m_changes.of_growing())
            if (change.row.table == QStringLiteral("shown") && m_changes.is_chosen(change))
                transcript.show(change);
    } catch (const LawBroken&) {
        NotTakenOver refused;
        refused.why = NotTakenOver::Why::does_not_fit;
        if (at) {
            refused.piece = at->piece;
            refused.table = at->row.table;
            refused.what = record_name(m_there.db(), m_changes, at->row);
        }
        return tl::unexpected(refused);
    }
    result.unbalanced = unbalanced_batches(writing.db());
    return result;
}

} // namespace soakbook::book
