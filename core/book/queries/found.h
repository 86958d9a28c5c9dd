// SPDX-License-Identifier: GPL-3.0-or-later
// What Find looks in: codes and names.
#pragma once

#include "core/book/workbook.h"

#include <optional>
#include <vector>

namespace soakbook::book {

struct FoundRecord {
    QString table;
    qint64 id = 0;
    QString name;  ///< code or name
    QString where; ///< a yard for a hive, a batch for a bag or pail
};
/// The batch, bag or pail of exactly that code.
std::optional<FoundRecord> record_of_code(const Workbook& workbook, const QString& code);
/// Hives, yards, rounds and lots whose name holds the text, whatever its case, at most `most`: names that begin with it
/// first.
std::vector<FoundRecord> records_named(const Workbook& workbook, const QString& text, int most);

} // namespace soakbook::book
