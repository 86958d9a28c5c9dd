// SPDX-License-Identifier: GPL-3.0-or-later
// The file that a safe copy is to replace: kept first, and asked for the codes that it gave out. For restore alone.
#pragma once

#include "core/book/restore.h"

#include <map>

namespace soakbook::book {

struct GivenCode {
    QString kind;
    qint64 number = 0;
    maths::Instant at;
};
using GivenCodes = std::map<QString, GivenCode>; ///< by the code

/// Adds the codes that the file at `path` says were given out, as far as they can be read.
void add_given_codes(const QString& path, GivenCodes& codes);

struct Present {
    QString kept;
    bool sound = false;
    QByteArray uid;    ///< empty where it cannot be read
    qint64 last_seq = 0;
    QByteArray seal;   ///< the newest one; empty where it cannot be read
};

/// Whether something lies at `path`, be it only what was left of work that broke off.
bool lies_there(const QString& path);
/// Keeps the file that lies at `request.file`, and tidies up what another program or a broken piece of work left beside it.
tl::expected<Present, NotRestored> keep_present(const RestoreRequest& request);

} // namespace soakbook::book
