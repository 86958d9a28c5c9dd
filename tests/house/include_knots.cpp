// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/include_knots.h"

#include <algorithm>
#include <map>

namespace soakbook::house {
namespace {

/// Walks depth first; a file met again while it is still open closes a ring.
class Walk {
public:
    explicit Walk(const std::vector<SourceFile>& files) {
        for (const SourceFile& file : files) {
            if (!file.is_cpp()) {
                continue;
            }
            std::vector<std::string>& targets = m_includes[file.path];
            for (const Include& include : includes_of(file)) {
                if (include.quoted) {
                    targets.push_back(include.target);
                }
            }
        }
    }

    std::vector<Breach> knots() {
        for (const auto& [path, targets] : m_includes) {
            visit(path);
        }
        return std::move(m_knots);
    }

private:
    enum class State { unseen, open, done };

    void visit(const std::string& path) {
        const auto found = m_includes.find(path);
        if (found == m_includes.end() || m_states[path] == State::done) {
            return;
        }
        if (m_states[path] == State::open) {
            report(path);
            return;
        }
        m_states[path] = State::open;
        m_way.push_back(path);
        for (const std::string& target : found->second) {
            visit(target);
        }
        m_way.pop_back();
        m_states[path] = State::done;
    }

    void report(const std::string& path) {
        std::string ring;
        for (auto step = std::find(m_way.begin(), m_way.end(), path); step != m_way.end(); ++step) {
            ring += *step + " -> ";
        }
        m_knots.push_back({path, 0, ring + path});
    }

    std::map<std::string, std::vector<std::string>> m_includes;
    std::map<std::string, State> m_states;
    std::vector<std::string> m_way;
    std::vector<Breach> m_knots;
};

} // namespace

std::vector<Breach> include_knots(const std::vector<SourceFile>& files) {
    return Walk(files).knots();
}

} // namespace soakbook::house
