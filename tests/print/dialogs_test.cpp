// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"
#include "tests/print/read_back.h"
#include "ui/parts/theme.h"
#include "ui/print/ask_file.h"
#include "ui/print/label_dialog.h"
#include "ui/print/mixing_sheet.h"
#include "ui/print/preview_pane.h"
#include "ui/print/sheet_choice.h"
#include "ui/print/sheet_dialog.h"
#include "ui/print/sheet_picture.h"

#include <QApplication>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFileInfo>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTest>

#include <gtest/gtest.h>

using namespace soakbook::ui;
using namespace soakbook::ui::test;

namespace {

class Dialogs : public ::testing::Test {
protected:
    void SetUp() override { QSettings().clear(); }
    void TearDown() override {
        let_answer({});
        QSettings().clear();
        apply_theme(*qobject_cast<QApplication*>(qApp), Look::light, 100);
    }
};

QPushButton* button(const QWidget& dialog, const char* words) {
    for (QPushButton* it : dialog.findChildren<QPushButton*>()) {
        if (it->text() == QString::fromUtf8(words)) {
            return it;
        }
    }
    ADD_FAILURE() << "no button " << words;
    return nullptr;
}

template <class W> W* named(const QWidget& dialog, const char* name) {
    for (W* it : dialog.template findChildren<W*>()) {
        if (it->accessibleName() == QLatin1String(name)) {
            return it;
        }
    }
    ADD_FAILURE() << "no field " << name;
    return nullptr;
}

void choose(QComboBox& box, const QString& words) {
    const int index = box.findText(words);
    ASSERT_GE(index, 0) << qPrintable(words);
    box.setCurrentIndex(index);
}

} // namespace

TEST_F(Dialogs, labels_are_saved_from_the_label_that_was_clicked_on) {
    int printed = 0;
    LabelDialog dialog(bags(3), english().locale, [&] {
        ++printed;
        return QString();
    });
    dialog.show();
    EXPECT_EQ(dialog.windowTitle(), QStringLiteral("3 label(s)"));
    EXPECT_EQ(dialog.pane()->preview()->pages(), 1);
    auto* picture = dialog.findChild<SheetPicture*>();
    ASSERT_NE(picture, nullptr);
    QTest::mouseClick(picture, Qt::LeftButton, {}, picture->place_of(19).center().toPoint());
    EXPECT_EQ(named<QSpinBox>(dialog, "Begin at label")->value(), 20);
    EXPECT_EQ(dialog.pane()->preview()->pages(), 2);
    QTest::keyClick(picture, Qt::Key_Left);
    EXPECT_EQ(named<QSpinBox>(dialog, "Begin at label")->value(), 19);
    QTest::keyClick(picture, Qt::Key_Right);
    const QString path = picture_path(QStringLiteral("dialog.pdf"));
    QString suggested;
    let_answer([&](const FileQuestion& question) {
        suggested = question.suggested;
        return path;
    });
    button(dialog, "Save as PDF…")->click();
    EXPECT_EQ(printed, 1);
    EXPECT_EQ(suggested, QStringLiteral("labels-s100x.pdf"));
    EXPECT_EQ(pages_of_pdf(path), 2);
    EXPECT_TRUE(text_of_page(path, 2).contains(QStringLiteral("S102X")));
}

TEST_F(Dialogs, thinking_better_of_it_prints_nothing) {
    int printed = 0;
    LabelDialog dialog(bags(1), english().locale, [&] {
        ++printed;
        return QString();
    });
    let_answer([](const FileQuestion&) { return QString(); });
    button(dialog, "Save as PDF…")->click();
    let_answer([](const FileQuestion&) { return QStringLiteral("/no/such/folder/a.pdf"); });
    button(dialog, "Save as PDF…")->click();
    EXPECT_EQ(printed, 0);
}

TEST_F(Dialogs, a_roll_that_is_too_small_is_refused_in_words_and_a_larger_one_is_not) {
    LabelDialog dialog(bags(2), english().locale, {});
    dialog.show();
    choose(*named<QComboBox>(dialog, "Labels"), QStringLiteral("Roll"));
    named<QDoubleSpinBox>(dialog, "Label width")->setValue(30);
    named<QDoubleSpinBox>(dialog, "Label height")->setValue(20);
    QTest::qWait(120);
    EXPECT_TRUE(dialog.message().contains(QStringLiteral("too small"))) << qPrintable(dialog.message());
    EXPECT_FALSE(button(dialog, "Print…")->isEnabled());
    EXPECT_FALSE(button(dialog, "Save as PDF…")->isEnabled());
    QCoreApplication::processEvents(); // the row that a roll does not need goes
    dialog.grab().save(picture_path(QStringLiteral("dialog-refused.png")));
    named<QDoubleSpinBox>(dialog, "Label width")->setValue(62);
    named<QDoubleSpinBox>(dialog, "Label height")->setValue(80);
    QTest::qWait(120);
    EXPECT_TRUE(button(dialog, "Print…")->isEnabled());
    EXPECT_EQ(dialog.pane()->preview()->pages(), 2);
    // The roll is still there the next time.
    LabelDialog again(bags(1), english().locale, {});
    EXPECT_EQ(named<QDoubleSpinBox>(again, "Label width")->value(), 62);
    EXPECT_EQ(named<QComboBox>(again, "Labels")->currentText(), QStringLiteral("Roll"));
}

