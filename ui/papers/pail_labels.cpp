// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/pail_labels.h"

#include "core/work/label_hazard.h"
#include "core/work/papers.h"
#include "core/work/store_view.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"

namespace soakbook::ui {

namespace {

constexpr int pail_decimals = 2;

LabelContent pail_label(const Desk& desk, const work::PailLine& pail, const QStringList& maker) {
    LabelContent label;
    label.kind = LabelKind::pail;
    label.code = pail.code;
    label.batch_code = pail.batch_code;
    label.sealed = pail.sealed_on;
    label.mass = desk.large(pail.mass, pail_decimals);
    if (pail.strength)
        label.strength = desk.percent(*pail.strength);
    const work::LabelHazard hazard = work::label_hazard(pail.strength);
    label.hazard_up_to_rev_8 = hazard.up_to_rev_8;
    label.hazard_from_rev_9 = hazard.from_rev_9;
    label.maker = maker;
    return label;
}

} // namespace

std::vector<LabelContent> pail_labels(const Desk& desk, const std::vector<work::PailId>& pails) {
    const QStringList maker = maker_lines(desk);
    std::vector<LabelContent> labels;
    for (const work::PailId id : pails) {
        const auto pail = work::pail(desk.workbook(), id, desk.today());
        if (pail && pail->state != work::PailState::made_void)
            labels.push_back(pail_label(desk, *pail, maker));
    }
    return labels;
}

void offer_pail_labels(Desk& desk, const std::vector<work::PailId>& pails, QWidget* parent) {
    offer_labels(desk, pail_labels(desk, pails), parent,
                 [&desk, pails] { return refusal_of(work::labels_printed(desk.workbook(), {}, pails, desk.doing())); });
}

} // namespace soakbook::ui
