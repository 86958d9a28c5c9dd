// SPDX-License-Identifier: GPL-3.0-or-later
// How the papers of a yard name hives and days.
#pragma once

#include "core/work/hives.h"
#include "ui/parts/desk.h"

namespace soakbook::ui {

/// "A7", or "hedge, row of 12" for a group.
QString paper_hive(const QString& name, int hives);
/// "12 Oct to 26 Oct 2026"; either end may be unknown.
QString paper_days(const Desk& desk, std::optional<maths::Day> from, std::optional<maths::Day> to);
/// A flow or a closed time with its days.
QString paper_time(const Desk& desk, const work::YardTimeEntry& time);

} // namespace soakbook::ui
