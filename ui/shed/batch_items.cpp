// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/batch_items.h"

#include "ui/shed/shed_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BatchItems {
    Q_DECLARE_TR_FUNCTIONS(BatchItems)
};

} // namespace

SideItem batch_item(const Desk& desk, const work::BatchLine& batch) {
    SideItem item;
    item.id = batch.id.value;
    item.code = batch.code;
    item.head = desk.day_short(batch.day);
    if (batch.strips == 0) {
        item.below = joined({batch.tank, batch.strip_kind});
    } else {
        item.below = joined({
            //: How many strips a batch has soaked
            BatchItems::tr("%n strips", nullptr, batch.strips),
            //: How many bags of a batch are filled
            batch.bags > 0 ? BatchItems::tr("%n bags", nullptr, batch.bags) : QString(),
        });
    }
    item.state = batch_state(batch);
    item.state_word = batch_state_word(batch);
    return item;
}

} // namespace soakbook::ui
