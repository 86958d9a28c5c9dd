// SPDX-License-Identifier: GPL-3.0-or-later
// The forms of Set-up, and the welcome.
#include "tests/ui/bad_input/form_case.h"

#include "core/work/safe_copies.h"
#include "core/work/setup.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/safekeeping/comparison_window.h"
#include "ui/setup/figures_page.h"
#include "ui/setup/habits_page.h"
#include "ui/setup/operation_page.h"
#include "ui/setup/people_page.h"
#include "ui/setup/safe_copies_page.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/strip_kinds_page.h"
#include "ui/setup/vessels_page.h"
#include "ui/setup/welcome.h"

#include <QFile>
#include <QPushButton>

namespace soakbook::tests {

namespace {

template <class Page> std::function<void(Room&)> page() {
    return [](Room& room) {
        auto* shown = room.show(new Page(room.desk()));
        shown->refresh();
        room.settle();
    };
}
template <class Page> std::function<void(Room&)> button_of(const char* name) {
    return [name](Room& room) {
        auto* shown = room.show(new Page(room.desk()));
        shown->refresh();
        shown->template findChild<QPushButton*>(QLatin1String(name))->click();
        room.settle();
    };
}

} // namespace

std::vector<FormCase> setup_forms() {
    return {
        {"operation", "ui/setup/operation_page.cpp", page<ui::OperationPage>(), {{"name", "Bench apiary north"}}},
        {"figures", "ui/setup/figures_page.cpp", page<ui::FiguresPage>(), {{"rest_days", "8"}, {"source", "the label"}}},
        {"reading_and_writing", "ui/setup/habits_page.cpp", page<ui::HabitsPage>(), {}, false, false},
        {"take_over", "ui/safekeeping/comparison_window.cpp",
         [](Room& room) {
             // Carried on a stick, and one person more was written down there.
             const QString path = room.new_path();
             QFile::remove(path);
             if (!QFile::copy(room.path(), path))
                 throw std::runtime_error("the workbook was not copied");
             {
                 auto other = book::Workbook::open(path);
                 must(work::save_person(**other, {{}, QStringLiteral("Bea"), true}, on_day(FullHouse::today, 9)));
             }
             ui::open_comparison(room.desk(), path, &room.window());
             room.settle();
         },
         {{"reason", "written on the road"}}},
        {"put_back", "ui/setup/safe_copies_page.cpp",
         [](Room& room) {
             ui::WorkbookDoors doors;
             doors.copy_folder = room.new_path() + QStringLiteral(".copies");
             must(work::make_safe_copy(room.book(), doors.copy_folder));
             doors.put_back = [](const QString&, const QString&) {}; // the session's to do
             auto* page = room.show(new ui::SafeCopiesPage(room.desk(), doors));
             page->refresh();
             auto* copies = page->findChild<ui::RecordTable*>(QStringLiteral("safe_copies"));
             copies->choose(copies->rows_model()->id_at(0));
             page->findChild<QPushButton*>(QStringLiteral("safe_copy_put_back"))->click();
             room.settle();
         },
         {{"reason", "entered in the wrong year"}}},
        {"person", "ui/setup/people_page.cpp", button_of<ui::PeoplePage>("people_add"), {{"name", "Bo"}}},
        {"bin", "ui/setup/vessels_page.cpp", button_of<ui::VesselsPage>("vessels_add"), {{"name", "bin 3"}, {"strips_held", "400"}, {"flood", "28"}}},
        {"tank", "ui/setup/vessels_page.cpp", button_of<ui::VesselsPage>("vessels_add_tank"), {{"name", "tank 2"}, {"capacity", "60"}}},
        {"strip_kind", "ui/setup/strip_kinds_page.cpp", button_of<ui::StripKindsPage>("strip_kinds_add"),
         {{"name", "card 12 g"}, {"dry", "12"}, {"target", "36"}, {"tolerance", "0.5"}, {"strips_per_bag", "80"}}},
        {"strip_kind_so_many_a_hive", "ui/setup/strip_kinds_page.cpp", button_of<ui::StripKindsPage>("strip_kinds_add"),
         {{"name", "card 12 g"}, {"dry", "12"}, {"target", "36"}, {"tolerance", "0.5"}, {"strips_per_bag", "80"}, {"dose_rule", "#4"},
          {"dose_strips", "4"}, {"dose_least", "1"}, {"dose_most", "8"}}},
        {"strip_kind_by_frames", "ui/setup/strip_kinds_page.cpp", button_of<ui::StripKindsPage>("strip_kinds_add"),
         {{"name", "card 12 g"}, {"dry", "12"}, {"target", "36"}, {"tolerance", "0.5"}, {"strips_per_bag", "80"}, {"dose_rule", "#2"},
          {"dose_frames_tenths", "2.5"}}},
        {"welcome", "ui/setup/welcome.cpp",
         [](Room& room) {
             // As the session does: the file first, then what stands in it.
             const auto make = [&room](const ui::WelcomeAnswer& answer) -> std::optional<work::Refusal> {
                 const QString path = room.new_path();
                 QFile::remove(path);
                 if (answer.path != path) {
                     const work::Why why = answer.path.isEmpty() ? work::Why::missing : work::Why::read_only;
                     return work::Refusal{why, QStringLiteral("path"), {}, false};
                 }
                 auto made = book::Workbook::create(path, room.desk().doing());
                 const auto done = work::first_set_up(**made, answer.set_up, room.desk().doing());
                 made->reset();
                 if (!done)
                     QFile::remove(path);
                 return ui::refusal_of(done);
             };
             room.show(new ui::Welcome(room.desk(), room.new_path(), make));
         },
         {{"operation/name", "Bench"},
          {"person", "Ada"},
          {"kind/name", "card 11 g"},
          {"kind/dry", "11"},
          {"kind/target", "34"},
          {"kind/tolerance", "0.5"},
          {"kind/strips_per_bag", "80"},
          {"tank/name", "tank"},
          {"tank/capacity", "80"},
          {"bin/name", "bin"},
          {"bin/strips_held", "480"},
          {"bin/flood", "30"}}},
    };
}

std::vector<FormCase> all_forms() {
    std::vector<FormCase> all;
    for (const auto& some : {shed_forms(), shed_correction_forms(), store_forms(), yards_forms(), setup_forms()})
        all.insert(all.end(), some.begin(), some.end());
    return all;
}

} // namespace soakbook::tests
