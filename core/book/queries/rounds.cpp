// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/rounds.h"

namespace soakbook::book {

std::vector<Round> rounds_newest_first(const Workbook& workbook) {
    return fetch_where<Round>(workbook, "WHERE void_reason IS NULL ORDER BY planned_on DESC, id DESC");
}

std::vector<RoundYard> yards_of_round(const Workbook& workbook, Id<Round> round) {
    if (!round)
        return fetch_where<RoundYard>(workbook, "WHERE void_reason IS NULL ORDER BY round_id, id");
    return fetch_where<RoundYard>(workbook, "WHERE round_id = ? AND void_reason IS NULL ORDER BY id", round);
}

std::vector<RoundYard> yards_to_visit(const Workbook& workbook) {
    return fetch_where<RoundYard>(workbook, "WHERE visited_on IS NULL AND void_reason IS NULL AND round_id IN "
                                            "(SELECT id FROM round WHERE void_reason IS NULL AND closed_on IS NULL) "
                                            "ORDER BY round_id, id");
}

} // namespace soakbook::book
