// SPDX-License-Identifier: GPL-3.0-or-later
// A yard of twenty hives: strips in, and out again in time.
#include "story.h"

#include "tools.h"

#include <gtest/gtest.h>

namespace soakbook::tests {

void Story::a_yard_of_twenty() {
    next_day(QStringLiteral("2024-03-14 18:00"));
    go(4);
    m_hands.press(Qt::Key_Return); // the one button of the empty page
    m_hands.fill(QStringLiteral("Name"), QStringLiteral("Alder Slack"));
    m_hands.enter();
    m_hands.click(QStringLiteral("Add hives"));
    m_hands.fill(QStringLiteral("Letters before the number"), QStringLiteral("AS-"));
    m_hands.fill(QStringLiteral("First number"), QStringLiteral("01"));
    m_hands.fill(QStringLiteral("How many"), QStringLiteral("20"));
    m_hands.fill(QStringLiteral("Frames of bees"), QStringLiteral("8"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), min(name), max(name) FROM hive")), QStringLiteral("20|AS-01|AS-20"));

    // No round waits: strips in asks for one first.
    m_hands.click(QStringLiteral("Strips in"));
    m_hands.fill(QStringLiteral("Name"), QStringLiteral("Spring"));
    m_hands.fill(QStringLiteral("Day"), QStringLiteral("16 mar"));
    m_hands.choose(QStringLiteral("Strips for each hive"), QStringLiteral("the same for every hive"));
    m_hands.fill(QStringLiteral("Strips"), QStringLiteral("4"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("20 hives want 80 strips"))) << m_hands.words().toStdString();
    EXPECT_TRUE(m_hands.sees(QStringLiteral("enough in the store")));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT name, planned_on, pull_from_days, pull_by_days FROM round")), QStringLiteral("Spring|2024-03-16|42|56"))
        << m_hands.words().toStdString();
}

void Story::strips_in() {
    next_day(QStringLiteral("2024-03-16 11:00"));
    go(4);
    m_hands.click(QStringLiteral("Strips in"));
    // As planned but for two hives: a strong one gets six strips, and one is found dead.
    m_hands.type_into_cell(QStringLiteral("Hives of the visit"), QStringLiteral("AS-03"), QStringLiteral("Strips in"), QStringLiteral("6"));
    m_hands.walk_to_cell(QStringLiteral("Hives of the visit"), QStringLiteral("AS-07"), QStringLiteral("State"));
    m_hands.press(Qt::Key_F2);
    m_hands.press(Qt::Key_D);
    m_hands.press(Qt::Key_Return);
    EXPECT_EQ(m_hands.cell(QStringLiteral("Hives of the visit"), QStringLiteral("AS-07"), QStringLiteral("State")), QStringLiteral("dead"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("2 exceptions"))) << m_hands.words().toStdString();
    m_hands.answer(QStringLiteral("Honey supers on?"), false);
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(strips), count(DISTINCT hive_id) FROM placement")), QStringLiteral("19|78|19")) << m_hands.words().toStdString();
    EXPECT_EQ(ask(QStringLiteral("SELECT name, state, state_on FROM hive WHERE state <> 'alive'")), QStringLiteral("AS-07|dead|2024-03-16"));
    // The bag nearest its limit, and one bag only: 78 strips of 80.
    EXPECT_EQ(ask(QStringLiteral("SELECT count(DISTINCT bag_id) FROM placement")), QStringLiteral("1"));
}

} // namespace soakbook::tests
