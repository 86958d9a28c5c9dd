// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/gallery.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/habits.h"
#include "ui/parts/icons.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/state.h"
#include "ui/parts/theme.h"

#include <QApplication>
#include <QDir>
#include <QFontInfo>
#include <QImage>
#include <QPainter>
#include <QScreen>
#include <QTest>

#include <gtest/gtest.h>

#include <set>

namespace soakbook::ui {
namespace {

maths::Instant fixed_clock() {
    return wall_instant(maths::day(2026, 11, 24), 10 * 60 + 5);
}

/// Puts the look back to what the other tests expect.
class Looks : public testing::Test {
protected:
    void TearDown() override { apply_theme(*qApp, Look::light, 100); }

    static void keep_picture(QWidget& widget, const QString& name) {
        // Set to a folder, this variable keeps the pictures for somebody to look at.
        const QString folder = qEnvironmentVariable("SOAKBOOK_PICTURES");
        if (!folder.isEmpty()) {
            QDir().mkpath(folder);
            EXPECT_TRUE(widget.grab().save(folder + QStringLiteral("/") + name + QStringLiteral(".png")));
        }
    }
};

TEST_F(Looks, text_stands_out_from_what_is_behind_it) {
    // WCAG 2.1, success criterion 1.4.3: 4.5 : 1 for text.
    constexpr double least = 4.5;
    for (const Look look : {Look::light, Look::dark}) {
        const Colours& c = colours(look);
        for (const QColor& ground : {c.paper, c.card, c.accent_wash}) {
            EXPECT_GE(contrast(c.ink, ground), least);
            EXPECT_GE(contrast(c.soft_ink, ground), least);
            EXPECT_GE(contrast(c.accent, ground), least);
        }
        EXPECT_GE(contrast(c.accent_ink, c.accent), least);
        apply_theme(*qApp, look, 100);
        for (const State state : {State::resting, State::ready, State::near, State::past, State::gone}) {
            for (const QColor& ground : {c.paper, c.card, c.accent_wash}) {
                EXPECT_GE(contrast(state_ink(state), ground), least) << state_word(state).toStdString();
            }
            // WCAG 2.1, success criterion 1.4.11: 3 : 1 for a shape that carries a meaning.
            EXPECT_GE(contrast(state_colour(state), c.card), 3.0) << state_word(state).toStdString();
        }
        EXPECT_GE(contrast(c.past, c.card), least) << "words of a refusal";
    }
}

TEST_F(Looks, contrast_is_that_of_the_standard) {
    // WCAG 2.1, definition of contrast ratio: black on white 21, a colour on itself 1.
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x155E63), QColor(0x155E63)), 1.0, 1e-9);
}

TEST_F(Looks, each_state_has_a_shape_of_its_own) {
    std::set<QByteArray> shapes;
    for (const State state : {State::resting, State::ready, State::near, State::past, State::gone}) {
        QImage image(32, 32, QImage::Format_ARGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paint_state(painter, QRectF(0, 0, 32, 32), state, Qt::black);
        painter.end();
        QByteArray bits(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes());
        EXPECT_TRUE(bits.contains('\0')) << "nothing painted";
        shapes.insert(bits);
        EXPECT_FALSE(state_word(state).isEmpty());
    }
    EXPECT_EQ(shapes.size(), 5U);
}

TEST_F(Looks, the_fonts_of_the_house_are_there) {
    EXPECT_EQ(QFontInfo(type_font(Type::body)).family(), QStringLiteral("Noto Sans"));
    EXPECT_EQ(QFontInfo(type_font(Type::code)).family(), QStringLiteral("DejaVu Sans Mono"));
}

TEST_F(Looks, every_icon_that_is_listed_can_be_painted) {
    const QStringList drawn = QDir(QStringLiteral(SOAKBOOK_SOURCE_DIR "/resources/icons")).entryList({QStringLiteral("*.svg")});
    ASSERT_GT(drawn.size(), 30);
    for (const QString& file : drawn) {
        const QString name = file.chopped(4);
        const QIcon made = icon(name);
        ASSERT_FALSE(made.isNull()) << name.toStdString() << " is not in soakbook.qrc";
        const QImage image = made.pixmap(40, 40).toImage();
        bool painted = false;
        for (int y = 0; y < image.height() && !painted; ++y) {
            for (int x = 0; x < image.width() && !painted; ++x) {
                painted = qAlpha(image.pixel(x, y)) > 128;
            }
        }
        EXPECT_TRUE(painted) << name.toStdString();
    }
}

TEST_F(Looks, nothing_is_clipped_from_100_to_200_per_cent_light_and_dark) {
    const Habits habits(fixed_clock);
    for (const Look look : {Look::light, Look::dark}) {
        for (const int percent : {100, 150, 200}) {
            apply_theme(*qApp, look, percent);
            const QString name = QStringLiteral("%1-%2").arg(look == Look::dark ? QStringLiteral("dark") : QStringLiteral("light")).arg(percent);
            const auto gallery = make_gallery(habits);
            gallery->resize(1136, 2000);
            gallery->show();
            QTest::qWait(50);
            EXPECT_TRUE(clipped_texts(gallery.get()).isEmpty())
                << name.toStdString() << ": " << clipped_texts(gallery.get()).join(QStringLiteral(" | ")).toStdString();
            keep_picture(*gallery, QStringLiteral("parts-") + name);
            const auto side = make_side_gallery();
            side->resize(1136, 640);
            side->show();
            QTest::qWait(20);
            EXPECT_TRUE(clipped_texts(side.get()).isEmpty())
                << name.toStdString() << ": " << clipped_texts(side.get()).join(QStringLiteral(" | ")).toStdString();
            keep_picture(*side, QStringLiteral("side-") + name);
        }
    }
}

TEST_F(Looks, a_window_that_is_open_follows_a_larger_text) {
    const Habits habits(fixed_clock);
    const auto gallery = make_gallery(habits);
    gallery->resize(1136, 2000);
    gallery->show();
    QTest::qWait(20);
    apply_theme(*qApp, Look::dark, 175);
    QTest::qWait(50);
    EXPECT_TRUE(clipped_texts(gallery.get()).isEmpty()) << clipped_texts(gallery.get()).join(QStringLiteral(" | ")).toStdString();
}

TEST_F(Looks, a_tall_form_in_a_dialog_stays_on_the_screen_and_scrolls) {
    apply_theme(*qApp, Look::light, 200);
    const Habits habits(fixed_clock);
    auto* dialog = new FormDialog(habits, QStringLiteral("Tall"), nullptr);
    for (int i = 0; i < 16; ++i) {
        dialog->form()->add(QStringLiteral("Weight %1").arg(i), new MassField(habits, MassSize::large), QString::number(i));
    }
    dialog->show();
    QTest::qWait(50);
    EXPECT_LE(dialog->height(), dialog->screen()->availableGeometry().height());
    EXPECT_LE(dialog->width(), dialog->screen()->availableGeometry().width());
    EXPECT_TRUE(dialog->form()->foot()->isVisible());
    EXPECT_LE(dialog->form()->foot()->mapTo(dialog, QPoint(0, dialog->form()->foot()->height())).y(), dialog->height());
    EXPECT_TRUE(clipped_texts(dialog).isEmpty()) << clipped_texts(dialog).join(QStringLiteral(" | ")).toStdString();
    keep_picture(*dialog, QStringLiteral("dialog-200"));
    dialog->close();
}

} // namespace
} // namespace soakbook::ui
