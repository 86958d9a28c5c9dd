// SPDX-License-Identifier: GPL-3.0-or-later
// Each row of Due, pressed by keys in the whole window: it leads to the right place, about the right batch, yard, bags or
// pails, with the keyboard where the work begins.
#include "tests/ui/bad_input/room.h"

#include "core/work/bag.h"
#include "core/work/due.h"
#include "core/work/papers.h"
#include "ui/due/due_place.h"
#include "ui/parts/field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/frame.h"
#include "ui/shell/places.h"

#include <QApplication>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <map>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

using work::DueKind;
using work::DueRow;

/// Where a row must lead.
struct LeadsTo {
    DueKind kind;
    ui::PlaceName place;
    /// The name of the field, button or table that has the keyboard, or of the dialog that is open; any of them.
    QStringList there;
};

const std::vector<LeadsTo>& ways() {
    const auto names = [](std::initializer_list<const char*> all) {
        QStringList list;
        for (const char* name : all)
            list << QLatin1String(name);
        return list;
    };
    using ui::PlaceName;
    static const std::vector<LeadsTo> all{
        {DueKind::over_ceiling, PlaceName::shed, names({"reading_probe"})},
        {DueKind::read_tank, PlaceName::shed, names({"reading_probe"})},
        {DueKind::stir_tank, PlaceName::shed, names({"stir_minutes", "stir_clear"})},
        {DueKind::weigh_planned, PlaceName::shed, names({"weigh_in_1"})},
        {DueKind::weigh_strips, PlaceName::shed, names({"weigh_strips", "weigh_total"})},
        {DueKind::bag_strips, PlaceName::shed, names({"bag_count"})},
        {DueKind::fill_reserved, PlaceName::shed, names({"fill_strips_1"})},
        {DueKind::pour_or_close, PlaceName::shed, names({"pour_pail_1"})},
        {DueKind::rest_ends, PlaceName::store, names({"move_form"})},
        {DueKind::bags_near_limit, PlaceName::store, names({"store_bags"})},
        {DueKind::bags_past_limit, PlaceName::store, names({"discard_form"})},
        {DueKind::opened_too_long, PlaceName::store, names({"store_bags"})},
        {DueKind::pail_waits, PlaceName::store, names({"store_pails"})},
        {DueKind::print_label_again, PlaceName::store, names({"label_dialog"})},
        {DueKind::pull_past, PlaceName::yards, names({"pull_grid"})},
        {DueKind::pull_open, PlaceName::yards, names({"pull_grid"})},
        {DueKind::pull_opens, PlaceName::yards, names({"sheet_dialog"})},
        {DueKind::pull_dead, PlaceName::yards, names({"pull_grid"})},
        {DueKind::count_mites, PlaceName::yards, names({"count_grid"})},
        {DueKind::visit_yard, PlaceName::yards, names({"visit_grid"})},
        {DueKind::round_short, PlaceName::shed, names({"mix_strips"})},
        {DueKind::figure_missing, PlaceName::setup, {}},
        {DueKind::safe_copy_late, PlaceName::setup, {}},
        {DueKind::second_place, PlaceName::setup, {}},
    };
    return all;
}

class WholeWindow : public testing::Test {
protected:
    WholeWindow() : room(QStringLiteral("en")) {
        for (ui::Place* place : ui::make_places(room.desk(), {QStringLiteral("copies"), {}, {}, {}})) {
            if (place->place() == ui::PlaceName::due) {
                delete place;
                place = ui::make_due_place(room.desk(), [this] { return more; });
            }
            places.push_back(place);
        }
        frame = room.show(new ui::Frame(room.desk(), places));
    }
    std::vector<DueRow> rows() {
        auto all = work::due(room.book(), room.desk().now());
        all.insert(all.end(), more.begin(), more.end());
        std::stable_sort(all.begin(), all.end(), [](const DueRow& a, const DueRow& b) { return a.group < b.group; });
        return all;
    }
    /// Goes to Due and presses the button of the n-th row with Space.
    void press(std::size_t nth) {
        if (QDialog* open = room.dialog())
            delete open;
        frame->go_to(ui::PlaceName::due);
        frame->refresh();
        room.settle();
        auto* button = frame->findChild<QPushButton*>(QStringLiteral("due_%1").arg(nth));
        ASSERT_NE(button, nullptr) << "no row " << nth;
        button->setFocus(Qt::TabFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
        room.settle();
        room.settle();
    }
    /// The names of what has the keyboard and of all that it is in.
    QStringList here() const {
        QStringList names;
        for (const QWidget* at = QApplication::focusWidget(); at != nullptr; at = at->parentWidget())
            names << at->objectName();
        if (const QDialog* open = room.dialog())
            names << open->objectName() << QString::fromLatin1(open->metaObject()->className());
        return names;
    }
    std::vector<qint64> chosen(const char* table) const {
        auto* found = frame->findChild<ui::RecordTable*>(QLatin1String(table));
        auto ids = found->chosen_ids();
        std::sort(ids.begin(), ids.end());
        return ids;
    }
    QString text_of(const char* field) const { return qobject_cast<QLineEdit*>(frame->findChild<ui::Field*>(QLatin1String(field))->editor())->text(); }
    void look(const DueRow& row, const LeadsTo& way);

    Room room;
    std::vector<DueRow> more;
    std::vector<ui::Place*> places;
    ui::Frame* frame = nullptr;
};

void WholeWindow::look(const DueRow& row, const LeadsTo& way) {
    const int kind = static_cast<int>(row.kind);
    EXPECT_EQ(frame->current_place()->place(), way.place) << "kind " << kind;
    const QStringList names = here();
    const bool there = way.there.isEmpty() || std::any_of(way.there.begin(), way.there.end(), [&](const QString& name) { return names.contains(name); });
    EXPECT_TRUE(there) << "kind " << kind << " leads to " << names.join(QLatin1Char(' ')).toStdString();
    const QString title = frame->current_place()->title();
    if (row.batch) {
        const QString code = room.view(row.batch).line.code;
        EXPECT_TRUE(title.contains(code)) << "kind " << kind << ": " << title.toStdString();
    }
    if (row.yard && way.place == ui::PlaceName::yards) {
        EXPECT_TRUE(title.contains(QLatin1String("Mill lane"))) << "kind " << kind << ": " << title.toStdString();
    }
    std::vector<qint64> ids = row.ids;
    std::sort(ids.begin(), ids.end());
    if (way.place == ui::PlaceName::store) {
        const bool pails = row.of_pails || row.kind == DueKind::pail_waits;
        EXPECT_EQ(chosen(pails ? "store_pails" : "store_bags"), ids) << "kind " << kind;
    }
    if (row.kind == DueKind::round_short) {
        EXPECT_EQ(text_of("mix_strips"), QString::number(row.strips));
    }
    if (row.kind == DueKind::figure_missing) {
        EXPECT_TRUE(names.contains(QStringLiteral("figure_") + row.subject)) << row.subject.toStdString() << " is not where the keyboard is";
    }
}

} // namespace

