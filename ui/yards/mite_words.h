// SPDX-License-Identifier: GPL-3.0-or-later
// What mite counts say, in words: a rate against the user's threshold, and what a round did to the mites.
#pragma once

#include "core/work/mite_change.h"
#include "ui/parts/habits.h"

#include <QCoreApplication>

namespace soakbook::ui {

class MiteWords {
    Q_DECLARE_TR_FUNCTIONS(MiteWords)

public:
    /// "3 % (1.6 to 5.6 %), perhaps over your threshold"; the rate alone where no threshold was said.
    static QString against_threshold(const work::MiteFigures& figures, const Habits& habits);
    /// What changed, or why that cannot be computed.
    static QString change(const work::MiteChange& change, const Habits& habits);

private:
    static QString why_not(const work::MiteChange& change);
};

} // namespace soakbook::ui
