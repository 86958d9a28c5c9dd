// SPDX-License-Identifier: GPL-3.0-or-later
// Safe copies in Set-up, by keys: what is said of them, a second place, a copy that is sent and one that is put back.
#include "tests/ui/bad_input/room.h"

#include "core/work/safe_copies.h"
#include "core/work/setup.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/setup/copy_keeper.h"
#include "ui/setup/second_place.h"
#include "ui/setup/second_place_card.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/state_line.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

class PretendKeeper : public ui::CopyKeeper {
public:
    Stage now = Stage::idle;
    int done = 0;
    QString why_failed;
    QString why_second_failed;
    std::vector<work::CopyLine> there;
    int copies_asked = 0;
    int second_asked = 0;
    QString sent_to;

    Stage stage() const override { return now; }
    int percent() const override { return done; }
    QString failure() const override { return why_failed; }
    QString second_failure() const override { return why_second_failed; }
    void copy_now() override { ++copies_asked; }
    void send_copy(const QString& to) override { sent_to = to; }
    void look_at_second_place() override { ++second_asked; }
    std::vector<work::CopyLine> second_copies() const override { return there; }
};

class SafeCopiesInSetUp : public testing::Test {
protected:
    SafeCopiesInSetUp() : room(QStringLiteral("en")) {
        QSettings().remove(QStringLiteral("copies"));
        doors.copy_folder = copies.path();
        doors.keeper = &keeper;
        doors.put_back = [this](const QString& path, const QString& why) { put_back << path << why; };
    }
    ~SafeCopiesInSetUp() override {
        ui::let_answer({});
        ui::let_folder_answer({});
        room.clear();
    }
    void open() {
        delete place;
        place = room.show(ui::make_setup_place(room.desk(), doors));
        place->open({ui::PlaceName::setup, QStringLiteral("safe_copies"), {}, {}});
        room.settle();
    }
    template <class W> W* named(const char* name) const { return place->findChild<W*>(QLatin1String(name)); }
    QString state(const char* name = "safe_copy_state") const { return named<ui::StateLine>(name)->text(); }
    void press(const char* name) {
        auto* button = named<QPushButton>(name);
        ASSERT_NE(button, nullptr) << name;
        ASSERT_TRUE(button->isVisible() && button->isEnabled()) << name;
        button->setFocus(Qt::TabFocusReason);
        QTest::keyClick(button, Qt::Key_Space);
        room.settle();
    }
    void enter(const char* name) {
        ASSERT_TRUE(work::save_person(room.book(), {{}, QLatin1String(name), true}, room.desk().doing()));
        room.settle();
    }
    void copy() { ASSERT_TRUE(work::make_safe_copy(room.book(), copies.path())); }

    Room room;
    QTemporaryDir copies;
    PretendKeeper keeper;
    ui::WorkbookDoors doors;
    QStringList put_back;
    ui::Place* place = nullptr;
};

} // namespace

TEST_F(SafeCopiesInSetUp, are_not_made_of_the_example) {
    doors = {};
    open();
    EXPECT_TRUE(state().contains(QLatin1String("not kept"))) << state().toStdString();
    EXPECT_FALSE(named<QPushButton>("safe_copy_now")->isVisible());
    EXPECT_FALSE(named<QPushButton>("safe_copy_send")->isVisible());
    EXPECT_EQ(named<ui::RecordTable>("safe_copies"), nullptr);
}

TEST_F(SafeCopiesInSetUp, are_said_to_be_missing_or_to_hold_everything_or_to_lag_behind) {
    open();
    EXPECT_TRUE(state().contains(QLatin1String("no safe copy yet"))) << state().toStdString();
    EXPECT_EQ(named<ui::RecordTable>("safe_copies")->model()->rowCount(), 0);
    copy();
    place->refresh();
    EXPECT_TRUE(state().contains(QLatin1String("Everything is in a safe copy"))) << state().toStdString();
    EXPECT_EQ(named<ui::RecordTable>("safe_copies")->model()->rowCount(), 1);
    enter("Nele");
    place->refresh();
    EXPECT_TRUE(state().startsWith(QLatin1String("1 entry"))) << state().toStdString();
    keeper.why_failed = QStringLiteral("The disk is full.");
    Q_EMIT keeper.news();
    EXPECT_TRUE(state().startsWith(QLatin1String("The disk is full. 1 entry"))) << state().toStdString();
}

