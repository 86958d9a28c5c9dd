// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of the Register: treatments, corrections, hives without strips, and the journal of entries.
#pragma once

#include "core/work/register_view.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

namespace soakbook::ui {

class Desk;

RowsModel<work::RegisterLine>* make_treatments_model(const Desk& desk, QObject* parent);
/// A correction with a number of its own, since it has no key.
struct NumberedCorrection {
    qint64 number = 0;
    work::CorrectionLine line;
};
RowsModel<NumberedCorrection>* make_corrections_model(const Desk& desk, QObject* parent);
struct NumberedHiveState {
    qint64 number = 0;
    work::HiveStateLine line;
};
RowsModel<NumberedHiveState>* make_hive_states_model(const Desk& desk, QObject* parent);
RowsModel<work::JournalLine>* make_journal_model(const Desk& desk, QObject* parent);

} // namespace soakbook::ui
