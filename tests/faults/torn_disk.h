// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that keeps what was not synced in its memory until the power goes: then any part of it is down, torn where two
// sectors meet, and a file that was removed may be back. It stands between SQLite and the system's files while it lives.
#pragma once

namespace soakbook::faults {

class TornDisk {
public:
    TornDisk();
    ~TornDisk();
    TornDisk(const TornDisk&) = delete;
    TornDisk& operator=(const TornDisk&) = delete;

    /// The power goes before the n-th write, truncation, sync or removal from now on. What is left on the disk is chosen by
    /// `chance`; the process dies.
    void cut_power_at(int act, unsigned chance);
    /// How many of these there were since it was said.
    int acts() const;
};

} // namespace soakbook::faults
