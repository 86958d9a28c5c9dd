// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/fixed_clock.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCalendarWidget>
#include <QComboBox>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <ctime>
#include <utility>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

class Fields : public testing::Test {
protected:
    Fields() : habits(fixed_clock) {
        Preferences english;
        english.language = QStringLiteral("en");
        habits.set_preferences(english);
    }
    Habits habits;
};

TEST_F(Fields, of_the_hour_that_is_skipped_when_clocks_go_forward_stay_on_their_day) {
    const QByteArray zone = qgetenv("TZ");
    // Rules as POSIX writes them: New Zealand, Central Europe, New York.
    for (const auto& [rules, day] : {std::pair{"NZST-12NZDT,M9.5.0,M4.1.0/3", maths::day(2027, 9, 26)}, std::pair{"CET-1CEST,M3.5.0,M10.5.0/3", maths::day(2027, 3, 28)},
                                     std::pair{"EST5EDT,M3.2.0,M11.1.0", maths::day(2027, 3, 14)}}) {
        qputenv("TZ", rules);
        ::tzset();
        const maths::Instant skipped = wall_instant(day, 2 * 60 + 30);
        EXPECT_EQ(skipped.local_day(), day) << rules;
        EXPECT_EQ(skipped, wall_instant(day, wall_minutes(skipped))) << rules;
        EXPECT_NE(skipped.offset_minutes, 0) << rules;
    }
    if (zone.isNull())
        qunsetenv("TZ");
    else
        qputenv("TZ", zone);
    ::tzset();
}

TEST_F(Fields, a_mass_is_read_as_people_write_it_and_shown_as_understood) {
    MassField field(habits, MassSize::large);
    QSignalSpy edits(&field, &Field::edited);
    QTest::keyClicks(field.editor(), QStringLiteral("12,25"));
    EXPECT_EQ(field.value(), maths::kilograms(12.25));
    EXPECT_EQ(edits.count(), 5);
    field.set_text(QStringLiteral("27 lb 8 oz"));
    ASSERT_TRUE(field.value().has_value());
    EXPECT_NEAR(maths::in_kilograms(*field.value()), 12.474, 0.001);
    const auto* line = qobject_cast<EntryLine*>(field.editor());
    EXPECT_TRUE(line->aside().startsWith(QStringLiteral("= 12.47"))) << line->aside().toStdString();
    EXPECT_EQ(edits.count(), 5) << "setting a value is no edit";
}

TEST_F(Fields, an_empty_field_shows_its_unit_and_has_no_problem) {
    const MassField field(habits, MassSize::small);
    EXPECT_TRUE(field.is_empty());
    EXPECT_EQ(field.problem(), QString());
    EXPECT_EQ(qobject_cast<EntryLine*>(field.editor())->aside(), QStringLiteral("g"));
}

TEST_F(Fields, text_that_does_not_read_is_kept_and_said_when_the_keyboard_leaves) {
    QWidget window;
    auto* field = new MassField(habits, MassSize::large, &window);
    auto* other = new TextField(&window);
    other->move(0, 100);
    window.show();
    QApplication::setActiveWindow(&window);
    field->take_focus();
    QTest::keyClicks(field->editor(), QStringLiteral("twelve"));
    EXPECT_FALSE(field->value().has_value());
    EXPECT_EQ(field->line_text(), QString()) << "nobody is interrupted while typing";
    other->take_focus();
    EXPECT_EQ(field->line_text(), field->problem());
    EXPECT_FALSE(field->problem().isEmpty());
    EXPECT_EQ(field->text(), QStringLiteral("twelve"));
}

TEST_F(Fields, what_a_field_holds_is_written_as_it_is_read) {
    MassField mass(habits, MassSize::small);
    mass.set_value(maths::grams(33.9));
    EXPECT_EQ(mass.text(), QStringLiteral("33.9"));
    EXPECT_EQ(mass.value(), maths::grams(33.9));
    TemperatureField heat(habits);
    heat.set_value(maths::celsius(-3.5));
    EXPECT_EQ(heat.value(), maths::celsius(-3.5));
    PercentField part(habits);
    part.set_value(maths::percent(40));
    EXPECT_EQ(part.text(), QStringLiteral("40"));
    EXPECT_EQ(part.value(), maths::percent(40));
    CountField count(habits);
    count.set_value(480);
    EXPECT_EQ(count.value(), 480);
    DayField day(habits);
    day.set_value(maths::day(2026, 10, 3));
    EXPECT_EQ(day.value(), maths::day(2026, 10, 3));
}

TEST_F(Fields, absurd_text_is_refused_in_words_and_not_changed) {
    const QStringList absurd{QString(10000, QLatin1Char('9')), QStringLiteral("\u202e12.5 kg"), QStringLiteral("1e3"),
                             QStringLiteral("-5"), QStringLiteral("1.234"), QStringLiteral("12..5")};
    for (const QString& text : absurd) {
        MassField field(habits, MassSize::large);
        field.set_text(text);
        EXPECT_FALSE(field.value().has_value()) << text.left(20).toStdString();
        EXPECT_FALSE(field.problem().isEmpty()) << text.left(20).toStdString();
        EXPECT_EQ(field.text(), text);
    }
}

