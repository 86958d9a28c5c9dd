// SPDX-License-Identifier: GPL-3.0-or-later
// A process of its own that can be killed, starved of disk or stripped of rights, and that tells through a pipe.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <sys/types.h>

namespace soakbook::faults {

class Child {
public:
    /// `work` runs in the child; each line it tells reaches the parent at once. The parent must have no workbook open.
    using Tell = std::function<void(const std::string&)>;
    explicit Child(const std::function<void(const Tell&)>& work);
    /// Kills it if it still runs.
    ~Child();
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;

    /// Waits for the next line; empty at the end.
    std::string line();
    void kill();
    /// Waits for its end and gives every line not read yet.
    std::vector<std::string> rest();
    /// After the end: the signal it died of, 0 when it ended by itself.
    int died_of() const { return m_signal; }

private:
    void wait();
    pid_t m_process = -1;
    int m_pipe = -1;
    int m_signal = 0;
    std::string m_read;
};

} // namespace soakbook::faults
