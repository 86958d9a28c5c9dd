// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/include_knots.h"

#include <gtest/gtest.h>

namespace soakbook::house {
namespace {

TEST(IncludeKnots, a_ring_is_found) {
    const std::vector<Breach> knots = include_knots({{"a.h", "#include \"b.h\"\n"},
                                                     {"b.h", "#include \"c.h\"\n"},
                                                     {"c.h", "#include \"a.h\"\n"},
                                                     {"d.cpp", "#include \"a.h\"\n"}});
    ASSERT_EQ(knots.size(), 1U);
    EXPECT_EQ(knots[0].what, "a.h -> b.h -> c.h -> a.h");
    EXPECT_EQ(include_knots({{"a.h", "#include \"a.h\"\n"}}).size(), 1U);
}

TEST(IncludeKnots, a_diamond_is_none) {
    EXPECT_TRUE(include_knots({{"a.h", "#include \"b.h\"\n#include \"c.h\"\n"},
                               {"b.h", "#include \"d.h\"\n"},
                               {"c.h", "#include \"d.h\"\n"},
                               {"d.h", "\n"}})
                    .empty());
}

TEST(IncludeKnots, there_is_none_in_the_tree) {
    EXPECT_TRUE(none(include_knots(source_tree())));
}

} // namespace
} // namespace soakbook::house
