// SPDX-License-Identifier: GPL-3.0-or-later
// A thousand walks of a thousand steps of random work, undo and redo; a short one in a minute's run.
#include "ground.h"
#include "tests/book/wanderer.h"

namespace soakbook::faults {

namespace {
class UndoWalks : public ::testing::TestWithParam<unsigned> {};
} // namespace

// In parts, so that they can be walked at the same time.
TEST_P(UndoWalks, of_random_work_leave_the_records_as_the_model_has_them_at_each_step) {
    const int walks = cases(1, 125);
    const int steps = cases(60, 1'000);
    for (int i = 0; i < walks && !HasFatalFailure(); ++i) {
        tests::Shelf shelf;
        shelf.fill();
        shelf.book().undo_stack().forget();
        tests::Wanderer wanderer(shelf, GetParam() * 1'000U + static_cast<unsigned>(i));
        for (int step = 0; step < steps && !HasFatalFailure(); ++step)
            wanderer.step();
        shelf.close();
        EXPECT_TRUE(book::verify(shelf.path()).sound()) << GetParam() << ", walk " << i;
    }
    RecordProperty("steps", walks * steps);
}
INSTANTIATE_TEST_SUITE_P(Part, UndoWalks, ::testing::Range(0U, 8U));

} // namespace soakbook::faults
