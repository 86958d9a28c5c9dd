// SPDX-License-Identifier: GPL-3.0-or-later
// What a piece of work gives back: its result, or a refusal that says which field, why, and with which numbers. A refusal
// is a value, worded for people in ui/parts/refusal_words; broken machinery throws.
#pragma once

#include <QString>
#include <QStringList>

#include <set>

#include <tl/expected.hpp>

namespace soakbook::work {

/// Why an entry is refused. Those marked (ask) are odd but possible: the same request passes when `confirmed` holds it.
enum class Why {
    // any form
    missing,           ///< needed and empty
    unreadable,        ///< not a quantity, date or code
    not_positive,      ///< zero or less where there must be something
    too_large,         ///< facts: the most that makes sense
    too_small,         ///< facts: the least that makes sense
    too_long,          ///< a text longer than the record keeps; facts: the most characters
    hidden_signs,      ///< a name with signs in it that nobody sees: a line end, a tab, one that turns the letters round
    name_taken,        ///< facts: the name
    not_found,         ///< the record is not there (any more); facts: what
    reason_missing,    ///< a correction or a void without its reason
    nothing_changed,   ///< a correction that changes nothing
    in_the_future,     ///< a day or hour that has not come yet
    before_start,      ///< earlier than the step before it; facts: that step's day
    long_ago,          ///< (ask) more than a year back; facts: days
    figure_missing,    ///< a figure of Set-up is needed and not said yet; facts: its key
    busy,              ///< another program holds the workbook
    disk_full,         ///< nothing was saved
    disk_failed,       ///< the disk failed while it was written or read; nothing was saved
    read_only,         ///< the workbook cannot be written
    being_checked,     ///< entries wait until the workbook is found sound
    looking_only,      ///< it was opened for looking alone
    replaced,          ///< another file lies in the place of the open workbook
    // safe copies, and workbooks beside this one
    other_workbook,    ///< a file that is a workbook, but not this one; facts: file
    copy_unsound,      ///< a copy that is damaged or cannot be read; facts: file
    not_taken_over,    ///< an entry of the other workbook does not fit this one any more; facts: what, in words or a code
    // mix
    assay_below_strength, ///< facts: assay, strength
    overfills_tank,       ///< facts: amount, capacity
    lot_short,            ///< facts: lot, left, wanted
    lot_wrong_material,   ///< facts: lot
    lot_finished,         ///< facts: lot
    lot_past_date,        ///< (ask) facts: lot, its date
    pail_used,            ///< went whole into another batch; facts: pail, batch
    pail_used_in_part,    ///< settled acid; facts: pail
    pail_part_wanted,     ///< less than the whole pail was asked for; facts: pail, mass
    pail_strength_unknown,///< facts: pail
    pail_set_incomplete,  ///< pails of one pour go in together; facts: pails missing
    pail_gone,            ///< discarded or void; facts: pail
    too_strong_without_water, ///< pails stronger than the strength wanted and no glycerine to correct; facts: strength
    strength_off,         ///< (ask) weighed amounts give another strength than planned; facts: got, wanted
    tank_in_use,          ///< (ask) facts: tank, batch
    // heat
    over_ceiling,      ///< not a refusal of the entry: carried as a warning; facts: reading, ceiling
    odd_temperature,   ///< (ask) facts: reading
    no_reading,        ///< clear was said without one reading of the probe
    not_clear,         ///< soaking a liquid that was never seen clear
    // soak and weigh
    bin_in_use,        ///< facts: bin, batch
    bin_overfull,      ///< (ask) facts: strips, the most
    liquid_short,      ///< less liquid than the bins take; facts: left, wanted
    soak_ended,        ///< facts: bin
    lighter_than_dry,  ///< wet strips that weigh less than dry ones; facts: mean, dry
    heavier_than_possible, ///< (ask) far above the target; facts: mean, target
    more_than_soaked,  ///< more strips than the soak or bag holds; facts: strips, the most
    // bag
    no_weigh_in,       ///< (ask) bagged without a weighing
    light_strips,      ///< (ask) bagged though the last weighing was light; facts: mean, least
    already_filled,    ///< facts: bag
    not_filled,        ///< a reserved label that has no bag yet; facts: bag
    odd_bag_weight,    ///< (ask) net weight far from count times mean; facts: net, expected
    batch_closed,      ///< facts: batch
    batch_not_mixed,   ///< facts: batch
    // leftovers
    more_than_left,    ///< facts: poured, left
    loss_unexplained,  ///< (ask) facts: unexplained, limit
    strips_not_bagged, ///< closing a batch with strips still soaking; facts: strips
    // yards
    bag_short,         ///< facts: bag, left, wanted
    bag_resting,       ///< (ask) or refused, as the rule says; facts: bag, rest until
    bag_resting_refused, ///< facts: bag, rest until
    bag_past_limit,    ///< needs a reason; facts: bag, use by
    bag_opened_long,   ///< (ask) facts: bag, opened, days
    bag_gone,          ///< facts: bag
    before_sealed,     ///< facts: bag, sealed
    supers_on,         ///< (ask) facts: hive or yard
    in_flow,           ///< (ask) facts: what, from, to
    yard_closed,       ///< (ask) facts: what, from, to
    hive_dead,         ///< facts: hive
    hive_has_strips,   ///< (ask) strips already hang there; facts: hive, strips, since
    dose_outside,      ///< (ask) more or fewer than the rule's least and most; facts: strips, least, most
    already_pulled,    ///< facts: hive, day
    before_placed,     ///< pulled before it was placed; facts: day in
    counted_more,      ///< pulled and missing are more or fewer than hang; facts: counted, hang
    window_not_open,   ///< (ask) pulled before the window opens; facts: first day
    mites_without_bees,///< a wash needs the number of bees
    same_yard,         ///< a move to where it already stands
    not_enough_strips, ///< the store has fewer ready strips than the plan wants; facts: ready, wanted
    // undo
    nothing_to_undo,
    changed_outside,   ///< the workbook was changed by another program since
    undo_blocked,      ///< later work stands on it; facts: what
};

/// The refusal of one request.
struct Refusal {
    Why why{};
    QString field;     ///< the request's field as its struct names it; "rows/3/strips" for a row of a grid; empty: the whole
    QStringList facts; ///< the numbers and names the sentence needs, already as text for people
    bool can_confirm = false; ///< odd but possible: ask once, then send again with `why` in Confirmed
};

template <class T> using Outcome = tl::expected<T, Refusal>;
using tl::unexpected;

/// Odd things the user has been asked about and answered with yes.
using Confirmed = std::set<Why>;

[[nodiscard]] inline tl::unexpected<Refusal> refuse(Why why, const QString& field = {}, const QStringList& facts = {}) {
    return tl::unexpected<Refusal>(Refusal{why, field, facts, false});
}
[[nodiscard]] inline tl::unexpected<Refusal> ask(Why why, const QString& field = {}, const QStringList& facts = {}) {
    return tl::unexpected<Refusal>(Refusal{why, field, facts, true});
}

} // namespace soakbook::work
