// SPDX-License-Identifier: GPL-3.0-or-later
// A file opened for reading alone, and let go of at the end whatever happens. Nobody else here may have it open.
#pragma once

#include "core/book/connection.h"
#include "core/book/statement.h"

namespace soakbook::book {

class ReadingStore {
public:
    /// Throws StoreError.
    explicit ReadingStore(const QString& path) : m_db(connect_store(path, Use::reading)) {}
    ~ReadingStore() { disconnect_store(m_db); }
    ReadingStore(const ReadingStore&) = delete;
    ReadingStore& operator=(const ReadingStore&) = delete;
    const QSqlDatabase& db() const { return m_db; }

private:
    QSqlDatabase m_db;
};

/// Runs `f(db)` on the file; a damaged one gives what it gives.
template <class F> void read_what_can_be(const QString& path, F&& f) {
    try {
        const ReadingStore store(path);
        f(store.db());
    } catch (const StoreError&) {
        // The rest of it cannot be read.
    }
}

} // namespace soakbook::book
