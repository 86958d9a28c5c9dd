// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/soak.h"

#include "core/book/queries/bags_of_batch.h"
#include "core/book/queries/soaks.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/maths/sampling.h"
#include "core/maths/yield.h"
#include "core/work/bagged_strips.h"
#include "core/work/batch_checks.h"
#include "core/work/clear_liquid.h"
#include "core/work/copies.h"
#include "core/work/lot_stock.h"
#include "core/work/perform.h"
#include "core/work/temperature_checks.h"

#include <set>

namespace soakbook::work {

namespace {

QString bin_field(std::size_t i, const char* name) {
    return QStringLiteral("bins/%1/%2").arg(static_cast<qulonglong>(i)).arg(QLatin1String(name));
}

/// A soak form looked up: its records (without times) and what the form shows.
struct SoakReckoned {
    book::Batch batch;
    std::vector<book::Soak> soaks;
    std::vector<book::Vessel> bins;
    std::optional<book::MaterialLot> lot;
    SoakFigures figures;
};

Outcome<book::Vessel> free_bin(const book::Workbook& workbook, std::optional<VesselId> id, std::size_t i,
                               std::set<qint64>& taken) {
    const QString field = bin_field(i, "bin");
    if (!id || !*id)
        return refuse(Why::missing, field);
    const auto bin = book::fetch(workbook, *id);
    if (!bin || !bin->active || bin->kind != book::VesselKind::bin)
        return refuse(Why::not_found, field, bin ? QStringList{fact(bin->name)} : QStringList{});
    if (!taken.insert(bin->id.value).second)
        return refuse(Why::bin_in_use, field, {fact(bin->name), QString()});
    if (const auto soak = book::soak_in_bin(workbook, bin->id)) {
        const auto batch = book::fetch(workbook, soak->batch);
        return refuse(Why::bin_in_use, field, {fact(bin->name), batch ? batch->code : QString()});
    }
    return *bin;
}

/// Strips of the batch's kind, enough of them, when their lot is known.
Outcome<std::optional<book::MaterialLot>> strip_lot(const book::Workbook& workbook, const SoakEntry& entry,
                                                    const book::StripKind& kind, int strips) {
    if (!entry.lot || !*entry.lot)
        return std::optional<book::MaterialLot>{};
    const QString field = QStringLiteral("lot");
    const auto lot = usable_lot(workbook, *entry.lot, {book::Material::strips, strips}, field);
    if (!lot)
        return unexpected(lot.error());
    if (lot->strip_kind != kind.id)
        return refuse(Why::lot_wrong_material, field, {fact(lot->name)});
    return std::optional<book::MaterialLot>(*lot);
}

Outcome<SoakReckoned> reckon(const book::Workbook& workbook, const SoakEntry& entry, const Confirmed& confirmed) {
    SoakReckoned reckoned;
    const auto batch = mixed_batch(workbook, entry.batch);
    if (!batch)
        return unexpected(batch.error());
    const auto kind = book::fetch(workbook, batch->strip_kind);
    if (entry.bins.empty())
        return refuse(Why::missing, bin_field(0, "bin"));
    std::set<qint64> taken;
    SoakFigures& figures = reckoned.figures;
    maths::Mass flood;
    bool every_flood = true;
    maths::Mass let_in;
    for (std::size_t i = 0; i < entry.bins.size(); ++i) {
        const SoakEntry::Bin& typed = entry.bins[i];
        const auto bin = free_bin(workbook, typed.bin, i, taken);
        if (!bin)
            return unexpected(bin.error());
        const auto strips =
            checked_count(typed.strips ? typed.strips : bin->strips_held, bin_field(i, "strips"), most_count);
        if (!strips)
            return unexpected(strips.error());
        if (*strips > bin->strips_held.value_or(*strips))
            if (const Not over = no_unless(confirmed, Why::bin_overfull, bin_field(i, "strips"),
                                           {fact(*strips), fact(*bin->strips_held)}))
                return because(over);
        if (typed.flood) {
            if (const auto checked = checked_mass(typed.flood, bin_field(i, "flood"), most_mass); !checked)
                return unexpected(checked.error());
            let_in += *typed.flood;
        }
        book::Soak soak;
        soak.batch = batch->id;
        soak.bin = bin->id;
        soak.strips = *strips;
        soak.target = kind->target;
        soak.tolerance = kind->tolerance;
        soak.flood = typed.flood;
        soak.room = entry.room;
        figures.strips += *strips;
        const auto known = typed.flood ? typed.flood : bin->flood;
        every_flood = every_flood && known.has_value();
        flood += known.value_or(maths::Mass{});
        reckoned.soaks.push_back(soak);
        reckoned.bins.push_back(*bin);
    }
    const auto lot = strip_lot(workbook, entry, *kind, figures.strips);
    if (!lot)
        return unexpected(lot.error());
    const maths::Mass dry = *lot && (*lot)->dry ? *(*lot)->dry : kind->dry;
    for (book::Soak& soak : reckoned.soaks) {
        soak.dry = dry;
        if (*lot)
            soak.lot = (*lot)->id;
    }
    const auto uptake = maths::uptake(kind->target, dry);
    const auto wanted = uptake ? maths::liquid_for_strips(figures.strips, *uptake)
                               : maths::Answer<maths::Mass>(unexpected(uptake.error()));
    if (!wanted)
        return refuse(Why::too_large, bin_field(0, "strips"), {fact(most_count)});
    figures.taken_at_target = *wanted;
    figures.liquid = liquid_of(workbook, batch->id).total;
    const maths::Mass left = not_spoken_for(workbook, batch->id);
    if (*wanted > left)
        return refuse(Why::liquid_short, bin_field(0, "strips"), {fact(left), fact(*wanted)});
    if (let_in > left)
        return refuse(Why::liquid_short, bin_field(0, "flood"), {fact(left), fact(let_in)});
    figures.most_left = left - *wanted;
    if (every_flood)
        figures.flood = flood;
    if (const Not odd = odd_temperature(entry.room, QStringLiteral("room"), confirmed))
        return because(odd);
    reckoned.batch = *batch;
    reckoned.lot = *lot;
    return reckoned;
}

struct Found {
    book::Soak soak;
    book::Batch batch;
};
Outcome<Found> soak_there(const book::Workbook& workbook, SoakId id) {
    const auto soak = book::fetch(workbook, id);
    if (!soak || soak->void_reason)
        return refuse(Why::not_found);
    const auto batch = batch_there(workbook, soak->batch);
    return batch ? Outcome<Found>(Found{*soak, *batch}) : unexpected(batch.error());
}

/// The day of the first thing that was done to a soak's strips; a start can be no later.
Not starts_too_late(const book::Workbook& workbook, const book::Soak& soak, maths::Instant started) {
    const QString field = QStringLiteral("at");
    if (soak.ended && *soak.ended < started)
        return no(Why::before_start, field, {fact(soak.ended->local_day())});
    for (const book::WeighIn& weigh_in : book::weigh_ins_of(workbook, soak.id))
        if (weigh_in.at < started)
            return no(Why::before_start, field, {fact(weigh_in.at.local_day())});
    for (const book::Bag& bag : book::bags_of(workbook, soak.batch))
        if (bag.soak == soak.id && !bag.void_reason && bag.sealed_on && *bag.sealed_on < started.local_day())
            return no(Why::before_start, field, {fact(*bag.sealed_on)});
    return {};
}

} // namespace

Outcome<SoakFigures> reckon_soak(const book::Workbook& workbook, const SoakEntry& entry) {
    const auto reckoned = reckon(workbook, entry, {Why::bin_overfull, Why::odd_temperature});
    return reckoned ? Outcome<SoakFigures>(reckoned->figures) : unexpected(reckoned.error());
}

Outcome<std::vector<SoakId>> start_soak(book::Workbook& workbook, const SoakEntry& entry, const book::Doing& doing,
                                        const Confirmed& confirmed) {
    return perform(workbook, {QStringLiteral("soak"), static_cast<int>(entry.bins.size()), {}}, doing,
                   [&](book::Writing& writing) -> Outcome<std::vector<SoakId>> {
                       auto reckoned = reckon(writing.workbook(), entry, confirmed);
                       if (!reckoned)
                           return unexpected(reckoned.error());
                       const auto at = checked_time(entry.at, doing, confirmed, reckoned->batch.mixed);
                       if (!at)
                           return unexpected(at.error());
                       if (!clear_since(writing.workbook(), reckoned->batch, *at))
                           return refuse(Why::not_clear);
                       if (reckoned->lot) {
                           if (const Not early = before_delivery(*reckoned->lot, at->local_day(), QStringLiteral("at")))
                               return because(early);
                           if (const Not past =
                                   lot_past_date(*reckoned->lot, at->local_day(), QStringLiteral("lot"), confirmed))
                               return because(past);
                       }
                       writing.name(static_cast<int>(reckoned->soaks.size()), reckoned->batch.code);
                       std::vector<SoakId> ids;
                       for (book::Soak& soak : reckoned->soaks) {
                           soak.started = *at;
                           soak.written = doing.at;
                           ids.push_back(book::insert(writing, soak));
                       }
                       return ids;
                   });
}

Outcome<int> end_soak(book::Workbook& workbook, SoakId id, std::optional<maths::Instant> at, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("soak_ended"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<int> {
        auto found = soak_there(writing.workbook(), id);
        if (!found)
            return unexpected(found.error());
        if (found->batch.closed)
            return refuse(Why::batch_closed, {}, {found->batch.code});
        if (found->soak.ended) {
            const auto bin = book::fetch(writing.workbook(), found->soak.bin);
            return refuse(Why::soak_ended, {}, {bin ? fact(bin->name) : QString()});
        }
        const auto ended = checked_time(at, doing, {Why::long_ago}, found->soak.started);
        if (!ended)
            return unexpected(ended.error());
        writing.name(1, found->batch.code);
        found->soak.ended = *ended;
        book::update(writing, found->soak);
        return 1;
    });
}

Outcome<int> correct_soak(book::Workbook& workbook, SoakId id, std::optional<int> strips,
                          std::optional<maths::Instant> started, const book::Doing& doing) {
    return perform(workbook, {QStringLiteral("corrected"), 1, {}}, doing, [&](book::Writing& writing) -> Outcome<int> {
        const book::Workbook& book = writing.workbook();
        auto found = soak_there(book, id);
        if (!found)
            return unexpected(found.error());
        if (const Not missing = reason_missing(doing))
            return because(missing);
        const book::Soak before = found->soak;
        book::Soak& soak = found->soak;
        if (strips) {
            const auto checked = checked_count(strips, QStringLiteral("strips"), most_count);
            if (!checked)
                return unexpected(checked.error());
            const int bagged = least_strips_of(book, before);
            if (*strips < bagged)
                return refuse(Why::too_small, QStringLiteral("strips"), {fact(bagged)});
            const maths::Mass more = (soak.target - soak.dry) * (*strips - before.strips);
            const maths::Mass left = not_spoken_for(book, soak.batch);
            if (more.count > 0 && more > left && !found->batch.closed)
                return refuse(Why::liquid_short, QStringLiteral("strips"), {fact(left), fact(more)});
            if (soak.lot && *strips > before.strips) {
                const auto lot = usable_lot(book, *soak.lot, {book::Material::strips, *strips, before.strips},
                                            QStringLiteral("strips"));
                if (!lot)
                    return unexpected(lot.error());
            }
            soak.strips = *strips;
        }
        if (started) {
            const auto at = checked_time(started, doing, {Why::long_ago}, found->batch.mixed);
            if (!at)
                return unexpected(at.error());
            if (const Not late = starts_too_late(book, before, *at))
                return because(late);
            soak.started = *at;
        }
        if (soak == before)
            return refuse(Why::nothing_changed);
        writing.name(1, found->batch.code);
        const Copies copies(book, soak.batch);
        book::update(writing, soak);
        copies.follow(writing);
        rebalance(writing, soak.batch);
        return 1;
    });
}

} // namespace soakbook::work
