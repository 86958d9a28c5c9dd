// SPDX-License-Identifier: GPL-3.0-or-later
// A store with bags in every state on its last day: four batches, a round hung, bags opened, strips thrown away, labels
// reserved, pails that wait, that go in together, and one that was used in part.
#pragma once

#include "tests/work/yards_bench.h"

namespace soakbook::tests {

class FullStore : public YardsBench {
public:
    FullStore();
    /// The day on which it is looked at: the first batch is past its limit since 5 days, the second has 7 days left.
    static constexpr int last_day = 372;

    work::BatchId past;
    work::BatchId near;
    work::BatchId ready;
    work::BatchId resting;
    std::vector<work::PailId> pails;
};

} // namespace soakbook::tests
