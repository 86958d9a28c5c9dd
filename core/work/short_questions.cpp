// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/short_questions.h"

#include "core/book/queries/bags.h"
#include "core/book/queries/counts.h"
#include "core/book/queries/register.h"

namespace soakbook::work {

bool was_anything_hung(const book::Workbook& workbook, YardId yard) { return book::is_anything_hung(workbook, yard); }

std::optional<int> bees_used_last(const book::Workbook& workbook, MiteCountKind kind) {
    return book::bees_counted_last(workbook, static_cast<book::CountKind>(kind));
}

int bags_ever(const book::Workbook& workbook) { return book::count_bags(workbook); }

} // namespace soakbook::work
