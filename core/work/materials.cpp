// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/materials.h"

#include "core/book/queries/materials.h"
#include "core/book/records/strip_kind.h"
#include "core/maths/mixing.h"
#include "core/work/lot_stock.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

constexpr qint64 most_pieces = 10'000'000;
constexpr maths::Fraction pure = maths::ppm(1'000'000);

Piece lot_piece(const char* key, const QString& name) {
    return {QLatin1String(key), 1, name};
}

Not checked_amount(MaterialKind material, std::optional<qint64> amount, const QString& field) {
    if (!amount)
        return no(Why::missing, field);
    if (*amount <= 0)
        return no(Why::not_positive, field);
    const bool by_mass = material == MaterialKind::acid || material == MaterialKind::glycerine;
    const qint64 most = by_mass ? most_mass.count : most_pieces;
    if (*amount > most)
        return no(Why::too_large, field, {amount_fact(static_cast<book::Material>(material), most)});
    return {};
}

/// Assay and form of acid, as dihydrate.
Not take_assay(const LotEntry& entry, book::MaterialLot& lot) {
    if (!entry.acid_form)
        return no(Why::missing, QStringLiteral("acid_form"));
    const QString field = QStringLiteral("assay");
    if (!entry.assay)
        return no(Why::missing, field);
    if (entry.assay->count <= 0)
        return no(Why::not_positive, field);
    if (*entry.assay > pure)
        return no(Why::too_large, field, {fact(pure)});
    const auto assay = maths::assay_as_dihydrate(*entry.assay, static_cast<maths::AcidForm>(*entry.acid_form));
    if (!assay)
        return no(Why::unreadable, field);
    lot.acid_form = static_cast<book::AcidForm>(*entry.acid_form);
    lot.assay = *assay;
    return {};
}

/// Strip kind and, when it was weighed, the dry weight of dry strips.
Not take_strips(const book::Workbook& workbook, const LotEntry& entry, book::MaterialLot& lot) {
    if (!entry.strip_kind)
        return no(Why::missing, QStringLiteral("strip_kind"));
    const auto kind = book::fetch(workbook, *entry.strip_kind);
    if (!kind)
        return no(Why::not_found, QStringLiteral("strip_kind"));
    lot.strip_kind = kind->id;
    if (!entry.dry)
        return {};
    const auto dry =
        checked_mass(entry.dry, QStringLiteral("dry"), kind->target - kind->tolerance - maths::milligrams(1));
    if (!dry)
        return dry.error();
    lot.dry = *dry;
    return {};
}

Outcome<book::MaterialLot> checked_lot(const book::Workbook& workbook, const LotEntry& entry, const book::Doing& doing,
                                       const Confirmed& confirmed) {
    book::MaterialLot lot;
    lot.id = entry.id;
    lot.material = static_cast<book::Material>(entry.material);
    const auto name = checked_name(entry.name, QStringLiteral("name"), 200);
    if (!name)
        return unexpected(name.error());
    const auto supplier = checked_name(entry.supplier, QStringLiteral("supplier"), 200, false);
    if (!supplier)
        return unexpected(supplier.error());
    const auto note = checked_text(entry.note, QStringLiteral("note"), 4000, false);
    if (!note)
        return unexpected(note.error());
    lot.name = *name;
    lot.supplier = *supplier;
    lot.note = *note;
    // Material that is years old is nothing odd: the day is only kept from the future.
    Confirmed any_age = confirmed;
    any_age.insert(Why::long_ago);
    const auto received = checked_day(entry.received_on, doing, any_age, std::nullopt, QStringLiteral("received_on"));
    if (!received)
        return unexpected(received.error());
    lot.received_on = *received;
    if (const Not bad = checked_amount(entry.material, entry.amount, QStringLiteral("amount")))
        return because(bad);
    lot.amount = *entry.amount;
    if (entry.container_amount) {
        if (const Not bad = checked_amount(entry.material, entry.container_amount, QStringLiteral("container_amount")))
            return because(bad);
        lot.container_amount = entry.container_amount;
    }
    if (entry.material == MaterialKind::acid)
        if (const Not bad = take_assay(entry, lot))
            return because(bad);
    if (entry.material == MaterialKind::strips)
        if (const Not bad = take_strips(workbook, entry, lot))
            return because(bad);
    lot.best_before = entry.best_before;
    if (entry.cost && entry.cost->count < 0)
        return refuse(Why::too_small, QStringLiteral("cost"), {fact(0)});
    lot.cost = entry.cost;
    if (const Not past = lot_past_date(lot, doing.today(), QStringLiteral("best_before"), confirmed); past && !entry.id)
        return because(past);
    return lot;
}

Outcome<book::MaterialLot> lot_there(const book::Workbook& workbook, LotId id) {
    const auto lot = book::fetch(workbook, id);
    if (!lot || lot->void_reason)
        return refuse(Why::not_found, {}, lot ? QStringList{fact(lot->name)} : QStringList{});
    return *lot;
}

