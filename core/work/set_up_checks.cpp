// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/set_up_checks.h"

namespace soakbook::work {

namespace {
constexpr int most_name = 200;
constexpr int most_long_text = 400;
constexpr maths::Mass heaviest_strip = maths::milligrams(1'000'000);

template <class T> T of(DoseRule rule) {
    return static_cast<T>(rule);
}
} // namespace

Outcome<book::Operation> checked_operation(const Operation& entry, const QString& prefix) {
    book::Operation record;
    const auto name = checked_name(entry.name, prefix + QStringLiteral("name"), most_name);
    if (!name)
        return unexpected(name.error());
    const auto maker = checked_text(entry.maker, prefix + QStringLiteral("maker"), most_long_text, false);
    if (!maker)
        return unexpected(maker.error());
    const auto registration =
        checked_name(entry.registration, prefix + QStringLiteral("registration"), most_name, false);
    if (!registration)
        return unexpected(registration.error());
    record.name = *name;
    record.maker = *maker;
    record.registration = *registration;
    return record;
}

Outcome<book::Person> checked_person(const book::Workbook& workbook, const PersonLine& entry, const QString& field) {
    const auto name = checked_name(entry.name, field, most_name);
    if (!name)
        return unexpected(name.error());
    if (const Not taken = name_taken<book::Person>(workbook, entry.id, *name, field))
        return because(taken);
    return book::Person{entry.id, *name, entry.active};
}

namespace {
/// The dose rule of a strip kind: what its kind needs, and a least no higher than the most.
Not bad_dose(const StripKindEntry& entry, const QString& prefix) {
    const QString strips = prefix + QStringLiteral("dose_strips");
    const QString frames = prefix + QStringLiteral("dose_frames_tenths");
    const QString least = prefix + QStringLiteral("dose_least");
    const QString most = prefix + QStringLiteral("dose_most");
    constexpr int most_a_hive = 100;
    if (entry.dose_rule == DoseRule::frames_of_bees) {
        if (const auto count = checked_count(entry.dose_frames_tenths, frames, 1000); !count)
            return count.error();
    } else if (entry.dose_rule) {
        if (const auto count = checked_count(entry.dose_strips, strips, most_a_hive); !count)
            return count.error();
    }
    if (entry.dose_least && *entry.dose_least < 0)
        return no(Why::too_small, least, {fact(0)});
    if (entry.dose_most)
        if (const auto count = checked_count(entry.dose_most, most, most_a_hive); !count)
            return count.error();
    if (entry.dose_least && *entry.dose_least > entry.dose_most.value_or(most_a_hive))
        return no(Why::too_large, least, {fact(entry.dose_most.value_or(most_a_hive))});
    return {};
}
} // namespace

Outcome<book::StripKind> checked_strip_kind(const book::Workbook& workbook, const StripKindEntry& entry,
                                            const QString& prefix) {
    const auto name = checked_name(entry.name, prefix + QStringLiteral("name"), most_name);
    if (!name)
        return unexpected(name.error());
    if (const Not taken = name_taken<book::StripKind>(workbook, entry.id, *name, prefix + QStringLiteral("name")))
        return because(taken);
    const auto dry = checked_mass(entry.dry, prefix + QStringLiteral("dry"), heaviest_strip);
    if (!dry)
        return unexpected(dry.error());
    const QString target_field = prefix + QStringLiteral("target");
    const auto target = checked_mass(entry.target, target_field, heaviest_strip);
    if (!target)
        return unexpected(target.error());
    if (*target <= *dry)
        return refuse(Why::too_small, target_field, {fact(*dry)});
    const QString tolerance_field = prefix + QStringLiteral("tolerance");
    if (!entry.tolerance)
        return refuse(Why::missing, tolerance_field);
    if (entry.tolerance->count < 0)
        return refuse(Why::too_small, tolerance_field, {fact(maths::Mass{})});
    const maths::Mass uptake = *target - *dry;
    if (*entry.tolerance + *entry.tolerance >= uptake)
        return refuse(Why::too_large, tolerance_field, {fact(maths::Mass{uptake.count / 2})});
    const auto per_bag = checked_count(entry.strips_per_bag, prefix + QStringLiteral("strips_per_bag"), 10'000);
    if (!per_bag)
        return unexpected(per_bag.error());
    if (const Not bad = bad_dose(entry, prefix))
        return because(bad);

    book::StripKind record;
    record.id = entry.id;
    record.name = *name;
    record.dry = *dry;
    record.target = *target;
    record.tolerance = *entry.tolerance;
    record.strips_per_bag = *per_bag;
    if (entry.dose_rule) {
        record.dose_kind = of<book::DoseKind>(*entry.dose_rule);
        record.dose_least = entry.dose_least;
        record.dose_most = entry.dose_most;
        if (entry.dose_rule == DoseRule::frames_of_bees)
            record.dose_frames_tenths = entry.dose_frames_tenths;
        else
            record.dose_strips = entry.dose_strips;
    }
    record.active = entry.active;
    return record;
}

Outcome<book::Vessel> checked_vessel(const book::Workbook& workbook, const VesselEntry& entry, const QString& prefix) {
    const auto name = checked_name(entry.name, prefix + QStringLiteral("name"), most_name);
    if (!name)
        return unexpected(name.error());
    if (const Not taken = name_taken<book::Vessel>(workbook, entry.id, *name, prefix + QStringLiteral("name")))
        return because(taken);
    book::Vessel record;
    record.id = entry.id;
    record.name = *name;
    record.active = entry.active;
    if (entry.is_tank) {
        const auto capacity = checked_mass(entry.capacity, prefix + QStringLiteral("capacity"), most_mass);
        if (!capacity)
            return unexpected(capacity.error());
        record.kind = book::VesselKind::tank;
        record.capacity = *capacity;
        return record;
    }
    const auto strips = checked_count(entry.strips_held, prefix + QStringLiteral("strips_held"), most_count);
    if (!strips)
        return unexpected(strips.error());
    if (entry.flood)
        if (const auto flood = checked_mass(entry.flood, prefix + QStringLiteral("flood"), most_mass); !flood)
            return unexpected(flood.error());
    record.kind = book::VesselKind::bin;
    record.strips_held = *strips;
    record.flood = entry.flood;
    return record;
}

} // namespace soakbook::work
