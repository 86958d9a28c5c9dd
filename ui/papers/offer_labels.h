// SPDX-License-Identifier: GPL-3.0-or-later
// Opens the previews of labels and sheets and notes in the workbook what was printed.
#pragma once

#include "core/work/outcome.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/print/label_content.h"
#include "ui/print/paper_sheet.h"

#include <functional>
#include <optional>
#include <vector>

namespace soakbook::ui {

/// Notes in the workbook that it was printed; a refusal is said to the user.
using NotePrinted = std::function<std::optional<work::Refusal>()>;

void offer_labels(Desk& desk, std::vector<LabelContent> labels, QWidget* parent, NotePrinted note);
/// `file` is the name a PDF is offered under, without ending.
void offer_sheet(Desk& desk, const PaperSheet& sheet, const QString& file, QWidget* parent, NotePrinted note);

} // namespace soakbook::ui
