// SPDX-License-Identifier: GPL-3.0-or-later
// The record, shown: whatever went otherwise than planned can be read in the register, in its table for a spreadsheet and on paper.
#include "story.h"

#include "tools.h"

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

QStringList lines_with(const QString& text, const QString& part) { return text.split(QLatin1Char('\n')).filter(part); }

} // namespace

void Story::the_register() {
    go(5);
    const QString treatments = m_hands.rows(QStringLiteral("Treatments"));
    // Nineteen hives as planned, and two bags' strips a day late.
    EXPECT_EQ(treatments.count(QLatin1Char('\n')) + 1, 21);
    EXPECT_TRUE(lines_with(treatments, QStringLiteral("AS-11")).value(0).contains(QStringLiteral("| 3 |"))) << treatments.toStdString();
    EXPECT_EQ(lines_with(treatments, QStringLiteral("entered late, 17 Mar 2024")).size(), 2) << treatments.toStdString();
    EXPECT_TRUE(lines_with(treatments, QStringLiteral("AS-05")).value(0).contains(QStringLiteral("found in the grass"))) << treatments.toStdString();
    EXPECT_TRUE(lines_with(treatments, QStringLiteral("AS-03")).value(0).contains(QStringLiteral("| 6 |")));
    EXPECT_TRUE(lines_with(treatments, QStringLiteral("AS-07")).isEmpty());

    const QString csv = file(QStringLiteral("register.csv"));
    m_hands.click_and_pick_file(QStringLiteral("For a spreadsheet"), csv);
    const QString table = text_of_file(csv);
    EXPECT_EQ(lines_with(table, QStringLiteral("2024-03-16")).size(), 21) << table.toStdString();
    EXPECT_TRUE(lines_with(table, QStringLiteral("AS-11")).value(0).contains(QStringLiteral("2024-04-27,3,1"))) << table.toStdString();
    EXPECT_EQ(lines_with(table, QStringLiteral("entered late")).size(), 2);
    EXPECT_EQ(lines_with(table, QStringLiteral("found in the grass")).size(), 1);

    const QString pdf = file(QStringLiteral("register.pdf"));
    m_hands.click(QStringLiteral("Print or PDF"));
    m_hands.click_and_pick_file(QStringLiteral("Save as PDF…"), pdf);
    m_hands.press(Qt::Key_Escape);
    const QString paper = text_of_pdf(pdf);
    for (const char* said : {"Sallow Carr Bees", "AS-01", "AS-20", "AS-07", "dead", "entered late", "3 of 4, 1", "grass", "339 g, before 393 g", "mistyped", "Ida Rook"})
        EXPECT_TRUE(paper.contains(QString::fromUtf8(said))) << said << "\n" << paper.toStdString();

    m_hands.walk_list(QStringLiteral("Pages of the Register"), QStringLiteral("Corrections"));
    const QString corrections = m_hands.rows(QStringLiteral("Corrections"));
    EXPECT_FALSE(lines_with(corrections, QStringLiteral("mistyped")).isEmpty()) << corrections.toStdString();
    EXPECT_TRUE(corrections.contains(QStringLiteral("393"))) << "what the wrong weighing said before\n"
                                                                 << corrections.toStdString();
    m_hands.walk_list(QStringLiteral("Pages of the Register"), QStringLiteral("Hives"));
    EXPECT_TRUE(m_hands.rows(QStringLiteral("Hives without strips")).contains(QStringLiteral("AS-07 | dead"))) << m_hands.words().toStdString();
    m_hands.walk_list(QStringLiteral("Pages of the Register"), QStringLiteral("Journal"));
    EXPECT_TRUE(m_hands.rows(QStringLiteral("Journal")).contains(QStringLiteral("taken back: strips in"))) << m_hands.words().toStdString();

    // The short bag and the corrected weighing stand on the batch's own sheet.
    go(2);
    const QString sheet = file(QStringLiteral("batch.pdf"));
    m_hands.click(QStringLiteral("Batch sheet"));
    m_hands.click_and_pick_file(QStringLiteral("Save as PDF…"), sheet);
    m_hands.press(Qt::Key_Escape);
    const QString batch = text_of_pdf(sheet);
    EXPECT_TRUE(lines_with(batch, QStringLiteral("S00C9")).value(0).contains(QStringLiteral("79"))) << batch.toStdString();
    EXPECT_TRUE(lines_with(batch, QStringLiteral("339 g")).value(0).contains(QStringLiteral("yes"))) << "the corrected weighing is marked\n" << batch.toStdString();
    for (const char* said : {"OX-118", "GL-7", "25 kg", "37.5 kg", "60.5 °C", "over the ceiling", "21.96 kg", "40 %"})
        EXPECT_TRUE(batch.contains(QString::fromUtf8(said))) << said << "\n" << batch.toStdString();
}

} // namespace soakbook::tests
