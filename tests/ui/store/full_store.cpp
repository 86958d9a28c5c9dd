// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/store/full_store.h"

#include "core/work/stock.h"

namespace soakbook::tests {

using namespace work;

FullStore::FullStore() {
    say(Figure::rest_days, 7);
    say(Figure::near_limit_days, 30);
    say(Figure::opened_days, 30);
    say(Figure::pail_wait_days, 200);
    past = bagged_batch(0, 1);
    PourEntry pour;
    pour.batch = past;
    pour.pails = {maths::kilograms(24), maths::kilograms(21.5)};
    pour.warm_and_clear = true;
    pour.scraped = true;
    pour.stands = QStringLiteral("cellar");
    pails = must(pour_leftovers(book(), pour, on_day(2, 15))).pails;
    near = bagged_batch(12);
    pour.batch = near;
    pour.pails = {maths::kilograms(15), maths::kilograms(12.25)};
    pour.warm_and_clear = false;
    for (const PailId pail : must(pour_leftovers(book(), pour, on_day(14, 15))).pails)
        pails.push_back(pail);
    ready = bagged_batch(200, 1);
    visit(round(210), 210);
    must(open_bag(book(), bags_of(ready)[0], day_n(330), on_day(330)));
    must(discard_strips(book(), bags_of(ready)[1], 6, {}, QStringLiteral("torn or dropped"), on_day(331)));
    must(recount_bag(book(), bags_of(ready)[1], 75, QStringLiteral("counted by hand"), on_day(332)));
    must(discard_bags(book(), {bags_of(near)[4]}, {}, QStringLiteral("bag not tight"), on_day(340)));
    must(void_bag(book(), bags_of(near)[5], because(QStringLiteral("burst"), 341)));
    must(pail_used_in_part(book(), pails[1], {}, on_day(350)));
    resting = bagged_batch(366, 1);
    must(reserve_labels(book(), resting, 3, on_day(369)));
    round(400, QStringLiteral("Autumn"));
}

} // namespace soakbook::tests
