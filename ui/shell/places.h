// SPDX-License-Identifier: GPL-3.0-or-later
// Which places the house has, in the order of the navigation: the one list to add a place to.
#pragma once

#include <QString>

#include <vector>

namespace soakbook::ui {

class Desk;
class Place;

/// Makes every place for the desk's workbook; `copy_folder` is where its safe copies are kept.
std::vector<Place*> make_places(Desk& desk, const QString& copy_folder);

} // namespace soakbook::ui