LotEntry entry_of(const book::MaterialLot& lot) {
    LotEntry entry;
    entry.id = lot.id;
    entry.material = static_cast<MaterialKind>(lot.material);
    entry.name = lot.name;
    entry.supplier = lot.supplier;
    entry.received_on = lot.received_on;
    entry.amount = lot.amount;
    entry.container_amount = lot.container_amount;
    if (lot.acid_form)
        entry.acid_form = static_cast<FormOfAcid>(*lot.acid_form);
    entry.assay = lot.assay;
    if (lot.assay && lot.acid_form == book::AcidForm::anhydrous)
        entry.assay = maths::anhydrous_from_dihydrate(*lot.assay).value_or(*lot.assay);
    entry.strip_kind = lot.strip_kind;
    entry.dry = lot.dry;
    entry.best_before = lot.best_before;
    entry.cost = lot.cost;
    entry.note = lot.note;
    return entry;
}

} // namespace

Outcome<LotId> save_lot(book::Workbook& workbook, const LotEntry& entry, const book::Doing& doing,
                        const Confirmed& confirmed) {
    const char* key = entry.id ? "lot_corrected" : "lot";
    return perform(workbook, lot_piece(key, entry.name.trimmed()), doing,
                   [&](book::Writing& writing) -> Outcome<LotId> {
                       auto lot = checked_lot(writing.workbook(), entry, doing, confirmed);
                       if (!lot)
                           return unexpected(lot.error());
                       if (!entry.id)
                           return book::insert(writing, *lot);
                       const auto before = lot_there(writing.workbook(), entry.id);
                       if (!before)
                           return unexpected(before.error());
                       if (before->material != lot->material)
                           return refuse(Why::lot_wrong_material, QStringLiteral("material"), {fact(before->name)});
                       lot->finished_on = before->finished_on;
                       if (*lot == *before)
                           return refuse(Why::nothing_changed);
                       if (const Not missing = reason_missing(doing))
                           return because(missing);
                       const qint64 gone = before->amount - left_of(writing.workbook(), *before);
                       if (lot->amount < gone)
                           return refuse(Why::too_small, QStringLiteral("amount"), {amount_fact(lot->material, gone)});
                       book::update(writing, *lot);
                       return lot->id;
                   });
}

std::vector<LotLine> lots(const book::Workbook& workbook, maths::Day today, bool only_open) {
    std::vector<LotLine> lines;
    for (const book::MaterialLot& lot : book::lots_newest_first(workbook)) {
        if (only_open && lot.finished_on)
            continue;
        LotLine line;
        line.entry = entry_of(lot);
        line.assay_as_dihydrate = lot.assay.value_or(maths::Fraction{});
        line.used = book::used_of_lot(workbook, lot);
        line.left = left_of(workbook, lot);
        line.finished = lot.finished_on.has_value();
        line.past_date = lot.best_before && *lot.best_before < today;
        lines.push_back(line);
    }
    return lines;
}

Outcome<int> recount_lot(book::Workbook& workbook, LotId id, qint64 left, const QString& reason,
                         const book::Doing& doing) {
    const auto why = checked_text(reason, QStringLiteral("reason"), 4000, false);
    if (!why)
        return unexpected(why.error());
    if (why->isEmpty())
        return refuse(Why::reason_missing, QStringLiteral("reason"));
    book::Doing with_reason = doing;
    with_reason.why = *why;
    return perform(workbook, lot_piece("lot_recounted", {}), with_reason, [&](book::Writing& writing) -> Outcome<int> {
        const auto lot = lot_there(writing.workbook(), id);
        if (!lot)
            return unexpected(lot.error());
        if (left < 0)
            return refuse(Why::too_small, QStringLiteral("left"), {amount_fact(lot->material, 0)});
        const bool by_mass = lot->material == book::Material::acid || lot->material == book::Material::glycerine;
        const qint64 most = by_mass ? most_mass.count : most_pieces;
        if (left > most)
            return refuse(Why::too_large, QStringLiteral("left"), {amount_fact(lot->material, most)});
        const qint64 change = left - left_of(writing.workbook(), *lot);
        if (change == 0)
            return refuse(Why::nothing_changed, QStringLiteral("left"));
        writing.name(1, lot->name);
        book::insert(writing, book::LotChange{{}, lot->id, book::ChangeKind::recount, change, doing.today(), *why});
        return 1;
    });
}

Outcome<int> finish_lot(book::Workbook& workbook, LotId id, const book::Doing& doing) {
    return perform(workbook, lot_piece("lot_finished", {}), doing, [&](book::Writing& writing) -> Outcome<int> {
        auto lot = lot_there(writing.workbook(), id);
        if (!lot)
            return unexpected(lot.error());
        if (lot->finished_on)
            return refuse(Why::nothing_changed);
        writing.name(1, lot->name);
        lot->finished_on = doing.today();
        book::update(writing, *lot);
        return 1;
    });
}

} // namespace soakbook::work