TEST_F(Dialogs, what_is_left_out_is_said_beside_the_preview) {
    LabelDialog dialog(bags(1), english().locale, {});
    EXPECT_TRUE(dialog.message().startsWith(QStringLiteral("Left out for want of room: precautions for handling and keeping"))) << qPrintable(dialog.message());
    choose(*named<QComboBox>(dialog, "Labels"), QStringLiteral("99.1 x 67.7 mm, 8 on A4"));
    QTest::qWait(120);
    EXPECT_TRUE(dialog.message().isEmpty());
}

TEST_F(Dialogs, a_sheet_of_ones_own_that_cannot_be_is_refused) {
    LabelDialog dialog(bags(1), english().locale, {});
    choose(*named<QComboBox>(dialog, "Labels"), QStringLiteral("Another sheet"));
    named<QSpinBox>(dialog, "Beside each other")->setValue(5);
    QTest::qWait(120);
    EXPECT_TRUE(dialog.message().contains(QStringLiteral("edge of the sheet")));
    EXPECT_FALSE(button(dialog, "Print…")->isEnabled());
}

TEST_F(Dialogs, the_preview_is_turned_and_enlarged_by_keys) {
    LabelDialog dialog(bags(60), english().locale, {});
    dialog.show();
    PagePreview* preview = dialog.pane()->preview();
    EXPECT_EQ(preview->pages(), 3);
    QTest::keyClick(preview, Qt::Key_PageDown);
    EXPECT_EQ(preview->page(), 1);
    QTest::keyClick(preview, Qt::Key_End);
    EXPECT_EQ(preview->page(), 2);
    QTest::keyClick(preview, Qt::Key_PageDown);
    EXPECT_EQ(preview->page(), 2);
    QTest::keyClick(preview, Qt::Key_Plus);
    EXPECT_GT(preview->zoom(), 1.4);
    QTest::keyClick(preview, Qt::Key_0);
    EXPECT_EQ(preview->zoom(), 1);
}

TEST_F(Dialogs, a_sheet_is_looked_at_and_saved) {
    MixingSheet mix;
    mix.batch = QStringLiteral("B7K");
    mix.lines = {{QStringLiteral("Acid"), QStringLiteral("OX-4"), QStringLiteral("7.8 kg"), QString()}};
    int printed = 0;
    SheetDialog dialog(sheet_of(mix, {QStringLiteral("Marsh End Bees"), QStringLiteral("Entry 7"), QStringLiteral("19 Nov 2026"), PaperSize::a4}),
                       QStringLiteral("Mixing sheet B7K"), [&] {
                           ++printed;
                           return QString();
                       });
    dialog.show();
    const QString path = picture_path(QStringLiteral("dialog-mixing.pdf"));
    let_answer([&](const FileQuestion& question) {
        EXPECT_EQ(question.suggested, QStringLiteral("mixing-sheet-b7k.pdf"));
        return path;
    });
    button(dialog, "Save as PDF…")->click();
    EXPECT_EQ(printed, 1);
    EXPECT_TRUE(text_of_pdf(path).contains(QStringLiteral("OX-4")));
    dialog.grab().save(picture_path(QStringLiteral("dialog-sheet.png")));
}

TEST_F(Dialogs, dialogs_hold_in_light_and_dark_at_every_text_size) {
    for (const auto& [look, percent] : {std::pair(Look::light, 100), std::pair(Look::dark, 100), std::pair(Look::light, 150)}) {
        apply_theme(*qobject_cast<QApplication*>(qApp), look, percent);
        LabelDialog dialog(bags(9), english().locale, {});
        dialog.show();
        QTest::qWait(30);
        dialog.grab().save(picture_path(QStringLiteral("dialog-%1-%2.png").arg(look == Look::dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(percent)));
        for (const QPushButton* it : dialog.findChildren<QPushButton*>()) {
            EXPECT_GE(it->width(), it->sizeHint().width()) << qPrintable(it->text());
        }
    }
}
