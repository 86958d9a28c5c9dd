// SPDX-License-Identifier: GPL-3.0-or-later
// One bad text into one field of a form that is right otherwise, and what came of it.
#pragma once

#include "tests/ui/bad_input/form_case.h"

#include <QStringList>

class QWidget;

namespace soakbook::tests {

struct BadText {
    const char* name;
    QString text;
    /// Whether a quantity may be written like that.
    bool may_be_a_quantity = false;
};

/// A place of a form in which text can be typed: a line, a note, or a cell of a grid.
struct Spot {
    QString name;      ///< of its field, and its number where several share it
    int at = 0;        ///< among the lines and notes of the form
    int column = -1;   ///< of a cell in the first row of the grid
};

struct Outcome {
    enum class Kind { refused, asked, saved, nothing_to_do } kind{};
    QStringList faults;  ///< what a person may rightly complain about
    bool beside = false; ///< the sentence stands beside the very field
};

/// What may be typed into, in the order in which the form was made.
std::vector<Spot> spots(const Room& room);
/// Types the text into the spot of an open, filled form, presses Ctrl+Enter, and looks.
Outcome try_text(Room& room, const Spot& spot, const BadText& bad);
/// Presses Ctrl+Enter, answers what is asked with yes, and says whether the entry was made; otherwise `words` says why not.
bool enters(Room& room, QString& words);

} // namespace soakbook::tests
