// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of the Store.
#include "tests/ui/bad_input/form_case.h"

#include "core/work/materials.h"
#include "ui/parts/lot_form.h"
#include "ui/store/bag_forms.h"
#include "ui/store/lot_forms.h"
#include "ui/store/move_form.h"
#include "ui/store/pail_forms.h"

namespace soakbook::tests {

namespace {

using Opens = std::function<void(Room&)>;
using OfBag = void (*)(ui::Desk&, const work::BagLine&, QWidget*);
using OfPail = void (*)(ui::Desk&, const work::PailLine&, QWidget*);

/// A ready bag out of which nothing was taken.
work::BagLine a_bag(Room& room) {
    return *work::bag(room.book(), full_house().bags_of(full_house().ready).at(3), room.desk().today());
}
work::LotLine a_lot(Room& room, work::LotId id) {
    for (const work::LotLine& line : work::lots(room.book(), room.desk().today())) {
        if (line.entry.id == id)
            return line;
    }
    throw std::runtime_error("no such delivery");
}
Opens of_bag(OfBag open) {
    return [open](Room& room) {
        open(room.desk(), a_bag(room), &room.window());
        room.settle();
    };
}
Opens of_pail(OfPail open) {
    return [open](Room& room) {
        open(room.desk(), *work::pail(room.book(), full_house().pails.at(2), room.desk().today()), &room.window());
        room.settle();
    };
}

} // namespace

std::vector<FormCase> store_forms() {
    return {
        {"discard_strips", "ui/store/bag_discard_form.cpp",
         [](Room& room) {
             ui::open_discard_form(room.desk(), {a_bag(room)}, &room.window());
             room.settle();
         },
         {{"strips", "3"}, {"reason", "torn"}}},
        {"recount_a_bag", "ui/store/bag_recount_form.cpp", of_bag(&ui::open_recount_form), {{"left", "79"}, {"reason", "by hand"}}},
        {"a_bag_is_opened", "ui/store/day_form.cpp", of_bag(&ui::open_bag_opened_form)},
        {"correct_a_bag", "ui/store/bag_correct_form.cpp", of_bag(&ui::open_correct_bag_form), {{"packed", "79"}, {"reason", "miscounted"}}},
        {"void_a_bag", "ui/store/bag_correct_form.cpp", of_bag(&ui::open_void_bag_form), {{"reason", "burst"}}},
        {"move_bags", "ui/store/move_form.cpp",
         [](Room& room) {
             ui::open_move_bags(room.desk(), {a_bag(room).id}, QStringLiteral("shelf 1"), &room.window());
             room.settle();
         },
         {{"stands", "shelf 9"}}},
        {"discard_a_pail", "ui/store/pail_forms.cpp", of_pail(&ui::open_discard_pail_form), {{"reason", "spoilt"}}},
        {"correct_a_pail", "ui/store/pail_forms.cpp", of_pail(&ui::open_correct_pail_form), {{"mass", "14"}, {"reason", "misread"}}},
        {"a_pail_is_used_in_part", "ui/store/day_form.cpp", of_pail(&ui::open_used_in_part_form)},
        {"recount_a_delivery", "ui/store/lot_forms.cpp",
         [](Room& room) {
             ui::open_recount_lot_form(room.desk(), a_lot(room, full_house().acid), &room.window());
             room.settle();
         },
         {{"left", "100"}, {"reason", "weighed"}}},
        {"finish_a_delivery", "ui/store/lot_forms.cpp",
         [](Room& room) {
             ui::open_finish_lot_form(room.desk(), a_lot(room, full_house().acid), &room.window());
             room.settle();
         },
         {}, true, false},
        {"correct_a_delivery", "LotForm",
         [](Room& room) {
             (new ui::LotForm(room.desk(), a_lot(room, full_house().acid), &room.window()))->open();
             room.settle();
         },
         {{"supplier", "another mill"}, {"reason", "misread"}}},
    };
}

} // namespace soakbook::tests
