// SPDX-License-Identifier: GPL-3.0-or-later
// How a computed figure comes about, in words: the sum as a beekeeper reads it, the same with this case's numbers in the
// user's own units, and where the formula comes from.
#pragma once

#include "core/work/how.h"

#include <QString>

#include <vector>

namespace soakbook::ui {

class Habits;

struct HowText {
    QString name;    ///< of the figure
    QString formula; ///< in words and signs
    QString numbers; ///< one sum a line; empty while none of its numbers is known
    QString source;
};

/// Plain text. Sums with a number that is not known are left out.
HowText how_words(const work::How& how, const Habits& habits);
/// Several, one after the other. Neighbours of one kind share their name, formula and source.
std::vector<HowText> how_texts(const std::vector<work::How>& hows, const Habits& habits);
/// As rich text.
QString how_html(const std::vector<HowText>& texts);
/// As plain text, to be read aloud.
QString how_plain(const std::vector<HowText>& texts);

} // namespace soakbook::ui
