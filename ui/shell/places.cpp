// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/places.h"

#include "ui/due/due_place.h"
#include "ui/register/register_place.h"
#include "ui/setup/setup_place.h"
#include "ui/shed/shed_page.h"
#include "ui/shed/shed_place.h"
#include "ui/papers/history_dialog.h"
#include "ui/shell/copy_state.h"
#include "ui/shell/later_place.h"
#include "ui/shell/waiting_due.h"
#include "ui/store/store_page.h"
#include "ui/store/store_place.h"
#include "ui/yards/yards_page.h"
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
    const auto later = [&](PlaceName place, const QString& name, Place* (*make)(Desk&)) {
        places.push_back(new LaterPlace(place, name, [&desk, make] {
            Place* made = make(desk);
            listen_for_history_key(*made);
            return made;
        }));
    };
    //: A place of the house: where batches are made
    later(PlaceName::shed, ShedPage::tr("Shed"), make_shed_place);
    //: A place of the house: bags, pails and deliveries
    later(PlaceName::store, StorePage::tr("Store"), make_store_place);
    //: A place of the house, in the navigation
    later(PlaceName::yards, YardsPage::tr("Yards"), make_yards_place);
    places.push_back(make_register_place(desk));
    places.push_back(make_setup_place(desk, doors));
    for (Place* place : places)
        if (qobject_cast<LaterPlace*>(place) == nullptr)
            listen_for_history_key(*place);
    return places;
}

} // namespace soakbook::ui
