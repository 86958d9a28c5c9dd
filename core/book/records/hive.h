// SPDX-License-Identifier: GPL-3.0-or-later
// One numbered hive, or a group of unnumbered ones for which strips and counts are kept together. Boxes and frames are of the whole group.
#pragma once

#include "core/book/columns.h"
#include "core/book/records/yard.h"

namespace soakbook::book {

enum class HiveState { alive, dead, gone };
template <> struct Names<HiveState> {
    static constexpr const char* all[] = {"alive", "dead", "gone"};
};

/// One numbered hive, or a group of unnumbered ones for which strips and counts are kept together. Boxes and frames are of the whole group.
struct Hive {
    Id<Hive> id;
    Id<Yard> yard;
    QString name;
    int hives = 1; ///< 1, or how many make the group
    std::optional<int> brood_boxes;
    std::optional<int> frames_of_bees;
    HiveState state{};
    std::optional<maths::Day> state_on;
    std::optional<bool> supers_on;
    bool untreated = false; ///< left untreated on purpose, to compare with
    QString note;
    std::optional<QString> void_reason;

    bool operator==(const Hive&) const = default;
    static constexpr const char* table = "hive";
    static constexpr auto columns() {
        return std::tuple{
            column("yard_id", &Hive::yard),
            column("name", &Hive::name),
            column("hives", &Hive::hives),
            column("brood_boxes", &Hive::brood_boxes),
            column("frames_of_bees", &Hive::frames_of_bees),
            column("state", &Hive::state),
            column("state_on", &Hive::state_on),
            column("supers_on", &Hive::supers_on),
            column("untreated", &Hive::untreated),
            column("note", &Hive::note),
            column("void_reason", &Hive::void_reason)};
    }
};

} // namespace soakbook::book
