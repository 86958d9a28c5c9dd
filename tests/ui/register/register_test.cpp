// SPDX-License-Identifier: GPL-3.0-or-later
// The Register by keys: its filters, its pages, and its file and paper, each beside what core/work says of the same days.
#include "tests/ui/bad_input/room.h"

#include "core/work/count.h"
#include "core/work/register_view.h"
#include "core/work/visit.h"
#include "core/work/watch.h"
#include "ui/papers/register_paper.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/print/ask_file.h"
#include "ui/register/register_place.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

using work::RegisterFilter;

class Registers : public testing::Test {
protected:
    Registers() : room(QStringLiteral("en")) {
        place = room.show(ui::make_register_place(room.desk()));
        place->refresh();
        room.settle();
    }
    ~Registers() override { ui::let_answer({}); }

    void type_into(const char* field, const QString& text) {
        auto* line = qobject_cast<QLineEdit*>(place->findChild<ui::Field*>(QLatin1String(field))->editor());
        line->setFocus();
        QTest::keyClick(line, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(line, text);
        room.settle();
    }
    ui::RecordTable* table(const char* name) const { return place->findChild<ui::RecordTable*>(QLatin1String(name)); }
    std::vector<qint64> shown() const {
        std::vector<qint64> ids;
        for (int row = 0; row < table("register_treatments")->model()->rowCount(); ++row)
            ids.push_back(table("register_treatments")->rows_model()->id_at(row));
        std::sort(ids.begin(), ids.end());
        return ids;
    }
    std::vector<qint64> said(const RegisterFilter& filter) {
        std::vector<qint64> ids;
        for (const work::RegisterLine& line : work::treatments(room.book(), filter))
            ids.push_back(line.placement.value);
        std::sort(ids.begin(), ids.end());
        return ids;
    }
    RegisterFilter whole() const {
        RegisterFilter filter;
        filter.from = maths::day(2026, 1, 1);
        filter.to = room_today();
        return filter;
    }
    maths::Day room_today() const { return maths::days_after(first_day, FullHouse::today); }
    void trigger(const char* action) {
        for (QAction* each : place->head_actions()) {
            if (each->objectName() == QLatin1String(action))
                each->trigger();
        }
        room.settle();
    }

    QTemporaryDir folder;
    Room room;
    ui::Place* place = nullptr;
};

} // namespace

TEST_F(Registers, last_year_and_this_year_are_shown_at_first) {
    ASSERT_EQ(said({}).size(), 21U) << "twenty hives and the row";
    EXPECT_EQ(shown(), said(whole()));
    EXPECT_EQ(shown().size(), 21U);
}

TEST_F(Registers, days_that_are_typed_narrow_it) {
    // The strips went in on day 210, the first of March 2027.
    type_into("register_from", QStringLiteral("2 mar 2027"));
    EXPECT_TRUE(shown().empty());
    type_into("register_from", QStringLiteral("1 mar 2027"));
    EXPECT_EQ(shown().size(), 21U);
    type_into("register_to", QStringLiteral("28 feb 2027"));
    EXPECT_TRUE(shown().empty());
    type_into("register_to", QStringLiteral("1 mar 2027"));
    EXPECT_EQ(shown().size(), 21U);
}

TEST_F(Registers, a_day_that_does_not_read_leaves_the_list_as_it_was) {
    type_into("register_from", QStringLiteral("2 mar 2027"));
    ASSERT_TRUE(shown().empty());
    type_into("register_from", QStringLiteral("yesteryear"));
    EXPECT_TRUE(shown().empty());
    type_into("register_from", QStringLiteral("1 mar 2027"));
    const auto before = shown();
    ASSERT_EQ(before.size(), 21U);
    type_into("register_from", QStringLiteral("yesteryear"));
    EXPECT_EQ(shown(), before);
}

TEST_F(Registers, a_yard_alone_can_be_shown) {
    auto* yard = qobject_cast<QComboBox*>(place->findChild<ui::Field*>(QStringLiteral("register_yard"))->editor());
    yard->setFocus();
    QTest::keyClicks(yard, QStringLiteral("Hill"));
    room.settle();
    ASSERT_EQ(yard->currentText(), QStringLiteral("Hill top"));
    EXPECT_TRUE(shown().empty());
    QTest::qWait(QApplication::keyboardInputInterval() + 50);
    QTest::keyClicks(yard, QStringLiteral("Mill"));
    room.settle();
    RegisterFilter filter = whole();
    filter.yard = full_house().yard;
    EXPECT_EQ(shown(), said(filter));
    EXPECT_EQ(shown().size(), 21U);
}

TEST_F(Registers, a_batch_alone_is_shown_where_it_was_asked_for) {
    const FullHouse& house = full_house();
    std::size_t together = 0;
    for (const work::BatchId batch : {house.past, house.near, house.ready, house.resting}) {
        RegisterFilter filter = whole();
        filter.batch = batch;
        place->open({ui::PlaceName::register_, QStringLiteral("batch"), {batch.value}, {}});
        room.settle();
        EXPECT_EQ(shown(), said(filter));
        together += shown().size();
    }
    EXPECT_EQ(together, 21U) << "each treatment is of one of them";
}

