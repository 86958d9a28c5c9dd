// SPDX-License-Identifier: GPL-3.0-or-later
// A new workbook, and how this outfit works. A dry strip of 11 g that weighs 34 g when it is soaked, 80 in a bag, 480 in a bin;
// acid and glycerine in containers of 25 kg (common practice, no source).
#include "story.h"

#include "app/session.h"
#include "ui/shell/frame.h"

#include <QFileInfo>

#include <gtest/gtest.h>

namespace soakbook::tests {

void Story::fill_in_the_welcome() {
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Make your workbook")));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Four figures to begin with")));
    m_hands.fill(QStringLiteral("Your operation"), QStringLiteral("Sallow Carr Bees"));
    m_hands.fill(QStringLiteral("Your name"), QStringLiteral("Ida Rook"));
    m_hands.fill(QStringLiteral("Made by"), QStringLiteral("Sallow Carr, Fen Lane, Wend"));
    m_hands.fill(QStringLiteral("The workbook is kept in"), m_workbook);
    m_hands.fill(QStringLiteral("Kind of strip"), QStringLiteral("Card strip"));
    m_hands.fill(QStringLiteral("One dry strip weighs"), QStringLiteral("11"));
    m_hands.fill(QStringLiteral("One soaked strip should weigh"), QStringLiteral("34"));
    m_hands.fill(QStringLiteral("May be off by"), QStringLiteral("1"));
    m_hands.fill(QStringLiteral("Strips in a bag"), QStringLiteral("80"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("One strip takes up 23 g of liquid."))) << m_hands.words().toStdString();
    m_hands.fill(QStringLiteral("Tank"), QStringLiteral("Old dairy tank"));
    m_hands.fill(QStringLiteral("Filled with at most"), QStringLiteral("90"));
    m_hands.fill(QStringLiteral("Bin"), QStringLiteral("Bin one"));
    m_hands.fill(QStringLiteral("Holds dry strips"), QStringLiteral("480"));
}

void Story::welcome_and_a_new_workbook() {
    fill_in_the_welcome();
    m_hands.enter();
    ASSERT_TRUE(QFileInfo::exists(m_workbook)) << m_hands.words().toStdString();
    ASSERT_NE(m_session->frame(), nullptr);
    m_session->frame()->resize(1440, 900);
    m_hands.settle();
    EXPECT_EQ(ask(QStringLiteral("SELECT name FROM operation")), QStringLiteral("Sallow Carr Bees"));
    EXPECT_EQ(ask(QStringLiteral("SELECT dry_mg, target_mg, strips_per_bag FROM strip_kind")), QStringLiteral("11000|34000|80"));
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM batch")), QStringLiteral("0"));
}

void Story::set_up() {
    go(6);
    m_hands.walk_list(QStringLiteral("Pages of Set-up"), QStringLiteral("People"));
    m_hands.click(QStringLiteral("Add a person"));
    m_hands.fill(QStringLiteral("Name"), QStringLiteral("Tam Heron"));
    m_hands.enter();
    m_hands.walk_list(QStringLiteral("Pages of Set-up"), QStringLiteral("Tanks and bins"));
    m_hands.click(QStringLiteral("Add a bin"));
    m_hands.fill(QStringLiteral("Bin"), QStringLiteral("Bin two"));
    m_hands.fill(QStringLiteral("Holds dry strips"), QStringLiteral("480"));
    m_hands.enter();
    m_hands.walk_list(QStringLiteral("Pages of Set-up"), QStringLiteral("Working figures"));
    EXPECT_TRUE(m_hands.sees(QStringLiteral("Common practice, no source.")));
    const std::pair<const char*, const char*> figures[] = {
        {"Wanted in the tank, from", "50"}, {"Strips in one weighing", "10"},        {"Bags rest for", "7"},
        {"Warn before the limit", "60"},    {"Strips come out from day", "42"},      {"Strips are out by day", "56"},
        {"Warn before the latest day", "7"}, {"No harvest after pulling for", "14"},
    };
    for (const auto& [field, value] : figures)
        m_hands.fill(QLatin1String(field), QLatin1String(value));
    m_hands.fill(QStringLiteral("Where they come from"), QStringLiteral("own trials"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT group_concat(name, ', ') FROM person")), QStringLiteral("Ida Rook, Tam Heron"));
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*), sum(strips_held) FROM vessel WHERE kind = 'bin'")), QStringLiteral("2|960"));
    EXPECT_EQ(ask(QStringLiteral("SELECT count(*) FROM figure WHERE source = 'own trials'")), QStringLiteral("8"));
}

void Story::make_delivery(const QString& material, const QString& name) {
    m_hands.click(m_hands.sees(QStringLiteral("Enter a delivery")) ? QStringLiteral("Enter a delivery") : QStringLiteral("New delivery"));
    m_hands.choose(QStringLiteral("Material"), material);
    m_hands.fill(QStringLiteral("Lot number or name"), name);
}

void Story::deliveries() {
    go(3);
    m_hands.walk_list(QStringLiteral("Pages of the Store"), QStringLiteral("Deliveries"));
    make_delivery(QStringLiteral("Oxalic acid"), QStringLiteral("OX-118"));
    m_hands.fill(QStringLiteral("Amount that came"), QStringLiteral("50 kg"));
    m_hands.fill(QStringLiteral("One container holds"), QStringLiteral("25"));
    m_hands.fill(QStringLiteral("Content, as the label says"), QStringLiteral("100"));
    m_hands.choose(QStringLiteral("Content is counted"), QStringLiteral("as dihydrate"));
    m_hands.enter();
    make_delivery(QStringLiteral("Glycerine"), QStringLiteral("GL-7"));
    m_hands.fill(QStringLiteral("Amount that came"), QStringLiteral("75"));
    m_hands.fill(QStringLiteral("One container holds"), QStringLiteral("25"));
    m_hands.enter();
    make_delivery(QStringLiteral("Dry strips"), QStringLiteral("CS-40"));
    m_hands.fill(QStringLiteral("Pieces that came"), QStringLiteral("2000"));
    m_hands.choose(QStringLiteral("Kind of strip"), QStringLiteral("Card strip"));
    m_hands.enter();
    make_delivery(QStringLiteral("Bags"), QStringLiteral("ZB-3"));
    m_hands.fill(QStringLiteral("Pieces that came"), QStringLiteral("100"));
    m_hands.enter();
    EXPECT_EQ(ask(QStringLiteral("SELECT group_concat(material || ' ' || amount, ', ') FROM material_lot")),
              QStringLiteral("acid 50000000, glycerine 75000000, strips 2000, bags 100"));
}

} // namespace soakbook::tests
