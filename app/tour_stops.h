// SPDX-License-Identifier: GPL-3.0-or-later
// Where the tour stops: each page and dialog, and how to get there in this workbook.
#pragma once

#include "ui/parts/intent.h"

#include <functional>
#include <vector>

namespace soakbook::ui {
class Desk;
}

namespace soakbook::app {

struct TourStop {
    QString name; ///< of the picture: "shed-weigh"
    ui::Intent intent;
};
/// The stops that this workbook has something to show at, and those that stand empty.
std::vector<TourStop> tour_stops(const ui::Desk& desk);

struct TourPaper {
    QString name;                                ///< of the PDF
    std::function<bool(const QString&)> save;    ///< to that path; false where the disk would not
};
std::vector<TourPaper> tour_papers(const ui::Desk& desk);

} // namespace soakbook::app
