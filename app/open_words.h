// SPDX-License-Identifier: GPL-3.0-or-later
// Why a file is not opened, in a sentence with the way out.
#pragma once

#include "core/book/workbook.h"

namespace soakbook::app {

QString words_for(book::NotOpened why, const QString& path);

} // namespace soakbook::app
