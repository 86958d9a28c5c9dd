// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/bag_labels.h"

#include "core/work/label_hazard.h"
#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int acid_decimals = 2;

/// "Bag n of m" of its batch, counting those that are not void.
void number_within_batch(const Desk& desk, const work::BagLine& bag, LabelContent& label) {
    const auto batch = work::batch_view(desk.workbook(), bag.batch, desk.today());
    if (!batch)
        return;
    for (const work::BatchBag& other : batch->bags) {
        if (other.made_void)
            continue;
        ++label.of;
        if (other.id == bag.id)
            label.number = label.of;
    }
}

LabelContent bag_label(const Desk& desk, const work::BagLine& bag, const QStringList& maker) {
    LabelContent label;
    label.kind = LabelKind::bag;
    label.code = bag.code;
    label.batch_code = bag.batch_code;
    label.reserved = bag.state == work::BagState::reserved;
    label.sealed = bag.sealed_on;
    label.rest_until = bag.rest_until;
    label.use_by = bag.use_by;
    label.strips = bag.packed;
    if (bag.acid_per_strip)
        label.acid_per_strip = desk.small(*bag.acid_per_strip, acid_decimals);
    if (bag.strength)
        label.strength = desk.percent(*bag.strength);
    number_within_batch(desk, bag, label);
    const work::LabelHazard hazard = work::label_hazard(bag.strength);
    label.hazard_up_to_rev_8 = hazard.up_to_rev_8;
    label.hazard_from_rev_9 = hazard.from_rev_9;
    label.maker = maker;
    return label;
}

} // namespace

std::vector<LabelContent> bag_labels(const Desk& desk, const std::vector<work::BagId>& bags) {
    const QStringList maker = maker_lines(desk);
    std::vector<LabelContent> labels;
    for (const work::BagId id : bags) {
        const auto bag = work::bag(desk.workbook(), id, desk.today());
        if (bag && bag->state != work::BagState::made_void)
            labels.push_back(bag_label(desk, *bag, maker));
    }
    return labels;
}

void offer_bag_labels(Desk& desk, const std::vector<work::BagId>& bags, QWidget* parent) {
    offer_labels(desk, bag_labels(desk, bags), parent,
                 [&desk, bags] { return refusal_of(work::labels_printed(desk.workbook(), bags, {}, desk.doing())); });
}

} // namespace soakbook::ui
