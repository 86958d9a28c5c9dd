// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench.h"

namespace soakbook::tests {

TEST(Mix, twenty_five_kilograms_of_acid_and_thirty_seven_and_a_half_of_glycerine_are_forty_percent) {
    Bench bench;
    const auto figures = must(work::reckon_mix(bench.book(), bench.plan(), first_day));
    EXPECT_EQ(figures.acid.total, maths::kilograms(25));
    EXPECT_EQ(figures.glycerine.total, maths::kilograms(37.5));
}

} // namespace soakbook::tests
