// SPDX-License-Identifier: GPL-3.0-or-later
// The worked example as a workbook of its own.
#pragma once

#include "core/maths/quantities.h"

#include <QString>

#include <tl/expected.hpp>

namespace soakbook::app {

/// Plays the example's recipe into a new workbook at `path`, as it looks at `now`. Gives back one sentence when the file
/// cannot be made; throws when the recipe itself is refused.
tl::expected<void, QString> write_example(const QString& path, maths::Instant now);

} // namespace soakbook::app
