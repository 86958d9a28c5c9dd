// SPDX-License-Identifier: GPL-3.0-or-later
// The forms that put an entry of a batch right or make it void: Enter on its row opens them.
#include "tests/ui/bad_input/form_case.h"

#include "core/work/leftovers.h"
#include "ui/shed/bags_table.h"
#include "ui/shed/heat_tables.h"
#include "ui/shed/inputs_table.h"
#include "ui/shed/leftovers_step.h"
#include "ui/shed/losses_table.h"
#include "ui/shed/mix_step.h"
#include "ui/shed/pails_table.h"
#include "ui/shed/soak_step.h"
#include "ui/shed/weighings_table.h"

#include <QPushButton>

#include <stdexcept>

namespace soakbook::tests {

namespace {

/// Opens the first row of a table over that batch.
template <class Table> std::function<void(Room&)> first_row(work::BatchId FullHouse::*batch) {
    return [batch](Room& room) {
        auto* table = room.show(new Table(room.desk()));
        table->show_batch(room.view(full_house().*batch));
        Q_EMIT table->opened(table->rows_model()->id_at(0));
        room.settle();
    };
}
template <class StepOfBatch> std::function<void(Room&)> button(work::BatchId FullHouse::*batch, const char* name) {
    return [batch, name](Room& room) {
        auto* step = room.show(new StepOfBatch(room.desk()));
        step->show_batch(room.view(full_house().*batch));
        step->template findChild<QPushButton*>(QLatin1String(name))->click();
        room.settle();
    };
}

} // namespace

std::vector<FormCase> shed_correction_forms() {
    using House = FullHouse;
    const FormCase::Typed why{"reason", "misread"};
    return {
        {"correct_a_weight", "ui/shed/inputs_table.cpp", first_row<ui::InputsTable>(&House::too_strong), {{"mass", "24.9"}, why}},
        {"void_a_batch", "ui/shed/mix_step.cpp", button<ui::MixStep>(&House::planned, "void_batch"), {why}},
        {"correct_a_reading", "ui/shed/heat_tables.cpp", first_row<ui::ReadingsTable>(&House::warm), {{"probe", "49"}, why}},
        {"void_a_stir", "ui/shed/heat_tables.cpp", first_row<ui::StirsTable>(&House::warm), {why}},
        {"void_a_loss", "ui/shed/losses_table.cpp",
         [](Room& room) {
             const auto lost = work::log_loss(room.book(), full_house().ready, work::NamedLoss::drips, maths::grams(500), {}, room.desk().doing());
             if (!lost)
                 throw std::runtime_error("no loss");
             auto* table = room.show(new ui::LossesTable(room.desk()));
             table->show_batch(room.view(full_house().ready));
             Q_EMIT table->opened(table->rows_model()->id_at(0));
             room.settle();
         },
         {why}},
        {"correct_a_soak", "ui/shed/soak_step.cpp",
         [](Room& room) {
             auto* step = room.show(new ui::SoakStep(room.desk()));
             const work::BatchView batch = room.view(full_house().soaking);
             step->show_batch(batch);
             for (ui::RecordTable* table : step->findChildren<ui::RecordTable*>()) {
                 if (table->rows_model()->rowCount() > 0 && room.dialog() == nullptr)
                     Q_EMIT table->opened(table->rows_model()->id_at(0));
             }
             room.settle();
         },
         {{"strips", "470"}, why}},
        {"correct_a_weighing", "ui/shed/weighings_table.cpp", first_row<ui::WeighingsTable>(&House::weighed),
         {{"total", "338"}, why}},
        {"correct_a_bag_of_a_batch", "ui/shed/bags_table.cpp", first_row<ui::BagsTable>(&House::ready), {{"packed", "79"}, why}},
        {"correct_a_pail_of_a_batch", "ui/shed/pails_table.cpp", first_row<ui::PailsTable>(&House::near), {{"mass", "14"}, why}},
        {"open_a_batch_again", "ui/shed/leftovers_step.cpp", button<ui::LeftoversStep>(&House::closed, "open_again"), {why}},
    };
}

} // namespace soakbook::tests
