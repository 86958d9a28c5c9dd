// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of the Shed, each with the batch that waits for it.
#include "tests/ui/bad_input/form_case.h"

#include "ui/parts/lot_form.h"
#include "ui/shed/bag_form.h"
#include "ui/shed/close_form.h"
#include "ui/shed/fill_form.h"
#include "ui/shed/loss_form.h"
#include "ui/shed/mix_add_form.h"
#include "ui/shed/mix_plan_form.h"
#include "ui/shed/mix_weigh_form.h"
#include "ui/shed/pour_form.h"
#include "ui/shed/reading_form.h"
#include "ui/shed/reserve_form.h"
#include "ui/shed/soak_form.h"
#include "ui/shed/stir_form.h"
#include "ui/shed/weigh_form.h"

namespace soakbook::tests {

namespace {

template <class Form> std::function<void(Room&)> about(work::BatchId FullHouse::*batch) {
    return [batch](Room& room) { room.show(new Form(room.desk()))->show_batch(room.view(full_house().*batch)); };
}
template <class Form> std::function<void(Room&)> made_for(work::BatchId FullHouse::*batch) {
    return [batch](Room& room) { room.show(new Form(room.desk(), room.view(full_house().*batch))); };
}

} // namespace

std::vector<FormCase> shed_forms() {
    using House = FullHouse;
    return {
        {"plan_a_mix", "MixPlanForm", [](Room& room) { room.show(new ui::MixPlanForm(room.desk())); }, {{"from_amount", "62.5"}}},
        {"plan_a_mix_for_strips", "MixPlanForm", [](Room& room) { room.show(new ui::MixPlanForm(room.desk())); },
         {{"from", "#4"}, {"strips", "900"}}},
        {"weigh_in", "MixWeighForm", made_for<ui::MixWeighForm>(&House::planned), {{"inputs/0/mass", "25"}, {"inputs/1/mass", "37.5"}}},
        {"add_to_a_mix", "MixAddForm", about<ui::MixAddForm>(&House::too_strong)},
        {"heat_reading", "ReadingForm", about<ui::ReadingForm>(&House::warm), {{"probe", "51"}, {"dial", "55"}, {"room", "19"}}},
        {"stir", "StirForm", about<ui::StirForm>(&House::warm), {{"minutes", "5"}, {"clear", "no"}}},
        {"soak", "SoakForm", made_for<ui::SoakForm>(&House::clear), {{"room", "19"}}},
        {"weigh_together", "WeighForm", about<ui::WeighForm>(&House::soaking),
         {{"strips", "10"}, {"total", "339"}, {"drip", "30"}}},
        {"weigh_one_by_one", "WeighForm",
         [](Room& room) {
             auto* form = room.show(new ui::WeighForm(room.desk()));
             form->show_batch(room.view(full_house().soaking));
             form->set_one_by_one(true);
             room.settle();
         },
         {{"@weigh_single_1", "33.8"}, {"@weigh_single_2", "34.1"}, {"drip", "30"}}},
        {"bag", "BagForm", about<ui::BagForm>(&House::weighed), {{"bags", "2"}, {"strips_per_bag", "80"}, {"last_bag", "70"}}},
        {"labels_first", "ReserveForm", about<ui::ReserveForm>(&House::weighed), {{"labels", "2"}}},
        {"fill_labelled_bags", "FillForm", made_for<ui::FillForm>(&House::weighed)},
        {"pour", "PourForm", about<ui::PourForm>(&House::ready), {{"@pour_pail_1", "20"}, {"warm_and_clear", "yes"}, {"scraped", "yes"}}},
        {"loss", "LossForm", [](Room& room) { room.show(new ui::LossForm(room.desk()))->show_batch(full_house().ready, QStringLiteral("B")); },
         {{"kind", "#1"}, {"mass", "0.5"}, {"note", "on the floor"}}},
        {"close", "CloseForm", about<ui::CloseForm>(&House::ready), {}, true, false},
        {"delivery", "LotForm",
         [](Room& room) {
             (new ui::LotForm(room.desk(), work::MaterialKind::acid, &room.window()))->open();
             room.settle();
         },
         {{"name", "acid A9"}, {"supplier", "the mill"}, {"amount", "50"}}},
        {"delivery_of_strips", "LotForm",
         [](Room& room) {
             (new ui::LotForm(room.desk(), work::MaterialKind::strips, &room.window()))->open();
             room.settle();
         },
         {{"name", "strips C9"}, {"amount_pieces", "900"}}},
    };
}

} // namespace soakbook::tests
