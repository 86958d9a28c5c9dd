// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/fixed_clock.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

using work::Refusal;
using work::Why;

constexpr int until_seen = 350;

class Forms : public testing::Test {
protected:
    Forms() : habits(fixed_clock), form(habits, QStringLiteral("Weigh a sample")) {
        count = form.add(QStringLiteral("Strips"), new CountField(habits), QStringLiteral("strips"));
        weight = form.add(QStringLiteral("Weight"), new MassField(habits, MassSize::small), QStringLiteral("weight"));
        note = form.add_wide(QStringLiteral("Note"), new NoteField, QStringLiteral("note"));
        form.set_primary(QStringLiteral("Log the sample"));
        form.set_commit([this](const work::Confirmed& confirmed) -> std::optional<Refusal> {
            ++tries;
            if (answer && !(answer->can_confirm && confirmed.contains(answer->why))) {
                return answer;
            }
            ++entries;
            return std::nullopt;
        });
        form.resize(700, 500);
        form.show();
        QApplication::setActiveWindow(&form);
        count->take_focus();
    }

    static QWidget* here() { return QApplication::focusWidget(); }
    static void key(int which, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(here(), static_cast<Qt::Key>(which), with);
    }
    void press_ctrl_enter() const { QTest::keyClick(form.window()->focusWidget(), Qt::Key_Return, Qt::ControlModifier); }
    QString notice() const {
        QStringList words;
        for (const QLabel* label : form.foot()->findChildren<QLabel*>()) {
            if (label->isVisible()) {
                words << label->text();
            }
        }
        return words.join(QLatin1Char(' '));
    }
    QPushButton* button(const QString& text) const {
        for (QPushButton* found : form.findChildren<QPushButton*>()) {
            if (found->text() == text && found->isVisible()) {
                return found;
            }
        }
        return nullptr;
    }

    Habits habits;
    FormFrame form;
    CountField* count;
    MassField* weight;
    NoteField* note;
    std::optional<Refusal> answer;
    int tries = 0;
    int entries = 0;
};

TEST_F(Forms, enter_goes_to_the_next_field_and_from_the_last_to_the_button) {
    EXPECT_EQ(here(), count->editor());
    key(Qt::Key_Return);
    EXPECT_EQ(here(), weight->editor());
    key(Qt::Key_Enter, Qt::KeypadModifier);
    EXPECT_EQ(here(), note->editor());
    key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(here(), note->editor()) << "Shift+Enter is a new line in a note";
    key(Qt::Key_Return);
    EXPECT_EQ(here(), form.primary());
    EXPECT_EQ(entries, 0);
    key(Qt::Key_Return);
    EXPECT_EQ(entries, 1);
}

