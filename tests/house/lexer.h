// SPDX-License-Identifier: GPL-3.0-or-later
// C++ text taken apart just far enough: what is code, what is a comment, what is written in quotation marks.
#pragma once

#include <string>
#include <vector>

namespace soakbook::house {

/// A text in quotation marks, without them.
struct Literal {
    std::string text;
    std::size_t line; ///< from 1, where it begins
};

struct Lexed {
    std::vector<std::string> code;     ///< line by line; comments and the insides of literals are left out
    std::vector<std::string> comments; ///< line by line; the comments with their marks, empty where there is none
    std::vector<Literal> literals;     ///< strings, raw ones included; neighbours that the compiler joins are joined
};

Lexed lex(const std::string& source);

std::vector<std::string> lines_of(const std::string& text);

} // namespace soakbook::house
