// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/queries/pails.h"

namespace soakbook::book {

std::vector<Pail> pails_of(const Workbook& workbook, Id<Batch> batch) {
    return fetch_where<Pail>(workbook, "WHERE batch_id = ? AND void_reason IS NULL ORDER BY id", batch);
}

std::vector<Pail> pails_of_pour(const Workbook& workbook, Id<Pour> pour) {
    return fetch_where<Pail>(workbook, "WHERE pour_id = ? ORDER BY id", pour);
}

std::vector<Pail> pails_at_hand(const Workbook& workbook) {
    return fetch_where<Pail>(
        workbook,
        "WHERE void_reason IS NULL AND discarded_on IS NULL AND used_in_part_on IS NULL AND strength_ppm IS NOT NULL "
        "AND NOT EXISTS (SELECT 1 FROM batch_input i WHERE i.pail_id = pail.id AND i.void_reason IS NULL) "
        "ORDER BY oldest_on, id");
}

std::optional<BatchInput> input_of_pail(const Workbook& workbook, Id<Pail> pail) {
    auto found = fetch_where<BatchInput>(workbook, "WHERE pail_id = ? AND void_reason IS NULL", pail);
    return found.empty() ? std::nullopt : std::optional<BatchInput>(std::move(found.front()));
}

} // namespace soakbook::book
