// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: how this outfit works. Tasks of an Intent: "" shows it; "operation", "people", "strip_kinds", "vessels", "figures",
// "habits", "safe_copies" open that page; "figure" with prefill["key"] puts the keyboard into that figure.
#pragma once

#include "ui/parts/place.h"

#include <functional>

class QStackedWidget;

namespace soakbook::ui {

class Desk;
class FiguresPage;
class SideList;

/// Where safe copies are kept, and what becomes of them; given by whoever opened the workbook.
struct SafeCopyDoors {
    QString folder;
};

Place* make_setup_place(Desk& desk, const SafeCopyDoors& copies);

} // namespace soakbook::ui
