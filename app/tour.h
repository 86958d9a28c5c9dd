// SPDX-License-Identifier: GPL-3.0-or-later
// Walks every place and dialog of a workbook offscreen and saves a picture of each, light and dark, and the papers as PDF.
#pragma once

#include "app/clock.h"

#include <QString>

#include <tl/expected.hpp>

namespace soakbook::app {

/// Pictures go to `folder`, which is made; `file` empty: the worked example, otherwise a copy of that workbook, which itself is
/// only read. Gives back a sentence on what was saved, or one on what went wrong.
tl::expected<QString, QString> tour(const QString& folder, const QString& file, const Clock& clock);

} // namespace soakbook::app