TEST_F(Forms, shift_enter_goes_back) {
    key(Qt::Key_Return);
    key(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(here(), count->editor());
}

TEST_F(Forms, tab_goes_through_the_fields_and_then_to_the_button) {
    key(Qt::Key_Tab);
    EXPECT_EQ(here(), weight->editor());
    key(Qt::Key_Tab);
    EXPECT_EQ(here(), note->editor());
    key(Qt::Key_Tab);
    EXPECT_EQ(here(), form.primary());
}

TEST(FormsInAPage, tab_leaves_a_form_whose_parts_were_made_in_another_order_than_they_stand) {
    Habits habits(fixed_clock);
    QWidget page;
    auto* column = new QVBoxLayout(&page);
    auto* form = new FormFrame(habits, QStringLiteral("Weigh a sample"), &page);
    auto* weight = form->add(QStringLiteral("Weight"), new MassField(habits, MassSize::small), QStringLiteral("weight"));
    auto* way = new QPushButton(QStringLiteral("One by one"), form);
    form->add(QStringLiteral("Dripped for"), new CountField(habits), QStringLiteral("drip"));
    form->add(QStringLiteral("When"), new WhenField(habits), QStringLiteral("when"));
    form->add_widget(way);
    auto* below = new QPushButton(QStringLiteral("Below"), &page);
    column->addWidget(form);
    column->addWidget(below);
    page.show();
    QApplication::setActiveWindow(&page);
    weight->setFocus();
    EXPECT_EQ(QApplication::focusWidget(), weight->editor()) << "a field hands the keyboard to its editor";
    QList<QWidget*> stops;
    while (stops.size() < 12 && !stops.contains(QApplication::focusWidget())) {
        stops << QApplication::focusWidget();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_TRUE(stops.contains(way));
    EXPECT_TRUE(stops.contains(below)) << "the keyboard is caught in the form";
    EXPECT_EQ(QApplication::focusWidget(), weight->editor()) << "Tab goes round the whole page";
}

TEST_F(Forms, a_hidden_field_is_passed_over) {
    form.set_shown(QStringLiteral("weight"), false);
    key(Qt::Key_Return);
    EXPECT_EQ(here(), note->editor());
}

TEST_F(Forms, ctrl_enter_makes_the_entry_from_any_field) {
    for (Field* field : {static_cast<Field*>(count), static_cast<Field*>(weight), static_cast<Field*>(note)}) {
        QTest::keyClick(field->editor(), Qt::Key_1);
        field->take_focus();
        const int before = entries;
        press_ctrl_enter();
        EXPECT_EQ(entries, before + 1);
    }
}

TEST_F(Forms, however_the_button_is_hit_one_entry_is_made) {
    QSignalSpy committed(&form, &FormFrame::committed);
    QTest::mouseDClick(form.primary(), Qt::LeftButton);
    QTest::mouseClick(form.primary(), Qt::LeftButton);
    press_ctrl_enter();
    press_ctrl_enter();
    EXPECT_EQ(entries, 1);
    EXPECT_EQ(committed.count(), 1);
}

TEST_F(Forms, enter_held_down_makes_no_second_entry) {
    form.primary()->setFocus();
    QKeyEvent first(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), false);
    QCoreApplication::sendEvent(form.primary(), &first);
    for (int i = 0; i < 30; ++i) {
        QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true);
        QCoreApplication::sendEvent(form.primary(), &held);
    }
    EXPECT_EQ(entries, 1);
}

TEST_F(Forms, a_new_entry_typed_at_once_is_made) {
    press_ctrl_enter();
    QTest::keyClicks(count->editor(), QStringLiteral("10"));
    press_ctrl_enter();
    EXPECT_EQ(entries, 2);
}

TEST_F(Forms, a_refusal_stands_beside_its_field_with_the_keyboard_and_all_text_is_kept) {
    QTest::keyClicks(count->editor(), QStringLiteral("10"));
    QTest::keyClicks(weight->editor(), QStringLiteral("33,9"));
    QTest::keyClicks(note->editor(), QStringLiteral("second rack"));
    answer = Refusal{Why::lighter_than_dry, QStringLiteral("weight"), {QStringLiteral("m:3390"), QStringLiteral("m:11000")}, false};
    note->take_focus();
    press_ctrl_enter();
    EXPECT_EQ(entries, 0);
    EXPECT_TRUE(weight->line_text().contains(QStringLiteral("dry"))) << weight->line_text().toStdString();
    EXPECT_TRUE(weight->line_text().contains(QStringLiteral("3.39")));
    EXPECT_EQ(here(), weight->editor());
    EXPECT_EQ(count->text(), QStringLiteral("10"));
    EXPECT_EQ(weight->text(), QStringLiteral("33,9"));
    EXPECT_EQ(note->value(), QStringLiteral("second rack"));
    QTest::keyClicks(weight->editor(), QStringLiteral("339"));
    EXPECT_FALSE(weight->line_text().contains(QStringLiteral("dry"))) << "the words go with the next key";
}

TEST_F(Forms, a_refusal_of_the_whole_stands_at_the_foot) {
    answer = Refusal{Why::nothing_changed, {}, {}, false};
    press_ctrl_enter();
    EXPECT_TRUE(notice().contains(QStringLiteral("Nothing was changed"))) << notice().toStdString();
}

TEST_F(Forms, a_refusal_about_a_field_that_is_not_here_is_still_said) {
    answer = Refusal{Why::batch_closed, QStringLiteral("batch"), {QStringLiteral("B7K")}, false};
    press_ctrl_enter();
    EXPECT_TRUE(notice().contains(QStringLiteral("B7K"))) << notice().toStdString();
}

