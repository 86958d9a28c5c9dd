// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/setup.h"

#include "core/book/records/figure.h"
#include "core/work/figures.h"
#include "core/work/perform.h"
#include "core/work/set_up_checks.h"

#include <algorithm>

namespace soakbook::work {

namespace {

std::optional<book::Operation> stored_operation(const book::Workbook& workbook) {
    auto found = book::fetch_all<book::Operation>(workbook);
    return found.empty() ? std::nullopt : std::optional<book::Operation>(std::move(found.front()));
}

Piece named(const char* key, const QString& subject) {
    return {QLatin1String(key), 1, subject.trimmed()};
}

/// Adds or changes one record of Set-up.
template <class Record>
Outcome<book::Id<Record>> save(book::Workbook& workbook, const char* key, const Outcome<Record>& record,
                               const book::Doing& doing) {
    if (!record)
        return unexpected(record.error());
    return perform(workbook, named(key, record->name), doing,
                   [&](book::Writing& writing) { return keep(writing, *record); });
}

StripKindEntry entry_of(const book::StripKind& kind) {
    StripKindEntry entry;
    entry.id = kind.id;
    entry.name = kind.name;
    entry.dry = kind.dry;
    entry.target = kind.target;
    entry.tolerance = kind.tolerance;
    entry.strips_per_bag = kind.strips_per_bag;
    if (kind.dose_kind)
        entry.dose_rule = static_cast<DoseRule>(*kind.dose_kind);
    entry.dose_strips = kind.dose_strips;
    entry.dose_frames_tenths = kind.dose_frames_tenths;
    entry.dose_least = kind.dose_least;
    entry.dose_most = kind.dose_most;
    entry.active = kind.active;
    return entry;
}

} // namespace

Operation operation(const book::Workbook& workbook) {
    const auto found = stored_operation(workbook);
    return found ? Operation{found->name, found->maker, found->registration} : Operation{};
}

Outcome<int> set_operation(book::Workbook& workbook, const Operation& entry, const book::Doing& doing) {
    auto record = checked_operation(entry);
    if (!record)
        return unexpected(record.error());
    if (const auto before = stored_operation(workbook))
        record->id = before->id;
    const auto saved = save<book::Operation>(workbook, "set_up", record, doing);
    return saved ? Outcome<int>(1) : unexpected(saved.error());
}

std::vector<PersonLine> people(const book::Workbook& workbook) {
    std::vector<PersonLine> lines;
    for (const book::Person& person : book::fetch_all<book::Person>(workbook))
        lines.push_back({person.id, person.name, person.active});
    return lines;
}

Outcome<PersonId> save_person(book::Workbook& workbook, const PersonLine& person, const book::Doing& doing) {
    return save(workbook, "person", checked_person(workbook, person, QStringLiteral("name")), doing);
}

std::vector<StripKindEntry> strip_kinds(const book::Workbook& workbook, bool also_inactive) {
    std::vector<StripKindEntry> entries;
    for (const book::StripKind& kind : book::fetch_all<book::StripKind>(workbook))
        if (kind.active || also_inactive)
            entries.push_back(entry_of(kind));
    return entries;
}

Outcome<StripKindId> save_strip_kind(book::Workbook& workbook, const StripKindEntry& kind, const book::Doing& doing) {
    return save(workbook, "strip_kind", checked_strip_kind(workbook, kind), doing);
}

std::vector<VesselEntry> vessels(const book::Workbook& workbook, bool also_inactive) {
    std::vector<VesselEntry> entries;
    for (const book::Vessel& vessel : book::fetch_all<book::Vessel>(workbook))
        if (vessel.active || also_inactive)
            entries.push_back({vessel.id, vessel.kind == book::VesselKind::tank, vessel.name, vessel.capacity,
                               vessel.strips_held, vessel.flood, vessel.active});
    return entries;
}

Outcome<VesselId> save_vessel(book::Workbook& workbook, const VesselEntry& vessel, const book::Doing& doing) {
    VesselEntry entry = vessel;
    // A tank that was used stays a tank.
    if (const auto before = book::fetch(workbook, vessel.id))
        entry.is_tank = before->kind == book::VesselKind::tank;
    return save(workbook, "vessel", checked_vessel(workbook, entry), doing);
}

namespace {

// What the welcome leaves empty is left for later; weights without a name are not: they would be lost.
bool is_said(const StripKindEntry& kind) {
    return !kind.name.trimmed().isEmpty() || kind.dry || kind.target || kind.tolerance || kind.strips_per_bag;
}
bool is_said(const VesselEntry& vessel) {
    return !vessel.name.trimmed().isEmpty() || vessel.capacity || vessel.strips_held || vessel.flood;
}

} // namespace

Outcome<int> first_set_up(book::Workbook& workbook, const FirstSetUp& entry, const book::Doing& doing) {
    auto record = checked_operation(entry.operation, QStringLiteral("operation/"));
    if (!record)
        return unexpected(record.error());
    return perform(workbook, named("set_up", record->name), doing, [&](book::Writing& writing) -> Outcome<int> {
        const book::Workbook& written = writing.workbook();
        if (const auto before = stored_operation(written)) {
            record->id = before->id;
            if (*before != *record)
                book::update(writing, *record);
        } else {
            book::insert(writing, *record);
        }
        const auto person = checked_person(written, {{}, entry.person, true}, QStringLiteral("person"));
        if (!person)
            return unexpected(person.error());
        book::insert(writing, *person);
        const auto said = book::fetch_all<book::Figure>(written);
        for (int i = 0; i < figure_count; ++i) {
            const FigureInfo& figure = info(static_cast<Figure>(i));
            const QString key = QLatin1String(figure.key);
            const bool there =
                std::any_of(said.begin(), said.end(), [&](const book::Figure& f) { return f.key == key; });
            if (figure.shipped && !there)
                book::insert(writing, book::Figure{{}, key, *figure.shipped, {}});
        }
        if (is_said(entry.kind)) {
            const auto kind = checked_strip_kind(written, entry.kind, QStringLiteral("kind/"));
            if (!kind)
                return unexpected(kind.error());
            book::insert(writing, *kind);
        }
        for (const bool is_tank : {true, false}) {
            VesselEntry vessel = is_tank ? entry.tank : entry.bin;
            if (!is_said(vessel))
                continue;
            vessel.is_tank = is_tank;
            const auto checked =
                checked_vessel(written, vessel, is_tank ? QStringLiteral("tank/") : QStringLiteral("bin/"));
            if (!checked)
                return unexpected(checked.error());
            book::insert(writing, *checked);
        }
        return 1;
    });
}

} // namespace soakbook::work
