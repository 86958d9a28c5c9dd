// SPDX-License-Identifier: GPL-3.0-or-later
#include "child.h"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <exception>
#include <stdexcept>

#include <sys/wait.h>
#include <unistd.h>

namespace soakbook::faults {

Child::Child(const std::function<void(const Tell&)>& work) {
    int ends[2];
    if (::pipe(ends) != 0)
        throw std::runtime_error("no pipe");
    std::fflush(nullptr);
    m_process = ::fork();
    if (m_process < 0)
        throw std::runtime_error("no process");
    if (m_process == 0) {
        ::close(ends[0]);
        const auto tell = [&ends](const std::string& line) {
            const std::string text = line + '\n';
            if (::write(ends[1], text.data(), text.size()) < 0)
                ::_exit(3);
        };
        try {
            work(tell);
        } catch (const std::exception& error) {
            tell(std::string("thrown: ") + error.what());
        }
        ::_exit(0);
    }
    ::close(ends[1]);
    m_pipe = ends[0];
}

Child::~Child() {
    kill();
    if (m_pipe >= 0)
        ::close(m_pipe);
}

std::string Child::line() {
    for (;;) {
        if (const auto end = m_read.find('\n'); end != std::string::npos) {
            const std::string line = m_read.substr(0, end);
            m_read.erase(0, end + 1);
            return line;
        }
        char buffer[4096];
        const ssize_t got = ::read(m_pipe, buffer, sizeof buffer);
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0)
            return {};
        m_read.append(buffer, static_cast<std::size_t>(got));
    }
}

void Child::kill() {
    if (m_process > 0)
        ::kill(m_process, SIGKILL);
    wait();
}

std::vector<std::string> Child::rest() {
    std::vector<std::string> lines;
    for (std::string one = line(); !one.empty(); one = line())
        lines.push_back(one);
    wait();
    return lines;
}

void Child::wait() {
    if (m_process <= 0)
        return;
    int status = 0;
    while (::waitpid(m_process, &status, 0) < 0 && errno == EINTR) {
    }
    m_signal = WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    m_process = -1;
}

} // namespace soakbook::faults
