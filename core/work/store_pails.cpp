// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/shelf_pails.h"
#include "core/work/figures.h"
#include "core/work/store_view.h"

#include <algorithm>

namespace soakbook::work {

namespace {

PailState state_of(const book::PailRow& row, bool in_a_set) {
    const book::Pail& p = row.pail;
    if (p.void_reason)
        return PailState::made_void;
    if (p.discarded_on)
        return PailState::discarded;
    if (!row.used_in.isEmpty())
        return PailState::used;
    if (!row.planned_in.isEmpty())
        return PailState::planned;
    if (!p.strength || p.used_in_part_on)
        return PailState::strength_unknown;
    return in_a_set ? PailState::only_with_its_set : PailState::ready;
}

bool is_gone(PailState state) {
    return state == PailState::used || state == PailState::discarded || state == PailState::made_void;
}

PailLine line_of(const book::PailRow& row, const QStringList& set, maths::Day today, std::optional<qint64> wait_days) {
    const book::Pail& p = row.pail;
    PailLine line;
    line.id = p.id;
    line.code = p.code;
    line.pour = p.pour;
    line.batch_code = row.batch_code;
    line.mass = p.mass;
    line.strength = p.strength;
    line.sealed_on = p.sealed_on;
    line.oldest_on = p.oldest_on;
    line.times_warmed = p.times_warmed;
    line.days_waiting = static_cast<int>(maths::days_between(p.sealed_on, today));
    line.state = state_of(row, !set.isEmpty());
    line.waits_too_long = wait_days && line.days_waiting > *wait_days && !is_gone(line.state);
    line.used_in = row.used_in.isEmpty() ? row.planned_in : row.used_in;
    line.set = set;
    line.stands = p.stands;
    line.label = QLatin1String(book::Names<book::LabelState>::all[static_cast<std::size_t>(p.label)]);
    line.reason = p.void_reason ? *p.void_reason : p.discard_reason.value_or(QString());
    return line;
}

std::vector<PailLine> pail_lines(const book::Workbook& workbook, const std::vector<book::PailRow>& rows, maths::Day today) {
    const auto wait_days = figure(workbook, Figure::pail_wait_days);
    const bool always_together = figure(workbook, Figure::pails_whole).value_or(1) == 2;
    std::map<PourId, std::vector<const book::PailRow*>> of_pour;
    for (const book::PailRow& row : rows)
        if (!row.pail.void_reason)
            of_pour[row.pail.pour].push_back(&row);
    std::vector<PailLine> lines;
    for (const book::PailRow& row : rows) {
        QStringList set;
        if (always_together || !row.warm_and_clear || !row.scraped)
            for (const book::PailRow* other : of_pour[row.pail.pour])
                if (other->pail.id != row.pail.id)
                    set << other->pail.code;
        lines.push_back(line_of(row, set, today, wait_days));
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const PailLine& a, const PailLine& b) { return a.state < b.state; });
    return lines;
}

} // namespace

std::vector<PailLine> pails(const book::Workbook& workbook, maths::Day today, bool also_gone) {
    std::vector<PailLine> lines = pail_lines(workbook, also_gone ? book::all_pails(workbook) : book::pails_of_pours_at_hand(workbook), today);
    if (!also_gone)
        std::erase_if(lines, [](const PailLine& line) { return is_gone(line.state); });
    return lines;
}

std::optional<PailLine> pail(const book::Workbook& workbook, PailId id, maths::Day today) {
    for (PailLine& line : pail_lines(workbook, book::pails_poured_with(workbook, id), today))
        if (line.id == id)
            return std::move(line);
    return std::nullopt;
}

} // namespace soakbook::work
