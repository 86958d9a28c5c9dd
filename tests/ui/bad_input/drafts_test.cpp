// SPDX-License-Identifier: GPL-3.0-or-later
// Every form of the program keeps what was typed and not entered: it is offered when the form is opened again, and Due leads
// back to it.
#include "tests/ui/bad_input/sweep.h"

#include "core/work/watch.h"
#include "ui/parts/draft_door.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/drafts.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/setup/setup_place.h"
#include "ui/shell/frame.h"
#include "ui/shell/places.h"
#include "ui/yards/count_page.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QDir>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include <set>

namespace soakbook::tests {

namespace {

/// Too small to matter: a reason or a day is typed again in a moment, or each choice takes hold at once. The welcome has no
/// workbook yet to keep a draft for.
const std::set<std::string>& too_small() {
    static const std::set<std::string> names{"void_a_batch",    "void_a_stir", "void_a_loss", "take_over", "put_back",           "open_a_batch_again", "close",
                                             "void_a_bag",      "a_bag_is_opened",       "a_pail_is_used_in_part",
                                             "finish_a_delivery", "void_a_count",        "reading_and_writing", "welcome"};
    return names;
}

std::vector<FormCase> forms_with_drafts() {
    std::vector<FormCase> forms;
    for (FormCase& form : all_forms()) {
        if (too_small().count(form.name) == 0)
            forms.push_back(std::move(form));
    }
    return forms;
}

/// What stands in the form, editor by editor.
QStringList what_stands(const ui::FormFrame& form) {
    QStringList all;
    for (const QWidget* widget : form.findChildren<QWidget*>()) {
        const bool inside_a_list = qobject_cast<const QComboBox*>(widget->parentWidget()) != nullptr;
        if (const auto* line = qobject_cast<const QLineEdit*>(widget); line != nullptr && !inside_a_list)
            all << line->text();
        else if (const auto* note = qobject_cast<const QPlainTextEdit*>(widget))
            all << note->toPlainText();
        else if (const auto* list = qobject_cast<const QComboBox*>(widget))
            all << list->currentText();
        else if (const auto* button = qobject_cast<const QAbstractButton*>(widget); button != nullptr && button->isCheckable())
            all << (button->isChecked() ? QStringLiteral("x") : QStringLiteral("-"));
    }
    for (const ui::RecordTable* table : form.findChildren<ui::RecordTable*>()) {
        for (int column = 0; table->model() != nullptr && table->model()->rowCount() > 0 && column < table->model()->columnCount(); ++column)
            all << table->model()->index(0, column).data(Qt::EditRole).toString();
    }
    return all;
}

/// Types over the first place that takes a text: with nonsense, a comma, and a mark that turns the direction.
const QString odd_text = QStringLiteral("12,5 x\u202e\u05d0");

class EveryDraft : public testing::TestWithParam<FormCase> {
protected:
    EveryDraft() : room(QStringLiteral("en")), drafts(new ui::Drafts(folder.path(), work::workbook_uid(room.book()), &room.desk())) {}

    /// Opens the form as a person does, types what is right, and something odd over the first text.
    QStringList type() {
        GetParam().open(room);
        fill_in(room, GetParam());
        for (QLineEdit* line : open_form(room)->findChildren<QLineEdit*>()) {
            if (line->isVisible() && line->isEnabled() && !line->isReadOnly() && qobject_cast<QComboBox*>(line->parentWidget()) == nullptr) {
                line->setFocus();
                line->selectAll();
                line->insert(odd_text);
                Q_EMIT line->textEdited(line->text());
                break;
            }
        }
        if (GetParam().right.empty())
            type_first_cell();
        room.settle();
        return what_stands(*open_form(room));
    }
    void type_first_cell() {
        for (ui::RecordTable* table : open_form(room)->findChildren<ui::RecordTable*>()) {
            for (int column = 0; table->rows_model() != nullptr && table->model()->rowCount() > 0 && column < table->model()->columnCount(); ++column) {
                const QModelIndex cell = table->model()->index(0, column);
                if (cell.flags().testFlag(Qt::ItemIsEditable) && !table->isColumnHidden(column)) {
                    table->rows_model()->setData(cell, QStringLiteral("2"), Qt::EditRole);
                    return;
                }
            }
        }
    }
    ui::DraftOffer* offer() const {
        for (ui::DraftOffer* found : room.window().findChildren<ui::DraftOffer*>()) {
            if (found->isVisible() && found->is_offering())
                return found;
        }
        return nullptr;
    }

