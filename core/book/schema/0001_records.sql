-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 1, the records. Masses are milligrams, temperatures hundredths of a degree Celsius, fractions parts per million,
-- money ten-thousandths; a calendar day is ISO text; an instant is milliseconds UTC with the wall's offset in minutes beside it.
-- `void_reason` makes a record void without taking it away.

CREATE TABLE operation(
    id INTEGER PRIMARY KEY AUTOINCREMENT CHECK(id = 1),
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    name TEXT NOT NULL CHECK(length(trim(name)) BETWEEN 1 AND 200),
    maker TEXT NOT NULL DEFAULT '' CHECK(length(maker) <= 400),
    registration TEXT NOT NULL DEFAULT '' CHECK(length(registration) <= 200)
) STRICT;

CREATE TABLE person(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK(length(trim(name)) BETWEEN 1 AND 200),
    active INTEGER NOT NULL DEFAULT 1 CHECK(active IN (0, 1))
) STRICT;

-- A figure of Set-up that the user has said. One that was not said has no row.
CREATE TABLE figure(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    key TEXT NOT NULL UNIQUE CHECK(length(key) BETWEEN 1 AND 60),
    value INTEGER NOT NULL,
    source TEXT NOT NULL DEFAULT '' CHECK(length(source) <= 400)
) STRICT;

CREATE TABLE strip_kind(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK(length(trim(name)) BETWEEN 1 AND 200),
    dry_mg INTEGER NOT NULL CHECK(dry_mg > 0),
    target_mg INTEGER NOT NULL CHECK(target_mg > dry_mg),
    tolerance_mg INTEGER NOT NULL CHECK(tolerance_mg >= 0 AND tolerance_mg < target_mg - dry_mg),
    strips_per_bag INTEGER NOT NULL CHECK(strips_per_bag > 0),
    dose_kind TEXT CHECK(dose_kind IN ('fixed', 'brood_boxes', 'frames_of_bees')),
    dose_strips INTEGER CHECK(dose_strips > 0),
    dose_frames_tenths INTEGER CHECK(dose_frames_tenths > 0),
    dose_least INTEGER CHECK(dose_least >= 0),
    dose_most INTEGER CHECK(dose_most >= 1),
    active INTEGER NOT NULL DEFAULT 1 CHECK(active IN (0, 1)),
    CHECK(dose_least IS NULL OR dose_most IS NULL OR dose_least <= dose_most),
    CHECK(dose_kind IS NOT 'frames_of_bees' OR dose_frames_tenths IS NOT NULL),
    CHECK(dose_kind IS NULL OR dose_kind = 'frames_of_bees' OR dose_strips IS NOT NULL)
) STRICT;

CREATE TABLE material_lot(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    material TEXT NOT NULL CHECK(material IN ('acid', 'glycerine', 'strips', 'bags')),
    name TEXT NOT NULL CHECK(length(trim(name)) BETWEEN 1 AND 200),
    supplier TEXT NOT NULL DEFAULT '' CHECK(length(supplier) <= 200),
    received_on TEXT NOT NULL CHECK(date(received_on, '+0 days') IS received_on),
    amount INTEGER NOT NULL CHECK(amount > 0),
    container_amount INTEGER CHECK(container_amount > 0),
    acid_form TEXT CHECK(acid_form IN ('dihydrate', 'anhydrous')),
    assay_ppm INTEGER CHECK(assay_ppm BETWEEN 1 AND 1400182),
    strip_kind_id INTEGER REFERENCES strip_kind(id),
    dry_mg INTEGER CHECK(dry_mg > 0),
    best_before TEXT CHECK(date(best_before, '+0 days') IS best_before),
    cost INTEGER CHECK(cost >= 0),
    finished_on TEXT CHECK(date(finished_on, '+0 days') IS finished_on),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(material IS NOT 'acid' OR (assay_ppm IS NOT NULL AND acid_form IS NOT NULL)),
    CHECK(material IS NOT 'strips' OR strip_kind_id IS NOT NULL)
) STRICT;

