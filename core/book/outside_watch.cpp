// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/outside_watch.h"

#include "core/book/connection.h"
#include "core/book/raw_rows.h"

#include <QFile>

#include <sqlite3.h>
#include <sys/stat.h>

namespace soakbook::book {

namespace {

qint64 newest_change(const QSqlDatabase& db) {
    RawRows row(db, "SELECT coalesce(max(seq), 0) FROM change");
    return row.next() ? row.number(0) : 0;
}

} // namespace

// Asked of the folder: opening the file a second time and closing it would drop SQLite's locks.
OutsideWatch::Stamp OutsideWatch::stamp() const {
    struct stat now {};
    if (::stat(QFile::encodeName(m_path).constData(), &now) != 0)
        return {};
    return {now.st_size, now.st_mtim.tv_sec, now.st_mtim.tv_nsec};
}

void OutsideWatch::note() {
    m_seal = newest_seal(m_db);
    m_last_seq = newest_change(m_db);
    m_data_version = pragma_number(m_db, QStringLiteral("data_version"));
    m_stamp = stamp();
}

void OutsideWatch::note_own(const std::optional<Seal>& seal) noexcept {
    if (seal) {
        m_seal = *seal;
        m_last_seq = seal->last_seq;
    }
    try {
        m_data_version = pragma_number(m_db, QStringLiteral("data_version"));
    } catch (const std::exception&) {
        m_data_version = -1;
    }
    m_stamp = stamp();
}

// SQLite keeps what it read as long as a counter in the file stands still. Two copies edited apart may have the same
// counter, and one written over the other would be taken for what was read.
void OutsideWatch::forget_what_was_read() const {
    if (stamp() != m_stamp)
        sqlite3_db_release_memory(static_cast<sqlite3*>(raw_handle(m_db)));
}

OutsideWatch::Seen OutsideWatch::look() const {
    // data_version moves only when another connection commits.
    if (stamp() == m_stamp && m_data_version == pragma_number(m_db, QStringLiteral("data_version")))
        return Seen::nothing;
    if (!holds_seal(m_db, m_seal))
        return Seen::replaced;
    return newest_change(m_db) == m_last_seq && newest_seal(m_db) == m_seal ? Seen::nothing : Seen::changed;
}

} // namespace soakbook::book
