// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/verify.h"

#include "core/book/connection.h"
#include "core/book/raw_rows.h"
#include "core/book/reading_store.h"
#include "core/book/schema.h"
#include "core/book/statement.h"
#include "core/book/verify_history.h"
#include "core/book/workbook.h"

#include <algorithm>

#include <sqlite3.h>

namespace soakbook::book {

namespace {

bool is_damage(const StoreError& error) {
    const int kind = error.code & 0xff;
    return kind == SQLITE_CORRUPT || kind == SQLITE_NOTADB || kind == SQLITE_ERROR || kind == SQLITE_FORMAT || kind == SQLITE_MISMATCH ||
           kind == SQLITE_TOOBIG || error.code == SQLITE_IOERR_SHORT_READ;
}

/// One workbook under the glass.
class Examination {
public:
    Examination(const QSqlDatabase& db, Verdict& verdict, const std::optional<VerifiedUntil>& from) : m_db(db), m_verdict(verdict), m_from(from) {}

    /// What came after `from`, whose seal is known to stand there.
    void run_since() {
        m_verdict.version = version_of(m_db);
        const Seal start = where_to_start();
        if (m_from->uid != m_verdict.until.uid)
            m_verdict.checks.back().bad = 1;
        if (!m_verdict.sound())
            return;
        look(Check::numbers, [&](CheckResult& r) { m_verdict.last_seq = check_numbers(m_db, start.last_seq, r); });
        look(Check::seals, [&](CheckResult& r) { check_seals(m_db, start, m_verdict, r); });
        look(Check::records, [&](CheckResult& r) { check_records(m_db, start.last_seq, r); });
    }

    void run() {
        m_verdict.version = version_of(m_db);
        if (!look(Check::structure, [this](CheckResult& r) { structure(r); }))
            return;
        look(Check::store, [this](CheckResult& r) { store(r); });
        look(Check::links, [this](CheckResult& r) { links(r); });
        const Seal start = m_verdict.version < 2 ? Seal{} : where_to_start();
        look(Check::numbers, [&](CheckResult& r) { m_verdict.last_seq = check_numbers(m_db, start.last_seq, r); });
        if (m_verdict.version < 2)
            return;
        look(Check::seals, [&](CheckResult& r) { check_seals(m_db, start, m_verdict, r); });
        look(Check::records, [&](CheckResult& r) { check_records(m_db, start.last_seq, r); });
    }

private:
    template <class F> bool look(Check check, F&& f) {
        CheckResult result;
        result.check = check;
        try {
            f(result);
        } catch (const StoreError& error) {
            if (!is_damage(error))
                throw;
            ++result.bad;
        }
        m_verdict.checks.push_back(result);
        return result.bad == 0;
    }

    void structure(CheckResult& r) const {
        const QStringList found = structure_of(m_db);
        const QStringList known = known_structure(m_verdict.version);
        r.looked_at = found.size();
        if (known.isEmpty())
            r.bad = 1; // no version that this program knows
        else if (found == known)
            return;
        for (const QString& text : found)
            r.bad += known.contains(text) ? 0 : 1;
        for (const QString& text : known)
            r.bad += found.contains(text) ? 0 : 1;
    }

    void store(CheckResult& r) const {
        r.looked_at = pragma_number(m_db, QStringLiteral("page_count"));
        Statement s(m_db, QStringLiteral("PRAGMA integrity_check(100)"));
        s.run();
        while (s.next())
            r.bad += s.get<QString>(0) == QStringLiteral("ok") ? 0 : 1;
    }

    void links(CheckResult& r) const {
        r.looked_at = record_tables().size();
        Statement s(m_db, QStringLiteral("PRAGMA foreign_key_check"));
        s.run();
        while (s.next())
            if (++r.bad == 1)
                r.first = Entry{0, {}, s.get<QString>(0), s.get<qint64>(1)};
    }

    /// The seal up to which all was verified before, or the very beginning.
    Seal where_to_start() {
        Seal start;
        bool owned = false;
        look(Check::anchor, [&](CheckResult& r) {
            start = before_first_seal(m_db);
            RawRows uid(m_db, "SELECT uid FROM workbook");
            owned = uid.next();
            m_verdict.until.uid = owned ? uid.bytes(0) : QByteArray();
            r.bad = owned ? 0 : 1;
            if (!owned || !m_from || m_from->uid != m_verdict.until.uid || m_from->seal.last_seq < 1)
                return;
            r.looked_at = 1;
            if (holds_seal(m_db, m_from->seal)) {
                start = m_from->seal;
            } else {
                r.bad = 1;
                r.first = Entry{m_from->seal.last_seq, {}, {}, 0};
            }
        });
        return start;
    }

    const QSqlDatabase& m_db;
    Verdict& m_verdict;
    const std::optional<VerifiedUntil>& m_from;
};

void note_broken_off(Verdict& verdict, const StoreError& error) {
    verdict.readable = is_damage(error);
    CheckResult unreadable;
    unreadable.check = Check::store;
    unreadable.bad = 1;
    verdict.checks.push_back(unreadable);
}

} // namespace

const CheckResult* Verdict::first_bad() const {
    const auto found = std::find_if(checks.begin(), checks.end(), [](const CheckResult& r) { return r.bad > 0; });
    return found == checks.end() ? nullptr : &*found;
}

bool Verdict::sound() const { return readable && !checks.empty() && first_bad() == nullptr; }

Verdict verify(const QString& path, const std::optional<VerifiedUntil>& from) {
    Verdict verdict;
    try {
        const ReadingStore store(path);
        Examination(store.db(), verdict, from).run();
    } catch (const StoreError& error) {
        note_broken_off(verdict, error);
    }
    return verdict;
}

std::optional<Verdict> verify_since(const Workbook& workbook, const VerifiedUntil& from, qint64 most) {
    Verdict verdict;
    try {
        if (workbook.last_seq() - from.seal.last_seq > most)
            return std::nullopt;
        Examination(workbook.db(), verdict, from).run_since();
    } catch (const StoreError& error) {
        note_broken_off(verdict, error);
    }
    return verdict;
}

} // namespace soakbook::book
