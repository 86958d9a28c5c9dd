// SPDX-License-Identifier: GPL-3.0-or-later
// Leftovers on the shelf: pails moved, used in part, thrown away, put right.
#include "core/book/queries/pails.h"

#include "core/work/batch_checks.h"
#include "core/work/copies.h"
#include "core/work/leftovers.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

/// A pail that still stands whole: not void, thrown away, or in a batch.
Outcome<book::Pail> whole_pail(const book::Workbook& workbook, PailId id) {
    const auto pail = book::fetch(workbook, id);
    if (!pail)
        return refuse(Why::not_found);
    if (pail->void_reason || pail->discarded_on)
        return refuse(Why::pail_gone, {}, {pail->code});
    if (const auto input = book::input_of_pail(workbook, id)) {
        const auto batch = book::fetch(workbook, input->batch);
        return refuse(Why::pail_used, {}, {pail->code, batch ? batch->code : QString()});
    }
    return *pail;
}

Piece pail_piece(const char* key) {
    return {QLatin1String(key), 1, {}};
}

} // namespace

Outcome<int> pail_used_in_part(book::Workbook& workbook, PailId id, std::optional<maths::Day> on,
                               const book::Doing& doing) {
    return perform(workbook, pail_piece("pail_used_in_part"), doing, [&](book::Writing& writing) -> Outcome<int> {
        auto pail = whole_pail(writing.workbook(), id);
        if (!pail)
            return unexpected(pail.error());
        if (pail->used_in_part_on)
            return refuse(Why::nothing_changed);
        const auto day = checked_day(on, doing, {Why::long_ago}, pail->sealed_on, QStringLiteral("on"));
        if (!day)
            return unexpected(day.error());
        writing.name(1, pail->code);
        pail->used_in_part_on = *day;
        pail->strength.reset();
        if (pail->label == book::LabelState::printed)
            pail->label = book::LabelState::stale;
        book::update(writing, *pail);
        return 1;
    });
}

Outcome<int> discard_pail(book::Workbook& workbook, PailId id, std::optional<maths::Day> on, const QString& reason,
                          const book::Doing& doing) {
    book::Doing with_reason = doing;
    if (!reason.trimmed().isEmpty())
        with_reason.why = reason.trimmed();
    return perform(workbook, pail_piece("pail_discarded"), with_reason, [&](book::Writing& writing) -> Outcome<int> {
        auto pail = whole_pail(writing.workbook(), id);
        if (!pail)
            return unexpected(pail.error());
        if (const Not missing = reason_missing(with_reason))
            return because(missing);
        const auto day = checked_day(on, doing, {Why::long_ago}, pail->sealed_on, QStringLiteral("on"));
        if (!day)
            return unexpected(day.error());
        writing.name(1, pail->code);
        pail->discarded_on = *day;
        pail->discard_reason = with_reason.why.trimmed();
        book::update(writing, *pail);
        return 1;
    });
}

Outcome<int> move_pails(book::Workbook& workbook, const std::vector<PailId>& pails, const QString& stands,
                        const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("pails_moved"), static_cast<int>(pails.size()), stands.trimmed()}, doing,
                   [&](book::Writing& writing) -> Outcome<int> {
                       const auto place = checked_text(stands, QStringLiteral("stands"), 200, true);
                       if (!place)
                           return unexpected(place.error());
                       int moved = 0;
                       for (const PailId id : pails) {
                           auto pail = book::fetch(writing.workbook(), id);
                           if (!pail)
                               return refuse(Why::not_found, QStringLiteral("pails"));
                           if (pail->stands == *place)
                               continue;
                           pail->stands = *place;
                           book::update(writing, *pail);
                           ++moved;
                       }
                       if (moved == 0)
                           return refuse(pails.empty() ? Why::missing : Why::nothing_changed, QStringLiteral("stands"));
                       return moved;
                   });
}

Outcome<int> correct_pail(book::Workbook& workbook, PailId id, maths::Mass mass, const book::Doing& doing) {
    return perform(workbook, pail_piece("corrected"), doing, [&](book::Writing& writing) -> Outcome<int> {
        auto pail = whole_pail(writing.workbook(), id);
        if (!pail)
            return unexpected(pail.error());
        const QString field = QStringLiteral("mass");
        const auto checked = checked_mass(mass, field, most_mass);
        if (!checked)
            return unexpected(checked.error());
        if (mass == pail->mass)
            return refuse(Why::nothing_changed, field);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        const maths::Mass in = liquid_of(writing.workbook(), pail->batch).total;
        if (mass > in)
            return refuse(Why::more_than_left, field, {fact(mass), fact(in)});
        writing.name(1, pail->code);
        pail->mass = mass;
        if (pail->label == book::LabelState::printed)
            pail->label = book::LabelState::stale;
        book::update(writing, *pail);
        rebalance(writing, pail->batch);
        return 1;
    });
}

} // namespace soakbook::work
