// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/dose.h"
#include "core/maths/exact.h"
#include "tests/maths/answers.h"

#include <array>

namespace soakbook::maths {
namespace {

DoseRule one_for_each(std::int64_t frames_tenths) {
    DoseRule rule;
    rule.kind = DoseKind::per_bee_frames;
    rule.frames_tenths = frames_tenths;
    return rule;
}
DoseRule per_box(std::int64_t strips) {
    return {DoseKind::per_brood_box, strips, 0, {}, {}};
}

TEST(Dose, frames_begun_count_as_full_ones) {
    EXPECT_THAT(strips_for(one_for_each(25), {{}, 51}), Is(3));
    EXPECT_THAT(strips_for(one_for_each(25), {{}, 50}), Is(2));
    EXPECT_THAT(strips_for(one_for_each(25), {{}, 1}), Is(1));
}

TEST(Dose, a_least_and_a_most_hold_for_every_kind) {
    DoseRule rule = one_for_each(25);
    rule.least = 2;
    rule.most = 4;
    EXPECT_THAT(strips_for(rule, {{}, 10}), Is(2));
    EXPECT_THAT(strips_for(rule, {{}, 200}), Is(4));
    DoseRule boxes = per_box(4);
    boxes.most = 8;
    EXPECT_THAT(strips_for(boxes, {1, {}}), Is(4));
    EXPECT_THAT(strips_for(boxes, {3, {}}), Is(8));
    EXPECT_THAT(strips_for({DoseKind::fixed, 4, 0, {}, {}}, {}), Is(4));
}

TEST(Dose, what_is_not_known_of_a_hive_is_not_guessed) {
    EXPECT_THAT(strips_for(one_for_each(25), {2, {}}), Refuses(Unanswerable::too_few));
    EXPECT_THAT(strips_for(per_box(4), {{}, 100}), Refuses(Unanswerable::too_few));
    EXPECT_THAT(strips_for(one_for_each(25), {{}, 0}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_for(per_box(4), {0, {}}), Refuses(Unanswerable::not_a_quantity));
}

TEST(Dose, refuses_rules_that_cannot_be) {
    EXPECT_THAT(strips_for(one_for_each(0), {{}, 80}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_for(one_for_each(-25), {{}, 80}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_for({DoseKind::fixed, 0, 0, {}, {}}, {}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_for({DoseKind::fixed, 4, 0, 6, 5}, {}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(strips_for({DoseKind::fixed, 4, 0, -1, {}}, {}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(strips_for(one_for_each(1), {{}, INT64_MAX}), Refuses(Unanswerable::too_large));
    EXPECT_THAT(strips_for(per_box(INT64_MAX), {INT64_MAX, {}}), Refuses(Unanswerable::too_large));
}

TEST(Dose, acid_of_all_strips_is_held_against_the_limits) {
    const std::array hung{Hung{2, grams(9.2)}, Hung{3, grams(9.16)}};
    const auto acid = acid_in_hive(hung);
    EXPECT_THAT(acid, Is(grams(45.88)));
    EXPECT_THAT(against_limits(*acid, grams(30), grams(50)), Is(AcidLimit::within));
    EXPECT_THAT(against_limits(*acid, grams(46), grams(50)), Is(AcidLimit::below_least));
    EXPECT_THAT(against_limits(*acid, std::nullopt, grams(45)), Is(AcidLimit::above_most));
    EXPECT_THAT(against_limits(*acid, std::nullopt, std::nullopt), Is(AcidLimit::within));
    EXPECT_THAT(against_limits(*acid, grams(50), grams(45)), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(acid_in_hive({}), Is(Mass{}));
    const std::array absurd{Hung{INT64_MAX, heaviest}};
    EXPECT_THAT(acid_in_hive(absurd), Refuses(Unanswerable::too_large));
    const std::array negative{Hung{-2, grams(9.2)}};
    EXPECT_THAT(acid_in_hive(negative), Refuses(Unanswerable::not_a_quantity));
}

} // namespace
} // namespace soakbook::maths