TEST_F(WholeWindow, each_row_of_the_full_house_leads_to_where_its_work_is_done) {
    const std::vector<DueRow> all = rows();
    std::set<DueKind> seen;
    for (std::size_t i = 0; i < all.size(); ++i) {
        press(i);
        const auto way = std::find_if(ways().begin(), ways().end(), [&](const LeadsTo& w) { return w.kind == all[i].kind; });
        ASSERT_NE(way, ways().end());
        look(all[i], *way);
        seen.insert(all[i].kind);
        ASSERT_EQ(rows().size(), all.size()) << "looking changed what is due";
    }
    EXPECT_GE(seen.size(), 10U);
}

TEST_F(WholeWindow, rows_that_the_full_house_lacks_lead_to_where_their_work_is_done) {
    std::set<DueKind> there;
    for (const DueRow& row : rows())
        there.insert(row.kind);
    const FullHouse& house = full_house();
    const auto ready = full_house().bags_of(house.ready);
    for (const LeadsTo& way : ways()) {
        if (there.count(way.kind) > 0)
            continue;
        DueRow row;
        row.kind = way.kind;
        row.group = work::DueGroup::now;
        switch (way.kind) {
        case DueKind::over_ceiling:
        case DueKind::read_tank:
        case DueKind::stir_tank: row.batch = house.warm; break;
        case DueKind::weigh_planned: row.batch = house.planned; break;
        case DueKind::weigh_strips: row.batch = house.soaking; break;
        case DueKind::bag_strips:
        case DueKind::fill_reserved: row.batch = house.weighed; break;
        case DueKind::pour_or_close: row.batch = house.ready; break;
        case DueKind::pull_past:
        case DueKind::pull_open:
        case DueKind::pull_opens:
        case DueKind::pull_dead:
        case DueKind::count_mites: row.yard = house.yard; break;
        case DueKind::visit_yard:
            row.yard = house.yard;
            row.round = house.autumn;
            break;
        case DueKind::round_short: row.strips = 480; break;
        case DueKind::figure_missing: row.subject = QStringLiteral("mite_threshold"); break;
        case DueKind::pail_waits: row.ids = {house.pails[0].value}; break;
        case DueKind::safe_copy_late:
        case DueKind::second_place: break;
        default: row.ids = {ready[3].value, ready[4].value}; break;
        }
        more = {row};
        const std::vector<DueRow> all = rows();
        const auto at = std::find_if(all.begin(), all.end(), [&](const DueRow& each) { return each.kind == way.kind; });
        press(static_cast<std::size_t>(at - all.begin()));
        look(row, way);
    }
}

TEST_F(WholeWindow, labels_to_print_again_are_those_of_the_pails_that_were_corrected) {
    const work::PailId pail = full_house().pails.at(2);
    must(work::labels_printed(room.book(), {}, {pail}, room.desk().doing()));
    must(work::correct_pail(room.book(), pail, maths::kilograms(14), room.desk().doing(QStringLiteral("weighed again"))));
    const std::vector<DueRow> all = rows();
    const auto at = std::find_if(all.begin(), all.end(), [](const DueRow& row) { return row.kind == DueKind::print_label_again && row.of_pails; });
    ASSERT_NE(at, all.end());
    EXPECT_EQ(at->ids, std::vector<qint64>{pail.value});
    press(static_cast<std::size_t>(at - all.begin()));
    EXPECT_EQ(chosen("store_pails"), std::vector<qint64>{pail.value});
    auto* table = frame->findChild<ui::RecordTable*>(QStringLiteral("store_pails"));
    EXPECT_TRUE(table->isVisible()) << "the bags are shown";
    ASSERT_NE(room.dialog(), nullptr) << "no labels are shown";
    EXPECT_STREQ(room.dialog()->metaObject()->className(), "soakbook::ui::LabelDialog");
}

TEST_F(WholeWindow, arrows_walk_the_rows) {
    frame->go_to(ui::PlaceName::due);
    frame->current_place()->take_focus();
    room.settle();
    ASSERT_NE(QApplication::focusWidget(), nullptr);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("due_0"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("due_1"));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up);
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("due_0"));
}

} // namespace soakbook::tests
