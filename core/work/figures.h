// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of Set-up: what each is for, its unit, its limits of sense. Four have a value in a new workbook, each common
// practice without a source; nothing that needs a missing one guesses it.
#pragma once

#include "core/book/doing.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::book {
class Workbook;
}

namespace soakbook::work {

enum class Figure {
    // the four working figures of a new workbook
    strength,          ///< ppm, mass fraction as dihydrate; 40 %
    tank_ceiling,      ///< 0.01 C; 60 C
    pails_whole,       ///< 1: each pail whole; 2: all pails of one pour together
    use_within_months, ///< months from the day sealed; 12
    // heat
    heat_low, heat_high,   ///< 0.01 C, the temperatures wanted in the tank
    reading_gap_minutes,   ///< no reading for longer is said in Due
    stir_every_minutes, stir_for_minutes,
    // soak and weigh
    room_low,              ///< 0.01 C, a colder room soaks slowly
    first_weigh_hours, weigh_every_hours,
    sample_strips,         ///< strips on the scale in one weighing
    // bags and pails
    rest_days,             ///< from sealing until the strips are ready
    rest_refuses,          ///< 1: strips that still rest are refused; 0: asked
    near_limit_days,       ///< warned so long before the use-by day
    opened_days,           ///< an opened bag is used up within
    pail_wait_days,        ///< a pail that stands longer is said in Due
    unexplained_limit,     ///< ppm of what went in
    // yards
    pull_from_days, pull_by_days, pull_warn_days,
    withdrawal_days,
    count_after_days,      ///< a mite count after pulling
    mite_threshold,        ///< ppm of bees; the user's own
};
constexpr int figure_count = static_cast<int>(Figure::mite_threshold) + 1;

enum class FigureUnit { percent, temperature, months, days, hours, minutes, strips, choice };

struct FigureInfo {
    Figure figure{};
    const char* key;      ///< as it stands in the store
    FigureUnit unit{};
    qint64 least = 0;
    qint64 most = 0;
    std::optional<qint64> shipped; ///< what a new workbook has
};
const FigureInfo& info(Figure figure);
/// The figure of that key, for the facts of Why::figure_missing.
std::optional<Figure> figure_of(const QString& key);

/// What the user said; nothing if it was not said.
std::optional<qint64> figure(const book::Workbook& workbook, Figure which);
/// The same, or the refusal figure_missing with `field`.
Outcome<qint64> needed(const book::Workbook& workbook, Figure which, const QString& field = {});

struct FigureLine {
    Figure figure{};
    std::optional<qint64> value;
    QString source;
};
std::vector<FigureLine> all_figures(const book::Workbook& workbook);

struct SetFigure {
    Figure figure{};
    std::optional<qint64> value; ///< empty: not said any more (not for the four shipped ones)
    QString source;
};
/// Sets several figures in one piece of work. Refuses values outside their limits (fields: the key), a pull window that
/// closes before it opens, a wanted heat above the ceiling, and a change of nothing.
Outcome<int> set_figures(book::Workbook& workbook, const std::vector<SetFigure>& figures, const book::Doing& doing);

} // namespace soakbook::work