TEST_F(SafeCopiesInSetUp, without_a_keeper_are_made_at_once) {
    doors.keeper = nullptr;
    open();
    press("safe_copy_now");
    EXPECT_TRUE(named<QLabel>("safe_copy_answer")->text().contains(QLatin1String("good")));
    EXPECT_FALSE(QDir(copies.path()).entryList(QDir::Files).isEmpty());
    EXPECT_EQ(named<ui::RecordTable>("safe_copies")->model()->rowCount(), 1);
}

TEST_F(SafeCopiesInSetUp, show_how_far_they_are_while_the_work_goes_on) {
    open();
    press("safe_copy_now");
    EXPECT_EQ(keeper.copies_asked, 1);
    keeper.now = ui::CopyKeeper::Stage::copying;
    keeper.done = 40;
    Q_EMIT keeper.news();
    EXPECT_TRUE(named<QProgressBar>("safe_copy_progress")->isVisible());
    EXPECT_EQ(named<QProgressBar>("safe_copy_progress")->value(), 40);
    EXPECT_FALSE(named<QPushButton>("safe_copy_now")->isEnabled());
    keeper.now = ui::CopyKeeper::Stage::checking;
    Q_EMIT keeper.news();
    EXPECT_TRUE(state().contains(QLatin1String("go on working"))) << state().toStdString();
    keeper.now = ui::CopyKeeper::Stage::idle;
    Q_EMIT keeper.news();
    EXPECT_FALSE(named<QProgressBar>("safe_copy_progress")->isVisible());
    EXPECT_TRUE(named<QPushButton>("safe_copy_now")->isEnabled());
}

TEST_F(SafeCopiesInSetUp, a_second_place_is_chosen_or_declined) {
    open();
    EXPECT_TRUE(state("second_place_state").contains(QLatin1String("Not chosen"))) << state("second_place_state").toStdString();
    const QTemporaryDir stick;
    QString answer = copies.path();
    ui::let_folder_answer([&answer] { return answer; });
    press("second_place_choose");
    EXPECT_EQ(ui::second_place().choice, ui::SecondPlace::Choice::unsaid) << "not the same folder twice";
    answer = stick.filePath(QStringLiteral("not there"));
    press("second_place_choose");
    EXPECT_EQ(ui::second_place().choice, ui::SecondPlace::Choice::unsaid);
    answer = stick.path();
    press("second_place_choose");
    EXPECT_EQ(ui::second_place().folder, stick.path());
    EXPECT_EQ(keeper.second_asked, 1);
    EXPECT_TRUE(state("second_place_state").contains(QLatin1String("nothing is there yet"))) << state("second_place_state").toStdString();
    ui::note_second_place(work::mark_of_copies(room.book()), {42, room.desk().now()});
    Q_EMIT keeper.news();
    EXPECT_TRUE(state("second_place_state").contains(QLatin1String("up to entry 42"))) << state("second_place_state").toStdString();
    press("second_place_none");
    EXPECT_EQ(ui::second_place().choice, ui::SecondPlace::Choice::none);
    EXPECT_FALSE(named<QPushButton>("second_place_none")->isVisible());
    EXPECT_TRUE(named<QPushButton>("second_place_choose")->hasFocus());
}

TEST_F(SafeCopiesInSetUp, one_is_sent_with_its_newest_entry_and_its_seal) {
    open();
    QString suggested;
    const QString to = copies.filePath(QStringLiteral("for the inspector.soakbook"));
    ui::let_answer([&](const ui::FileQuestion& question) {
        suggested = question.suggested;
        return to;
    });
    press("safe_copy_send");
    EXPECT_TRUE(suggested.endsWith(QLatin1String(".soakbook"))) << suggested.toStdString();
    EXPECT_EQ(keeper.sent_to, to);
    Q_EMIT keeper.sent(to, 1234, QStringLiteral("0123456789abcdef"));
    const QString said = named<QLabel>("safe_copy_answer")->text();
    for (const QString& what : {to, QStringLiteral("1234"), QStringLiteral("0123456789abcdef")})
        EXPECT_TRUE(said.contains(what)) << said.toStdString();
    Q_EMIT keeper.not_sent(QStringLiteral("There is no room."));
    EXPECT_EQ(named<QLabel>("safe_copy_answer")->text(), QStringLiteral("There is no room."));
}

