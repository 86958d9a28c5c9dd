// SPDX-License-Identifier: GPL-3.0-or-later
// Every page and form at both window sizes, light and dark, at 100 and 150 % text: no text is cut off. With
// SOAKBOOK_PICTURES set to a folder, each is saved there to be looked at.
#include "tests/ui/store/full_store.h"
#include "tests/ui/store/room.h"
#include "ui/parts/theme.h"

#include <QApplication>
#include <QDialog>
#include <QDir>

namespace soakbook::tests {
namespace {

struct Wear {
    const char* name;
    ui::Look look;
    int percent;
    QSize size; ///< of the page, without navigation and head
};

const Wear wears[] = {
    {"light", ui::Look::light, 100, {1292, 810}},
    {"dark", ui::Look::dark, 100, {1292, 810}},
    {"small", ui::Look::light, 100, {1132, 630}},
    {"large_text", ui::Look::light, 150, {1218, 800}},
};

class StorePictures : public testing::TestWithParam<Wear> {
protected:
    StorePictures() { ui::apply_theme(*qobject_cast<QApplication*>(qApp), GetParam().look, GetParam().percent); }
    ~StorePictures() override { ui::apply_theme(*qobject_cast<QApplication*>(qApp), ui::Look::light, 100); }

    static void look(StoreRoom& room, const char* name) {
        room.window().resize(GetParam().size);
        room.settle();
        QWidget* shown = room.dialog() != nullptr ? static_cast<QWidget*>(room.dialog()) : &room.window();
        const QStringList clipped = clipped_texts(shown);
        EXPECT_TRUE(clipped.isEmpty()) << GetParam().name << " " << name << ": "
                                       << clipped.join(QStringLiteral(" | ")).toStdString();
        const QString folder = qEnvironmentVariable("SOAKBOOK_PICTURES");
        if (!folder.isEmpty()) {
            QDir().mkpath(folder);
            shown->grab().save(
                QStringLiteral("%1/%2_%3.png").arg(folder, QLatin1String(name), QLatin1String(GetParam().name)));
        }
    }
    static void look_at_form(StoreRoom& room, const char* button, const char* name) {
        room.press(button);
        look(room, name);
        room.key(Qt::Key_Escape);
        EXPECT_EQ(room.dialog(), nullptr) << name;
    }
};

} // namespace

TEST_P(StorePictures, no_text_of_bags_is_cut_off) {
    FullStore bench;
    StoreRoom room(bench, FullStore::last_day);
    look(room, "bags");
    room.wish("bag", {bench.bags_of(bench.ready)[1].value});
    look(room, "bag_with_story");
    look_at_form(room, "bag_discard", "bag_discard");
    look_at_form(room, "bag_recount", "bag_recount");
    look_at_form(room, "bag_correct", "bag_correct");
    look_at_form(room, "bag_opened", "bag_opened");
    look_at_form(room, "bag_move", "bag_move");
    look_at_form(room, "bag_void", "bag_void");
    look_at_form(room, "bag_history", "bag_history");
    room.wish("bags", {bench.bags_of(bench.near)[0].value, bench.bags_of(bench.near)[2].value});
    look(room, "bags_several");
    room.press("bags_filter_all");
    look(room, "bags_all");
    room.press("bags_filter_reserved");
    look(room, "bags_reserved");
}

TEST_P(StorePictures, no_text_of_pails_and_deliveries_is_cut_off) {
    FullStore bench;
    StoreRoom room(bench, FullStore::last_day);
    room.wish("pail", {bench.pails[2].value});
    look(room, "pails");
    look_at_form(room, "pail_used_in_part", "pail_used_in_part");
    look_at_form(room, "pail_discard", "pail_discard");
    look_at_form(room, "pail_correct", "pail_correct");
    room.wish("lot", {bench.acid.value});
    look(room, "lots");
    look_at_form(room, "lot_recount", "lot_recount");
    look_at_form(room, "lot_finished", "lot_finished");
    look_at_form(room, "new_delivery", "lot_new");
}

TEST_P(StorePictures, no_text_of_empty_pages_is_cut_off) {
    Bench bench(SetUp::nothing);
    StoreRoom room(bench, 0);
    look(room, "empty_bags");
    room.wish("pails");
    look(room, "empty_pails");
    room.wish("lots");
    look(room, "empty_lots");
}

TEST(StoreLook, changes_while_the_place_is_open) {
    FullStore bench;
    StoreRoom room(bench, FullStore::last_day);
    room.wish("bag", {bench.bags_of(bench.ready)[1].value});
    auto& application = *qobject_cast<QApplication*>(qApp);
    for (const int percent : {200, 150, 100}) {
        ui::apply_theme(application, ui::Look::dark, percent);
        room.settle();
        ui::apply_theme(application, ui::Look::light, percent);
        room.settle();
    }
    EXPECT_TRUE(room.is_seen("bag_card"));
    EXPECT_EQ(clipped_texts(&room.window()), QStringList());
}

INSTANTIATE_TEST_SUITE_P(Looks, StorePictures, testing::ValuesIn(wears),
                         [](const auto& wear) { return std::string(wear.param.name); });

} // namespace soakbook::tests
