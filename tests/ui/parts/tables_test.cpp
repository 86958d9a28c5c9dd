// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/course.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/side_list.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPersistentModelIndex>
#include <QPointer>
#include <QScrollBar>
#include <QShortcut>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <numeric>

namespace soakbook::ui {
namespace {

struct HiveRow {
    qint64 id = 0;
    QString code;
    int strips = 0;
};

std::vector<Column<HiveRow>> columns() {
    std::vector<Column<HiveRow>> made(2);
    made[0].header = QStringLiteral("Hive");
    made[0].text = [](const HiveRow& r) { return r.code; };
    made[0].type = CellType::code;
    made[1].header = QStringLiteral("Strips");
    made[1].text = [](const HiveRow& r) { return QString::number(r.strips); };
    made[1].align = Qt::AlignRight;
    made[1].sort_key = [](const HiveRow& r) { return QVariant(r.strips); };
    made[1].write = [](HiveRow& r, const QString& text) {
        bool reads = false;
        const int strips = text.toInt(&reads);
        r.strips = reads ? strips : r.strips;
        return reads;
    };
    return made;
}

class Tables : public testing::Test {
protected:
    Tables() : model(columns(), [](const HiveRow& r) { return r.id; }) {}

    static HiveRow hive(qint64 id, int strips) { return {id, QStringLiteral("SC-%1").arg(id, 2, 10, QLatin1Char('0')), strips}; }
    std::vector<qint64> ids() const {
        std::vector<qint64> shown;
        for (int line = 0; line < model.rowCount(); ++line) {
            shown.push_back(model.id_at(line));
        }
        return shown;
    }

