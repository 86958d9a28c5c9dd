// SPDX-License-Identifier: GPL-3.0-or-later
// Which pails may go into a mix: whole ones, of known strength, and a set only together. For core/work's own use.
#pragma once

#include "core/book/records/pail.h"
#include "core/maths/mixing.h"
#include "core/work/checks.h"
#include "core/work/mix.h"

#include <vector>

namespace soakbook::work {

struct PailChoice {
    std::vector<book::Pail> pails;
    maths::Mass total() const;
    std::vector<maths::Input> inputs() const;
};
/// Refuses, at the field "pails", what no mix can take: see Why, pail_*.
Outcome<PailChoice> chosen_pails(const book::Workbook& workbook, const MixPlan& plan);
/// Pails that can go in, oldest liquid first: a set is offered only when it is whole.
std::vector<PailId> pails_that_can(const book::Workbook& workbook);
/// Pails that have to go in together with that one, itself included.
std::vector<book::Pail> set_of(const book::Workbook& workbook, const book::Pail& pail);

} // namespace soakbook::work
