// SPDX-License-Identifier: GPL-3.0-or-later
#include "open_and_list.h"

#include "core/book/history.h"
#include "core/book/queries/bags.h"
#include "core/book/queries/found.h"
#include "core/book/queries/hives.h"
#include "core/book/queries/pails.h"
#include "core/book/queries/placements.h"
#include "core/book/queries/register.h"
#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/bag_change.h"
#include "core/book/records/batch.h"
#include "core/book/records/batch_input.h"
#include "core/book/records/figure.h"
#include "core/book/records/hive.h"
#include "core/book/records/material_lot.h"
#include "core/book/records/mite_count.h"
#include "core/book/records/operation.h"
#include "core/book/records/pail.h"
#include "core/book/records/person.h"
#include "core/book/records/placement.h"
#include "core/book/records/pour.h"
#include "core/book/records/reading.h"
#include "core/book/records/round.h"
#include "core/book/records/soak.h"
#include "core/book/records/strip_kind.h"
#include "core/book/records/vessel.h"
#include "core/book/records/weigh_in.h"
#include "core/book/records/yard.h"
#include "core/book/records/yard_time.h"
#include "core/book/verify.h"

namespace soakbook::faults {

namespace {

// A list that cannot be read does not keep the next from being shown.
template <class F> void look(F&& f) {
    try {
        f();
    } catch (const std::exception&) {
    }
}

template <class... Records> void list(const book::Workbook& workbook) {
    (look([&] { (void)book::fetch_all<Records>(workbook); }), ...);
}

} // namespace

bool open_and_list(const QString& path) {
    (void)book::verify(path);
    const auto opened = book::Workbook::open_for_looking(path);
    if (!opened)
        return false;
    const book::Workbook& workbook = **opened;
    list<book::Bag, book::BagChange, book::Batch, book::BatchInput, book::Figure, book::Hive, book::MaterialLot, book::MiteCount, book::Operation,
         book::Pail, book::Person, book::Placement, book::Pour, book::Reading, book::Round, book::Soak, book::StripKind, book::Vessel, book::WeighIn,
         book::Yard, book::YardTime>(workbook);
    look([&] {
        for (const book::Change& change : book::newest_changes(workbook, 200))
            (void)book::history_of(workbook, change.table, change.row);
    });
    look([&] { (void)book::changes_with_reason(workbook, 0, workbook.last_seq()); });
    look([&] { (void)book::all_bag_stock(workbook); });
    look([&] { (void)book::bag_stock_on_shelf(workbook); });
    look([&] { (void)book::pails_at_hand(workbook); });
    look([&] { (void)book::yards_by_name(workbook); });
    look([&] { (void)book::placements(workbook, {}); });
    look([&] { (void)book::last_pulled(workbook); });
    look([&] { (void)book::strips_by_round(workbook); });
    look([&] { (void)book::newest_pieces(workbook, 200); });
    look([&] { (void)book::records_named(workbook, QStringLiteral("a"), 50); });
    return true;
}

} // namespace soakbook::faults
