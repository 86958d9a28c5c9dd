// SPDX-License-Identifier: GPL-3.0-or-later
// How two copies of a workbook stand to each other, in sentences.
#pragma once

#include "core/work/apart.h"

namespace soakbook::ui {

/// Why the file is not compared, with the way out.
QString not_compared_words(work::NotCompared why, const QString& path);
/// "Both hold the same entries.", "7 entries are missing there." ...
QString how_apart_words(const work::ApartView& view);
/// What becomes of a record when its entry is taken over.
QString record_meets_words(work::RecordMeets meets, bool theirs);
/// That an entry cannot be taken over without another one.
QString stands_on_words(const work::LoneEntry& entry, const work::LoneEntry& left_out);
/// What was taken over, which codes are new, what stays as it is.
QString taken_over_words(const work::TakenOver& taken);
/// An entry in words; what another program changed has no name of its own.
QString entry_words(const work::LoneEntry& entry);

} // namespace soakbook::ui
