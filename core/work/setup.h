// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: whose workbook it is, who works, strip kinds, vessels. Each function is one piece of work; an id of 0 adds, another
// changes. Names are refused when taken (name_taken) or longer than 200 characters (too_long).
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

struct Operation {
    QString name;
    QString maker;        ///< address and telephone, on labels
    QString registration;
};
Operation operation(const book::Workbook& workbook);
/// Fields: name, maker, registration.
Outcome<int> set_operation(book::Workbook& workbook, const Operation& operation, const book::Doing& doing);

struct PersonLine {
    PersonId id;
    QString name;
    bool active = true;
};
std::vector<PersonLine> people(const book::Workbook& workbook);
Outcome<PersonId> save_person(book::Workbook& workbook, const PersonLine& person, const book::Doing& doing);

/// Fields: name, dry, target, tolerance, strips_per_bag, dose_rule, dose_strips, dose_frames_tenths, dose_least, dose_most.
struct StripKindEntry {
    StripKindId id;
    QString name;
    std::optional<maths::Mass> dry;
    std::optional<maths::Mass> target;
    std::optional<maths::Mass> tolerance;
    std::optional<int> strips_per_bag;
    std::optional<DoseRule> dose_rule;
    std::optional<int> dose_strips;        ///< fixed: a hive; brood_boxes: a box
    std::optional<int> dose_frames_tenths; ///< frames of bees for one strip, in tenths
    std::optional<int> dose_least;
    std::optional<int> dose_most;
    bool active = true;
};
std::vector<StripKindEntry> strip_kinds(const book::Workbook& workbook, bool also_inactive = false);
/// Refuses a target at or under the dry weight, weights over 1 kg, a tolerance of half the uptake or more, least over most.
Outcome<StripKindId> save_strip_kind(book::Workbook& workbook, const StripKindEntry& kind, const book::Doing& doing);

/// Fields: name, capacity, strips_held, flood.
struct VesselEntry {
    VesselId id;
    bool is_tank = true;
    QString name;
    std::optional<maths::Mass> capacity; ///< tank: the most liquid it is filled with
    std::optional<int> strips_held;      ///< bin
    std::optional<maths::Mass> flood;    ///< bin, measured; may be unknown
    bool active = true;
};
std::vector<VesselEntry> vessels(const book::Workbook& workbook, bool also_inactive = false);
Outcome<VesselId> save_vessel(book::Workbook& workbook, const VesselEntry& vessel, const book::Doing& doing);

/// The welcome's whole answer in one piece of work: operation, first person, the four figures, first strip kind, tank, bin.
/// Fields are prefixed: operation/name, person, kind/dry, tank/capacity, bin/strips_held ...
struct FirstSetUp {
    Operation operation;
    QString person;
    StripKindEntry kind;
    VesselEntry tank;
    VesselEntry bin;
};
/// Writes the shipped figures too. Tank, bin and strip kind may be left out by an empty name.
Outcome<int> first_set_up(book::Workbook& workbook, const FirstSetUp& entry, const book::Doing& doing);

} // namespace soakbook::work
