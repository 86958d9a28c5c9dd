// SPDX-License-Identifier: GPL-3.0-or-later
// Seals of the change history: each closes the changes since the one before it, and names all that went before by its hash.
// They show accidents and casual edits; whoever sets out to, can seal a forged history anew.
#pragma once

#include <QByteArray>
#include <QSqlDatabase>

#include <optional>

namespace soakbook::book {

struct Seal {
    qint64 last_seq = 0; ///< 0: before the first seal
    QByteArray hash;     ///< SHA-256; before the first seal that of the workbook's own row
    bool operator==(const Seal&) const = default;
};

/// The newest seal of the store.
Seal newest_seal(const QSqlDatabase& db);
/// What stands before the first one.
Seal before_first_seal(const QSqlDatabase& db);
/// Whether that seal stands in the store.
bool holds_seal(const QSqlDatabase& db, const Seal& seal);
/// Seals every change that is not sealed yet, those of other programs too, inside the transaction under way. Gives the
/// new seal; nothing when there was nothing to seal. Throws StoreError.
std::optional<Seal> seal_changes(const QSqlDatabase& db);

} // namespace soakbook::book