TEST_F(Forms, a_refusal_in_a_row_of_a_table_is_handed_to_the_table) {
    QString placed;
    form.add_widget(new QWidget, QStringLiteral("rows"), [&placed](const QString& rest, const QString& words) { placed = rest + words; });
    answer = Refusal{Why::missing, QStringLiteral("rows/3/strips"), {}, false};
    press_ctrl_enter();
    EXPECT_TRUE(placed.startsWith(QStringLiteral("3/strips"))) << placed.toStdString();
}

TEST_F(Forms, text_that_does_not_read_is_named_before_anything_is_tried) {
    QTest::keyClicks(weight->editor(), QStringLiteral("12 stone"));
    press_ctrl_enter();
    EXPECT_EQ(tries, 0);
    EXPECT_EQ(here(), weight->editor());
    EXPECT_EQ(weight->line_text(), weight->problem());
}

TEST_F(Forms, what_is_odd_is_asked_once_and_kept_with_the_answer) {
    QTest::keyClicks(weight->editor(), QStringLiteral("3 kg"));
    answer = Refusal{Why::heavier_than_possible, QStringLiteral("weight"), {QStringLiteral("m:300000"), QStringLiteral("m:34000")}, true};
    press_ctrl_enter();
    EXPECT_EQ(entries, 0);
    EXPECT_TRUE(weight->line_text().contains(QLatin1Char('?')));
    QPushButton* keep = button(QStringLiteral("Keep it as it is"));
    ASSERT_NE(keep, nullptr);
    EXPECT_FALSE(form.primary()->isVisible()) << "one filled button at a time";
    press_ctrl_enter();
    EXPECT_EQ(entries, 0) << "a key struck twice does not answer a question nobody has seen";
    QTest::qWait(until_seen);
    press_ctrl_enter();
    EXPECT_EQ(entries, 1);
    EXPECT_TRUE(form.primary()->isVisible());
}

TEST_F(Forms, an_edit_takes_the_answer_back) {
    answer = Refusal{Why::long_ago, QStringLiteral("weight"), {}, true};
    press_ctrl_enter();
    QTest::qWait(until_seen);
    QTest::keyClicks(weight->editor(), QStringLiteral("5"));
    EXPECT_EQ(button(QStringLiteral("Keep it as it is")), nullptr);
    press_ctrl_enter();
    EXPECT_EQ(entries, 0) << "asked again after the edit";
}

TEST_F(Forms, a_busy_workbook_is_tried_again_and_the_text_stays) {
    QTest::keyClicks(weight->editor(), QStringLiteral("339"));
    answer = Refusal{Why::busy, {}, {}, false};
    press_ctrl_enter();
    EXPECT_TRUE(notice().contains(QStringLiteral("Trying again"))) << notice().toStdString();
    EXPECT_FALSE(form.primary()->isEnabled());
    QTest::qWait(600);
    EXPECT_GE(tries, 2);
    answer.reset();
    QTest::qWait(400);
    EXPECT_EQ(entries, 1);
    EXPECT_EQ(weight->text(), QStringLiteral("339"));
    EXPECT_TRUE(form.primary()->isEnabled());
}

TEST_F(Forms, after_five_seconds_a_busy_workbook_is_said) {
    answer = Refusal{Why::busy, {}, {QStringLiteral("soakbook on barn-pc")}, false};
    press_ctrl_enter();
    QTest::qWait(5600);
    EXPECT_TRUE(notice().contains(QStringLiteral("barn-pc"))) << notice().toStdString();
    EXPECT_TRUE(form.primary()->isEnabled());
    const int before = tries;
    QTest::qWait(400);
    EXPECT_EQ(tries, before);
}

TEST_F(Forms, esc_leaves_an_untouched_form_and_asks_before_typed_text_goes) {
    QSignalSpy cancelled(&form, &FormFrame::cancelled);
    QTest::keyClicks(count->editor(), QStringLiteral("10"));
    key(Qt::Key_Escape);
    EXPECT_EQ(cancelled.count(), 0);
    EXPECT_EQ(count->text(), QStringLiteral("10"));
    key(Qt::Key_Escape);
    EXPECT_EQ(cancelled.count(), 1);
    form.start_again();
    key(Qt::Key_Escape);
    EXPECT_EQ(cancelled.count(), 2);
}

