// SPDX-License-Identifier: GPL-3.0-or-later
// Bags, their labels, and what was left. Twelve months from 29 February end on 28 February (common practice, no source).
#include "story.h"

#include "tools.h"

#include <gtest/gtest.h>

namespace soakbook::tests {

void Story::bag_and_label() {
    it_is(QStringLiteral("2024-02-29 14:00"));
    EXPECT_EQ(m_hands.text_of(QStringLiteral("Bags")), QStringLiteral("12"));
    EXPECT_EQ(m_hands.text_of(QStringLiteral("Strips in each")), QStringLiteral("80"));
    // One strip was torn while it was weighed.
    m_hands.fill(QStringLiteral("Strips in a short last bag"), QStringLiteral("79"));
    m_hands.fill(QStringLiteral("Stands"), QStringLiteral("loft"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("959 strips"))) << m_hands.words().toStdString();
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(packed), min(packed), min(use_by), max(use_by), min(acid_per_strip_mg) FROM bag")),
              QStringLiteral("12|959|79|2025-02-28|2025-02-28|9160"))
        << m_hands.words().toStdString();
    const QString pdf = file(QStringLiteral("labels.pdf"));
    m_hands.click_and_pick_file(QStringLiteral("Save as PDF…"), pdf);
    m_batch_count = m_hands.count();
    m_batch_keys = m_hands.keys();
    EXPECT_TRUE(m_hands.sees(QStringLiteral("labels.pdf"))) << m_hands.words().toStdString();
    m_hands.press(Qt::Key_Escape);

    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM bag WHERE label = 'printed'")), QStringLiteral("12"));
    QStringList codes = ask(QStringLiteral("SELECT code FROM bag ORDER BY code")).split(QLatin1Char('\n'));
    EXPECT_EQ(codes_in_pdf(pdf), codes);
    const QString text = text_of_pdf(pdf);
    for (const QString& code : codes)
        EXPECT_TRUE(text.contains(code)) << code.toStdString();
    for (const char* said : {"79 oxalic acid strips", "80 oxalic acid strips", "9.16 g acid each", "sealed 29 Feb 2024", "rest until 7 Mar 2024",
                             "Use by 28 Feb 2025", "bag 12 of 12", "DANGER", "Oxalic acid 40 %", "Causes serious eye damage", "not for"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(said))) << said << "\n" << text.toStdString();
}

void Story::leftovers() {
    it_is(QStringLiteral("2024-02-29 16:00"));
    m_hands.tab_to(QStringLiteral("Step 6, Leftovers"));
    m_hands.press(Qt::Key_Space);
    m_hands.fill(QStringLiteral("Pails, contents of each 1"), QStringLiteral("20"));
    m_hands.fill(QStringLiteral("Pails, contents of each 2"), QStringLiteral("20.42"));
    m_hands.answer(QStringLiteral("Poured warm and clear?"), true);
    m_hands.answer(QStringLiteral("Bin scraped to the bottom?"), true);
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(mass_mg), min(strength_ppm) FROM pail")), QStringLiteral("2|40420000|400000")) << m_hands.words().toStdString();
    m_hands.press(Qt::Key_Escape); // the pails' labels can wait
    it_is(QStringLiteral("2024-02-29 16:30"));
    m_hands.click(QStringLiteral("Close"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("1 strip was soaked and stands in no bag"))) << m_hands.words().toStdString();
    m_hands.click(QStringLiteral("Close the batch"));
    if (m_hands.sees(QStringLiteral("Keep it as it is")))
        m_hands.keep_as_it_is(); // the torn strip
    // 959 strips took 22.9 g each; with the pails, all but 119 g of the 62.5 kg are accounted for.
    EXPECT_EQ(ask(QStringLiteral("SELECT taken_mg, unexplained_mg FROM batch WHERE closed_ms IS NOT NULL")), QStringLiteral("21961100|118900")) << m_hands.words().toStdString();
}

} // namespace soakbook::tests
