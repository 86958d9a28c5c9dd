// SPDX-License-Identifier: GPL-3.0-or-later
// A form to sweep: where it is made, how it is opened, and what is typed so that it is right but for the one bad text.
#pragma once

#include "tests/ui/bad_input/room.h"
#include "ui/parts/form.h"

#include <functional>
#include <ostream>
#include <vector>

namespace soakbook::tests {

struct FormCase {
    const char* name;    ///< as a person would call it
    const char* made_in; ///< its class, or the source file that puts its fields together
    std::function<void(Room&)> open;
    /// By the request's field name, "@name" of a widget, or "cell 2" of the grid's first row: a text; "yes" or "no"; or "#2",
    /// the second of a list.
    struct Typed {
        const char* key;
        const char* text;
    };
    std::vector<Typed> right = {};
    bool has_button = true; ///< otherwise each choice takes hold at once
    bool has_texts = true;  ///< otherwise it rightly offers nothing to type into
    int chosen_cells = 0;   ///< cells of its grid that take a choice or a tick and no text
};

inline void PrintTo(const FormCase& form, std::ostream* out) { *out << form.name; }

std::vector<FormCase> shed_forms();
std::vector<FormCase> shed_correction_forms();
std::vector<FormCase> store_forms();
std::vector<FormCase> yards_forms();
std::vector<FormCase> setup_forms();
/// All of them.
std::vector<FormCase> all_forms();

/// The form that is open, in a dialog or in the window.
ui::FormFrame* open_form(const Room& room);
/// Types what is right.
void fill_in(Room& room, const FormCase& form);

} // namespace soakbook::tests
