// SPDX-License-Identifier: GPL-3.0-or-later
// The words of each explanation, not translated yet. For how_words.cpp and the tables' own files.
#pragma once

#include "core/work/how.h"

#include <QString>

#include <array>
#include <span>

namespace soakbook::ui {

class Habits;

enum class HowWhen { always, unknown, zero, not_zero };
/// A sum stands only when its fact is so. Facts count from 1.
struct HowCondition {
    int fact = 0;
    HowWhen when = HowWhen::always;
};

/// One sum with %1 to %9 for the facts; it is left out when one of those it names is not known.
struct HowLine {
    const char* text = nullptr;
    HowCondition first{};
    HowCondition second{};
};

struct HowEntry {
    work::HowKind kind{};
    const char* name = nullptr;
    const char* formula = nullptr;
    const char* source = nullptr;
    std::array<HowLine, 6> lines{};
    std::array<int, 2> differences{}; ///< facts that are differences of temperatures
};

// One file each.
std::span<const HowEntry> liquid_hows();
std::span<const HowEntry> strip_hows();
std::span<const HowEntry> keeping_hows();
std::span<const HowEntry> yard_hows();

/// One fact of an explanation as the user writes it, rounded to what a scale or a thermometer shows.
QString how_fact_words(const QString& fact, const Habits& habits);
/// The same for a difference of two temperatures.
QString how_difference_words(const QString& fact, const Habits& habits);

} // namespace soakbook::ui
