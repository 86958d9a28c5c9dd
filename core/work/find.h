// SPDX-License-Identifier: GPL-3.0-or-later
// Find: a code typed or scanned from a label, or a name.
#pragma once

#include "core/maths/quantities.h"
#include "core/work/ids.h"

#include <QString>

#include <optional>
#include <vector>

namespace soakbook::work {

enum class FoundKind { batch, bag, pail, hive, yard, round, lot, given_but_undone };
struct Found {
    FoundKind kind{};
    qint64 id = 0;
    QString code;                        ///< code or name
    QString where;                       ///< a yard for a hive, a batch for a bag
    std::optional<maths::Instant> given; ///< for given_but_undone: when the code was given out
};
/// Why nothing was found.
enum class NotFound { empty, wrong_check_character, no_such_code, no_such_name };
struct FindResult {
    std::vector<Found> found; ///< an exact code alone, else names that hold the text, at most `most`
    NotFound why_not{};
};
FindResult find(const book::Workbook& workbook, const QString& text, int most = 12);

} // namespace soakbook::work
