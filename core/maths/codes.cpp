// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/codes.h"

#include <algorithm>
#include <optional>

namespace soakbook::maths {
namespace {

// I and O look like 1 and 0; Q, S and Z look like 0, 5 and 2.
constexpr std::string_view number_signs = "0123456789ABCDEFGHJKLMNPRTUVWXY";
constexpr std::string_view check_signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
constexpr std::size_t least_places = 3;
constexpr std::size_t most_places = 6;
static_assert(number_signs.size() == 31 && check_signs.size() == 36);

/// The running number with at least three places, so that codes of a season are equally long.
std::string written(std::int64_t number) {
    std::string places;
    const auto base = static_cast<std::int64_t>(number_signs.size());
    for (; number > 0 || places.size() < least_places; number /= base)
        places.push_back(number_signs[static_cast<std::size_t>(number % base)]);
    std::reverse(places.begin(), places.end());
    return places;
}

std::optional<std::int64_t> read_number(std::string_view places) {
    std::int64_t number = 0;
    for (const char sign : places) {
        const auto value = number_signs.find(sign);
        if (value == std::string_view::npos)
            return std::nullopt;
        number = number * static_cast<std::int64_t>(number_signs.size()) + static_cast<std::int64_t>(value);
    }
    return number;
}

bool is_kind(char letter) {
    return letter == 'B' || letter == 'S' || letter == 'P';
}

} // namespace

Answer<char> check_character(std::string_view text) {
    if (text.empty())
        return unexpected(Unanswerable::bad_code);
    std::size_t product = 36;
    for (const char sign : text) {
        const auto value = check_signs.find(sign);
        if (value == std::string_view::npos)
            return unexpected(Unanswerable::bad_code);
        std::size_t sum = (product + value) % 36;
        if (sum == 0)
            sum = 36;
        product = sum * 2 % 37;
    }
    return check_signs[(37 - product) % 36];
}

bool check_holds(std::string_view text) {
    if (text.size() < 2)
        return false;
    const auto check = check_character(text.substr(0, text.size() - 1));
    return check && *check == text.back();
}

Answer<Code> next_code(CodeKind kind, std::int64_t from) {
    if (from < 1 || from > highest_code_number || !is_kind(static_cast<char>(kind)))
        return unexpected(Unanswerable::out_of_range);
    for (std::int64_t number = from; number <= highest_code_number; ++number) {
        std::string text = static_cast<char>(kind) + written(number);
        const auto check = check_character(text);
        if (!check)
            return unexpected(check.error());
        if (*check != 'I' && *check != 'O')
            return Code{kind, number, text + *check};
    }
    return unexpected(Unanswerable::out_of_range);
}

Answer<Code> parse_code(std::string_view typed) {
    std::string text;
    for (const char sign : typed) {
        if (sign == ' ' || sign == '-' || sign == '\t')
            continue;
        if (text.size() > most_places + 2)
            return unexpected(Unanswerable::bad_code);
        text.push_back(sign >= 'a' && sign <= 'z' ? static_cast<char>(sign - 'a' + 'A') : sign);
    }
    if (text.size() < least_places + 2 || text.size() > most_places + 2 || !is_kind(text.front()))
        return unexpected(Unanswerable::bad_code);
    const std::string_view places = std::string_view(text).substr(1, text.size() - 2);
    const char check = text.back();
    if (check == 'I' || check == 'O' || check_signs.find(check) == std::string_view::npos)
        return unexpected(Unanswerable::bad_code);
    const auto number = read_number(places);
    // A number is written in one way only: a longer one has no zero in front.
    if (!number || *number < 1 || (places.size() > least_places && places.front() == '0'))
        return unexpected(Unanswerable::bad_code);
    if (!check_holds(text))
        return unexpected(Unanswerable::wrong_check);
    return Code{static_cast<CodeKind>(text.front()), *number, text};
}

} // namespace soakbook::maths
