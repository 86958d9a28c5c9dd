// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of Yards: those of yards, hives and rounds, and the three grids.
#include "tests/ui/bad_input/form_case.h"

#include "core/work/yards_view.h"
#include "ui/yards/corrections.h"
#include "ui/yards/count_page.h"
#include "ui/yards/hive_form.h"
#include "ui/yards/hives_form.h"
#include "ui/yards/place_form.h"
#include "ui/yards/pull_page.h"
#include "ui/yards/round_form.h"
#include "ui/yards/visit_page.h"
#include "ui/yards/yard_form.h"

namespace soakbook::tests {

namespace {

using work::HiveEvent;

/// The youngest event of that kind in the story of the hive that has them all.
HiveEvent event(Room& room, HiveEvent::Kind kind) {
    for (const HiveEvent& found : work::hive_events(room.book(), full_house().pulled_hive)) {
        if (found.kind == kind)
            return found;
    }
    throw std::runtime_error("no such event");
}
using OfEvent = void (*)(QWidget*, ui::Desk&, const HiveEvent&, const QString&);
std::function<void(Room&)> about_event(OfEvent open, HiveEvent::Kind kind) {
    return [open, kind](Room& room) {
        open(&room.window(), room.desk(), event(room, kind), QStringLiteral("A3"));
        room.settle();
    };
}
work::YardEntry mill_lane(Room& room) {
    for (const work::YardEntry& yard : work::yards(room.book())) {
        if (yard.id == full_house().yard)
            return yard;
    }
    throw std::runtime_error("no such yard");
}

std::function<void(Room&)> new_round(const char* name) {
    return [name](Room& room) {
        work::RoundEntry entry;
        entry.name = QLatin1String(name);
        entry.yards = {full_house().yard};
        (new ui::RoundForm(room.desk(), entry, {}, &room.window()))->open();
        room.settle();
    };
}

} // namespace

std::vector<FormCase> yards_forms() {
    return {
        {"yard", "ui/yards/yard_form.cpp",
         [](Room& room) {
             ui::open_yard_form(&room.window(), room.desk(), mill_lane(room));
             room.settle();
         },
         {{"name", "Mill lane north"}, {"where_it_is", "by the weir"}, {"reason", "mistyped"}}},
        {"times_of_a_yard", "ui/yards/yard_form.cpp",
         [](Room& room) {
             ui::open_yard_times(&room.window(), room.desk(), full_house().yard, QStringLiteral("Mill lane"));
             room.settle();
         },
         {{"kind", "#1"}, {"what", "lime"}, {"from", "1 jun 2027"}, {"to", "9 jun 2027"}}},
        {"numbered_hives", "HivesForm",
         [](Room& room) {
             (new ui::HivesForm(room.desk(), full_house().yard, QStringLiteral("Mill lane"), &room.window()))->open();
             room.settle();
         },
         {{"prefix", "K"}, {"first", "1"}, {"count", "3"}, {"brood_boxes", "2"}, {"frames_of_bees", "8"}}},
        {"a_row_of_hives", "HivesForm",
         [](Room& room) {
             (new ui::HivesForm(room.desk(), full_house().yard, QStringLiteral("Mill lane"), &room.window()))->open();
             room.settle();
         },
         {{"manner", "#2"}, {"hives", "4"}, {"name", "short row"}, {"frames_of_bees", "30"}}},
        {"hive", "HiveForm",
         [](Room& room) {
             ui::open_hive_form(&room.window(), room.desk(), full_house().hives.at(1));
             room.settle();
         },
         {{"name", "A2b"}, {"frames_of_bees", "7"}, {"reason", "renumbered"}}},
        {"hive_that_died", "HiveForm",
         [](Room& room) {
             ui::open_hive_form(&room.window(), room.desk(), full_house().hives.at(1));
             room.settle();
         },
         {{"state", "#2"}, {"state_on", "-3"}, {"note", "robbed"}}},
        {"move_hives", "ui/yards/hive_form.cpp",
         [](Room& room) {
             ui::open_move_form(&room.window(), room.desk(), {full_house().hives.at(1)});
             room.settle();
         },
         {{"to", "#1"}}},
        {"round", "RoundForm", new_round("Winter"), {{"planned_on", "1 oct 2027"}}},
        {"round_of_so_many_strips", "RoundForm", new_round("Winter"), {{"planned_on", "1 oct 2027"}, {"dose_rule", "#1"}, {"dose_strips", "4"}}},
        {"strips_into_one_hive", "PlaceForm",
         [](Room& room) {
             (new ui::PlaceForm(room.desk(), *work::hive(room.book(), full_house().pulled_hive), &room.window()))->open();
             room.settle();
         },
         {{"strips", "4"}, {"supers_on", "no"}, {"past_limit_reason", "none other"}}},
        {"correct_strips_in", "ui/yards/corrections.cpp", about_event(&ui::open_correction, HiveEvent::Kind::strips_in), {{"strips", "3"}, {"reason", "miscounted"}}},
        {"correct_strips_out", "ui/yards/corrections.cpp", about_event(&ui::open_correction, HiveEvent::Kind::strips_out), {{"pulled", "4"}, {"missing", "0"}, {"reason", "found"}}},
        {"void_a_count", "ui/yards/corrections.cpp", about_event(&ui::open_void, HiveEvent::Kind::count), {{"reason", "wrong hive"}}},
        {"weigh_pulled_strips", "ui/yards/corrections.cpp", about_event(&ui::open_pulled_weighing, HiveEvent::Kind::strips_out), {{"strips", "3"}, {"total", "60"}}},
        {"visit", "VisitPage",
         [](Room& room) { room.show(new ui::VisitPage(room.desk()))->open(full_house().autumn, full_house().yard); },
         {{"supers_on", "no"}}, true, true, 2},
        {"strips_out", "PullPage", [](Room& room) { room.show(new ui::PullPage(room.desk()))->open(full_house().yard); }},
        {"count_mites", "CountPage", [](Room& room) { room.show(new ui::CountPage(room.desk()))->open(full_house().yard); },
         {{"cell 2", "3"}, {"cell 3", "300"}}},
    };
}

} // namespace soakbook::tests
