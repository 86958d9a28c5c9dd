// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/codes.h"
#include "tests/maths/answers.h"

#include <set>

namespace soakbook::maths {
namespace {

TEST(Codes, a_code_is_read_back_as_what_it_was_in_any_hand) {
    const Code code = next_code(CodeKind::bag, 1000).value();
    EXPECT_EQ(code.text, "S1185");
    EXPECT_THAT(parse_code("S1185"), Is(code));
    EXPECT_THAT(parse_code(" s 118-5 "), Is(code));
    EXPECT_EQ(code.number, 1000);
}

TEST(Codes, one_wrong_sign_is_refused_as_a_slip) {
    EXPECT_THAT(parse_code("S1186"), Refuses(Unanswerable::wrong_check));
    EXPECT_THAT(parse_code("B1185"), Refuses(Unanswerable::wrong_check));
}

TEST(Codes, what_looks_like_no_code_is_refused) {
    for (const char* text :
         {"", " ", "-", "S", "S11", "S118", "X1185", "SI185", "SO185", "S11 8I", "S118O", "S0001V", "S1185S1185S1185",
          "S11\xC3\xA9"
          "5",
          "S000V", "1185", "S118*"})
        EXPECT_THAT(parse_code(text), Refuses(Unanswerable::bad_code)) << text;
    EXPECT_THAT(parse_code(std::string(1'000'000, 'S')), Refuses(Unanswerable::bad_code));
    EXPECT_THAT(parse_code(std::string_view("S1\0"
                                            "85",
                                            5)),
                Refuses(Unanswerable::bad_code));
}

TEST(Codes, numbers_that_are_no_numbers_get_no_code) {
    EXPECT_THAT(next_code(CodeKind::bag, 0), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(next_code(CodeKind::bag, -5), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(next_code(CodeKind::bag, highest_code_number + 1), Refuses(Unanswerable::out_of_range));
    EXPECT_TRUE(next_code(CodeKind::bag, highest_code_number - 40).has_value());
}

TEST(CodesProperty, a_long_run_is_unique_rising_and_free_of_mistakable_signs) {
    for (const CodeKind kind : {CodeKind::batch, CodeKind::bag, CodeKind::pail}) {
        std::set<std::string> seen;
        std::int64_t number = 0;
        std::int64_t given = 0;
        while (number < 40'000) {
            const auto code = next_code(kind, number + 1);
            ASSERT_TRUE(code);
            ASSERT_GT(code->number, number);
            number = code->number;
            ++given;
            ASSERT_TRUE(seen.insert(code->text).second) << code->text;
            ASSERT_EQ(code->text.find_first_of("IO"), std::string::npos) << code->text;
            ASSERT_EQ(code->text.substr(1, code->text.size() - 2).find_first_of("IOQSZ"), std::string::npos);
            ASSERT_TRUE(parse_code(code->text) == *code) << code->text;
        }
        // Two of 36 check characters are skipped: 5.6 % of the numbers.
        EXPECT_NEAR(1.0 - static_cast<double>(given) / static_cast<double>(number), 2.0 / 36.0, 0.002);
    }
}

} // namespace
} // namespace soakbook::maths
