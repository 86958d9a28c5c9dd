// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that fails when it is told to: it stands between SQLite and the system's files while it lives.
#pragma once

namespace soakbook::faults {

enum class Act { read, write, sync, truncate, remove, folder_sync };
inline constexpr Act all_acts[] = {Act::read, Act::write, Act::sync, Act::truncate, Act::remove, Act::folder_sync};

class BadDisk {
public:
    BadDisk();
    ~BadDisk();
    BadDisk(const BadDisk&) = delete;
    BadDisk& operator=(const BadDisk&) = delete;

    /// What happens at the k-th act of that kind from now on.
    enum class How {
        fails_once,
        fails_from_then_on,
        process_dies, ///< as if the plug were pulled: at once, and nothing after
    };
    void fail(Act act, int at, How how);
    void heal();
    /// Whether the moment came.
    bool came() const;
    /// How many acts of that kind there were since.
    int seen() const;
};

} // namespace soakbook::faults
