// SPDX-License-Identifier: GPL-3.0-or-later
// The check character of codes, and the share of slips it catches.
#include "core/maths/codes.h"
#include "tests/maths/answers.h"

#include <string>

namespace soakbook::maths {
namespace {

const std::string signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

// Source: ISO/IEC 7064 MOD 37,36 as used by the Global Release Identifier (IFPI GRid standard 2.1), whose example is
// A1-2425G-ABC1234002-M; and two further identifiers of that system used as test cases by open libraries.
TEST(OutsideCheckCharacter, published_identifiers_hold) {
    EXPECT_THAT(check_character("A12425GABC1234002"), Is('M'));
    EXPECT_TRUE(check_holds("A12425GABC1234002M"));
    EXPECT_TRUE(check_holds("B159D8FA01240000K"));
    EXPECT_TRUE(check_holds("188166C7342000003"));
    EXPECT_FALSE(check_holds("A12425GABC1234003M"));
    EXPECT_FALSE(check_holds("188166C7342000030"));
}

// Source: ISO/IEC 7064: a hybrid system catches every single wrong character.
TEST(OutsideCheckCharacter, every_single_wrong_character_is_caught) {
    long tried = 0;
    for (std::int64_t number = 1; number < 3'000; number += 7) {
        const std::string text = next_code(CodeKind::bag, number)->text;
        for (std::size_t place = 0; place < text.size(); ++place)
            for (const char sign : signs) {
                if (sign == text[place])
                    continue;
                std::string slip = text;
                slip[place] = sign;
                ++tried;
                ASSERT_FALSE(check_holds(slip)) << text << " as " << slip;
                ASSERT_FALSE(parse_code(slip).has_value()) << text << " as " << slip;
            }
    }
    EXPECT_GT(tried, 70'000);
}

// Source: ISO/IEC 7064: nearly every swap of neighbours is caught; the share is measured here over 30 000 codes of each
// kind.
TEST(OutsideCheckCharacter, nearly_every_swap_of_neighbours_is_caught) {
    long swapped = 0;
    long caught = 0;
    for (const CodeKind kind : {CodeKind::batch, CodeKind::bag, CodeKind::pail})
        for (std::int64_t number = 1; number <= 30'000; ++number) {
            const auto code = next_code(kind, number);
            ASSERT_TRUE(code);
            number = code->number;
            for (std::size_t place = 0; place + 1 < code->text.size(); ++place) {
                std::string slip = code->text;
                if (slip[place] == slip[place + 1])
                    continue;
                std::swap(slip[place], slip[place + 1]);
                ++swapped;
                caught += parse_code(slip).has_value() ? 0 : 1;
            }
        }
    const double part = static_cast<double>(caught) / static_cast<double>(swapped);
    RecordProperty("swaps_tried", static_cast<int>(swapped));
    RecordProperty("share_caught", std::to_string(part));
    std::cout << "swaps of neighbours caught: " << caught << " of " << swapped << " (" << part * 100 << " %)\n";
    EXPECT_GT(part, 0.99);
}

} // namespace
} // namespace soakbook::maths
