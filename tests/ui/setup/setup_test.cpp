// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up by keys: what is changed there holds from then on, changes no past, and stands in the history with its reason.
#include "tests/ui/bad_input/room.h"

#include "core/work/figures.h"
#include "core/work/register_view.h"
#include "core/work/setup.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/field.h"
#include "ui/parts/form.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/register/register_place.h"
#include "ui/setup/setup_place.h"

#include <QApplication>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <algorithm>
#include <optional>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

class SetUps : public testing::Test {
protected:
    SetUps() : room(QStringLiteral("en")) { place = room.show(ui::make_setup_place(room.desk(), {})); }

    void open(const char* task, const QVariantMap& prefill = {}) {
        place->open({ui::PlaceName::setup, QLatin1String(task), {}, prefill});
        room.settle();
    }
    /// The field of that name that is to be seen.
    ui::Field* field(const char* name) const {
        for (QWidget* top : {static_cast<QWidget*>(room.dialog()), static_cast<QWidget*>(place)}) {
            for (ui::Field* found : top != nullptr ? top->findChildren<ui::Field*>(QLatin1String(name)) : QList<ui::Field*>()) {
                if (found->isVisible())
                    return found;
            }
        }
        ADD_FAILURE() << "not to be seen: " << name;
        throw std::runtime_error(name);
    }
    void type_into(const char* name, const QString& text) {
        QWidget* editor = field(name)->editor();
        editor->setFocus();
        QTest::keyClick(editor, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(editor, text);
        room.settle();
    }
    void enter() {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
        room.settle();
    }
    void press(const char* button) {
        auto* found = place->findChild<QPushButton*>(QLatin1String(button));
        found->setFocus();
        QTest::keyClick(found, Qt::Key_Space);
        room.settle();
    }
    std::optional<qint64> said(work::Figure figure) { return work::figure(room.book(), figure); }

    Room room;
    ui::Place* place = nullptr;
};

} // namespace

TEST_F(SetUps, a_figure_is_changed_with_where_it_comes_from_and_the_history_shows_both) {
    open("figure", {{QStringLiteral("key"), QStringLiteral("rest_days")}});
    ASSERT_EQ(said(work::Figure::rest_days), 7);
    EXPECT_TRUE(field("figure_rest_days")->editor()->hasFocus());
    type_into("figure_rest_days", QStringLiteral("9"));
    type_into("figures_source", QStringLiteral("our own trials"));
    enter();
    EXPECT_EQ(said(work::Figure::rest_days), 9);

    std::vector<work::CorrectionLine> lines;
    for (qint64 id = 1; id < 100; ++id) {
        for (const work::CorrectionLine& line : work::history(room.book(), QStringLiteral("figure"), id)) {
            if (line.after == QLatin1String("9") || line.after == QLatin1String("our own trials"))
                lines.push_back(line);
        }
    }
    ASSERT_EQ(lines.size(), 2U) << "its value and its source";
    const auto value = std::find_if(lines.begin(), lines.end(), [](const auto& line) { return line.after == QLatin1String("9"); });
    ASSERT_NE(value, lines.end());
    EXPECT_EQ(value->before, QStringLiteral("7"));
    EXPECT_EQ(value->who, QStringLiteral("Ada"));
    const auto newest = work::journal(room.book(), 1);
    ASSERT_EQ(newest.size(), 1U);
    EXPECT_EQ(newest[0].at, room.desk().now());
    EXPECT_EQ(newest[0].records, 1);
}

TEST_F(SetUps, a_changed_figure_changes_no_bag_that_stands) {
    const auto rests = [this] { return work::bag(room.book(), full_house().bags_of(full_house().resting)[0], room.desk().today())->rest_until; };
    const auto before = rests();
    open("figure", {{QStringLiteral("key"), QStringLiteral("rest_days")}});
    type_into("figure_rest_days", QStringLiteral("30"));
    enter();
    ASSERT_EQ(said(work::Figure::rest_days), 30);
    EXPECT_EQ(rests(), before);
}

TEST_F(SetUps, a_figure_that_cannot_be_is_refused_beside_it_and_stays_typed) {
    open("figure", {{QStringLiteral("key"), QStringLiteral("tank_ceiling")}});
    const auto before = said(work::Figure::tank_ceiling);
    type_into("figure_tank_ceiling", QStringLiteral("600"));
    enter();
    EXPECT_FALSE(field("figure_tank_ceiling")->line_text().isEmpty());
    EXPECT_EQ(qobject_cast<QLineEdit*>(field("figure_tank_ceiling")->editor())->text(), QStringLiteral("600"));
    EXPECT_EQ(said(work::Figure::tank_ceiling), before);
}

TEST_F(SetUps, a_person_is_added_and_leaves) {
    open("people");
    press("people_add");
    type_into("person_name", QStringLiteral("Bo"));
    enter();
    EXPECT_EQ(room.dialog(), nullptr);
    const auto bo = [this] {
        const auto all = work::people(room.book());
        const auto found = std::find_if(all.begin(), all.end(), [](const work::PersonLine& p) { return p.name == QLatin1String("Bo"); });
        return found != all.end() ? std::optional(*found) : std::nullopt;
    };
    ASSERT_TRUE(bo());
    EXPECT_TRUE(bo()->active);
    auto* table = place->findChild<ui::RecordTable*>(QStringLiteral("people_table"));
    const auto row_of_bo = [&] {
        for (int row = 0; row < table->model()->rowCount(); ++row) {
            if (table->rows_model()->id_at(row) == bo()->id.value)
                return row;
        }
        return -1;
    };
    ASSERT_GE(row_of_bo(), 0);
    EXPECT_EQ(table->model()->index(row_of_bo(), 1).data().toString(), QStringLiteral("works here"));
    table->setFocus();
    table->setCurrentIndex(table->model()->index(row_of_bo(), 0));
    QTest::keyClick(table, Qt::Key_Return);
    room.settle();
    ASSERT_NE(room.dialog(), nullptr);
    auto* active = room.dialog()->findChild<ui::YesNoField*>();
    ASSERT_NE(active, nullptr);
    ASSERT_TRUE(active->isVisible());
    active->editor()->setFocus();
    QTest::keyClick(active->editor(), Qt::Key_N);
    enter();
    EXPECT_EQ(room.dialog(), nullptr);
    ASSERT_TRUE(bo()) << "who has left stays in the records";
    EXPECT_FALSE(bo()->active);
    ASSERT_GE(row_of_bo(), 0);
    EXPECT_EQ(table->model()->index(row_of_bo(), 1).data().toString(), QStringLiteral("has left"));
    // The same name a second time is refused beside it.
    press("people_add");
    type_into("person_name", QStringLiteral("Bo"));
    enter();
    ASSERT_NE(room.dialog(), nullptr);
    EXPECT_TRUE(field("person_name")->line_text().contains(QLatin1String("Bo"))) << field("person_name")->line_text().toStdString();
}

TEST_F(SetUps, a_bin_is_added_and_its_page_shows_it) {
    open("vessels");
    press("vessels_add");
    type_into("bin_name", QStringLiteral("bin 3"));
    type_into("bin_strips", QStringLiteral("240"));
    enter();
    ASSERT_EQ(room.dialog(), nullptr);
    const auto* table = place->findChild<ui::RecordTable*>(QStringLiteral("vessels_table"));
    QStringList names;
    for (int row = 0; row < table->model()->rowCount(); ++row)
        names << table->model()->index(row, 0).data().toString();
    EXPECT_TRUE(names.contains(QStringLiteral("bin 3"))) << names.join(QLatin1Char(' ')).toStdString();
}

} // namespace soakbook::tests
