// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/pail_choice.h"

#include "core/book/queries/pails.h"
#include "core/work/figures.h"

#include <algorithm>

namespace soakbook::work {

namespace {

const QString pails_field = QStringLiteral("pails");

bool at_hand(const book::Workbook& workbook, const book::Pail& pail) {
    return !pail.void_reason && !pail.discarded_on && !pail.used_in_part_on && pail.strength &&
           !book::input_of_pail(workbook, pail.id);
}

Not cannot_go_in(const book::Workbook& workbook, const book::Pail& pail) {
    if (pail.void_reason || pail.discarded_on)
        return no(Why::pail_gone, pails_field, {pail.code});
    if (pail.used_in_part_on)
        return no(Why::pail_used_in_part, pails_field, {pail.code});
    if (const auto input = book::input_of_pail(workbook, pail.id)) {
        const auto batch = book::fetch(workbook, input->batch);
        return no(Why::pail_used, pails_field, {pail.code, batch ? batch->code : QString()});
    }
    if (!pail.strength)
        return no(Why::pail_strength_unknown, pails_field, {pail.code});
    return {};
}

} // namespace

maths::Mass PailChoice::total() const {
    maths::Mass sum;
    for (const book::Pail& pail : pails)
        sum += pail.mass;
    return sum;
}

std::vector<maths::Input> PailChoice::inputs() const {
    std::vector<maths::Input> inputs;
    for (const book::Pail& pail : pails)
        inputs.push_back({pail.mass, *pail.strength});
    return inputs;
}

std::vector<book::Pail> set_of(const book::Workbook& workbook, const book::Pail& pail) {
    const auto pour = book::fetch(workbook, pail.pour);
    const bool settled = pour && !(pour->warm_and_clear && pour->scraped);
    const bool together = figure(workbook, Figure::pails_whole) == 2;
    std::vector<book::Pail> set;
    if (!settled && !together)
        return {pail};
    for (const book::Pail& other : book::pails_of_pour(workbook, pail.pour)) {
        // Of settled liquid nobody knows which pail holds the acid: one that is gone is missing for good.
        if (other.id == pail.id || (settled && !other.void_reason) || (together && at_hand(workbook, other)))
            set.push_back(other);
    }
    return set;
}

Outcome<PailChoice> chosen_pails(const book::Workbook& workbook, const MixPlan& plan) {
    std::vector<PailId> ids = plan.pails;
    for (const auto& [id, mass] : plan.parts_of_pails) {
        const auto pail = book::fetch(workbook, id);
        if (!pail)
            return refuse(Why::not_found, pails_field);
        if (mass != pail->mass)
            return refuse(Why::pail_part_wanted, pails_field, {pail->code, fact(pail->mass)});
        ids.push_back(id);
    }
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());

    PailChoice choice;
    for (const PailId id : ids) {
        const auto pail = book::fetch(workbook, id);
        if (!pail)
            return refuse(Why::not_found, pails_field);
        if (const Not bad = cannot_go_in(workbook, *pail))
            return because(bad);
        choice.pails.push_back(*pail);
    }
    for (const book::Pail& pail : choice.pails) {
        QStringList missing;
        for (const book::Pail& other : set_of(workbook, pail))
            if (!std::binary_search(ids.begin(), ids.end(), other.id))
                missing << other.code;
        if (!missing.isEmpty())
            return refuse(Why::pail_set_incomplete, pails_field, {missing.join(QStringLiteral(", "))});
    }
    return choice;
}

std::vector<PailId> pails_that_can(const book::Workbook& workbook) {
    std::vector<PailId> ids;
    for (const book::Pail& pail : book::pails_at_hand(workbook)) {
        const auto set = set_of(workbook, pail);
        if (std::all_of(set.begin(), set.end(), [&](const book::Pail& other) { return at_hand(workbook, other); }))
            ids.push_back(pail.id);
    }
    return ids;
}

} // namespace soakbook::work