TEST_F(Registers, corrections_and_journal_are_those_of_the_work) {
    place->open({ui::PlaceName::register_, QStringLiteral("corrections"), {}, {}});
    room.settle();
    const auto corrections = ui::shown_corrections(room.desk(), whole());
    ASSERT_FALSE(corrections.empty());
    EXPECT_EQ(table("register_corrections")->model()->rowCount(), static_cast<int>(corrections.size()));
    place->open({ui::PlaceName::register_, QStringLiteral("journal"), {}, {}});
    room.settle();
    EXPECT_EQ(table("register_journal")->model()->rowCount(), static_cast<int>(work::journal(room.book(), 2000).size()));
}

TEST_F(Registers, a_treatment_put_right_stands_among_the_corrections_and_is_read_aloud_whole) {
    const auto lines = work::treatments(room.book(), whole());
    const auto hung = std::find_if(lines.begin(), lines.end(), [](const work::RegisterLine& line) { return !line.pulled_on && line.hives == 1; });
    ASSERT_NE(hung, lines.end());
    const QString reason = QStringLiteral("three, not four");
    ASSERT_TRUE(work::correct_placement(room.book(), hung->placement, hung->strips - 1, {}, room.desk().doing(reason)));
    place->open({ui::PlaceName::register_, QStringLiteral("corrections"), {}, {}});
    place->refresh();
    room.settle();
    const QAbstractItemModel* model = table("register_corrections")->model();
    int found = 0;
    for (int row = 0; row < model->rowCount(); ++row) {
        if (model->index(row, 3).data().toString() != reason)
            continue;
        ++found;
        EXPECT_TRUE(model->index(row, 1).data().toString().contains(hung->hive));
        EXPECT_TRUE(model->index(row, 2).data().toString().contains(QStringLiteral("%1, before %2").arg(hung->strips - 1).arg(hung->strips)));
    }
    EXPECT_EQ(found, 1);
    // One strip of the pulled hive was missing; on the screen it stands small under the number.
    const QAbstractItemModel* treatments = table("register_treatments")->model();
    QStringList spoken;
    for (int row = 0; row < treatments->rowCount(); ++row) {
        for (int column = 0; column < treatments->columnCount(); ++column)
            spoken << treatments->index(row, column).data(Qt::AccessibleTextRole).toString();
    }
    EXPECT_TRUE(spoken.contains(QStringLiteral("3, 1 missing"))) << spoken.join(QLatin1Char('\n')).toStdString();
}

TEST_F(Registers, the_file_for_a_spreadsheet_holds_a_line_for_each_treatment) {
    const QString path = folder.filePath(QStringLiteral("register.csv"));
    ui::let_answer([path](const ui::FileQuestion&) { return path; });
    // Writing it is an entry of its own, and comes after.
    const QByteArray expected = ui::register_csv(room.desk(), whole());
    trigger("register_csv");
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << "no file was written";
    const QByteArray written = file.readAll();
    EXPECT_EQ(written, expected);
    const work::Anchor anchor = work::anchor(room.book());
    EXPECT_FALSE(anchor.seal.isEmpty());
    const auto lines = work::treatments(room.book(), whole());
    // A head, and each treatment with its bag; nothing in the full house holds a line break.
    QList<QByteArray> rows = written.trimmed().split('\n');
    EXPECT_EQ(rows.size(), static_cast<qsizetype>(lines.size()) + 1);
    for (const work::RegisterLine& line : lines) {
        const auto found = std::count_if(rows.begin(), rows.end(), [&line](const QByteArray& row) {
            return row.contains(line.hive.toUtf8()) && row.contains(line.bag_code.toUtf8());
        });
        EXPECT_GE(found, 1) << line.hive.toStdString() << " from " << line.bag_code.toStdString();
    }
}

TEST_F(Registers, the_pdf_says_the_hives_the_bags_and_the_days) {
    if (QByteArray(PDFTOTEXT).isEmpty())
        GTEST_SKIP() << "pdftotext is not here to read it";
    const QString path = folder.filePath(QStringLiteral("register.pdf"));
    const work::RegisterLine first = work::treatments(room.book(), whole()).front();
    ASSERT_TRUE(work::correct_placement(room.book(), first.placement, {}, maths::days_after(first.placed_on, 1),
                                        room.desk().doing(QStringLiteral("three not four"))));
    place->refresh();
    ui::let_answer([path](const ui::FileQuestion&) { return path; });
    trigger("register_print");
    QDialog* preview = room.dialog();
    ASSERT_NE(preview, nullptr);
    QPushButton* pdf = nullptr;
    for (QPushButton* button : preview->findChildren<QPushButton*>()) {
        if (button->text().contains(QLatin1String("PDF")))
            pdf = button;
    }
    ASSERT_NE(pdf, nullptr);
    pdf->setFocus();
    QTest::keyClick(pdf, Qt::Key_Space);
    room.settle();
    ASSERT_TRUE(QFile::exists(path)) << "no file was written";
    QProcess read;
    read.start(QStringLiteral(PDFTOTEXT), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    ASSERT_TRUE(read.waitForFinished());
    const QString text = QString::fromUtf8(read.readAllStandardOutput());
    for (const work::RegisterLine& line : work::treatments(room.book(), whole())) {
        EXPECT_TRUE(text.contains(line.hive)) << line.hive.toStdString();
        EXPECT_TRUE(text.contains(line.bag_code)) << line.bag_code.toStdString();
        EXPECT_TRUE(text.contains(line.batch_code)) << line.batch_code.toStdString();
    }
    EXPECT_TRUE(text.contains(room.desk().day(maths::day(2027, 3, 1)))) << text.left(2000).toStdString();
    EXPECT_TRUE(text.contains(QLatin1String("three not four"))) << "a treatment put right";
}

} // namespace soakbook::tests
