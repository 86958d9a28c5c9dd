// SPDX-License-Identifier: GPL-3.0-or-later
// What is said about a workbook while it is opened: who has it, why it is for looking alone, what is missing or damaged.
#pragma once

#include "app/first_check.h"
#include "app/opening.h"
#include "core/book/restore.h"

#include <QString>

#include <functional>

namespace soakbook::app {

/// How a moment is written for people.
using Moments = std::function<QString(const maths::Instant&)>;

/// "Ida has it open on the computer shed, since 3 Oct 14:30."
QString holder_words(const Holder& holder, const Moments& moments);
/// Why the lock of the workbook at `file` was not taken, and what to do.
QString held_words(const NotLocked& lock, const QString& file, const Moments& moments);
/// The whole line that stands above the pages: why, and the way out.
QString looking_words(LookingWhy why, const std::optional<Holder>& holder, const Moments& moments);
/// Why, in one short sentence, beside what cannot be used.
QString looking_hint(LookingWhy why);
/// The title of the window that says why a file is not open.
QString refused_title(book::NotOpened why);
QString missing_words(const MissingEntries& missing, const Moments& moments);
/// Why a safe copy was not put in the place of the workbook at `file`, and what to do.
QString not_restored_words(book::NotRestored why, const QString& copy, const QString& file);
/// What the check found first.
QString damage_words(const book::Verdict& verdict);

} // namespace soakbook::app
