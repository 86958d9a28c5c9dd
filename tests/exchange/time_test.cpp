// SPDX-License-Identifier: GPL-3.0-or-later
// The hour as a beekeeper types it.
#include "core/exchange/date_text.h"
#include "tests/exchange/wording.h"

namespace soakbook::exchange {
namespace {

Read<int> typed(const char16_t* utf16) {
    return read_time(text(utf16));
}

TEST(Hours, on_both_clocks) {
    EXPECT_TRUE(reads_as(typed(u"14:30"), 870));
    EXPECT_TRUE(reads_as(typed(u"14.30"), 870));
    EXPECT_TRUE(reads_as(typed(u"1430"), 870));
    EXPECT_TRUE(reads_as(typed(u"930"), 570));
    EXPECT_TRUE(reads_as(typed(u"9:05"), 545));
    EXPECT_TRUE(reads_as(typed(u"0:00"), 0));
    EXPECT_TRUE(reads_as(typed(u"2 pm"), 840));
    EXPECT_TRUE(reads_as(typed(u"2:30PM"), 870));
    EXPECT_TRUE(reads_as(typed(u"2:30 a.m."), 150));
    EXPECT_TRUE(reads_as(typed(u"12 am"), 0));
    EXPECT_TRUE(reads_as(typed(u"12 pm"), 720));
}

TEST(Hours, that_no_clock_shows) {
    for (const char16_t* wrong : {u"24:00", u"25:10", u"9:75", u"13 pm", u"0 am", u"2460"}) {
        EXPECT_TRUE(is_refused(typed(wrong), Unreadable::impossible_date)) << text(wrong).toStdString();
    }
}

TEST(Hours, that_are_not_said_clearly) {
    EXPECT_TRUE(is_refused(typed(u"9"), Unreadable::two_meanings)) << "morning or evening?";
    EXPECT_TRUE(is_refused(typed(u""), Unreadable::empty));
    for (const char16_t* junk :
         {u"14:3", u"14:30:15", u"-1", u"noon", u"14,30", u"14:30 h", u"14:30 xm", u"14 30", u"123456"}) {
        EXPECT_TRUE(is_refused(typed(junk), Unreadable::not_a_number)) << text(junk).toStdString();
    }
}

TEST(Hours, written_as_the_wall_clock_showed_them) {
    const std::chrono::milliseconds midnight = maths::day(2026, 10, 3).time_since_epoch();
    const std::int64_t noon_utc = midnight.count() + 12 * 3'600'000;
    EXPECT_EQ(write_time({noon_utc, 0}), text(u"12:00"));
    EXPECT_EQ(write_time({noon_utc, 120}), text(u"14:00"));
    EXPECT_EQ(write_time({noon_utc, -750}), text(u"23:30")) << "the evening before";
    EXPECT_EQ(write_time({noon_utc + 59'999, 0}), text(u"12:00")) << "not rounded up";
    EXPECT_EQ(write_time({-1, 0}), text(u"23:59")) << "before 1970 too";
    for (int minute = 0; minute < 24 * 60; minute += 7) {
        EXPECT_TRUE(reads_as(read_time(write_time({minute * 60'000, 0})), minute));
    }
}

} // namespace
} // namespace soakbook::exchange
