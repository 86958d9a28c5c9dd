// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: how this outfit works. Tasks of an Intent: "" shows it; "operation", "people", "strip_kinds", "vessels", "figures",
// "habits", "safe_copies", "workbooks" open that page; "figure" with prefill["key"] puts the keyboard into that figure.
#pragma once

#include "ui/parts/place.h"

#include <functional>

namespace soakbook::ui {

class CopyKeeper;
class Desk;

/// Ways out of this workbook, given by whoever opened it. What is empty is not offered.
struct WorkbookDoors {
    QString copy_folder;                   ///< where safe copies are kept; empty: this is the example, and none is kept of it
    std::function<void()> open_other;      ///< asks for a workbook and opens it in place of this one
    std::function<void()> make_new;        ///< shows the welcome
    std::function<void()> open_example;
    CopyKeeper* keeper = nullptr;          ///< makes copies behind the work; without it one is made at once
    /// Puts a safe copy in this workbook's place, with the reason; the workbook is closed and opened again.
    std::function<void(const QString& path, const QString& why)> put_back = {};
};

Place* make_setup_place(Desk& desk, const WorkbookDoors& doors);

} // namespace soakbook::ui
