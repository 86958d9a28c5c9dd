// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/figures.h"

#include "core/book/queries/figures.h"
#include "core/work/perform.h"

#include <algorithm>
#include <array>

namespace soakbook::work {

namespace {

using enum FigureUnit;
// Limits of sense, not of law: what lies outside them is a slip of the pen. The four shipped values are common practice, no
// source; the label, the data sheet and local rules come first.
constexpr std::array<FigureInfo, figure_count> infos{{
    {Figure::strength, "strength", percent, 10'000, 600'000, 400'000},
    {Figure::tank_ceiling, "tank_ceiling", temperature, 3'000, 9'000, 6'000},
    {Figure::pails_whole, "pails_whole", choice, 1, 2, 1},
    {Figure::use_within_months, "use_within_months", months, 1, 60, 12},
    {Figure::heat_low, "heat_low", temperature, 1'500, 9'000, {}},
    {Figure::heat_high, "heat_high", temperature, 1'500, 9'000, {}},
    {Figure::reading_gap_minutes, "reading_gap_minutes", minutes, 5, 2'880, {}},
    {Figure::stir_every_minutes, "stir_every_minutes", minutes, 5, 1'440, {}},
    {Figure::stir_for_minutes, "stir_for_minutes", minutes, 1, 1'440, {}},
    {Figure::room_low, "room_low", temperature, 0, 5'000, {}},
    {Figure::first_weigh_hours, "first_weigh_hours", hours, 1, 240, {}},
    {Figure::weigh_every_hours, "weigh_every_hours", hours, 1, 240, {}},
    {Figure::sample_strips, "sample_strips", strips, 1, 200, {}},
    {Figure::rest_days, "rest_days", days, 0, 90, {}},
    {Figure::rest_refuses, "rest_refuses", choice, 0, 1, {}},
    {Figure::near_limit_days, "near_limit_days", days, 1, 365, {}},
    {Figure::opened_days, "opened_days", days, 1, 365, {}},
    {Figure::pail_wait_days, "pail_wait_days", days, 1, 1'825, {}},
    {Figure::unexplained_limit, "unexplained_limit", percent, 1'000, 200'000, {}},
    {Figure::pull_from_days, "pull_from_days", days, 1, 180, {}},
    {Figure::pull_by_days, "pull_by_days", days, 1, 180, {}},
    {Figure::pull_warn_days, "pull_warn_days", days, 1, 60, {}},
    {Figure::withdrawal_days, "withdrawal_days", days, 0, 365, {}},
    {Figure::count_after_days, "count_after_days", days, 1, 120, {}},
    {Figure::mite_threshold, "mite_threshold", percent, 1'000, 200'000, {}},
}};

/// The value a figure will have after the change.
std::optional<qint64> after(const book::Workbook& workbook, const std::vector<SetFigure>& changes, Figure which) {
    for (const SetFigure& change : changes)
        if (change.figure == which)
            return change.value;
    return figure(workbook, which);
}

/// Refuses when `low` would lie above `high`; the field is the one that was typed.
std::optional<Refusal> out_of_order(const book::Workbook& workbook, const std::vector<SetFigure>& changes, Figure low, Figure high) {
    const auto l = after(workbook, changes, low);
    const auto h = after(workbook, changes, high);
    if (!l || !h || *l <= *h)
        return std::nullopt;
    const bool high_typed = std::any_of(changes.begin(), changes.end(), [high](const SetFigure& c) { return c.figure == high; });
    const FigureInfo& field = info(high_typed ? high : low);
    const bool is_temperature = field.unit == temperature;
    const QString bound = (is_temperature ? QStringLiteral("t:") : QStringLiteral("n:")) + QString::number(high_typed ? *l : *h);
    return Refusal{high_typed ? Why::too_small : Why::too_large, QLatin1String(field.key), {bound}, false};
}

} // namespace

const FigureInfo& info(Figure which) { return infos[static_cast<std::size_t>(which)]; }

std::optional<Figure> figure_of(const QString& key) {
    for (const FigureInfo& i : infos)
        if (key == QLatin1String(i.key))
            return i.figure;
    return std::nullopt;
}

std::optional<qint64> figure(const book::Workbook& workbook, Figure which) {
    const auto found = book::figure_by_key(workbook, QLatin1String(info(which).key));
    return found ? std::optional<qint64>(found->value) : std::nullopt;
}

Outcome<qint64> needed(const book::Workbook& workbook, Figure which, const QString& field) {
    if (const auto said = figure(workbook, which))
        return *said;
    return refuse(Why::figure_missing, field, {QLatin1String(info(which).key)});
}

std::vector<FigureLine> all_figures(const book::Workbook& workbook) {
    std::vector<FigureLine> lines;
    for (const FigureInfo& i : infos) {
        const auto found = book::figure_by_key(workbook, QLatin1String(i.key));
        lines.push_back({i.figure, found ? std::optional<qint64>(found->value) : std::nullopt, found ? found->source : QString()});
    }
    return lines;
}

Outcome<int> set_figures(book::Workbook& workbook, const std::vector<SetFigure>& figures, const book::Doing& doing) {
    for (const SetFigure& change : figures) {
        const FigureInfo& i = info(change.figure);
        const QString key = QLatin1String(i.key);
        const QString kind = i.unit == temperature ? QStringLiteral("t:") : i.unit == percent ? QStringLiteral("f:") : QStringLiteral("n:");
        if (!change.value) {
            if (i.shipped)
                return refuse(Why::missing, key);
            continue;
        }
        if (*change.value < i.least)
            return refuse(Why::too_small, key, {kind + QString::number(i.least)});
        if (*change.value > i.most)
            return refuse(Why::too_large, key, {kind + QString::number(i.most)});
        if (change.source.size() > 400)
            return refuse(Why::too_long, key, {QStringLiteral("n:400")});
    }
    constexpr std::pair<Figure, Figure> ordered[] = {{Figure::pull_from_days, Figure::pull_by_days},
                                                     {Figure::heat_low, Figure::heat_high},
                                                     {Figure::heat_high, Figure::tank_ceiling}};
    for (const auto& [low, high] : ordered)
        if (auto refusal = out_of_order(workbook, figures, low, high))
            return unexpected(*refusal);

    const QString subject = figures.size() == 1 ? QLatin1String(info(figures.front().figure).key) : QString();
    const Piece piece{QStringLiteral("figure"), static_cast<int>(figures.size()), subject};
    return perform(workbook, piece, doing, [&](book::Writing& writing) -> Outcome<int> {
        int changed = 0;
        for (const SetFigure& change : figures) {
            const QString key = QLatin1String(info(change.figure).key);
            auto found = book::figure_by_key(workbook, key);
            if (!change.value) {
                if (found) {
                    book::remove_figure(writing, found->id);
                    ++changed;
                }
            } else if (!found) {
                book::insert(writing, book::Figure{{}, key, *change.value, change.source});
                ++changed;
            } else if (found->value != *change.value || found->source != change.source) {
                found->value = *change.value;
                found->source = change.source;
                book::update(writing, *found);
                ++changed;
            }
        }
        if (changed == 0)
            return refuse(Why::nothing_changed);
        return changed;
    });
}

} // namespace soakbook::work
