// SPDX-License-Identifier: GPL-3.0-or-later
// The checkout as the tests of the house see it.
#pragma once

#include "tests/house/lexer.h"

#include <gtest/gtest.h>
#include <string>
#include <vector>

namespace soakbook::house {

/// One file of the tree. `lexed` is filled for C++ only.
struct SourceFile {
    SourceFile(std::string path_from_root, std::string whole_text);

    std::string path; ///< from the root, with '/'
    std::string text;
    Lexed lexed;

    bool is_cpp() const;
    bool is_under(const std::string& folder) const { return path.starts_with(folder + "/"); }
};

/// One `#include`; a quoted one names a file of the house.
struct Include {
    std::string target;
    bool quoted;
    std::size_t line;
};
std::vector<Include> includes_of(const SourceFile& file);

/// A place where a rule is broken.
struct Breach {
    std::string path;
    std::size_t line; ///< 0 for the whole file
    std::string what;
};

/// All text files of the checkout that people write; what is built, and git's own, is left out.
const std::vector<SourceFile>& source_tree();

/// Succeeds when there is no breach; lists them otherwise.
testing::AssertionResult none(const std::vector<Breach>& breaches);

/// What a rule says about the whole tree. A rule is any function from a file to its breaches.
template <class Rule> std::vector<Breach> breaches_in_tree(Rule rule) {
    std::vector<Breach> all;
    for (const SourceFile& file : source_tree()) {
        const std::vector<Breach> here = rule(file);
        all.insert(all.end(), here.begin(), here.end());
    }
    return all;
}

} // namespace soakbook::house
