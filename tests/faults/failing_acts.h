// SPDX-License-Identifier: GPL-3.0-or-later
// Each act of the disk fails in turn.
#pragma once

#include "bad_disk.h"
#include "trial.h"

#include <cstdio>

namespace soakbook::faults {

/// The piece with each kind of act failing at each moment, once and for ever. Gives how often it was not acknowledged.
inline int try_every_act(const PieceOfWork& piece, int most) {
    constexpr const char* names[] = {"read", "write", "sync", "truncation", "removal", "sync of the folder"};
    int failures = 0;
    BadDisk disk;
    for (const Act act : all_acts)
        for (const bool once : {true, false})
            failures += try_every_failure(piece,
                                          {names[static_cast<int>(act)],
                                           [&disk, act](int at, bool only_once) {
                                               disk.fail(act, at, only_once ? BadDisk::How::fails_once : BadDisk::How::fails_from_then_on);
                                           },
                                           [&disk] { return disk.came(); }, [&disk] { return disk.seen(); }, [&disk] { disk.heal(); }},
                                          once, most);
    ::testing::Test::RecordProperty("failures", failures);
    std::printf("  %s: %d failures\n", piece.name.c_str(), failures);
    return failures;
}

} // namespace soakbook::faults
