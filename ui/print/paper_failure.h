// SPDX-License-Identifier: GPL-3.0-or-later
// Why something did not reach the paper or the file.
#pragma once

#include <QString>

namespace soakbook::ui {

enum class PaperFault {
    no_space,      ///< the disk is full, or the file would be larger than allowed
    read_only,     ///< the file or its folder may not be written
    no_such_folder,
    printer,       ///< the printer took no page
    nothing,       ///< there is nothing to print
};

struct PaperFailure {
    PaperFault fault;
    QString path; ///< empty for a printer
};

/// The failure in a sentence, with the way out.
QString paper_failure_words(const PaperFailure& failure);

} // namespace soakbook::ui
