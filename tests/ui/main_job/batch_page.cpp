// SPDX-License-Identifier: GPL-3.0-or-later
// One batch from its plan to its soak. 25 kg of acid and 37.5 kg of glycerine are 62.5 kg at 40 %; a dial at 55 gave 52 degrees, at
// 61 gave 55.5; 960 strips take 22.08 kg, so that at most 40.42 kg are left (common practice, no source).
#include "story.h"

#include <gtest/gtest.h>

namespace soakbook::tests {

void Story::mix() {
    next_day(QStringLiteral("2024-02-27 18:00"));
    m_hands.start_count();
    go(2);
    m_hands.press(Qt::Key_Return); // the one button of the empty page
    m_hands.fill(QStringLiteral("How much"), QStringLiteral("62.5"));
    for (const char* amount : {"Acid 25 kg", "Glycerine 37.5 kg", "Together 62.5 kg at 40 %", "room for 27.5 kg more in the tank"})
        EXPECT_TRUE(m_hands.sees(QLatin1String(amount))) << amount << "\n" << m_hands.words().toStdString();
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM batch")), QStringLiteral("1"));
    // What was planned was weighed in: the amounts stand there.
    it_is(QStringLiteral("2024-02-27 19:30"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT group_concat(mass_mg, ', ') FROM batch_input")), QStringLiteral("25000000, 37500000"));
    EXPECT_EQ(ask(QStringLiteral("SELECT 100.0 * sum(acid_mg) / sum(mass_mg) FROM batch_input")), QStringLiteral("40.0"));
}

void Story::heat() {
    it_is(QStringLiteral("2024-02-27 22:00"));
    m_hands.fill(QStringLiteral("Probe in the liquid"), QStringLiteral("52"));
    m_hands.fill(QStringLiteral("Dial of the thermostat"), QStringLiteral("55"));
    m_hands.enter();

    next_day(QStringLiteral("2024-02-28 07:00"));
    go(2);
    m_hands.click(QStringLiteral("Read the tank"));
    m_hands.fill(QStringLiteral("Probe in the liquid"), QStringLiteral("60.5"));
    // Said while it is typed, before anything is entered, and again above the step once it is.
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Over the ceiling"))) << m_hands.words().toStdString();
    m_hands.fill(QStringLiteral("Dial of the thermostat"), QStringLiteral("66"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT max(probe_cc) FROM reading")), QStringLiteral("6050")) << m_hands.words().toStdString();
    EXPECT_TRUE(m_hands.sees(QStringLiteral("60 °C"))) << m_hands.words().toStdString();

    it_is(QStringLiteral("2024-02-28 08:00"));
    m_hands.fill(QStringLiteral("Probe in the liquid"), QStringLiteral("55.5"));
    m_hands.fill(QStringLiteral("Dial of the thermostat"), QStringLiteral("61"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT group_concat(dial_cc || '>' || probe_cc, ', ') FROM reading")), QStringLiteral("5500>5200, 6600>6050, 6100>5550"));

    it_is(QStringLiteral("2024-02-28 09:00"));
    m_hands.fill(QStringLiteral("Stirred for"), QStringLiteral("5"));
    m_hands.answer(QStringLiteral("Clear, and no crystal to be seen?"), false);
    m_hands.enter();
    it_is(QStringLiteral("2024-02-28 09:30"));
    m_hands.fill(QStringLiteral("Stirred for"), QStringLiteral("5"));
    m_hands.answer(QStringLiteral("Clear, and no crystal to be seen?"), true);
    m_hands.answer(QStringLiteral("Outlet drawn off and poured back?"), true);
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT group_concat(clear || '/' || ifnull(outlet_poured_back, ''), ', ') FROM stir")), QStringLiteral("0/, 1/1"));
}

void Story::soak() {
    it_is(QStringLiteral("2024-02-28 10:00"));
    for (const char* said : {"960 strips will hold 22.08 kg of the 62.5 kg there is.", "At most 40.42 kg stays for pails."})
        EXPECT_TRUE(m_hands.sees(QLatin1String(said))) << said << "\n" << m_hands.words().toStdString();
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(strips) FROM soak")), QStringLiteral("2|960"));
}

void Story::weigh_and_correct() {
    next_day(QStringLiteral("2024-02-29 10:00"));
    go(2);
    EXPECT_EQ(m_hands.here(), QStringLiteral("Weight together"));
    // 393 for 339: the figures were turned round.
    m_hands.fill(QStringLiteral("Weight together"), QStringLiteral("393"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Heavy by"))) << m_hands.words().toStdString();
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM weigh_in")), QStringLiteral("1")) << m_hands.words().toStdString();
    m_hands.tab_to(QStringLiteral("Weighings"));
    m_hands.press(Qt::Key_Return);
    m_hands.fill(QStringLiteral("Weight together"), QStringLiteral("339"));
    m_hands.fill(QStringLiteral("Why"), QStringLiteral("mistyped"));
    m_hands.enter();
    EXPECT_TRUE(m_hands.rows(QStringLiteral("Weighings")).contains(QStringLiteral("On target"))) << m_hands.words().toStdString();
    EXPECT_TRUE(m_hands.rows(QStringLiteral("Weighings")).contains(QStringLiteral("corrected")));
    m_hands.tab_to(QStringLiteral("Take Bin one out"));
    m_hands.press(Qt::Key_Space);
    m_hands.fill(QStringLiteral("Weight together"), QStringLiteral("339"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("9.16 g acid a strip"))) << m_hands.words().toStdString();
    m_hands.enter();
    m_hands.tab_to(QStringLiteral("Take Bin two out"));
    m_hands.press(Qt::Key_Space);
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM soak WHERE ended_ms IS NOT NULL")), QStringLiteral("2"));
}

} // namespace soakbook::tests
