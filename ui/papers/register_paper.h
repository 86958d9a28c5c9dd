// SPDX-License-Identifier: GPL-3.0-or-later
// The register of treatments as a paper and as a file for a spreadsheet.
#pragma once

#include "core/work/register_view.h"
#include "ui/parts/desk.h"
#include "ui/print/paper_sheet.h"

#include <QByteArray>
#include <QWidget>

namespace soakbook::ui {

/// What the filter says, in words: "1 Jan 2026 to 31 Dec 2026, all yards".
QString range_words(const Desk& desk, const work::RegisterFilter& filter);
/// The corrections a register shows: those behind its treatments, and for all yards also those made in its days.
std::vector<work::CorrectionLine> shown_corrections(const Desk& desk, const work::RegisterFilter& filter);
PaperSheet register_sheet(const Desk& desk, const work::RegisterFilter& filter);
/// Treatments, with corrections in a column, as comma-separated text.
QByteArray register_csv(const Desk& desk, const work::RegisterFilter& filter);

/// Opens the preview with printer and PDF, and notes what was shown.
void offer_register(Desk& desk, const work::RegisterFilter& filter, QWidget* parent);
/// Asks for a file and writes the register to it; gives back a sentence for the user, empty when nothing was done.
QString save_register_csv(Desk& desk, const work::RegisterFilter& filter, QWidget* parent);

} // namespace soakbook::ui
