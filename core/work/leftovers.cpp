// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/leftovers.h"

#include "core/book/queries/batches.h"
#include "core/book/queries/pails.h"
#include "core/work/batch_checks.h"
#include "core/work/figures.h"
#include "core/work/perform.h"

#include <algorithm>

namespace soakbook::work {

namespace {

constexpr std::size_t most_pails = 1'000;

QString pail_field(std::size_t i) {
    return QStringLiteral("pails/%1").arg(static_cast<qulonglong>(i));
}

Outcome<maths::Mass> poured_mass(const PourEntry& entry) {
    if (entry.pails.empty())
        return refuse(Why::missing, pail_field(0));
    if (entry.pails.size() > most_pails)
        return refuse(Why::too_large, pail_field(most_pails), {fact(most_pails)});
    maths::Mass sum;
    for (std::size_t i = 0; i < entry.pails.size(); ++i) {
        const auto mass = checked_mass(entry.pails[i], pail_field(i), most_mass);
        if (!mass)
            return unexpected(mass.error());
        sum += *mass;
    }
    return sum;
}

/// Refuses more than went in; asks about more than the strips can have left, beyond the limit that is the user's own.
Not more_than_left(const book::Workbook& workbook, const book::Batch& batch, maths::Mass wanted, const QString& field,
                   const Confirmed& confirmed) {
    const maths::Mass in = liquid_of(workbook, batch.id).total;
    maths::Mass gone;
    for (const book::Pail& pail : book::pails_of(workbook, batch.id))
        gone += pail.mass;
    for (const book::BatchLoss& loss : book::losses_of(workbook, batch.id))
        gone += loss.mass;
    if (gone + wanted > in)
        return no(Why::more_than_left, field, {fact(wanted), fact(in - gone)});
    const maths::Mass left = not_spoken_for(workbook, batch.id);
    const maths::Fraction limit{figure(workbook, Figure::unexplained_limit).value_or(0)};
    if (wanted <= left + maths::part_of(in, limit))
        return {};
    return no_unless(confirmed, Why::more_than_left, field, {fact(wanted), fact(std::max(left, maths::Mass{}))});
}

/// How old the liquid of a batch is, and how often it was warmed: that of its oldest pail, or new.
struct Age {
    maths::Day oldest{};
    int times_warmed = 1;
};
Age age_of(const book::Workbook& workbook, const book::Batch& batch) {
    Age age{batch.mixed->local_day(), 1};
    for (const book::BatchInput& input : book::inputs_of(workbook, batch.id)) {
        if (!input.pail)
            continue;
        const auto pail = book::fetch(workbook, *input.pail);
        age.oldest = std::min(age.oldest, pail->oldest_on);
        age.times_warmed = std::max(age.times_warmed, pail->times_warmed + 1);
    }
    return age;
}

} // namespace

Outcome<PailsPoured> pour_leftovers(book::Workbook& workbook, const PourEntry& entry, const book::Doing& doing,
                                    const Confirmed& confirmed) {
    return perform(workbook, {QStringLiteral("poured"), 1, {}}, doing,
                   [&](book::Writing& writing) -> Outcome<PailsPoured> {
                       const auto batch = mixed_batch(writing.workbook(), entry.batch);
                       if (!batch)
                           return unexpected(batch.error());
                       const auto mass = poured_mass(entry);
                       if (!mass)
                           return unexpected(mass.error());
                       if (!entry.warm_and_clear)
                           return refuse(Why::missing, QStringLiteral("warm_and_clear"));
                       if (!entry.scraped)
                           return refuse(Why::missing, QStringLiteral("scraped"));
                       const auto stands = checked_text(entry.stands, QStringLiteral("stands"), 200, false);
                       if (!stands)
                           return unexpected(stands.error());
                       const auto at = checked_time(entry.at, doing, confirmed, batch->mixed);
                       if (!at)
                           return unexpected(at.error());
                       if (const Not more = more_than_left(writing.workbook(), *batch, *mass, pail_field(0), confirmed))
                           return because(more);

                       writing.name(static_cast<int>(entry.pails.size()), batch->code);
                       book::Pour pour;
                       pour.batch = batch->id;
                       pour.at = *at;
                       pour.warm_and_clear = *entry.warm_and_clear;
                       pour.scraped = *entry.scraped;
                       pour.id = book::insert(writing, pour);
                       const Age age = age_of(writing.workbook(), *batch);
                       PailsPoured poured;
                       poured.only_together = !(pour.warm_and_clear && pour.scraped);
                       for (const maths::Mass one : entry.pails) {
                           book::Pail pail;
                           pail.code = next_code(writing, 'P');
                           pail.pour = pour.id;
                           pail.batch = batch->id;
                           pail.mass = one;
                           // Settled liquid has it only taken all together: the set goes into a mix as one.
                           pail.strength = liquid_of(writing.workbook(), batch->id).strength();
                           pail.sealed_on = at->local_day();
                           pail.oldest_on = age.oldest;
                           pail.times_warmed = age.times_warmed;
                           pail.stands = *stands;
                           poured.pails.push_back(book::insert(writing, pail));
                           poured.codes << pail.code;
                       }
                       return poured;
                   });
}

Outcome<LossId> log_loss(book::Workbook& workbook, BatchId id, NamedLoss kind, std::optional<maths::Mass> mass,
                         const QString& note, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("loss"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<LossId> {
        const auto batch = mixed_batch(writing.workbook(), id);
        if (!batch)
            return unexpected(batch.error());
        const QString field = QStringLiteral("mass");
        const auto checked = checked_mass(mass, field, most_mass);
        if (!checked)
            return unexpected(checked.error());
        const auto text = checked_text(note, QStringLiteral("note"), 4000, false);
        if (!text)
            return unexpected(text.error());
        // A spill may well be more than the sum says is left; only more than went in cannot be.
        if (const Not more = more_than_left(writing.workbook(), *batch, *checked, field, {Why::more_than_left}))
            return because(more);
        writing.name(1, batch->code);
        book::BatchLoss loss;
        loss.batch = batch->id;
        loss.kind = static_cast<book::LossKind>(kind);
        loss.mass = *checked;
        loss.note = *text;
        return book::insert(writing, loss);
    });
}

Outcome<int> void_loss(book::Workbook& workbook, LossId id, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("made_void"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<int> {
        auto loss = book::fetch(writing.workbook(), id);
        if (!loss)
            return refuse(Why::not_found);
        if (loss->void_reason)
            return refuse(Why::nothing_changed);
        const auto batch = open_batch(writing.workbook(), loss->batch);
        if (!batch)
            return unexpected(batch.error());
        if (const Not missing = reason_missing(doing))
            return because(missing);
        writing.name(1, batch->code);
        loss->void_reason = doing.why.trimmed();
        book::update(writing, *loss);
        return 1;
    });
}

} // namespace soakbook::work
