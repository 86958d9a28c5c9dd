// SPDX-License-Identifier: GPL-3.0-or-later
// Where the drafts of the Shed's forms are found again.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/draft.h"

namespace soakbook::ui {

/// A form within a batch's course: `form` its short name, `task` the Shed's task that opens its step, `words` what it is for;
/// `press` the button that turns to it, where the step has several.
DraftPlace shed_draft(const QString& form, const QString& task, work::BatchId batch, const QString& code, const QString& words, const QString& press = {});
/// A correction opened from a row of a table of a batch; the form's title is the draft's.
DraftPlace row_draft(const QString& form, const QString& task, work::BatchId batch, const QString& table, qint64 row);

} // namespace soakbook::ui
