// SPDX-License-Identifier: GPL-3.0-or-later
// The codes of batches, bags and pails: a letter, a running number in letters and digits that are not mistaken for each
// other, and a check character, so that a slip of the pen is caught: B0017, S001V, P118G.
// Source of the check character: ISO/IEC 7064, hybrid system MOD 37,36 over 0-9 A-Z.
#pragma once

#include "core/maths/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace soakbook::maths {

/// What a code names; the value is its first letter.
enum class CodeKind : char { batch = 'B', bag = 'S', pail = 'P' };

struct Code {
    CodeKind kind = CodeKind::batch;
    std::int64_t number = 0;
    std::string text; ///< upper case, no spaces, with the check character

    bool operator==(const Code&) const = default;
};

constexpr std::int64_t highest_code_number = 887'503'680; ///< six places of 31 signs

/// The ISO 7064 MOD 37,36 check character of a text of 0-9 A-Z. Refuses an empty text and any other sign.
Answer<char> check_character(std::string_view text);
/// True when the last sign of the text is the check character of the rest; false for anything else.
bool check_holds(std::string_view text);

/// The first code whose number is `from` or later. Numbers whose check character would be I or O are skipped, so ask
/// next for `number + 1`. Refuses numbers below 1 and above highest_code_number.
Answer<Code> next_code(CodeKind kind, std::int64_t from);

/// Reads a code as people type it: any case, with spaces or hyphens. Refuses bad_code for what no code looks like and
/// wrong_check when only the check character does not fit.
Answer<Code> parse_code(std::string_view typed);

} // namespace soakbook::maths
