// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/places.h"

#include "ui/due/due_place.h"
#include "ui/register/register_place.h"
#include "ui/setup/setup_place.h"
#include "ui/shed/shed_place.h"
#include "ui/shell/copy_state.h"
#include "ui/store/store_place.h"
#include "ui/yards/yards_place.h"

namespace soakbook::ui {

std::vector<Place*> make_places(Desk& desk, const WorkbookDoors& doors) {
    std::vector<Place*> places;
    places.push_back(make_due_place(desk, [&desk, folder = doors.copy_folder] { return late_copy(desk, folder); }));
    places.push_back(make_shed_place(desk));
    places.push_back(make_store_place(desk));
    places.push_back(make_yards_place(desk));
    places.push_back(make_register_place(desk));
    places.push_back(make_setup_place(desk, doors));
    return places;
}

} // namespace soakbook::ui