TEST_F(Forms, several_keys_make_one_look_at_the_result) {
    QTest::qWait(20);
    QSignalSpy edited(&form, &FormFrame::edited);
    QTest::keyClick(count->editor(), Qt::Key_1);
    QTest::keyClick(count->editor(), Qt::Key_0);
    QTest::qWait(20);
    EXPECT_GE(edited.count(), 1);
    EXPECT_LE(edited.count(), 2);
}

TEST_F(Forms, one_column_where_it_is_narrow_and_two_where_it_is_wide) {
    QTest::qWait(20);
    EXPECT_EQ(count->mapTo(&form, QPoint(0, 0)).y(), weight->mapTo(&form, QPoint(0, 0)).y());
    form.resize(360, 700);
    QTest::qWait(20);
    EXPECT_LT(count->mapTo(&form, QPoint(0, 0)).y(), weight->mapTo(&form, QPoint(0, 0)).y());
    EXPECT_EQ(form.width(), 360);
}

TEST(FormDialogs, closes_when_the_entry_is_made_and_not_when_it_is_refused) {
    const Habits habits(fixed_clock);
    QString reason;
    bool refuse_it = true;
    QWidget window;
    window.show();
    const QPointer<FormDialog> dialog = ask_reason(
        habits, &window, QStringLiteral("Make the bag void"), QStringLiteral("It stays in the register."), QStringLiteral("Make it void"),
        [&](const QString& text) -> std::optional<Refusal> {
            reason = text;
            return refuse_it ? std::optional<Refusal>(Refusal{Why::bag_gone, {}, {QStringLiteral("S52E")}, false}) : std::nullopt;
        });
    QApplication::setActiveWindow(dialog);
    QTest::qWait(20);
    auto* field = dialog->findChild<NoteField*>();
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(QApplication::focusWidget(), field->editor());
    QTest::keyClick(field->editor(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(field->complaint().isEmpty()) << "a reason is needed";
    QTest::keyClicks(field->editor(), QStringLiteral("torn"));
    QTest::keyClick(field->editor(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(dialog && dialog->isVisible());
    EXPECT_EQ(reason, QStringLiteral("torn"));
    refuse_it = false;
    QTest::qWait(20);
    QTest::keyClick(field->editor(), Qt::Key_Return, Qt::ControlModifier);
    QTest::qWait(20);
    EXPECT_TRUE(dialog.isNull() || !dialog->isVisible());
}

TEST(LongForms, enter_brings_the_next_field_into_view) {
    const Habits habits(fixed_clock);
    PageScroll page;
    auto* form = new FormFrame(habits, QStringLiteral("Long"));
    std::vector<TextField*> fields;
    for (int i = 0; i < 12; ++i)
        fields.push_back(form->add_wide(QStringLiteral("Line %1").arg(i), new TextField, QStringLiteral("line%1").arg(i)));
    page.column()->addWidget(form);
    page.resize(600, 320);
    page.show();
    QApplication::setActiveWindow(&page);
    fields.front()->take_focus();
    for (TextField* field : fields) {
        ASSERT_EQ(QApplication::focusWidget(), field->editor());
        const QRect seen(field->editor()->mapTo(page.viewport(), QPoint()), field->editor()->size());
        EXPECT_TRUE(page.viewport()->rect().contains(seen)) << seen.top();
        QTest::keyClick(field->editor(), Qt::Key_Return);
        QTest::qWait(1);
    }
}

TEST(FormDialogs, esc_with_typed_text_needs_a_second_esc) {
    const Habits habits(fixed_clock);
    const QPointer<FormDialog> dialog = new FormDialog(habits, QStringLiteral("Name"), nullptr);
    auto* field = dialog->form()->add(QStringLiteral("Name"), new TextField, QStringLiteral("name"));
    dialog->show();
    QApplication::setActiveWindow(dialog);
    QTest::keyClicks(field->editor(), QStringLiteral("Tank 1"));
    QTest::keyClick(field->editor(), Qt::Key_Escape);
    ASSERT_TRUE(dialog);
    EXPECT_TRUE(dialog->isVisible());
    QTest::keyClick(field->editor(), Qt::Key_Escape);
    QTest::qWait(20);
    EXPECT_TRUE(dialog.isNull());
}

} // namespace
} // namespace soakbook::ui
