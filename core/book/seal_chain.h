// SPDX-License-Identifier: GPL-3.0-or-later
// How one seal follows from the one before it and the changes between them. For sealing and for verifying alike.
#pragma once

#include "core/book/raw_rows.h"
#include "core/book/seal.h"

#include <functional>

namespace soakbook::book {

class SealChain {
public:
    explicit SealChain(const QSqlDatabase& db);

    struct Link {
        Seal seal;
        qint64 changes = 0;
        qint64 outside = 0; ///< of them, from other programs
    };
    /// The seal that closes the changes after `before` up to `last_seq`. `look` sees each of them: seq, piece, ..., table
    /// (column 11), row (12), what, before, after.
    Link link(const Seal& before, qint64 last_seq, const std::function<void(const RawRows&)>& look = {});

private:
    RawRows m_changes;
};

} // namespace soakbook::book
