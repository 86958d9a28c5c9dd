// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/frame.h"

#include "core/book/workbook.h"
#include "core/work/setup.h"
#include "ui/parts/desk.h"
#include "ui/parts/theme.h"
#include "ui/shell/copy_state.h"
#include "ui/shell/key_sheet.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

/// A place that writes down what the frame asks of it.
class PaperPlace : public Place {
public:
    PaperPlace(PlaceName place, const QString& name) : m_place(place), m_name(name) {
        m_line = new QLineEdit(this);
        m_action = new QAction(QStringLiteral("Batch sheet"), this);
    }
    PlaceName place() const override { return m_place; }
    QString name() const override { return m_name; }
    QString title() const override { return m_title.isEmpty() ? m_name : m_title; }
    QList<QAction*> head_actions() override { return {m_action}; }
    void open(const Intent& intent) override { opened.push_back(intent); }
    void refresh() override { ++refreshed; }
    void take_focus() override { m_line->setFocus(); }
    void wish(const Intent& intent) { Q_EMIT wishes(intent); }
    void call_itself(const QString& title) {
        m_title = title;
        Q_EMIT title_changed();
    }

    std::vector<Intent> opened;
    int refreshed = 0;
    QLineEdit* m_line;
    QAction* m_action;

private:
    PlaceName m_place;
    QString m_name;
    QString m_title;
};

class Frames : public testing::Test {
protected:
    Frames() {
        QSettings().clear();
        auto made = book::Workbook::create(folder.filePath(QStringLiteral("heron.soakbook")), {now(), QStringLiteral("Ida"), {}, false});
        EXPECT_TRUE(made.has_value());
        workbook = std::move(*made);
        desk = std::make_unique<Desk>(*workbook, [this] { return now(); });
        due = new PaperPlace(PlaceName::due, QStringLiteral("Due"));
        shed = new PaperPlace(PlaceName::shed, QStringLiteral("Shed"));
        yards = new PaperPlace(PlaceName::yards, QStringLiteral("Yards"));
        frame = std::make_unique<Frame>(*desk, std::vector<Place*>{due, shed, yards});
        frame->resize(1280, 720);
        frame->show();
        QApplication::setActiveWindow(frame.get());
    }
    ~Frames() override { apply_theme(*qApp, Look::light, 100); }

    maths::Instant now() const { return wall_instant(today, 600); }
    void add_person(const QString& name) const {
        work::PersonLine person;
        person.name = name;
        const auto done = work::save_person(*workbook, person, desk->doing());
        ASSERT_TRUE(done.has_value());
        QTest::qWait(20);
    }
    void key(int which, Qt::KeyboardModifiers with) const { QTest::keyClick(frame.get(), static_cast<Qt::Key>(which), with); }
    template <class Widget> Widget* named(const char* name) const { return frame->findChild<Widget*>(QLatin1String(name)); }

    maths::Day today = maths::day(2026, 11, 24);
    QTemporaryDir folder;
    std::unique_ptr<book::Workbook> workbook;
    std::unique_ptr<Desk> desk;
    PaperPlace* due;
    PaperPlace* shed;
    PaperPlace* yards;
    std::unique_ptr<Frame> frame;
};

TEST_F(Frames, ctrl_and_a_number_goes_to_the_place_and_asks_it_again_once) {
    EXPECT_EQ(frame->current_place(), due);
    EXPECT_EQ(due->refreshed, 1);
    EXPECT_EQ(shed->refreshed, 0);
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(frame->current_place(), shed);
    EXPECT_EQ(shed->refreshed, 1);
    EXPECT_TRUE(shed->m_line->hasFocus());
    key(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(due->refreshed, 1) << "nothing was done since";
}

TEST_F(Frames, after_a_piece_of_work_the_page_is_asked_once_and_the_others_when_they_are_seen) {
    due->refreshed = 0;
    add_person(QStringLiteral("Ida"));
    EXPECT_EQ(due->refreshed, 1);
    EXPECT_EQ(shed->refreshed, 0);
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(shed->refreshed, 1);
}

TEST_F(Frames, a_wish_opens_its_form_in_the_other_place) {
    due->wish({PlaceName::yards, QStringLiteral("strips_out"), {7}, {}});
    EXPECT_EQ(frame->current_place(), yards);
    ASSERT_EQ(yards->opened.size(), 1U);
    EXPECT_EQ(yards->opened.front().task, QStringLiteral("strips_out"));
    EXPECT_EQ(yards->opened.front().ids, std::vector<qint64>{7});
}

TEST_F(Frames, a_wish_for_a_place_that_is_not_built_changes_nothing) {
    due->wish({PlaceName::store, QStringLiteral("bag"), {1}, {}});
    EXPECT_EQ(frame->current_place(), due);
    EXPECT_TRUE(due->opened.empty());
}

TEST_F(Frames, undo_names_what_it_takes_back_and_redo_what_it_does_again) {
    auto* undo = named<QPushButton>("undo");
    EXPECT_FALSE(undo->isVisible());
    add_person(QStringLiteral("Ida"));
    ASSERT_TRUE(undo->isVisible());
    EXPECT_EQ(undo->accessibleName(), QStringLiteral("Undo: person Ida"));
    key(Qt::Key_Z, Qt::ControlModifier);
    QTest::qWait(20);
    EXPECT_TRUE(work::people(*workbook).empty());
    EXPECT_FALSE(undo->isVisible());
    auto* redo = named<QPushButton>("redo");
    ASSERT_TRUE(redo->isVisible());
    EXPECT_EQ(redo->accessibleName(), QStringLiteral("Redo: person Ida"));
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::qWait(20);
    EXPECT_EQ(work::people(*workbook).size(), 1U);
}

TEST_F(Frames, undo_with_nothing_to_take_back_says_so) {
    key(Qt::Key_Z, Qt::ControlModifier);
    bool said = false;
    for (const QLabel* label : frame->findChildren<QLabel*>()) {
        said = said || (label->isVisible() && label->text().startsWith(QStringLiteral("There is nothing to take back")));
    }
    EXPECT_TRUE(said);
}

TEST_F(Frames, the_title_and_the_pages_own_buttons_stand_in_the_head) {
    key(Qt::Key_2, Qt::ControlModifier);
    shed->call_itself(QStringLiteral("Batch B7K"));
    EXPECT_TRUE(frame->windowTitle().startsWith(QStringLiteral("Batch B7K")));
    QSignalSpy triggered(shed->m_action, &QAction::triggered);
    QPushButton* sheet = nullptr;
    for (QPushButton* button : frame->findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Batch sheet") && button->isVisible()) {
            EXPECT_EQ(sheet, nullptr) << "the button of the page before is gone";
            sheet = button;
        }
    }
    ASSERT_NE(sheet, nullptr);
    QTest::mouseClick(sheet, Qt::LeftButton);
    EXPECT_EQ(triggered.count(), 1);
    shed->m_action->setEnabled(false);
    EXPECT_FALSE(sheet->isEnabled());
}

