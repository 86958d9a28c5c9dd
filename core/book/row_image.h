// SPDX-License-Identifier: GPL-3.0-or-later
// A row as the history holds it, read back: its cells by the names of their columns.
#pragma once

#include <QString>
#include <QVariant>

#include <map>

namespace soakbook::book {

/// An invalid QVariant is NULL; otherwise qint64, QString or QByteArray.
using Cells = std::map<QString, QVariant>;

/// Reads what row_image writes: one `name=literal` a line, the literals as SQL's quote() gives them. Of a text that is no
/// such image, what can be read.
Cells read_cells(const QString& image);
/// The cell of that column; NULL where there is none.
QVariant cell(const Cells& cells, const QString& column);

} // namespace soakbook::book