TEST_F(Fields, a_day_is_typed_short_and_named_with_its_weekday) {
    DayField field(habits);
    QTest::keyClicks(field.editor(), QStringLiteral("-2"));
    EXPECT_EQ(field.value(), maths::day(2026, 11, 22));
    EXPECT_TRUE(qobject_cast<EntryLine*>(field.editor())->aside().contains(QStringLiteral("Sun")));
    field.set_text(QStringLiteral("31 feb"));
    EXPECT_FALSE(field.problem().isEmpty());
}

TEST_F(Fields, f4_opens_a_calendar_and_enter_picks_the_day) {
    QWidget window;
    auto* field = new DayField(habits, &window);
    window.resize(400, 200);
    window.show();
    QSignalSpy edits(field, &Field::edited);
    QTest::keyClick(field->editor(), Qt::Key_F4);
    auto* calendar = field->findChild<QCalendarWidget*>();
    ASSERT_NE(calendar, nullptr);
    EXPECT_EQ(calendar->selectedDate(), QDate(2026, 11, 24));
    QWidget* sheet = calendar->findChild<QAbstractItemView*>();
    QTest::keyClick(sheet, Qt::Key_Left);
    QTest::keyClick(sheet, Qt::Key_Return);
    EXPECT_EQ(field->value(), maths::day(2026, 11, 23));
    EXPECT_EQ(edits.count(), 1);
}

TEST_F(Fields, a_moment_left_empty_is_now_and_another_day_wants_its_time) {
    WhenField field(habits);
    EXPECT_EQ(field.value(), fixed_clock());
    QTest::keyClicks(field.day()->editor(), QStringLiteral("-1"));
    EXPECT_FALSE(field.value().has_value());
    EXPECT_FALSE(field.problem().isEmpty());
    QTest::keyClicks(field.time()->editor(), QStringLiteral("1530"));
    EXPECT_EQ(field.value(), wall_instant(maths::day(2026, 11, 23), 15 * 60 + 30));
    EXPECT_EQ(field.problem(), QString());
    field.clear();
    QTest::keyClicks(field.time()->editor(), QStringLiteral("9:00"));
    EXPECT_EQ(field.value(), wall_instant(maths::day(2026, 11, 24), 9 * 60));
}

TEST_F(Fields, a_choice_keeps_what_was_chosen_when_the_list_is_read_again) {
    ChoiceField field;
    field.set_choices({{1, QStringLiteral("Tank 1")}, {2, QStringLiteral("Tank 2")}});
    EXPECT_TRUE(field.is_empty());
    field.set_value(2);
    field.set_choices({{2, QStringLiteral("Tank 2")}, {3, QStringLiteral("Tank 3")}});
    EXPECT_EQ(field.id(), 2);
    field.set_choices({{3, QStringLiteral("Tank 3")}});
    EXPECT_TRUE(field.is_empty());
}

TEST_F(Fields, letters_choose_and_the_wheel_does_not) {
    ChoiceField field;
    field.set_choices({{1, QStringLiteral("Acid")}, {2, QStringLiteral("Glycerine")}});
    QSignalSpy edits(&field, &Field::edited);
    field.show();
    QTest::keyClick(field.editor(), Qt::Key_G);
    EXPECT_EQ(field.id(), 2);
    EXPECT_EQ(edits.count(), 1);
    QWheelEvent wheel(QPointF(5, 5), QPointF(5, 5), QPoint(0, 120), QPoint(0, 120), Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(field.editor(), &wheel);
    EXPECT_EQ(field.id(), 2);
}

TEST_F(Fields, yes_or_no_is_not_said_until_somebody_says_it) {
    YesNoField field;
    EXPECT_FALSE(field.value().has_value());
    field.show();
    QSignalSpy edits(&field, &Field::edited);
    QTest::keyClick(field.editor(), Qt::Key_Space);
    EXPECT_EQ(field.value(), true);
    QTest::keyClick(field.editor(), Qt::Key_N);
    EXPECT_EQ(field.value(), false);
    EXPECT_EQ(edits.count(), 2);
    field.clear();
    EXPECT_FALSE(field.value().has_value());
}

TEST_F(Fields, a_code_is_taken_in_any_case_and_with_blanks) {
    CodeField field;
    QTest::keyClicks(field.editor(), QStringLiteral(" s5 2e "));
    EXPECT_EQ(field.value(), QStringLiteral("S52E"));
}

TEST_F(Fields, a_field_says_its_name_and_what_is_wrong_to_a_screen_reader) {
    MassField field(habits, MassSize::large);
    field.set_name(QStringLiteral("Weight"));
    field.set_complaint(QStringLiteral("This is needed."));
    EXPECT_EQ(field.editor()->accessibleName(), QStringLiteral("Weight"));
    EXPECT_EQ(field.editor()->accessibleDescription(), QStringLiteral("This is needed."));
}

} // namespace
} // namespace soakbook::ui
