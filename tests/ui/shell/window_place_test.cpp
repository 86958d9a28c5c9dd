// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/window_place.h"

#include <QSettings>
#include <QWidget>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

const QRect laptop(0, 0, 1280, 720);
const QRect second(1280, 0, 1920, 1080);

TEST(WindowPlace, a_window_that_fits_stays_where_it_was) {
    EXPECT_EQ(within_screens(QRect(100, 50, 900, 600), {laptop, second}), QRect(100, 50, 900, 600));
    EXPECT_EQ(within_screens(QRect(1400, 50, 900, 600), {laptop, second}), QRect(1400, 50, 900, 600));
}

TEST(WindowPlace, one_from_a_screen_that_is_gone_comes_back) {
    const QRect placed = within_screens(QRect(1900, 200, 900, 600), {laptop});
    EXPECT_TRUE(laptop.contains(placed));
    EXPECT_EQ(placed.size(), QSize(900, 600));
}

TEST(WindowPlace, one_larger_than_the_screen_is_made_as_large_as_it) {
    EXPECT_EQ(within_screens(QRect(-50, -50, 4000, 3000), {laptop}), laptop);
}

TEST(WindowPlace, the_place_is_remembered) {
    QSettings().clear();
    QWidget window;
    window.setGeometry(40, 60, 640, 480);
    remember_window(window);
    QWidget next;
    restore_window(next);
    EXPECT_EQ(next.geometry(), QRect(40, 60, 640, 480));
}

} // namespace
} // namespace soakbook::ui
