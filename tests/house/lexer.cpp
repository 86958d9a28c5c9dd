// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/lexer.h"

#include <algorithm>
#include <cctype>

namespace soakbook::house {
namespace {

bool is_word(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

class Lexer {
public:
    explicit Lexer(const std::string& source) : m_source(source) { start_line(); }

    Lexed run() {
        while (m_at < m_source.size()) {
            if (ahead("//")) {
                line_comment();
            } else if (ahead("/*")) {
                block_comment();
            } else if (current() == '"') {
                string_literal();
            } else if (current() == '\'' && !is_digit_separator()) {
                character();
            } else {
                plain();
            }
        }
        return std::move(m_lexed);
    }

private:
    char current() const { return m_source[m_at]; }
    bool ahead(const char* mark) const {
        return m_source.compare(m_at, std::char_traits<char>::length(mark), mark) == 0;
    }

    void start_line() {
        m_lexed.code.emplace_back();
        m_lexed.comments.emplace_back();
    }

    void pass_into(std::vector<std::string>* lines) {
        const char c = current();
        ++m_at;
        if (c == '\n') {
            start_line();
        } else if (lines != nullptr) {
            lines->back() += c;
        }
    }

    void plain() {
        if (std::isspace(static_cast<unsigned char>(current())) == 0) {
            m_joins = false;
        }
        if (is_word(current()) && (m_at == 0 || !is_word(m_source[m_at - 1]))) {
            m_word_begin = m_at;
        }
        pass_into(&m_lexed.code);
    }

    void line_comment() {
        while (m_at < m_source.size() && current() != '\n') {
            pass_into(&m_lexed.comments);
        }
    }

    void block_comment() {
        const std::size_t end = m_source.find("*/", m_at + 2);
        const std::size_t stop = end == std::string::npos ? m_source.size() : end + 2;
        while (m_at < stop) {
            pass_into(&m_lexed.comments);
        }
    }

    /// 1'000: the word before the mark begins with a digit; u'x' does not.
    bool is_digit_separator() const {
        return m_at > 0 && is_word(m_source[m_at - 1]) &&
               std::isdigit(static_cast<unsigned char>(m_source[m_word_begin])) != 0;
    }

    void character() {
        m_joins = false;
        m_lexed.code.back() += "''";
        ++m_at;
        while (m_at < m_source.size() && current() != '\'' && current() != '\n') {
            m_at += current() == '\\' ? 2U : 1U;
        }
        m_at = std::min(m_at + 1, m_source.size());
    }

    void string_literal() {
        const std::size_t line = m_lexed.code.size();
        const bool raw = m_at > 0 && m_source[m_at - 1] == 'R';
        if (!m_joins) {
            m_lexed.literals.push_back({"", line});
        }
        m_lexed.code.back() += "\"\"";
        ++m_at;
        raw ? raw_inside() : plain_inside();
        m_joins = true;
    }

    void plain_inside() {
        std::string& text = m_lexed.literals.back().text;
        while (m_at < m_source.size() && current() != '"' && current() != '\n') {
            if (current() == '\\' && m_at + 1 < m_source.size()) {
                text += current();
                ++m_at;
            }
            text += current();
            pass_into(nullptr);
        }
        m_at = std::min(m_at + 1, m_source.size());
    }

    void raw_inside() {
        const std::size_t open = m_source.find('(', m_at);
        if (open == std::string::npos) {
            return;
        }
        std::string close(1, ')');
        close.append(m_source, m_at, open - m_at).push_back('"');
        const std::size_t end = std::min(m_source.find(close, open), m_source.size());
        m_at = open + 1;
        while (m_at < end) {
            m_lexed.literals.back().text += current();
            pass_into(nullptr);
        }
        m_at = std::min(end + close.size(), m_source.size());
    }

    const std::string& m_source;
    std::size_t m_at = 0;
    std::size_t m_word_begin = 0;
    bool m_joins = false; ///< the last thing was a literal, and nothing but space came since
    Lexed m_lexed;
};

} // namespace

Lexed lex(const std::string& source) {
    return Lexer(source).run();
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return lines;
}

} // namespace soakbook::house
