// SPDX-License-Identifier: GPL-3.0-or-later
// Notices that the file was changed or replaced by another program since this one last wrote or looked.
#pragma once

#include "core/book/seal.h"

namespace soakbook::book {

class OutsideWatch {
public:
    /// `path` is that of the file under `db`; both are to live as long as this.
    OutsideWatch(const QString& path, const QSqlDatabase& db) : m_path(path), m_db(db) {}

    /// Takes what is there now for known. Throws StoreError.
    void note();
    /// After a commit of our own, with the seal it made, if any. Never throws: the work is down.
    void note_own(const std::optional<Seal>& seal) noexcept;
    /// The number of the newest change known here.
    qint64 known_seq() const { return m_last_seq; }
    /// Before a transaction: where the file was touched, nothing read before is relied on.
    void forget_what_was_read() const;

    enum class Seen { nothing, changed, replaced };
    /// Inside the transaction: what happened since `note`. Replaced: our newest seal is not in this file.
    Seen look() const;

private:
    struct Stamp {
        qint64 size = 0;
        qint64 seconds = 0;
        qint64 nanoseconds = 0;
        bool operator==(const Stamp&) const = default;
    };
    Stamp stamp() const;

    const QString& m_path;
    const QSqlDatabase& m_db;
    Stamp m_stamp;
    Seal m_seal;
    qint64 m_last_seq = 0;
    qint64 m_data_version = -1;
};

} // namespace soakbook::book