    QTemporaryDir folder;
    mutable Room room;
    ui::Drafts* drafts;
};

} // namespace

TEST_P(EveryDraft, is_offered_again_and_taken_up_as_it_was_typed) {
    const QStringList typed = type();
    ASSERT_TRUE(open_form(room)->drafts().place().has_value()) << "nothing says where the draft of this form is kept";
    room.clear();
    ASSERT_EQ(drafts->all().size(), 1U);
    GetParam().open(room);
    ASSERT_NE(offer(), nullptr);
    EXPECT_NE(what_stands(*open_form(room)), typed) << "taken up without being asked";
    ui::FormFrame* form = open_form(room);
    offer()->take_up()->click();
    room.settle();
    EXPECT_EQ(what_stands(*form), typed);
    EXPECT_EQ(offer(), nullptr);
    EXPECT_EQ(drafts->all().size(), 1U) << "it is not entered yet";
}

TEST_P(EveryDraft, goes_when_it_is_thrown_away) {
    type();
    room.clear();
    GetParam().open(room);
    ASSERT_NE(offer(), nullptr);
    offer()->throw_away()->click();
    room.settle();
    EXPECT_EQ(offer(), nullptr);
    EXPECT_TRUE(drafts->all().empty());
    room.clear();
    GetParam().open(room);
    EXPECT_EQ(offer(), nullptr);
}

TEST_P(EveryDraft, goes_when_the_entry_is_made) {
    GetParam().open(room);
    fill_in(room, GetParam());
    if (GetParam().right.empty())
        type_first_cell();
    room.settle();
    QString words;
    ASSERT_TRUE(enters(room, words)) << words.toStdString();
    room.settle();
    EXPECT_TRUE(drafts->all().empty());
}

TEST_P(EveryDraft, is_found_again_from_due) {
    const QStringList typed = type();
    room.clear();
    ASSERT_EQ(drafts->all().size(), 1U);
    const ui::Draft kept = drafts->all().front();
    EXPECT_FALSE(kept.place.title.isEmpty());
    auto* frame = room.show(new ui::Frame(room.desk(), ui::make_places(room.desk(), {QString(), {}, {}, {}})));
    ui::Intent intent = kept.place.intent;
    intent.prefill.insert(ui::draft_key, kept.id());
    frame->go(intent);
    room.settle();
    room.settle();
    EXPECT_EQ(room.window().findChild<QDialog*>(QStringLiteral("left_draft")), nullptr) << "no form took it";
    ASSERT_NE(offer(), nullptr) << kept.place.form.toStdString();
    EXPECT_TRUE(offer()->take_up()->hasFocus());
    offer()->take_up()->click();
    room.settle();
    bool stands_there = false;
    for (const ui::DraftPart& part : kept.parts) {
        for (const QLineEdit* line : room.window().findChildren<QLineEdit*>())
            stands_there = stands_there || (line->isVisible() && line->text() == part.says);
        for (const ui::RecordTable* table : room.window().findChildren<ui::RecordTable*>())
            stands_there = stands_there || (table->isVisible() && part.kind == ui::DraftPart::Kind::cell);
    }
    EXPECT_TRUE(stands_there);
}

INSTANTIATE_TEST_SUITE_P(kept, EveryDraft, testing::ValuesIn(forms_with_drafts()),
                         [](const testing::TestParamInfo<FormCase>& form) { return std::string(form.param.name); });

TEST(Drafts, what_was_typed_into_a_grid_can_be_given_up) {
    QTemporaryDir folder;
    Room room(QStringLiteral("en"));
    auto* drafts = new ui::Drafts(folder.path(), work::workbook_uid(room.book()), &room.desk());
    auto* page = room.show(new ui::CountPage(room.desk()));
    page->open(full_house().yard);
    room.settle();
    auto* give_up = page->findChild<QPushButton*>(QStringLiteral("count_give_up"));
    EXPECT_FALSE(give_up->isVisible());
    auto* grid = page->findChild<ui::RecordTable*>(QStringLiteral("count_grid"));
    ASSERT_TRUE(grid->rows_model()->setData(grid->model()->index(0, ui::count_mites), QStringLiteral("3"), Qt::EditRole));
    room.settle();
    open_form(room)->drafts().keep_now();
    ASSERT_EQ(drafts->all().size(), 1U);
    ASSERT_TRUE(give_up->isVisible());
    give_up->click();
    room.settle();
    EXPECT_TRUE(drafts->all().empty());
    EXPECT_EQ(grid->model()->index(0, ui::count_mites).data().toString(), QString());
    EXPECT_FALSE(give_up->isVisible());
}

TEST(Drafts, a_form_without_one_is_too_small_to_matter) {
    for (const FormCase& form : all_forms()) {
        Room room(QStringLiteral("en"));
        form.open(room);
        const bool has_draft = open_form(room)->drafts().place().has_value();
        EXPECT_EQ(has_draft, too_small().count(form.name) == 0) << form.name << " keeps no draft, or is listed without need";
        room.clear();
    }
}

} // namespace soakbook::tests
