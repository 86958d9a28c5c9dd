// SPDX-License-Identifier: GPL-3.0-or-later
// Strips in: a whole yard in one go as planned, with exceptions typed over. Bags by nearest limit first, fewest opened.
#pragma once

#include "core/book/doing.h"
#include "core/maths/quantities.h"
#include "core/work/hives.h"
#include "core/work/ids.h"
#include "core/work/outcome.h"

#include <optional>
#include <vector>

namespace soakbook::work {

struct FromBag {
    BagId bag;
    QString code;
    int strips = 0;
};
/// One line of the grid.
struct VisitLine {
    HiveId hive;
    QString name;
    int hives = 1;
    std::optional<int> brood_boxes;
    std::optional<int> frames_of_bees;
    std::optional<int> planned; ///< by the round's rule; empty where the rule has no figure
    int hanging = 0;            ///< strips that hang there already
    std::optional<bool> supers_on;
    bool untreated = false;
    std::vector<FromBag> from; ///< which bags its strips come from
    QString note;
};
struct BagUse {
    BagId bag;
    QString code;
    int left_before = 0;
    int used = 0;
    maths::Day use_by{};
    std::optional<maths::Day> rest_until;
    bool opened = false;
    QString stands;
};
/// What a visit would do if nothing is typed over; also the run sheet and the load-out.
struct VisitPlan {
    RoundId round;
    QString round_name;
    YardId yard;
    QString yard_name;
    maths::Day on{};
    std::vector<VisitLine> lines;
    std::vector<BagUse> bags;
    int strips = 0;
    int short_of = 0; ///< strips the store does not have ready
    maths::Day pull_from{};
    maths::Day pull_by{};
    QStringList times;                  ///< flows and closed times of the yard that meet the days, as "what, from to"
    std::vector<YardTimeEntry> meeting; ///< the same, for who words them
    bool visited = false;
};
Outcome<VisitPlan> plan_visit(const book::Workbook& workbook, RoundId round, YardId yard, maths::Day on);

/// Fields: on, rows/<i>/strips, rows/<i>/bag, past_limit_reason, supers_on.
struct VisitEntry {
    RoundId round;
    YardId yard;
    std::optional<maths::Day> on; ///< empty: today; earlier is an entry made late
    struct Row {
        HiveId hive;
        std::optional<int> strips;        ///< 0: none hung, as in a dead hive
        std::optional<BagId> bag;         ///< empty: nearest limit first
        std::optional<StateOfHive> state; ///< dead or gone, found on this visit
        QString note;
    };
    std::vector<Row> rows;
    std::optional<bool> supers_on; ///< asked for the yard; yes is asked again (supers_on)
    QString past_limit_reason;     ///< needed when a bag is past its limit on that day
};
struct VisitDone {
    int hives = 0;
    int strips = 0;
    std::vector<BagUse> bags;
    maths::Day pull_from{};
    maths::Day pull_by{};
};
/// The same bags as enter_visit would take for these rows; for the grid while it is typed over.
Outcome<std::vector<std::vector<FromBag>>> share_out(const book::Workbook& workbook, const VisitEntry& entry,
                                                     maths::Day today);
/// Writes placements for every row with strips, marks dead or gone hives, opens bags. All or nothing. Law 4; asks for
/// supers on, flows and closed times of that day (those that come while strips hang are told in VisitPlan::times), strips
/// already hanging, resting bags (or refuses, by the figure rest_refuses).
Outcome<VisitDone> enter_visit(book::Workbook& workbook, const VisitEntry& entry, const book::Doing& doing,
                               const Confirmed& confirmed = {});

/// Strips hung in one hive outside a round. Fields: strips, bag, on, pull_from, pull_by, past_limit_reason.
struct PlaceEntry {
    HiveId hive;
    std::optional<int> strips;
    std::optional<BagId> bag;
    std::optional<maths::Day> on;
    std::optional<bool> supers_on;
    QString past_limit_reason;
    QString note;
};
Outcome<VisitDone> place_strips(book::Workbook& workbook, const PlaceEntry& entry, const book::Doing& doing,
                                const Confirmed& confirmed = {});
/// Corrects a placement, reason in `doing`; fields: strips, on. Void: strips go back into the bag's count.
Outcome<int> correct_placement(book::Workbook& workbook, PlacementId id, std::optional<int> strips,
                               std::optional<maths::Day> on, const book::Doing& doing);
Outcome<int> void_placement(book::Workbook& workbook, PlacementId id, const book::Doing& doing);

} // namespace soakbook::work