TEST_F(SafeCopiesInSetUp, one_is_put_back_with_a_reason) {
    copy();
    enter("Nele");
    enter("Ole");
    copy();
    open();
    auto* table = named<ui::RecordTable>("safe_copies");
    ASSERT_EQ(table->model()->rowCount(), 2);
    table->setFocus();
    table->choose(table->rows_model()->id_at(1));
    room.settle();
    EXPECT_TRUE(named<QLabel>("safe_copy_choice")->text().contains(QLatin1String("2 entr"))) << named<QLabel>("safe_copy_choice")->text().toStdString();
    press("safe_copy_put_back");
    ASSERT_NE(room.dialog(), nullptr);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    room.settle();
    EXPECT_TRUE(put_back.isEmpty()) << "not without a reason";
    ASSERT_NE(room.dialog(), nullptr);
    auto* reason = room.dialog()->findChild<QPlainTextEdit*>();
    ASSERT_NE(reason, nullptr);
    reason->setFocus();
    QTest::keyClicks(reason, QStringLiteral("entered in the wrong year"));
    QTest::keyClick(reason, Qt::Key_Return, Qt::ControlModifier);
    room.settle();
    ASSERT_EQ(put_back.size(), 2);
    EXPECT_TRUE(QFile::exists(put_back[0]));
    EXPECT_EQ(put_back[1], QStringLiteral("entered in the wrong year"));
}

TEST_F(SafeCopiesInSetUp, those_in_the_second_place_stand_in_the_list_too) {
    copy();
    enter("Nele");
    const QTemporaryDir stick;
    ASSERT_TRUE(work::make_safe_copy(room.book(), stick.path()));
    keeper.there = work::copies_in(stick.path(), work::mark_of_copies(room.book()), room.path());
    keeper.there[0].elsewhere = true;
    open();
    auto* table = named<ui::RecordTable>("safe_copies");
    ASSERT_EQ(table->model()->rowCount(), 2);
    const auto cell = [table](int row, int column) { return table->model()->index(row, column).data().toString(); };
    EXPECT_EQ(cell(0, 3), QStringLiteral("second place")) << "the newest first";
    EXPECT_EQ(cell(0, 2), QStringLiteral("none"));
    EXPECT_EQ(cell(1, 3), QStringLiteral("this computer"));
    EXPECT_EQ(cell(1, 2), QStringLiteral("1"));
}

TEST_F(SafeCopiesInSetUp, fit_in_text_of_one_and_a_half) {
    copy();
    enter("Nele");
    copy();
    enter("Ole");
    ui::choose_second_place(copies.path() + QStringLiteral("/a rather long name of a stick that is not in"), room.desk().now());
    keeper.why_second_failed = QStringLiteral("The second place did not answer. Put the stick in; Soakbook tries again by itself.");
    for (const auto& [look, percent] : {std::pair{ui::Look::light, 100}, std::pair{ui::Look::dark, 100}, std::pair{ui::Look::light, 150}}) {
        ui::apply_theme(*qApp, look, percent);
        open();
        room.window().resize(1280, 720);
        auto* table = named<ui::RecordTable>("safe_copies");
        table->setFocus();
        table->choose(table->rows_model()->id_at(1));
        room.settle();
        for (const char* name : {"safe_copy_now", "safe_copy_send", "safe_copy_differs", "safe_copy_put_back", "second_place_choose"}) {
            const auto* button = named<QPushButton>(name);
            EXPECT_GE(button->width(), button->sizeHint().width()) << name << " at " << percent;
        }
        // Set to a folder, this variable keeps the pictures for somebody to look at.
        const QString pictures = qEnvironmentVariable("SOAKBOOK_PICTURES");
        if (!pictures.isEmpty()) {
            QDir().mkpath(pictures);
            const QString name = look == ui::Look::dark ? QStringLiteral("dark") : QString::number(percent);
            EXPECT_TRUE(room.window().grab().save(pictures + QStringLiteral("/safe-copies-%1.png").arg(name)));
        }
    }
    ui::apply_theme(*qApp, ui::Look::light, 100);
}

} // namespace soakbook::tests
