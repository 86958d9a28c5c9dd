// SPDX-License-Identifier: GPL-3.0-or-later
// Plays the years: what is to be done stands in a calendar, and what is done puts what follows from it there.
#pragma once

#include "years.h"

#include "core/work/hives.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <map>
#include <random>
#include <stdexcept>
#include <vector>

namespace soakbook::tests {

class YearsPlayer {
public:
    YearsPlayer(book::Workbook& workbook, const YearsWish& wish);
    YearsMade play();

    /// The first day in it.
    static maths::Day first_day(const YearsWish& wish);
    static book::Doing doing(maths::Day day, int hour, int minute = 0, const QString& who = {}, const QString& why = {});

private:
    struct Yard {
        work::YardId id;
        QString name;
        int hives_made = 0; ///< numbers given out
        int hives_wanted = 0;
    };

    void on(maths::Day day, std::function<void()> what);
    book::Doing at(maths::Day day, int hour, int minute = 0) const;
    book::Doing because(const QString& why, maths::Day day, int hour, int minute = 0) const;
    /// Does it; what is asked is answered with yes.
    template <class F> auto must(F&& f);
    template <class F> auto must_because(F&& f);
    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    bool one_in(int n) { return below(n) == 0; }

    // Set-up and deliveries.
    void set_up(maths::Day day);
    void say_figures(maths::Day day);
    void add_yard(int number, int hives, maths::Day day);
    void deliver(maths::Day day, int batches);
    void replace_dead(maths::Day day);

    // The shed.
    void make_batch(maths::Day day);
    work::BatchId mix(maths::Day day);
    void clear(work::BatchId batch, maths::Day day);
    void soak_and_weigh(work::BatchId batch, maths::Day day);
    void bag_and_close(work::BatchId batch, maths::Day day);
    void discard_past_limit(maths::Day day);

    // The yards.
    void season(int year);
    void begin_round(int number, int year, maths::Day day);
    void visit(work::RoundId round, std::size_t yard, maths::Day day);
    void pull(std::size_t yard, maths::Day day);
    void count(std::size_t yard, std::optional<work::RoundId> round, maths::Day day);
    void move_some(maths::Day day);
    void correct_before_pull(std::size_t yard, maths::Day day);
    void correct_after_pull(work::PlacementId placement, int hung, maths::Day day);
    void print_register(maths::Day day);

    book::Workbook& m_book;
    YearsWish m_wish;
    YearsMade m_made;
    std::mt19937 m_random;
    std::multimap<maths::Day, std::function<void()>> m_calendar;
    QString m_who;

    work::StripKindId m_kind;
    work::VesselId m_tank;
    std::vector<work::VesselId> m_bins;
    work::LotId m_acid;
    work::LotId m_glycerine;
    work::LotId m_strips;
    work::LotId m_bags;
    std::vector<Yard> m_yards;
    std::vector<work::PailId> m_pails; ///< on the shelf
    std::vector<work::PlacementId> m_pulled; ///< since the Register was last printed
    int m_pull_from = 42;
    int m_pull_by = 56;
};

template <class F> auto YearsPlayer::must(F&& f) {
    work::Confirmed yes;
    for (;;) {
        auto outcome = f(yes);
        if (outcome) {
            ++m_made.pieces;
            return std::move(*outcome);
        }
        const work::Refusal& refusal = outcome.error();
        if (refusal.can_confirm && yes.insert(refusal.why).second)
            continue;
        throw std::runtime_error("refused for reason " + std::to_string(static_cast<int>(refusal.why)) + " at '" +
                                 refusal.field.toStdString() + "' with " + refusal.facts.join(QStringLiteral(", ")).toStdString());
    }
}

template <class F> auto YearsPlayer::must_because(F&& f) {
    ++m_made.corrections;
    return must(std::forward<F>(f));
}

} // namespace soakbook::tests
