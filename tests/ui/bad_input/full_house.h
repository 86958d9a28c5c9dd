// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook in which every form of the program has something to be about: a batch at each of its steps, bags and pails in
// every state, hives with strips in, strips pulled, and mites counted.
#pragma once

#include "tests/ui/store/full_store.h"

namespace soakbook::tests {

class FullHouse : public FullStore {
public:
    FullHouse();
    /// The day on which its forms are opened.
    static constexpr int today = last_day + 8;

    // Batches, each waiting for its next step.
    work::BatchId planned;
    work::BatchId too_strong; ///< weighed in, and to be put right
    work::BatchId warm;       ///< read and stirred, not clear yet
    work::BatchId clear;
    work::BatchId soaking;
    work::BatchId weighed;    ///< taken out, with labels given out for three bags
    work::BatchId closed;

    work::RoundId autumn;     ///< planned over the yard, not visited
    work::HiveId pulled_hive; ///< with strips in, strips out and a count in its story
};

} // namespace soakbook::tests
