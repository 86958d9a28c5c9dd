// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/dose.h"
#include "tests/maths/answers.h"

namespace soakbook::maths {
namespace {

// Source: common practice, no source: one strip for 2.5 frames of bees, rounded up.
TEST(OutsideDose, one_strip_for_two_and_a_half_frames) {
    DoseRule rule;
    rule.kind = DoseKind::per_bee_frames;
    rule.frames_tenths = 25;
    for (const auto& [frames, strips] : {std::pair{5, 2}, {8, 4}, {10, 4}, {12, 5}})
        EXPECT_THAT(strips_for(rule, {std::nullopt, frames * 10}), Is(strips)) << frames;
}

} // namespace
} // namespace soakbook::maths
