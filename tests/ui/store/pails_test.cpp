// SPDX-License-Identifier: GPL-3.0-or-later
// Pails: what they say of themselves, and what can be done with them.
#include "tests/ui/store/full_store.h"
#include "tests/ui/store/room.h"

#include <QLineEdit>

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::HasSubstr;
using work::PailState;

class StorePails : public testing::Test {
protected:
    StorePails() { room.wish("pails"); }
    work::PailLine line(std::size_t i) { return *work::pail(bench.book(), bench.pails[i], day_n(FullStore::last_day)); }

    FullStore bench;
    StoreRoom room{bench, FullStore::last_day};
};

} // namespace

TEST_F(StorePails, one_used_in_part_says_that_its_strength_is_unknown_and_that_it_goes_into_no_mix) {
    const QString code = line(1).code;
    EXPECT_EQ(room.cell("store_pails", code, QStringLiteral("Strength")), QStringLiteral("unknown"));
    EXPECT_EQ(room.cell("store_pails", code, QStringLiteral("State")), QStringLiteral("goes in no mix"));
    room.choose("store_pails", code);
    EXPECT_THAT(room.words("pail_card").toStdString(), HasSubstr("goes into no mix"));
    EXPECT_FALSE(room.is_seen("pail_used_in_part"));
}

TEST_F(StorePails, one_poured_cool_names_those_it_goes_in_with) {
    EXPECT_EQ(room.cell("store_pails", line(2).code, QStringLiteral("Goes in with")), line(3).code);
}

TEST_F(StorePails, using_a_part_explains_itself_before_it_is_entered) {
    room.choose("store_pails", line(0).code);
    room.press("pail_used_in_part");
    EXPECT_THAT(room.words("used_in_part_form").toStdString(), HasSubstr("acid settles"));
    EXPECT_EQ(line(0).state, PailState::ready);
    room.enter();
    EXPECT_EQ(line(0).state, PailState::strength_unknown);
    EXPECT_FALSE(line(0).strength.has_value());
}

TEST_F(StorePails, a_mass_is_put_right_with_a_reason) {
    room.choose("store_pails", line(0).code);
    room.press("pail_correct");
    room.type_into("correct_mass", QStringLiteral("23,5"));
    room.enter();
    ASSERT_TRUE(room.is_seen("correct_pail_form")) << "it was taken without a reason";
    EXPECT_FALSE(room.beneath("reason").isEmpty());
    room.type_into("reason", QStringLiteral("weighed again"));
    room.enter();
    EXPECT_EQ(line(0).mass, maths::kilograms(23.5));
    EXPECT_EQ(room.cell("store_pails", line(0).code, QStringLiteral("Mass, kg")), QStringLiteral("23.5"));
}

TEST_F(StorePails, one_is_thrown_away_with_a_reason_and_then_seen_only_among_all) {
    const QString code = line(1).code;
    room.choose("store_pails", code);
    room.press("pail_discard");
    EXPECT_THAT(room.words("discard_pail_form").toStdString(), HasSubstr("not down a drain"));
    room.enter();
    EXPECT_TRUE(room.is_seen("discard_pail_form"));
    room.type_into("reason", QStringLiteral("strength unknown"));
    room.enter();
    EXPECT_EQ(line(1).state, PailState::discarded);
    EXPECT_FALSE(room.codes("store_pails").contains(code));
    room.press("pails_filter_all");
    EXPECT_TRUE(room.codes("store_pails").contains(code));
}

TEST_F(StorePails, several_are_moved_at_once) {
    room.choose("store_pails", room.codes("store_pails").first());
    room.key(Qt::Key_Down, Qt::ShiftModifier);
    room.press("pail_move");
    room.type_into("move_stands", QStringLiteral("wash house"));
    room.enter();
    const QStringList codes = room.codes("store_pails");
    EXPECT_EQ(room.cell("store_pails", codes[0], QStringLiteral("Stands")), QStringLiteral("wash house"));
    EXPECT_EQ(room.cell("store_pails", codes[1], QStringLiteral("Stands")), QStringLiteral("wash house"));
    EXPECT_EQ(room.cell("store_pails", codes[2], QStringLiteral("Stands")), QStringLiteral("cellar"));
}

} // namespace soakbook::tests