CREATE TABLE lot_change(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    lot_id INTEGER NOT NULL REFERENCES material_lot(id),
    kind TEXT NOT NULL CHECK(kind IN ('recount', 'discard')),
    amount INTEGER NOT NULL CHECK(amount <> 0),
    on_day TEXT NOT NULL CHECK(date(on_day, '+0 days') IS on_day),
    reason TEXT NOT NULL CHECK(length(trim(reason)) BETWEEN 1 AND 4000)
) STRICT;

CREATE TABLE vessel(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    kind TEXT NOT NULL CHECK(kind IN ('tank', 'bin')),
    name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK(length(trim(name)) BETWEEN 1 AND 200),
    capacity_mg INTEGER CHECK(capacity_mg > 0),
    strips_held INTEGER CHECK(strips_held > 0),
    flood_mg INTEGER CHECK(flood_mg > 0),
    active INTEGER NOT NULL DEFAULT 1 CHECK(active IN (0, 1)),
    CHECK(kind IS NOT 'tank' OR capacity_mg IS NOT NULL),
    CHECK(kind IS NOT 'bin' OR strips_held IS NOT NULL)
) STRICT;

CREATE TABLE batch(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    code TEXT NOT NULL UNIQUE REFERENCES given_code(code),
    tank_id INTEGER NOT NULL REFERENCES vessel(id),
    strip_kind_id INTEGER NOT NULL REFERENCES strip_kind(id),
    planned_on TEXT NOT NULL CHECK(date(planned_on, '+0 days') IS planned_on),
    strength_ppm INTEGER NOT NULL CHECK(strength_ppm BETWEEN 1 AND 999999),
    ceiling_cc INTEGER NOT NULL,
    mixed_ms INTEGER,
    mixed_off INTEGER CHECK(mixed_off BETWEEN -1080 AND 1080),
    closed_ms INTEGER,
    closed_off INTEGER CHECK(closed_off BETWEEN -1080 AND 1080),
    taken_mg INTEGER CHECK(taken_mg >= 0),
    unexplained_mg INTEGER,
    unexplained_limit_ppm INTEGER CHECK(unexplained_limit_ppm >= 0),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((mixed_ms IS NULL) = (mixed_off IS NULL)),
    CHECK((closed_ms IS NULL) = (closed_off IS NULL)),
    CHECK(closed_ms IS NULL OR (mixed_ms IS NOT NULL AND closed_ms >= mixed_ms)),
    CHECK((closed_ms IS NULL) = (unexplained_mg IS NULL) AND (closed_ms IS NULL) = (taken_mg IS NULL))
) STRICT;

-- What goes into a batch: a part of a lot, or a pail. Planned first, weighed in later. Acid is counted as dihydrate, so
-- anhydrous powder stands for up to 1.400182 of its own mass.
CREATE TABLE batch_input(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    lot_id INTEGER REFERENCES material_lot(id),
    pail_id INTEGER REFERENCES pail(id),
    planned_mg INTEGER NOT NULL CHECK(planned_mg >= 0),
    mass_mg INTEGER CHECK(mass_mg > 0),
    acid_mg INTEGER CHECK(acid_mg >= 0 AND acid_mg * 1000000 <= (mass_mg + 1) * 1400182),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((lot_id IS NULL) <> (pail_id IS NULL)),
    CHECK((mass_mg IS NULL) = (acid_mg IS NULL))
) STRICT;

CREATE TABLE reading(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL CHECK(at_off BETWEEN -1080 AND 1080),
    written_ms INTEGER NOT NULL,
    written_off INTEGER NOT NULL CHECK(written_off BETWEEN -1080 AND 1080),
    probe_cc INTEGER,
    dial_cc INTEGER,
    room_cc INTEGER,
    jacket_seen INTEGER CHECK(jacket_seen IN (0, 1)),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(probe_cc IS NOT NULL OR dial_cc IS NOT NULL OR room_cc IS NOT NULL OR jacket_seen IS NOT NULL)
) STRICT;

