// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/count.h"

#include "core/book/queries/counts.h"
#include "core/maths/mites.h"
#include "core/work/checks.h"
#include "core/work/count_lines.h"
#include "core/work/facts.h"
#include "core/work/figures.h"
#include "core/work/perform.h"
#include "core/work/yard_checks.h"

#include <cmath>

namespace soakbook::work {

namespace {

constexpr int most_counted = 100'000;
constexpr int most_days = 60;

maths::Fraction as_fraction(double x) {
    return {std::llround(x * 1e6)};
}

/// A number that must be there and lie between the two.
std::optional<Refusal> number_refused(std::optional<int> number, const QString& field, int least, int most) {
    if (!number)
        return Refusal{Why::missing, field, {}, false};
    if (*number < least)
        return Refusal{least == 1 ? Why::not_positive : Why::too_small, field, {fact(least)}, false};
    if (*number > most)
        return Refusal{Why::too_large, field, {fact(most)}, false};
    return std::nullopt;
}

std::optional<Refusal> row_refused(const CountEntry::Row& row, MiteCountKind kind, std::size_t i) {
    if (auto r = number_refused(row.mites, row_field(i, "mites"), 0, most_counted))
        return r;
    if (kind == MiteCountKind::drop)
        return number_refused(row.days, row_field(i, "days"), 1, most_days);
    if (!row.bees)
        return Refusal{Why::mites_without_bees, row_field(i, "bees"), {}, false};
    return number_refused(row.bees, row_field(i, "bees"), 1, most_counted);
}

} // namespace

MiteFigures mite_figures_against(std::optional<qint64> threshold_ppm, MiteCountKind kind, int mites,
                                 std::optional<int> bees, std::optional<int> days) {
    MiteFigures figures;
    if (kind == MiteCountKind::drop) {
        if (const auto drop = days ? maths::natural_drop(mites, *days)
                                   : maths::Answer<double>(maths::unexpected(maths::Unanswerable::too_few)))
            figures.per_day = *drop;
        return figures;
    }
    if (!bees)
        return figures;
    if (const auto rate = maths::mite_rate(mites, *bees))
        figures.rate = as_fraction(*rate);
    if (figures.rate && threshold_ppm) {
        figures.threshold = maths::ppm(*threshold_ppm);
        figures.over_threshold = *figures.rate >= *figures.threshold;
    }
    if (const auto interval = maths::mite_rate_wilson(mites, *bees)) {
        figures.low = as_fraction(interval->low);
        figures.high = as_fraction(interval->high);
        if (figures.threshold) {
            const auto says = maths::against_threshold(*interval, maths::as_number(*figures.threshold));
            figures.is_sure = says && *says != maths::AgainstThreshold::cannot_tell;
        }
    }
    return figures;
}

MiteFigures mite_figures(const book::Workbook& workbook, MiteCountKind kind, int mites, std::optional<int> bees,
                         std::optional<int> days) {
    return mite_figures_against(figure(workbook, Figure::mite_threshold), kind, mites, bees, days);
}

Outcome<int> enter_counts(book::Workbook& workbook, const CountEntry& entry, const book::Doing& doing,
                          const Confirmed& confirmed) {
    const auto on = day_not_to_come(entry.on, doing.today());
    if (!on)
        return unexpected(on.error());
    if (entry.round) {
        const auto round = book::fetch(workbook, *entry.round);
        if (!round || round->void_reason)
            return refuse(Why::not_found, QStringLiteral("round"));
    }
    std::vector<book::MiteCount> counts;
    QString yard_name;
    int hives = 0;
    for (std::size_t i = 0; i < entry.rows.size(); ++i) {
        const CountEntry::Row& row = entry.rows[i];
        if (!row.mites)
            continue;
        const auto hive = book::fetch(workbook, row.hive);
        if (!hive || hive->void_reason)
            return refuse(Why::not_found, row_field(i, "mites"));
        if (auto refusal = row_refused(row, entry.kind, i))
            return unexpected(*refusal);
        if (auto refusal = text_refused(row.note, longest_note, row_field(i, "note")))
            return unexpected(*refusal);
        const bool drop = entry.kind == MiteCountKind::drop;
        counts.push_back({{},
                          row.hive,
                          entry.round,
                          *on,
                          static_cast<book::CountKind>(entry.kind),
                          *row.mites,
                          drop ? std::nullopt : row.bees,
                          drop ? row.days : std::nullopt,
                          doing.who,
                          row.note.trimmed(),
                          {}});
        hives += hive->hives;
        if (yard_name.isEmpty())
            if (const auto yard = book::fetch(workbook, hive->yard))
                yard_name = yard->name;
    }
    if (counts.empty())
        return refuse(Why::missing, entry.rows.empty() ? QStringLiteral("rows") : row_field(0, "mites"));
    if (auto question = asked_if_long_ago(*on, doing.today(), confirmed))
        return unexpected(*question);
    return perform(workbook, {QStringLiteral("mites_counted"), hives, yard_name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       for (const book::MiteCount& count : counts)
                           book::insert(w, count);
                       return static_cast<int>(counts.size());
                   });
}

Outcome<int> void_count(book::Workbook& workbook, MiteCountId id, const book::Doing& doing) {
    auto count = book::fetch(workbook, id);
    if (!count || count->void_reason)
        return refuse(Why::not_found);
    if (auto refusal = reason_missing(doing))
        return because(refusal);
    count->void_reason = doing.why.trimmed();
    const auto hive = book::fetch(workbook, count->hive);
    return perform(workbook, {QStringLiteral("made_void"), 1, hive->name}, doing,
                   [&](book::Writing& w) -> Outcome<int> {
                       book::update(w, *count);
                       return 1;
                   });
}

CountLine line_of(const book::CountRow& row, std::optional<qint64> threshold_ppm) {
    const book::MiteCount& c = row.count;
    const auto kind = static_cast<MiteCountKind>(c.kind);
    return {
        c.id,    c.hive, row.hive, c.on,           kind,
        c.mites, c.bees, c.days,   row.round_name, mite_figures_against(threshold_ppm, kind, c.mites, c.bees, c.days)};
}

std::vector<CountLine> counts(const book::Workbook& workbook, HiveId hive, YardId yard) {
    const auto threshold = figure(workbook, Figure::mite_threshold);
    std::vector<CountLine> lines;
    for (const book::CountRow& row : book::mite_counts(workbook, hive, yard))
        lines.push_back(line_of(row, threshold));
    return lines;
}

} // namespace soakbook::work
