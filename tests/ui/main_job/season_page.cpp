// SPDX-License-Identifier: GPL-3.0-or-later
// What goes otherwise than planned while strips hang, and how they come out.
#include "story.h"

#include "tools.h"

#include <gtest/gtest.h>

namespace soakbook::tests {

void Story::an_entry_a_day_late() {
    next_day(QStringLiteral("2024-03-17 09:00"));
    go(4);
    // Yesterday AS-20 got two more, and nobody wrote it down.
    m_hands.walk_to_cell(QStringLiteral("Hives of the yard"), QStringLiteral("AS-20"), QStringLiteral("Hive"));
    m_hands.click(QStringLiteral("Strips in this hive"));
    m_hands.fill(QStringLiteral("Strips in"), QStringLiteral("2"));
    m_hands.fill(QStringLiteral("Day"), QStringLiteral("-1"));
    m_hands.answer(QStringLiteral("Honey supers on?"), false);
    m_hands.enter();
    if (m_hands.sees(QStringLiteral("Keep it as it is")))
        m_hands.keep_as_it_is(); // strips hang there already
    // One from the opened short bag, which is empty now, and one from the next.
    EXPECT_EQ(ask(QStringLiteral("SELECT strips, placed_on FROM placement WHERE hive_id = (SELECT id FROM hive WHERE name = 'AS-20') ORDER BY id")),
              QStringLiteral("4|2024-03-16\n1|2024-03-16\n1|2024-03-16"))
        << m_hands.words().toStdString();
}

void Story::one_undo() {
    // Into the wrong hive, and taken back at once.
    m_hands.walk_to_cell(QStringLiteral("Hives of the yard"), QStringLiteral("AS-10"), QStringLiteral("Hive"));
    m_hands.click(QStringLiteral("Strips in this hive"));
    m_hands.fill(QStringLiteral("Strips in"), QStringLiteral("3"));
    m_hands.answer(QStringLiteral("Honey supers on?"), false);
    m_hands.enter();
    if (m_hands.sees(QStringLiteral("Keep it as it is")))
        m_hands.keep_as_it_is();
    const QString hanging = QStringLiteral("SELECT sum(strips) FROM placement WHERE void_reason IS NULL");
    EXPECT_EQ(ask(hanging), QStringLiteral("83")) << m_hands.words().toStdString();
    m_hands.press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(ask(hanging), QStringLiteral("80")) << m_hands.words().toStdString();
}

void Story::pull_list_and_strips_out() {
    // Hung on 16 March, to be pulled from day 42 to day 56 after it: 27 April to 11 May.
    next_day(QStringLiteral("2024-04-26 09:00"));
    go(1);
    EXPECT_FALSE(m_hands.sees(QStringLiteral("Strips out"))) << m_hands.words().toStdString();
    next_day(QStringLiteral("2024-04-27 09:00"));
    go(1);
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Pull"))) << m_hands.words().toStdString();
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Alder Slack"))) << m_hands.words().toStdString();
    go(4);
    m_hands.click(QStringLiteral("Pull list"));
    const QString pdf = file(QStringLiteral("pull-list.pdf"));
    m_hands.click_and_pick_file(QStringLiteral("Save as PDF…"), pdf);
    m_hands.press(Qt::Key_Escape);
    const QString text = text_of_pdf(pdf);
    for (const char* said : {"Alder Slack", "AS-01", "AS-03", "AS-20", "to pull", "S001V"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(said))) << said << "\n" << text.toStdString();
    EXPECT_FALSE(text.contains(QStringLiteral("AS-07"))) << "nothing hangs in the dead hive";

    m_hands.click(QStringLiteral("Strips out"));
    // All came out but one strip of AS-11, which the bees had carried off.
    m_hands.type_into_cell(QStringLiteral("Strips to take out"), QStringLiteral("AS-11"), QStringLiteral("Pulled"), QStringLiteral("3"));
    EXPECT_EQ(m_hands.cell(QStringLiteral("Strips to take out"), QStringLiteral("AS-11"), QStringLiteral("Missing")), QStringLiteral("1"));
    m_hands.enter();
    if (m_hands.sees(QStringLiteral("Keep it as it is")))
        m_hands.keep_as_it_is();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(pulled), sum(missing), min(pulled_on) FROM placement WHERE pulled_on IS NOT NULL")),
              QStringLiteral("21|79|1|2024-04-27"))
        << m_hands.words().toStdString();
    EXPECT_TRUE(m_hands.sees(QStringLiteral("1 strip was missing"))) << m_hands.words().toStdString();
}

void Story::a_correction_with_its_reason() {
    m_hands.walk_to_cell(QStringLiteral("Hives of the yard"), QStringLiteral("AS-05"), QStringLiteral("Hive"));
    m_hands.press(Qt::Key_Return);
    m_hands.walk_to_cell(QStringLiteral("What happened to this hive"), QStringLiteral("strips out"), QStringLiteral("What"));
    m_hands.click(QStringLiteral("Correct"));
    m_hands.fill(QStringLiteral("Pulled"), QStringLiteral("3"));
    m_hands.fill(QStringLiteral("Missing"), QStringLiteral("1"));
    // Without its reason it is refused, and nothing typed is lost.
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT sum(missing) FROM placement")), QStringLiteral("1"));
    EXPECT_EQ(m_hands.text_of(QStringLiteral("Pulled")), QStringLiteral("3"));
    m_hands.fill(QStringLiteral("Reason"), QStringLiteral("found in the grass"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT sum(pulled), sum(missing) FROM placement")), QStringLiteral("78|2")) << m_hands.words().toStdString();
}

} // namespace soakbook::tests
