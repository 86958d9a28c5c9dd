// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in a hive's story put right or made void, always with a reason; and pulled strips on the scale.
#pragma once

#include "core/work/yards_view.h"

class QWidget;

namespace soakbook::ui {

class Desk;

/// Opens the form that corrects that event: how many strips went in and when, or came out.
void open_correction(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);
/// Asks for the reason and makes the event void: strips that went in, or a count.
void open_void(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);
/// Tells the event from others of its hive, as long as it stands; 0 for one without a record of its own.
qint64 event_number(const work::HiveEvent& event);
bool can_be_corrected(const work::HiveEvent& event);
bool can_be_made_void(const work::HiveEvent& event);
/// Opens the form that weighs strips that came out.
void open_pulled_weighing(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);

} // namespace soakbook::ui
