// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/places.h"

#include "ui/due/due_place.h"
#include "ui/register/register_place.h"
#include "ui/setup/setup_place.h"
#include "ui/shed/shed_place.h"
#include "ui/papers/history_dialog.h"
#include "ui/shell/copy_state.h"
#include "ui/shell/waiting_due.h"
#include "ui/store/store_place.h"
#include "ui/yards/yards_place.h"

namespace soakbook::ui {

std::vector<Place*> make_places(Desk& desk, const WorkbookDoors& doors) {
    keep_drafts(desk, doors.copy_folder);
    std::vector<Place*> places;
    places.push_back(make_due_place(desk, [&desk, folder = doors.copy_folder] {
        std::vector<work::DueRow> rows = changes_to_look_at(desk);
        for (const std::vector<work::DueRow>& more : {late_copy(desk, folder), waiting_drafts(desk)})
            rows.insert(rows.end(), more.begin(), more.end());
        return rows;
    }));
    places.push_back(make_shed_place(desk));
    places.push_back(make_store_place(desk));
    places.push_back(make_yards_place(desk));
    places.push_back(make_register_place(desk));
    places.push_back(make_setup_place(desk, doors));
    for (Place* place : places)
        listen_for_history_key(*place);
    return places;
}

} // namespace soakbook::ui
