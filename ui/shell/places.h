// SPDX-License-Identifier: GPL-3.0-or-later
// Which places the house has, in the order of the navigation: the one list to add a place to.
#pragma once

#include <vector>

namespace soakbook::ui {

class Desk;
class Place;
struct WorkbookDoors;

/// Makes every place for the desk's workbook; `doors` are the ways out of it.
std::vector<Place*> make_places(Desk& desk, const WorkbookDoors& doors);

} // namespace soakbook::ui
