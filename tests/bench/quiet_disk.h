// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that is never waited for: while it lives, SQLite in this process writes as always and syncs nothing. For files
// that can be made again.
#pragma once

namespace soakbook::tests {

class QuietDisk {
public:
    QuietDisk();
    ~QuietDisk();
    QuietDisk(const QuietDisk&) = delete;
    QuietDisk& operator=(const QuietDisk&) = delete;
};

} // namespace soakbook::tests
