// SPDX-License-Identifier: GPL-3.0-or-later
// What the program was asked for when it was started.
#pragma once

#include "core/maths/quantities.h"

#include <QString>
#include <QStringList>

#include <optional>

#include <tl/expected.hpp>

namespace soakbook::app {

struct CommandLine {
    enum class Wish { open, example, write_example, tour, verify, safe_copy, help, version } wish = Wish::open;
    QString file;                   ///< the workbook to open, check or copy, or the file that the example is written to; may be empty
    QString copy_to;                ///< the new file of a safe copy
    QString folder;                 ///< of the tour
    std::optional<maths::Day> on;   ///< today is this day, for tests and pictures
};

/// Reads the arguments, the program's name first. Gives back one sentence where they make no sense.
tl::expected<CommandLine, QString> read_command_line(const QStringList& arguments);
/// The text of --help.
QString help_text();

} // namespace soakbook::app