CREATE TABLE stir(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL CHECK(at_off BETWEEN -1080 AND 1080),
    written_ms INTEGER NOT NULL,
    written_off INTEGER NOT NULL CHECK(written_off BETWEEN -1080 AND 1080),
    minutes INTEGER CHECK(minutes > 0),
    clear INTEGER NOT NULL CHECK(clear IN (0, 1)),
    outlet_poured_back INTEGER CHECK(outlet_poured_back IN (0, 1)),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;

CREATE TABLE soak(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    bin_id INTEGER NOT NULL REFERENCES vessel(id),
    lot_id INTEGER REFERENCES material_lot(id),
    strips INTEGER NOT NULL CHECK(strips > 0),
    dry_mg INTEGER NOT NULL CHECK(dry_mg > 0),
    target_mg INTEGER NOT NULL CHECK(target_mg > dry_mg),
    tolerance_mg INTEGER NOT NULL CHECK(tolerance_mg >= 0),
    flood_mg INTEGER CHECK(flood_mg > 0),
    room_cc INTEGER,
    started_ms INTEGER NOT NULL,
    started_off INTEGER NOT NULL CHECK(started_off BETWEEN -1080 AND 1080),
    written_ms INTEGER NOT NULL,
    written_off INTEGER NOT NULL CHECK(written_off BETWEEN -1080 AND 1080),
    ended_ms INTEGER,
    ended_off INTEGER CHECK(ended_off BETWEEN -1080 AND 1080),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((ended_ms IS NULL) = (ended_off IS NULL)),
    CHECK(ended_ms IS NULL OR ended_ms >= started_ms)
) STRICT;

CREATE TABLE bag(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    code TEXT NOT NULL UNIQUE REFERENCES given_code(code),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    soak_id INTEGER REFERENCES soak(id),
    strip_kind_id INTEGER NOT NULL REFERENCES strip_kind(id),
    bag_lot_id INTEGER REFERENCES material_lot(id),
    reserved_on TEXT NOT NULL CHECK(date(reserved_on, '+0 days') IS reserved_on),
    packed INTEGER CHECK(packed > 0),
    net_mg INTEGER CHECK(net_mg > 0),
    dry_mg INTEGER CHECK(dry_mg > 0),
    strip_mg INTEGER CHECK(strip_mg > 0),
    acid_per_strip_mg INTEGER CHECK(acid_per_strip_mg > 0),
    strength_ppm INTEGER CHECK(strength_ppm BETWEEN 1 AND 999999),
    sealed_on TEXT CHECK(date(sealed_on, '+0 days') IS sealed_on),
    rest_days INTEGER CHECK(rest_days >= 0),
    rest_until TEXT CHECK(date(rest_until, '+0 days') IS rest_until),
    use_months INTEGER CHECK(use_months > 0),
    use_by TEXT CHECK(date(use_by, '+0 days') IS use_by),
    opened_on TEXT CHECK(date(opened_on, '+0 days') IS opened_on),
    resealed_on TEXT CHECK(date(resealed_on, '+0 days') IS resealed_on),
    stands TEXT NOT NULL DEFAULT '' CHECK(length(stands) <= 200),
    label TEXT NOT NULL DEFAULT 'none' CHECK(label IN ('none', 'printed', 'stale')),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((packed IS NULL) = (sealed_on IS NULL)),
    CHECK((sealed_on IS NULL) = (use_by IS NULL)),
    CHECK(sealed_on IS NULL OR use_by > sealed_on),
    CHECK(rest_until IS NULL OR rest_until >= sealed_on),
    CHECK(opened_on IS NULL OR opened_on >= sealed_on),
    CHECK(resealed_on IS NULL OR resealed_on >= opened_on)
) STRICT;
CREATE INDEX bag_of_batch ON bag(batch_id);
CREATE INDEX bag_by_limit ON bag(use_by);

-- A strip thrown away or a count put right; `strips` has a sign.
CREATE TABLE bag_change(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    bag_id INTEGER NOT NULL REFERENCES bag(id),
    kind TEXT NOT NULL CHECK(kind IN ('discard', 'recount')),
    strips INTEGER NOT NULL CHECK(strips <> 0),
    on_day TEXT NOT NULL CHECK(date(on_day, '+0 days') IS on_day),
    reason TEXT NOT NULL CHECK(length(trim(reason)) BETWEEN 1 AND 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(kind IS NOT 'discard' OR strips < 0)
) STRICT;
CREATE INDEX bag_change_of_bag ON bag_change(bag_id);

CREATE TABLE pour(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL CHECK(at_off BETWEEN -1080 AND 1080),
    warm_and_clear INTEGER NOT NULL CHECK(warm_and_clear IN (0, 1)),
    scraped INTEGER NOT NULL CHECK(scraped IN (0, 1)),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;

CREATE TABLE pail(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    code TEXT NOT NULL UNIQUE REFERENCES given_code(code),
    pour_id INTEGER NOT NULL REFERENCES pour(id),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    mass_mg INTEGER NOT NULL CHECK(mass_mg > 0),
    strength_ppm INTEGER CHECK(strength_ppm BETWEEN 0 AND 1000000),
    sealed_on TEXT NOT NULL CHECK(date(sealed_on, '+0 days') IS sealed_on),
    oldest_on TEXT NOT NULL CHECK(date(oldest_on, '+0 days') IS oldest_on),
    times_warmed INTEGER NOT NULL DEFAULT 1 CHECK(times_warmed >= 0),
    used_in_part_on TEXT CHECK(date(used_in_part_on, '+0 days') IS used_in_part_on),
    discarded_on TEXT CHECK(date(discarded_on, '+0 days') IS discarded_on),
    discard_reason TEXT CHECK(length(trim(discard_reason)) > 0),
    stands TEXT NOT NULL DEFAULT '' CHECK(length(stands) <= 200),
    label TEXT NOT NULL DEFAULT 'none' CHECK(label IN ('none', 'printed', 'stale')),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(oldest_on <= sealed_on),
    CHECK(used_in_part_on IS NULL OR (strength_ppm IS NULL AND used_in_part_on >= sealed_on)),
    CHECK(discarded_on IS NULL OR (discarded_on >= sealed_on AND discard_reason IS NOT NULL))
) STRICT;

-- Liquid that went somewhere with a name: drips, what stays in the tank, a spill.
CREATE TABLE batch_loss(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    batch_id INTEGER NOT NULL REFERENCES batch(id),
    kind TEXT NOT NULL CHECK(kind IN ('drips', 'tank_heel', 'spill', 'other')),
    mass_mg INTEGER NOT NULL CHECK(mass_mg > 0),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;

CREATE TABLE yard(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    name TEXT NOT NULL UNIQUE COLLATE NOCASE CHECK(length(trim(name)) BETWEEN 1 AND 200),
    where_it_is TEXT NOT NULL DEFAULT '' CHECK(length(where_it_is) <= 400),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    active INTEGER NOT NULL DEFAULT 1 CHECK(active IN (0, 1))
) STRICT;

-- Times of a yard that matter to strips: a flow, or days when hives are not to be opened.
CREATE TABLE yard_time(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    yard_id INTEGER NOT NULL REFERENCES yard(id),
    kind TEXT NOT NULL CHECK(kind IN ('flow', 'closed')),
    what TEXT NOT NULL CHECK(length(trim(what)) BETWEEN 1 AND 200),
    from_day TEXT NOT NULL CHECK(date(from_day, '+0 days') IS from_day),
    to_day TEXT NOT NULL CHECK(date(to_day, '+0 days') IS to_day),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(to_day >= from_day)
) STRICT;

-- One numbered hive, or a group of `hives` unnumbered ones for which strips and counts are kept together.
CREATE TABLE hive(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    yard_id INTEGER NOT NULL REFERENCES yard(id),
    name TEXT NOT NULL CHECK(length(trim(name)) BETWEEN 1 AND 200),
    hives INTEGER NOT NULL DEFAULT 1 CHECK(hives BETWEEN 1 AND 10000),
    brood_boxes INTEGER CHECK(brood_boxes >= 0),
    frames_of_bees INTEGER CHECK(frames_of_bees >= 0),
    state TEXT NOT NULL DEFAULT 'alive' CHECK(state IN ('alive', 'dead', 'gone')),
    state_on TEXT CHECK(date(state_on, '+0 days') IS state_on),
    supers_on INTEGER CHECK(supers_on IN (0, 1)),
    untreated INTEGER NOT NULL DEFAULT 0 CHECK(untreated IN (0, 1)),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;
CREATE UNIQUE INDEX hive_name_in_yard ON hive(yard_id, name COLLATE NOCASE) WHERE void_reason IS NULL AND state = 'alive';

CREATE TABLE hive_move(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    hive_id INTEGER NOT NULL REFERENCES hive(id),
    from_yard_id INTEGER NOT NULL REFERENCES yard(id),
    to_yard_id INTEGER NOT NULL REFERENCES yard(id),
    on_day TEXT NOT NULL CHECK(date(on_day, '+0 days') IS on_day),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(from_yard_id <> to_yard_id)
) STRICT;

-- A round of treatment; what the rules said when it was planned is copied here and changes no more.
CREATE TABLE round(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    name TEXT NOT NULL CHECK(length(trim(name)) BETWEEN 1 AND 200),
    strip_kind_id INTEGER NOT NULL REFERENCES strip_kind(id),
    planned_on TEXT NOT NULL CHECK(date(planned_on, '+0 days') IS planned_on),
    dose_kind TEXT NOT NULL CHECK(dose_kind IN ('fixed', 'brood_boxes', 'frames_of_bees')),
    dose_strips INTEGER CHECK(dose_strips > 0),
    dose_frames_tenths INTEGER CHECK(dose_frames_tenths > 0),
    dose_least INTEGER CHECK(dose_least >= 0),
    dose_most INTEGER CHECK(dose_most >= 1),
    pull_from_days INTEGER NOT NULL CHECK(pull_from_days >= 0),
    pull_by_days INTEGER NOT NULL CHECK(pull_by_days >= pull_from_days),
    withdrawal_days INTEGER CHECK(withdrawal_days >= 0),
    closed_on TEXT CHECK(date(closed_on, '+0 days') IS closed_on),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;

CREATE TABLE round_yard(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    round_id INTEGER NOT NULL REFERENCES round(id),
    yard_id INTEGER NOT NULL REFERENCES yard(id),
    planned_on TEXT NOT NULL CHECK(date(planned_on, '+0 days') IS planned_on),
    visited_on TEXT CHECK(date(visited_on, '+0 days') IS visited_on),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0)
) STRICT;
CREATE UNIQUE INDEX round_yard_once ON round_yard(round_id, yard_id) WHERE void_reason IS NULL;

CREATE TABLE placement(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    round_id INTEGER REFERENCES round(id),
    hive_id INTEGER NOT NULL REFERENCES hive(id),
    yard_id INTEGER NOT NULL REFERENCES yard(id),
    bag_id INTEGER NOT NULL REFERENCES bag(id),
    strips INTEGER NOT NULL CHECK(strips > 0),
    acid_per_strip_mg INTEGER CHECK(acid_per_strip_mg > 0),
    placed_on TEXT NOT NULL CHECK(date(placed_on, '+0 days') IS placed_on),
    placed_by TEXT NOT NULL DEFAULT '' CHECK(length(placed_by) <= 200),
    written_ms INTEGER NOT NULL,
    written_off INTEGER NOT NULL CHECK(written_off BETWEEN -1080 AND 1080),
    pull_from TEXT CHECK(date(pull_from, '+0 days') IS pull_from),
    pull_by TEXT CHECK(date(pull_by, '+0 days') IS pull_by),
    withdrawal_days INTEGER CHECK(withdrawal_days >= 0),
    supers_on INTEGER CHECK(supers_on IN (0, 1)),
    asked TEXT NOT NULL DEFAULT '' CHECK(length(asked) <= 1000),
    past_limit_reason TEXT CHECK(length(trim(past_limit_reason)) > 0),
    pulled_on TEXT CHECK(date(pulled_on, '+0 days') IS pulled_on),
    pulled INTEGER CHECK(pulled >= 0),
    missing INTEGER CHECK(missing >= 0),
    pulled_by TEXT NOT NULL DEFAULT '' CHECK(length(pulled_by) <= 200),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((pull_from IS NULL) = (pull_by IS NULL)),
    CHECK(pull_from IS NULL OR (pull_from >= placed_on AND pull_by >= pull_from)),
    CHECK((pulled_on IS NULL) = (pulled IS NULL) AND (pulled_on IS NULL) = (missing IS NULL)),
    CHECK(pulled_on IS NULL OR pulled_on >= placed_on),
    CHECK(pulled_on IS NULL OR pulled + missing = strips)
) STRICT;
CREATE INDEX placement_of_bag ON placement(bag_id);
CREATE INDEX placement_of_hive ON placement(hive_id);
CREATE INDEX placement_hanging ON placement(pull_by) WHERE pulled_on IS NULL AND void_reason IS NULL;
CREATE INDEX placement_by_day ON placement(placed_on);

-- Strips on the scale: of a soak, of a bag, or pulled ones; together, or one by one in weigh_single.
CREATE TABLE weigh_in(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    soak_id INTEGER REFERENCES soak(id),
    bag_id INTEGER REFERENCES bag(id),
    placement_id INTEGER REFERENCES placement(id),
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL CHECK(at_off BETWEEN -1080 AND 1080),
    written_ms INTEGER NOT NULL,
    written_off INTEGER NOT NULL CHECK(written_off BETWEEN -1080 AND 1080),
    strips INTEGER NOT NULL CHECK(strips > 0),
    total_mg INTEGER NOT NULL CHECK(total_mg > 0),
    drip_minutes INTEGER CHECK(drip_minutes >= 0),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK((soak_id IS NOT NULL) + (bag_id IS NOT NULL) + (placement_id IS NOT NULL) = 1)
) STRICT;
CREATE INDEX weigh_in_of_soak ON weigh_in(soak_id);

CREATE TABLE weigh_single(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    weigh_in_id INTEGER NOT NULL REFERENCES weigh_in(id),
    place INTEGER NOT NULL CHECK(place > 0),
    mass_mg INTEGER NOT NULL CHECK(mass_mg > 0),
    UNIQUE(weigh_in_id, place)
) STRICT;

CREATE TABLE mite_count(
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    uid BLOB NOT NULL UNIQUE DEFAULT (randomblob(16)) CHECK(length(uid) = 16),
    hive_id INTEGER NOT NULL REFERENCES hive(id),
    round_id INTEGER REFERENCES round(id),
    on_day TEXT NOT NULL CHECK(date(on_day, '+0 days') IS on_day),
    kind TEXT NOT NULL CHECK(kind IN ('wash', 'powder', 'drop')),
    mites INTEGER NOT NULL CHECK(mites >= 0),
    bees INTEGER CHECK(bees > 0),
    days INTEGER CHECK(days > 0),
    counted_by TEXT NOT NULL DEFAULT '' CHECK(length(counted_by) <= 200),
    note TEXT NOT NULL DEFAULT '' CHECK(length(note) <= 4000),
    void_reason TEXT CHECK(length(trim(void_reason)) > 0),
    CHECK(kind IS NOT 'drop' OR days IS NOT NULL),
    CHECK(kind = 'drop' OR bees IS NOT NULL)
) STRICT;
CREATE INDEX mite_count_of_hive ON mite_count(hive_id);

-- What is left: packed = placed + discarded + corrected + left.
CREATE VIEW bag_stock AS
SELECT bag.id AS bag_id,
       CASE WHEN bag.void_reason IS NOT NULL THEN 0 ELSE
       coalesce(bag.packed, 0)
       + coalesce((SELECT sum(strips) FROM bag_change c WHERE c.bag_id = bag.id AND c.void_reason IS NULL), 0)
       - coalesce((SELECT sum(strips) FROM placement p WHERE p.bag_id = bag.id AND p.void_reason IS NULL), 0) END AS left_over
FROM bag;
