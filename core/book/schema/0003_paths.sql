-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 3: indexes alone. After many years no page reads a whole table to show a few of its rows, and undo finds what
-- hangs on a record without looking at every other one.

-- What belongs to a batch, a pour, a lot, a bin.
CREATE INDEX batch_input_of_batch ON batch_input(batch_id);
CREATE INDEX batch_input_of_lot ON batch_input(lot_id);
CREATE INDEX reading_of_batch ON reading(batch_id);
CREATE INDEX stir_of_batch ON stir(batch_id);
CREATE INDEX soak_of_batch ON soak(batch_id);
CREATE INDEX soak_of_lot ON soak(lot_id);
CREATE INDEX soak_of_bin ON soak(bin_id);
CREATE INDEX pour_of_batch ON pour(batch_id);
CREATE INDEX pail_of_batch ON pail(batch_id);
CREATE INDEX pail_of_pour ON pail(pour_id);
CREATE INDEX batch_loss_of_batch ON batch_loss(batch_id);
CREATE INDEX bag_of_soak ON bag(soak_id);
CREATE INDEX bag_of_lot ON bag(bag_lot_id);
CREATE INDEX lot_change_of_lot ON lot_change(lot_id);
CREATE INDEX weigh_in_of_bag ON weigh_in(bag_id) WHERE bag_id IS NOT NULL;
CREATE INDEX weigh_in_of_placement ON weigh_in(placement_id) WHERE placement_id IS NOT NULL;

-- Hives and their counts.
CREATE INDEX hive_of_yard ON hive(yard_id);
CREATE INDEX hive_move_of_hive ON hive_move(hive_id);
DROP INDEX mite_count_of_hive;
CREATE INDEX mite_count_of_hive ON mite_count(hive_id, on_day);

-- Sums over placements read these indexes and not the rows: what is left in a bag, when strips last came out of a hive,
-- what went into a round.
DROP INDEX placement_of_bag;
CREATE INDEX placement_of_bag ON placement(bag_id, void_reason, strips);
DROP INDEX placement_of_hive;
CREATE INDEX placement_of_hive ON placement(hive_id, withdrawal_days, pulled_on, void_reason);
CREATE INDEX placement_of_round ON placement(round_id, hive_id, void_reason, strips);

-- Corrections, and when a pull was written, without going through the history.
CREATE INDEX change_corrected ON change(tbl, row_id) WHERE what = 'changed' AND (why <> '' OR work GLOB 'undo:*' OR work GLOB 'redo:*');
CREATE INDEX change_of_pull ON change(row_id, tbl, work, at_ms, at_off) WHERE tbl = 'placement' AND work IN ('strips_out', 'redo:strips_out');
