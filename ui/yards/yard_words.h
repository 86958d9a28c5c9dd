// SPDX-License-Identifier: GPL-3.0-or-later
// How the yards speak: hives and groups, pull windows, states and mite counts, each worded in one place.
#pragma once

#include "core/work/count.h"
#include "core/work/visit.h"
#include "core/work/yards_view.h"
#include "ui/parts/habits.h"
#include "ui/parts/state.h"

#include <QCoreApplication>

namespace soakbook::ui {

class YardWords {
    Q_DECLARE_TR_FUNCTIONS(YardWords)

public:
    /// "A7", or "row of 12" for a group, with its name where it has one of its own.
    static QString hive(const QString& name, int hives);
    /// "12 to 26 Oct", "28 Sep to 12 Oct", with the years where they are not this one.
    static QString days(maths::Day from, maths::Day to, const Habits& habits);
    /// The same where either end may be unknown; empty where both are.
    static QString days(std::optional<maths::Day> from, std::optional<maths::Day> to, const Habits& habits);
    /// The day, with its year where that is not this one.
    static QString day(maths::Day day, const Habits& habits);
    /// "lime flow 1 to 20 Jul", "not to be opened 3 to 5 Aug (spraying)".
    static QString time(const work::YardTimeEntry& time, const Habits& habits);
    /// The beginning of a long text, on one line.
    static QString shortened(const QString& text, int most);
    /// A code within a sentence, as rich text in the face of codes.
    static QString code(const QString& code);
    /// "S4T2", or "S4T2 5 + S52E 43" where the strips come from several bags.
    static QString bags(const std::vector<work::FromBag>& from);
    /// "3 % (1.6 to 5.6 %)", or "4.2 a day".
    static QString rate(const work::MiteFigures& figures, const Habits& habits);
    /// "9 on 300 bees", "12 in 3 days".
    static QString counted(work::MiteCountKind kind, int mites, std::optional<int> bees, std::optional<int> days);
    static QString kind(work::MiteCountKind kind);

    /// The shape and the word of how strips hang.
    static State state(work::PullState state);
    static QString word(work::PullState state);
    /// Of a hive: how its strips hang, or that it is dead or gone; nothing for a living one without strips.
    static std::optional<State> state(const work::HiveLine& line);
    static QString word(const work::HiveLine& line);
    static QString word(work::StateOfHive state);

    static QString gloves_caution();
    static QString harvest_caution();
    static QString used_strips_caution();
};

} // namespace soakbook::ui
