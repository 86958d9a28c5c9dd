// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/rounds.h"

namespace soakbook::book {

std::vector<Round> rounds_newest_first(const Workbook& workbook) {
    return fetch_where<Round>(workbook, "WHERE void_reason IS NULL ORDER BY planned_on DESC, id DESC");
}

std::vector<RoundYard> yards_of_round(const Workbook& workbook, Id<Round> round) {
    return fetch_where<RoundYard>(
        workbook, "WHERE (round_id = ? OR ? = 0) AND void_reason IS NULL ORDER BY round_id, id", round, round);
}

} // namespace soakbook::book