TEST_F(Frames, who_makes_entries_is_asked_once_a_day_where_there_are_several) {
    frame->set_people([] { return QStringList{QStringLiteral("Ida"), QStringLiteral("Jon")}; });
    const auto question = [this]() -> QPushButton* {
        for (QPushButton* button : frame->findChildren<QPushButton*>()) {
            if (button->isVisible() && button->accessibleName() == QStringLiteral("Entries by Jon")) {
                return button;
            }
        }
        return nullptr;
    };
    ASSERT_NE(question(), nullptr);
    QTest::mouseClick(question(), Qt::LeftButton);
    EXPECT_EQ(desk->who(), QStringLiteral("Jon"));
    EXPECT_EQ(desk->doing().who, QStringLiteral("Jon"));
    EXPECT_EQ(question(), nullptr);
    EXPECT_EQ(named<QPushButton>("who")->text(), QStringLiteral("Entries by: Jon"));
    frame->set_people([] { return QStringList{QStringLiteral("Ida"), QStringLiteral("Jon")}; });
    EXPECT_EQ(question(), nullptr) << "said today";
    today = maths::days_after(today, 1);
    Q_EMIT desk->day_turned();
    EXPECT_NE(question(), nullptr) << "asked again the next day";
}

TEST_F(Frames, the_only_person_is_taken_without_asking) {
    frame->set_people([] { return QStringList{QStringLiteral("Ida")}; });
    EXPECT_EQ(desk->who(), QStringLiteral("Ida"));
}

TEST_F(Frames, the_status_line_names_the_workbook_and_counts_its_entries) {
    frame->set_status([this] { return status_facts(*desk, folder.path()); });
    add_person(QStringLiteral("Ida"));
    QStringList words;
    for (const QLabel* label : frame->findChildren<QLabel*>()) {
        words << label->text();
    }
    EXPECT_TRUE(words.contains(QStringLiteral("heron.soakbook"))) << words.join(QLatin1Char('|')).toStdString();
    EXPECT_TRUE(words.filter(QStringLiteral("Entry ")).size() == 1) << words.join(QLatin1Char('|')).toStdString();
}

TEST_F(Frames, larger_text_by_key_is_worn_at_once_and_kept) {
    key(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_EQ(text_percent(), 125);
    EXPECT_EQ(stored_preferences().text_percent, 125);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(text_percent(), 100);
}

TEST_F(Frames, f1_shows_the_keys) {
    key(Qt::Key_F1, Qt::NoModifier);
    auto* sheet = frame->findChild<KeySheet*>();
    ASSERT_NE(sheet, nullptr);
    EXPECT_TRUE(sheet->isVisible());
    QTest::keyClick(sheet, Qt::Key_Escape);
}

TEST_F(Frames, everything_that_takes_keys_has_a_name_to_be_read_aloud) {
    add_person(QStringLiteral("Ida"));
    frame->set_people([] { return QStringList{QStringLiteral("Ida"), QStringLiteral("Jon")}; });
    for (const QWidget* widget : frame->findChildren<QWidget*>()) {
        if (widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0 && widget != due->m_line) {
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            EXPECT_FALSE(widget->accessibleName().isEmpty() && (button == nullptr || button->text().isEmpty()))
                << widget->metaObject()->className();
        }
    }
}

TEST_F(Frames, the_window_holds_at_1280_by_720_with_twice_the_text) {
    add_person(QStringLiteral("Ida with a rather long name"));
    frame->set_status([this] { return status_facts(*desk, folder.path()); });
    frame->set_people([] { return QStringList{QStringLiteral("Ida"), QStringLiteral("Jon")}; });
    for (const auto& [look, percent] : {std::pair{Look::light, 100}, std::pair{Look::dark, 150}, std::pair{Look::light, 200}}) {
        apply_theme(*qApp, look, percent);
        frame->resize(1280, 720);
        QTest::qWait(30);
        EXPECT_EQ(frame->size(), QSize(1280, 720)) << "it fits into a small screen at " << percent;
        // Set to a folder, this variable keeps the pictures for somebody to look at.
        const QString pictures = qEnvironmentVariable("SOAKBOOK_PICTURES");
        if (!pictures.isEmpty()) {
            QDir().mkpath(pictures);
            EXPECT_TRUE(frame->grab().save(pictures + QStringLiteral("/frame-%1.png").arg(percent)));
        }
    }
}

} // namespace
} // namespace soakbook::ui
