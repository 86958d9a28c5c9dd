// SPDX-License-Identifier: GPL-3.0-or-later
// The same for what is done in shed and yard: each refusal is a value with words, nothing of the piece is left, and the
// form can be sent again as it stands.
#include "failing_acts.h"

namespace soakbook::faults {

namespace {
class FailingTrade : public ::testing::TestWithParam<int> {};
} // namespace

TEST_P(FailingTrade, on_a_disk_that_fails_at_any_moment_is_refused_whole_and_done_again) {
    const PieceOfWork& piece = pieces_of_the_trade().at(static_cast<std::size_t>(GetParam()));
    EXPECT_GT(try_every_act(piece, cases(3, 100'000)), 12);
}
INSTANTIATE_TEST_SUITE_P(Pieces, FailingTrade, ::testing::Range(0, 6));

} // namespace soakbook::faults
