// SPDX-License-Identifier: GPL-3.0-or-later
// A record's columns under its table's name in a joined SELECT, as take_record reads them.
#pragma once

#include "core/book/columns.h"

namespace soakbook::book {

/// "placement.id, placement.round_id, ..."
template <class Record> QString joined_columns() {
    const QString prefix = QLatin1String(Record::table) + QStringLiteral(".");
    QStringList names{prefix + QStringLiteral("id")};
    for (const QString& name : column_names<Record>())
        names << prefix + name;
    return names.join(QStringLiteral(", "));
}
/// How many columns that is: where the next thing of the row stands.
template <class Record> int joined_width() {
    return static_cast<int>(column_names<Record>().size()) + 1;
}

} // namespace soakbook::book
