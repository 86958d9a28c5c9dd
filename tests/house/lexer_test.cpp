// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/lexer.h"

#include <gtest/gtest.h>

namespace soakbook::house {
namespace {

TEST(Lexer, tells_code_from_comments_and_literals) {
    const Lexed lexed = lex("int a = 1'000; // one \"thousand\"\nf(u'\"', \"x // y\" /* z */);\n");
    ASSERT_EQ(lexed.code.size(), 3U);
    EXPECT_EQ(lexed.code[0], "int a = 1'000; ");
    EXPECT_EQ(lexed.comments[0], "// one \"thousand\"");
    EXPECT_EQ(lexed.code[1], "f(u'', \"\" );");
    EXPECT_EQ(lexed.comments[1], "/* z */");
    ASSERT_EQ(lexed.literals.size(), 1U);
    EXPECT_EQ(lexed.literals[0].text, "x // y");
    EXPECT_EQ(lexed.literals[0].line, 2U);
}

TEST(Lexer, reads_raw_literals_over_several_lines) {
    const Lexed lexed = lex("auto s = R\"sql(a \"b\"\nc)sql\";\nint after;");
    ASSERT_EQ(lexed.literals.size(), 1U);
    EXPECT_EQ(lexed.literals[0].text, "a \"b\"\nc");
    EXPECT_EQ(lexed.code.back(), "int after;");
    EXPECT_EQ(lexed.code.size(), 3U);
}

TEST(Lexer, joins_neighbouring_literals_as_the_compiler_does) {
    const Lexed lexed = lex("f(\"a \"\n  \"b\", \"c\");");
    ASSERT_EQ(lexed.literals.size(), 2U);
    EXPECT_EQ(lexed.literals[0].text, "a b");
    EXPECT_EQ(lexed.literals[1].text, "c");
}

} // namespace
} // namespace soakbook::house
