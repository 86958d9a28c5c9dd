// SPDX-License-Identifier: GPL-3.0-or-later
// A yard, new or put right, and the times of a yard: flows, and days when it is not to be opened.
#pragma once

#include "core/work/hives.h"

#include <functional>

class QWidget;

namespace soakbook::ui {

class Desk;

/// Opens the form of a yard; a yard without an id is a new one. `done` gets the yard that was saved.
void open_yard_form(QWidget* parent, Desk& desk, const work::YardEntry& yard, std::function<void(work::YardId)> done = {});
/// Opens the times of a yard: those there are, each with a button that takes it away, and a form for one more.
void open_yard_times(QWidget* parent, Desk& desk, work::YardId yard, const QString& yard_name);

} // namespace soakbook::ui
