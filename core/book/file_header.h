// SPDX-License-Identifier: GPL-3.0-or-later
// A first look at a file before SQLite opens it: the one time that something else reads a workbook.
#pragma once

#include "core/book/workbook.h"

#include <optional>

namespace soakbook::book {

/// Why the file at `path` is no workbook of this program and version, judged by its first 100 bytes; nothing if it is one.
std::optional<NotOpened> judge_header(const QString& path);

} // namespace soakbook::book