    RowsModel<HiveRow> model;
    QAbstractItemModelTester tester{&model, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

TEST_F(Tables, rows_come_go_and_move_by_the_rules_of_a_model) {
    model.set_rows({hive(1, 4), hive(2, 3), hive(3, 5)});
    EXPECT_EQ(ids(), (std::vector<qint64>{1, 2, 3}));
    model.set_rows({hive(3, 5), hive(4, 1), hive(1, 4)});
    EXPECT_EQ(ids(), (std::vector<qint64>{3, 4, 1}));
    model.set_rows({});
    EXPECT_EQ(model.rowCount(), 0);
    model.set_rows({hive(7, 2)});
    EXPECT_EQ(ids(), (std::vector<qint64>{7}));
    EXPECT_EQ(model.find(7)->strips, 2);
    EXPECT_EQ(model.find(8), nullptr);
}

TEST_F(Tables, an_index_that_is_kept_follows_its_row) {
    model.set_rows({hive(1, 4), hive(2, 3), hive(3, 5)});
    const QPersistentModelIndex kept = model.index(1, 0);
    model.set_rows({hive(9, 1), hive(3, 5), hive(2, 8)});
    ASSERT_TRUE(kept.isValid());
    EXPECT_EQ(kept.data().toString(), QStringLiteral("SC-02"));
    EXPECT_EQ(kept.row(), 2);
    model.set_rows({hive(3, 5)});
    EXPECT_FALSE(kept.isValid());
}

TEST_F(Tables, sorting_is_by_number_and_stays_when_rows_are_asked_again) {
    model.set_rows({hive(1, 10), hive(2, 9), hive(3, 100)});
    model.sort(1, Qt::AscendingOrder);
    EXPECT_EQ(ids(), (std::vector<qint64>{2, 1, 3}));
    model.set_rows({hive(1, 10), hive(2, 200), hive(3, 100), hive(4, 1)});
    EXPECT_EQ(ids(), (std::vector<qint64>{4, 1, 3, 2}));
    model.sort(1, Qt::DescendingOrder);
    EXPECT_EQ(ids(), (std::vector<qint64>{2, 3, 1, 4}));
    model.sort(-1, Qt::AscendingOrder);
    EXPECT_EQ(ids(), (std::vector<qint64>{1, 2, 3, 4}));
}

TEST_F(Tables, what_is_chosen_and_scrolled_to_survives_new_rows) {
    RecordTable table(QStringLiteral("test/hives"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    std::vector<HiveRow> rows;
    for (int i = 1; i <= 60; ++i) {
        rows.push_back(hive(i, i));
    }
    model.set_rows(rows);
    table.resize(500, 300);
    table.show();
    table.choose(40);
    const int scrolled = table.verticalScrollBar()->value();
    ASSERT_GT(scrolled, 0);
    rows.insert(rows.begin() + 50, hive(99, 0));
    model.set_rows(rows);
    EXPECT_EQ(table.current_id(), 40);
    EXPECT_EQ(table.chosen_ids(), (std::vector<qint64>{40}));
    EXPECT_EQ(table.verticalScrollBar()->value(), scrolled);
}

TEST_F(Tables, a_row_that_is_chosen_by_the_page_stays_chosen_while_ctrl_is_held) {
    RecordTable table(QStringLiteral("test/ctrl"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    table.set_many_can_be_chosen(true);
    model.set_rows({hive(1, 4), hive(2, 3), hive(3, 5)});
    table.show();
    table.choose(2);
    // As after Ctrl+Enter in a form: the page chooses the row that was entered before the key is let go.
    QShortcut entered(QKeySequence(int{Qt::CTRL} | int{Qt::Key_Return}), &table);
    std::vector<qint64> next{2};
    QObject::connect(&entered, &QShortcut::activated, &table, [&] {
        for (const qint64 id : next) {
            table.choose(id);
        }
    });
    QApplication::setActiveWindow(&table);
    QTest::keyClick(&table, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(table.chosen_ids(), (std::vector<qint64>{2}));
    next = {3};
    QTest::keyClick(&table, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(table.chosen_ids(), (std::vector<qint64>{3}));
    EXPECT_EQ(table.current_id(), 3);
    next = {99};
    QTest::keyClick(&table, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(table.chosen_ids().empty()) << "a row that is not there chooses none";
    EXPECT_EQ(table.current_id(), 0);
}

TEST_F(Tables, enter_and_a_double_click_open_a_row) {
    RecordTable table(QStringLiteral("test/open"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    model.set_rows({hive(1, 4), hive(2, 3)});
    table.resize(500, 300);
    table.show();
    QSignalSpy opened(&table, &RecordTable::opened);
    table.setCurrentIndex(model.index(1, 0));
    QTest::keyClick(&table, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.takeFirst().front().toLongLong(), 2);
    const QPoint first = table.visualRect(model.index(0, 0)).center();
    QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, first);
    QTest::mouseDClick(table.viewport(), Qt::LeftButton, {}, first);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened.takeFirst().front().toLongLong(), 1);
}

TEST_F(Tables, figures_are_typed_down_a_column_with_enter) {
    RecordTable table(QStringLiteral("test/type"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    model.set_rows({hive(1, 4), hive(2, 4), hive(3, 4)});
    table.resize(500, 300);
    table.show();
    QApplication::setActiveWindow(&table);
    table.setFocus();
    table.setCurrentIndex(model.index(0, 1));
    QTest::keyClick(&table, Qt::Key_7);
    auto* cell = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(cell, nullptr);
    EXPECT_EQ(cell->text(), QStringLiteral("7"));
    model.set_rows({hive(1, 4), hive(2, 4), hive(3, 4), hive(4, 4)});
    EXPECT_EQ(cell->text(), QStringLiteral("7")) << "an open cell keeps what is typed when the rows are asked again";
    QTest::keyClick(cell, Qt::Key_Return);
    QTest::qWait(10);
    EXPECT_EQ(model.row_at(0).strips, 7);
    EXPECT_EQ(table.currentIndex().row(), 1);
    EXPECT_EQ(table.currentIndex().column(), 1);
}

TEST_F(Tables, a_cell_that_does_not_read_stays_open_with_its_text) {
    RecordTable table(QStringLiteral("test/refused"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    model.set_rows({hive(1, 4), hive(2, 4)});
    table.resize(500, 300);
    table.show();
    QApplication::setActiveWindow(&table);
    table.setFocus();
    table.setCurrentIndex(model.index(0, 1));
    QTest::keyClick(&table, Qt::Key_X);
    const QPointer<QWidget> cell = QApplication::focusWidget();
    QTest::keyClick(cell, Qt::Key_Return);
    QTest::qWait(10);
    ASSERT_TRUE(cell);
    EXPECT_EQ(table.refused_cell(), cell);
    EXPECT_EQ(model.row_at(0).strips, 4);
    QTest::keyClick(cell, Qt::Key_Escape);
    QTest::qWait(10);
    EXPECT_EQ(table.refused_cell(), nullptr);
}

TEST_F(Tables, widths_are_remembered_by_name) {
    {
        RecordTable table(QStringLiteral("test/widths"), QStringLiteral("Hives"));
        table.set_rows_model(&model);
        table.resize(600, 300);
        table.show();
        table.horizontalHeader()->resizeSection(0, 222);
        QTest::qWait(10);
    }
    RecordTable again(QStringLiteral("test/widths"), QStringLiteral("Hives"));
    again.set_rows_model(&model);
    again.resize(600, 300);
    again.show();
    EXPECT_EQ(again.columnWidth(0), 222);
    EXPECT_EQ(again.columnWidth(0) + again.columnWidth(1), again.viewport()->width());
}

TEST_F(Tables, a_column_grows_to_its_text_while_there_is_room) {
    RecordTable table(QStringLiteral("test/growing"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    table.set_start_widths({60, 60});
    HiveRow row = hive(1, 4);
    row.code = QStringLiteral("Row by the wall");
    model.set_rows({row});
    table.resize(600, 300);
    table.show();
    QTest::qWait(10);
    const int needed = table.itemDelegate()->sizeHint({}, model.index(0, 0)).width();
    EXPECT_GE(table.columnWidth(0), needed);
    EXPECT_EQ(table.columnWidth(0) + table.columnWidth(1), table.viewport()->width());
    EXPECT_EQ(table.horizontalScrollBar()->maximum(), 0);
}

TEST_F(Tables, a_column_that_can_be_spared_goes_where_there_is_no_room_and_comes_back) {
    RecordTable table(QStringLiteral("test/sparing"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    table.set_start_widths({150, 150});
    table.set_spared_columns({1});
    HiveRow row = hive(1, 4);
    row.code = QStringLiteral("A long row by the wall");
    model.set_rows({row});
    table.resize(210, 300);
    table.show();
    QTest::qWait(10);
    EXPECT_TRUE(table.isColumnHidden(1));
    EXPECT_FALSE(table.isColumnHidden(0));
    table.resize(600, 300);
    QTest::qWait(10);
    EXPECT_FALSE(table.isColumnHidden(1));
}

TEST_F(Tables, what_stands_small_under_a_text_is_read_aloud_with_it) {
    std::vector<Column<HiveRow>> made = columns();
    made[0].below = [](const HiveRow& r) { return r.strips < 4 ? QStringLiteral("1 missing") : QString(); };
    made[1].text = [](const HiveRow&) { return QString(); };
    made[1].below = [](const HiveRow&) { return QStringLiteral("none yet"); };
    RowsModel<HiveRow> small(made, [](const HiveRow& r) { return r.id; });
    small.set_rows({hive(1, 3), hive(2, 4)});
    RecordTable table(QStringLiteral("test/spoken"), QStringLiteral("Hives"));
    table.set_rows_model(&small);
    table.show();
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(&table);
    ASSERT_NE(spoken, nullptr);
    ASSERT_NE(spoken->tableInterface(), nullptr);
    const auto cell = [&](int row, int column) { return spoken->tableInterface()->cellAt(row, column)->text(QAccessible::Name).toStdString(); };
    EXPECT_EQ(cell(0, 0), "SC-01, 1 missing");
    EXPECT_EQ(cell(1, 0), "SC-02");
    EXPECT_EQ(cell(0, 1), "none yet");
}

TEST_F(Tables, rows_of_two_lines_are_higher) {
    RecordTable table(QStringLiteral("test/two_lines"), QStringLiteral("Hives"));
    table.set_rows_model(&model);
    model.set_rows({hive(1, 4)});
    const int one = table.rowHeight(0);
    table.set_two_lines(true);
    EXPECT_GT(table.rowHeight(0), one);
}

TEST(SideLists, what_is_chosen_stays_chosen_and_is_told_only_when_the_user_chooses) {
    SideList list(QStringLiteral("Batches"));
    list.set_items({{.id = 1, .code = QStringLiteral("B7K")}, {.id = 2, .code = QStringLiteral("B6H")}});
    list.resize(250, 300);
    list.show();
    QSignalSpy chosen(&list, &SideList::chosen);
    list.choose(2);
    list.set_items({{.id = 3, .code = QStringLiteral("B8M")}, {.id = 2, .code = QStringLiteral("B6H")}});
    EXPECT_EQ(list.current_id(), 2);
    EXPECT_EQ(chosen.count(), 0);
    QTest::keyClick(&list, Qt::Key_Up);
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen.front().front().toLongLong(), 3);
}

TEST(Courses, a_step_opens_from_its_head_and_one_without_a_body_does_not) {
    StepCourse course;
    Step* mix = course.add_step(QStringLiteral("Mix"));
    Step* heat = course.add_step(QStringLiteral("Heat and clear"));
    mix->set_body(new QLabel(QStringLiteral("planned and weighed")));
    course.resize(600, 400);
    course.show();
    mix->set_open(true, true);
    EXPECT_TRUE(mix->body()->isVisible());
    heat->set_open(true, true);
    EXPECT_FALSE(heat->is_open());
    mix->set_open(false);
    QTest::qWait(300);
    EXPECT_FALSE(mix->body()->isVisible());
}

} // namespace
} // namespace soakbook::ui
