// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/weigh.h"

#include "core/book/queries/soaks.h"
#include "core/book/records/strip_kind.h"
#include "core/work/batch_checks.h"
#include "core/work/copies.h"
#include "core/work/figures.h"
#include "core/work/perform.h"
#include "core/work/weigh_sums.h"

namespace soakbook::work {

namespace {

/// What is on the scale, and the form's numbers checked against it.
struct Weighed {
    book::WeighIn record;
    std::vector<maths::Mass> singles;
    WeighBasis basis;
    WeighFigures figures;
    QString subject;
    std::optional<book::Batch> batch; ///< of a soak
    std::optional<maths::Instant> started;
    std::optional<maths::Day> earliest;
};

/// Target, dry weight and strength by which the strips of a bag are judged.
WeighBasis basis_of_bag(const book::Workbook& workbook, const book::Bag& bag) {
    WeighBasis basis;
    const auto kind = book::fetch(workbook, bag.strip_kind);
    basis.dry = bag.dry.value_or(kind->dry);
    basis.target = kind->target;
    basis.tolerance = kind->tolerance;
    basis.strength = bag.strength.value_or(maths::Fraction{});
    if (bag.soak)
        if (const auto soak = book::fetch(workbook, *bag.soak)) {
            basis.target = soak->target;
            basis.tolerance = soak->tolerance;
        }
    return basis;
}

Outcome<int> take_soak(const book::Workbook& workbook, SoakId id, Weighed& weighed) {
    const auto soak = book::fetch(workbook, id);
    if (!soak || soak->void_reason)
        return refuse(Why::not_found);
    const auto batch = batch_there(workbook, soak->batch);
    if (!batch)
        return unexpected(batch.error());
    weighed.record.soak = id;
    weighed.basis = basis_of(*soak, liquid_of(workbook, batch->id).strength());
    weighed.subject = batch->code;
    weighed.batch = *batch;
    weighed.started = soak->started;
    return soak->strips;
}

Outcome<int> take_bag(const book::Workbook& workbook, BagId id, Weighed& weighed) {
    const auto bag = book::fetch(workbook, id);
    if (!bag)
        return refuse(Why::not_found);
    if (bag->void_reason)
        return refuse(Why::bag_gone, {}, {bag->code});
    if (!bag->packed)
        return refuse(Why::not_filled, {}, {bag->code});
    weighed.record.bag = id;
    weighed.basis = basis_of_bag(workbook, *bag);
    weighed.subject = bag->code;
    weighed.earliest = bag->sealed_on;
    return *bag->packed;
}

Outcome<int> take_placement(const book::Workbook& workbook, PlacementId id, Weighed& weighed) {
    const auto placement = book::fetch(workbook, id);
    if (!placement || placement->void_reason || !placement->pulled_on)
        return refuse(Why::not_found);
    const auto bag = book::fetch(workbook, placement->bag);
    weighed.record.placement = id;
    weighed.basis = basis_of_bag(workbook, *bag);
    weighed.basis.pulled = true;
    weighed.subject = bag->code;
    weighed.earliest = placement->pulled_on;
    return placement->pulled.value_or(0);
}

/// How many strips, and what they weigh together.
Not take_masses(const book::Workbook& workbook, const WeighEntry& entry, int most, Weighed& weighed) {
    book::WeighIn& record = weighed.record;
    if (!entry.singles.empty()) {
        for (std::size_t i = 0; i < entry.singles.size(); ++i) {
            const QString field = QStringLiteral("singles/%1").arg(static_cast<qulonglong>(i));
            const auto mass = checked_mass(entry.singles[i], field, maths::milligrams(1'000'000));
            if (!mass)
                return mass.error();
            record.total += *mass;
        }
        record.strips = static_cast<int>(entry.singles.size());
        weighed.singles = entry.singles;
    } else {
        std::optional<int> strips = entry.strips;
        if (!strips) {
            const auto said = needed(workbook, Figure::sample_strips, QStringLiteral("strips"));
            if (!said)
                return said.error();
            strips = static_cast<int>(*said);
        }
        const auto count = checked_count(strips, QStringLiteral("strips"), most_count);
        if (!count)
            return count.error();
        const auto total = checked_mass(entry.total, QStringLiteral("total"), most_mass);
        if (!total)
            return total.error();
        record.strips = *count;
        record.total = *total;
    }
    if (record.strips > most)
        return no(Why::more_than_soaked, QStringLiteral("strips"), {fact(record.strips), fact(most)});
    return {};
}

Outcome<Weighed> weigh(const book::Workbook& workbook, const WeighEntry& entry) {
    Weighed weighed;
    Outcome<int> most = refuse(Why::missing, QStringLiteral("soak"));
    if (entry.soak && *entry.soak)
        most = take_soak(workbook, *entry.soak, weighed);
    else if (entry.bag && *entry.bag)
        most = take_bag(workbook, *entry.bag, weighed);
    else if (entry.placement && *entry.placement)
        most = take_placement(workbook, *entry.placement, weighed);
    if (!most)
        return unexpected(most.error());
    if (const Not bad = take_masses(workbook, entry, *most, weighed))
        return because(bad);
    if (entry.drip_minutes && (*entry.drip_minutes < 0 || *entry.drip_minutes > 10'080))
        return refuse(*entry.drip_minutes < 0 ? Why::too_small : Why::too_large, QStringLiteral("drip"),
                      {fact(*entry.drip_minutes < 0 ? 0 : 10'080)});
    weighed.record.drip_minutes = entry.drip_minutes;
    const auto note = checked_text(entry.note, QStringLiteral("note"), 4000, false);
    if (!note)
        return unexpected(note.error());
    weighed.record.note = *note;
    const auto figures = weigh_sum(weighed.basis, weighed.record.strips, weighed.record.total, weighed.singles);
    if (!figures)
        return unexpected(figures.error());
    weighed.figures = *figures;
    return weighed;
}

Outcome<maths::Instant> time_of(const Weighed& weighed, std::optional<maths::Instant> at, const book::Doing& doing,
                                const Confirmed& confirmed) {
    const auto moment = checked_time(at, doing, confirmed, weighed.started);
    if (moment && weighed.earliest && moment->local_day() < *weighed.earliest)
        return refuse(Why::before_start, QStringLiteral("at"), {fact(*weighed.earliest)});
    return moment;
}

/// Brings the single weights of a record to these, row by row, so that the history tells what each said before.
void write_singles(book::Writing& writing, book::Id<book::WeighIn> id, const std::vector<maths::Mass>& masses) {
    auto rows = book::singles_of(writing.workbook(), id);
    for (std::size_t i = 0; i < masses.size(); ++i) {
        if (i >= rows.size()) {
            book::insert(writing, book::WeighSingle{{}, id, static_cast<int>(i) + 1, masses[i]});
        } else if (rows[i].mass != masses[i]) {
            rows[i].mass = masses[i];
            book::update(writing, rows[i]);
        }
    }
    for (std::size_t i = masses.size(); i < rows.size(); ++i)
        book::remove_single(writing, rows[i].id);
}

/// Above dry plus twice the uptake wanted no card holds the liquid.
bool too_heavy(const WeighFigures& figures) {
    return figures.mean > figures.dry + 2 * (figures.target - figures.dry);
}

Piece piece_of(const char* key, int strips, const QString& subject) {
    return {QLatin1String(key), strips, subject};
}

} // namespace

Outcome<WeighFigures> reckon_weighing(const book::Workbook& workbook, const WeighEntry& entry) {
    const auto weighed = weigh(workbook, entry);
    return weighed ? Outcome<WeighFigures>(weighed->figures) : unexpected(weighed.error());
}

Outcome<WeighFigures> log_weighing(book::Workbook& workbook, const WeighEntry& entry, const book::Doing& doing,
                                   const Confirmed& confirmed) {
    return perform(workbook, piece_of("weighing", 1, {}), doing, [&](book::Writing& writing) -> Outcome<WeighFigures> {
        auto weighed = weigh(writing.workbook(), entry);
        if (!weighed)
            return unexpected(weighed.error());
        if (weighed->batch && weighed->batch->closed)
            return refuse(Why::batch_closed, {}, {weighed->batch->code});
        const auto at = time_of(*weighed, entry.at, doing, confirmed);
        if (!at)
            return unexpected(at.error());
        if (too_heavy(weighed->figures))
            if (const Not odd = no_unless(confirmed, Why::heavier_than_possible, QStringLiteral("total"),
                                          {fact(weighed->figures.mean), fact(weighed->figures.target)}))
                return because(odd);
        writing.name(weighed->record.strips, weighed->subject);
        weighed->record.at = *at;
        weighed->record.written = doing.at;
        std::optional<Copies> copies;
        if (weighed->batch)
            copies.emplace(writing.workbook(), weighed->batch->id);
        const auto id = book::insert(writing, weighed->record);
        write_singles(writing, id, weighed->singles);
        if (copies) {
            copies->fill_gaps(writing);
            rebalance(writing, weighed->batch->id);
        }
        return weighed->figures;
    });
}

Outcome<WeighFigures> correct_weighing(book::Workbook& workbook, WeighInId id, const WeighEntry& entry,
                                       const book::Doing& doing) {
    return perform(workbook, piece_of("corrected", 1, {}), doing, [&](book::Writing& writing) -> Outcome<WeighFigures> {
        const book::Workbook& book = writing.workbook();
        const auto before = book::fetch(book, id);
        if (!before || before->void_reason)
            return refuse(Why::not_found);
        WeighEntry whole = entry;
        whole.soak = before->soak;
        whole.bag = before->bag;
        whole.placement = before->placement;
        auto weighed = weigh(book, whole);
        if (!weighed)
            return unexpected(weighed.error());
        const auto at = time_of(*weighed, entry.at ? entry.at : before->at, doing, {Why::long_ago});
        if (!at)
            return unexpected(at.error());
        weighed->record.id = id;
        weighed->record.at = *at;
        weighed->record.written = before->written;
        if (weighed->record == *before && weighed->singles == single_masses(book, id))
            return refuse(Why::nothing_changed);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        writing.name(weighed->record.strips, weighed->subject);
        std::optional<Copies> copies;
        if (weighed->batch)
            copies.emplace(book, weighed->batch->id);
        if (weighed->record != *before)
            book::update(writing, weighed->record);
        write_singles(writing, id, weighed->singles);
        if (copies) {
            copies->follow(writing);
            rebalance(writing, weighed->batch->id);
        }
        return weighed->figures;
    });
}

Outcome<int> void_weighing(book::Workbook& workbook, WeighInId id, const book::Doing& doing) {
    return perform(workbook, piece_of("made_void", 1, {}), doing, [&](book::Writing& writing) -> Outcome<int> {
        const book::Workbook& book = writing.workbook();
        auto record = book::fetch(book, id);
        if (!record)
            return refuse(Why::not_found);
        if (record->void_reason)
            return refuse(Why::nothing_changed);
        if (const Not missing = reason_missing(doing))
            return because(missing);
        std::optional<book::Soak> soak;
        QString subject;
        if (record->soak) {
            soak = book::fetch(book, *record->soak);
            if (const auto batch = book::fetch(book, soak->batch))
                subject = batch->code;
        } else if (record->bag) {
            subject = book::fetch(book, *record->bag)->code;
        }
        std::optional<Copies> copies;
        if (soak)
            copies.emplace(book, soak->batch);
        writing.name(record->strips, subject);
        record->void_reason = doing.why.trimmed();
        book::update(writing, *record);
        if (copies) {
            copies->follow(writing);
            rebalance(writing, soak->batch);
        }
        return 1;
    });
}

} // namespace soakbook::work
