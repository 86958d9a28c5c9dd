-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 1, the laws of the house that a column check cannot say.

-- Law 1: where every milligram of a closed batch went.
CREATE TRIGGER law1_batch_closes BEFORE UPDATE ON batch WHEN NEW.closed_ms IS NOT NULL AND NEW.void_reason IS NULL AND
    (OLD.closed_ms IS NULL OR OLD.taken_mg IS NOT NEW.taken_mg OR OLD.unexplained_mg IS NOT NEW.unexplained_mg) AND
    (SELECT coalesce(sum(mass_mg), 0) FROM batch_input WHERE batch_id = NEW.id AND void_reason IS NULL)
    <> NEW.taken_mg + NEW.unexplained_mg
       + (SELECT coalesce(sum(mass_mg), 0) FROM pail WHERE batch_id = NEW.id AND void_reason IS NULL)
       + (SELECT coalesce(sum(mass_mg), 0) FROM batch_loss WHERE batch_id = NEW.id AND void_reason IS NULL)
BEGIN SELECT RAISE(ABORT, 'law 1: mass is kept'); END;

-- Law 2: a pail goes whole into one batch, or into none.
CREATE UNIQUE INDEX law2_pail_once ON batch_input(pail_id) WHERE pail_id IS NOT NULL AND void_reason IS NULL;
CREATE TRIGGER law2_pail_whole_in BEFORE INSERT ON batch_input WHEN NEW.pail_id IS NOT NULL AND NEW.void_reason IS NULL AND NOT EXISTS (
    SELECT 1 FROM pail WHERE id = NEW.pail_id AND NEW.planned_mg = mass_mg AND (NEW.mass_mg IS NULL OR NEW.mass_mg = mass_mg)
    AND strength_ppm IS NOT NULL AND used_in_part_on IS NULL AND discarded_on IS NULL AND void_reason IS NULL AND batch_id <> NEW.batch_id)
BEGIN SELECT RAISE(ABORT, 'law 2: a pail goes in whole or not at all'); END;
CREATE TRIGGER law2_pail_whole_stays BEFORE UPDATE ON batch_input WHEN NEW.pail_id IS NOT NULL AND NEW.void_reason IS NULL AND NOT EXISTS (
    SELECT 1 FROM pail WHERE id = NEW.pail_id AND NEW.planned_mg = mass_mg AND (NEW.mass_mg IS NULL OR NEW.mass_mg = mass_mg)
    AND strength_ppm IS NOT NULL AND used_in_part_on IS NULL AND discarded_on IS NULL AND void_reason IS NULL AND batch_id <> NEW.batch_id)
BEGIN SELECT RAISE(ABORT, 'law 2: a pail goes in whole or not at all'); END;
CREATE TRIGGER law2_used_pail_stays BEFORE UPDATE ON pail WHEN EXISTS (
    SELECT 1 FROM batch_input WHERE pail_id = NEW.id AND void_reason IS NULL AND (mass_mg IS NOT NULL AND mass_mg <> NEW.mass_mg
    OR NEW.strength_ppm IS NULL OR NEW.used_in_part_on IS NOT NULL OR NEW.discarded_on IS NOT NULL OR NEW.void_reason IS NOT NULL))
BEGIN SELECT RAISE(ABORT, 'law 2: this pail went whole into a batch'); END;

-- Law 3: a bag never holds fewer than no strips.
CREATE TRIGGER law3_placing AFTER INSERT ON placement WHEN (SELECT left_over FROM bag_stock WHERE bag_id = NEW.bag_id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_placing_changed AFTER UPDATE ON placement WHEN (SELECT left_over FROM bag_stock WHERE bag_id = NEW.bag_id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_change AFTER INSERT ON bag_change WHEN (SELECT left_over FROM bag_stock WHERE bag_id = NEW.bag_id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_change_changed AFTER UPDATE ON bag_change WHEN (SELECT left_over FROM bag_stock WHERE bag_id = NEW.bag_id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_change_removed AFTER DELETE ON bag_change WHEN (SELECT left_over FROM bag_stock WHERE bag_id = OLD.bag_id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_packed AFTER UPDATE ON bag WHEN (SELECT left_over FROM bag_stock WHERE bag_id = NEW.id) < 0
BEGIN SELECT RAISE(ABORT, 'law 3: the bag has not that many strips'); END;
CREATE TRIGGER law3_void_bag BEFORE UPDATE ON bag WHEN NEW.void_reason IS NOT NULL AND EXISTS (
    SELECT 1 FROM placement WHERE bag_id = NEW.id AND void_reason IS NULL)
BEGIN SELECT RAISE(ABORT, 'law 3: strips of this bag hang in hives'); END;

-- Law 4: no strip from a bag that is not there, not sealed yet, or past its limit without a reason.
CREATE TRIGGER law4_placing BEFORE INSERT ON placement WHEN NEW.void_reason IS NULL AND NOT EXISTS (
    SELECT 1 FROM bag WHERE id = NEW.bag_id AND sealed_on IS NOT NULL AND sealed_on <= NEW.placed_on AND void_reason IS NULL
    AND (use_by >= NEW.placed_on OR NEW.past_limit_reason IS NOT NULL))
BEGIN SELECT RAISE(ABORT, 'law 4: the bag is not sealed, or past its limit without a reason'); END;
CREATE TRIGGER law4_placing_changed BEFORE UPDATE ON placement WHEN NEW.void_reason IS NULL AND NOT EXISTS (
    SELECT 1 FROM bag WHERE id = NEW.bag_id AND sealed_on IS NOT NULL AND sealed_on <= NEW.placed_on AND void_reason IS NULL
    AND (use_by >= NEW.placed_on OR NEW.past_limit_reason IS NOT NULL))
BEGIN SELECT RAISE(ABORT, 'law 4: the bag is not sealed, or past its limit without a reason'); END;

-- Law 5: what a rule said is copied into the record; the copy in a sealed bag or a round is not emptied afterwards.
CREATE TRIGGER law5_bag_keeps_its_rule BEFORE UPDATE ON bag WHEN OLD.use_months IS NOT NULL AND NEW.sealed_on IS NOT NULL AND NEW.use_months IS NULL
BEGIN SELECT RAISE(ABORT, 'law 5: the rule stays in the record'); END;

-- Law 6: a code names one thing for ever.
CREATE TRIGGER law6_batch_code BEFORE UPDATE ON batch WHEN OLD.code <> NEW.code BEGIN SELECT RAISE(ABORT, 'law 6: a code stays'); END;
CREATE TRIGGER law6_bag_code BEFORE UPDATE ON bag WHEN OLD.code <> NEW.code BEGIN SELECT RAISE(ABORT, 'law 6: a code stays'); END;
CREATE TRIGGER law6_pail_code BEFORE UPDATE ON pail WHEN OLD.code <> NEW.code BEGIN SELECT RAISE(ABORT, 'law 6: a code stays'); END;

-- Law 8: a date that cannot be.
CREATE TRIGGER law8_soak BEFORE INSERT ON soak WHEN NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL AND mixed_ms <= NEW.started_ms)
BEGIN SELECT RAISE(ABORT, 'law 8: soaked before it was mixed'); END;
CREATE TRIGGER law8_soak_changed BEFORE UPDATE ON soak WHEN NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL AND mixed_ms <= NEW.started_ms)
BEGIN SELECT RAISE(ABORT, 'law 8: soaked before it was mixed'); END;
CREATE TRIGGER law8_bag BEFORE INSERT ON bag WHEN NEW.sealed_on IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL
    AND date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: sealed before it was mixed'); END;
CREATE TRIGGER law8_bag_changed BEFORE UPDATE ON bag WHEN NEW.sealed_on IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL
    AND date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: sealed before it was mixed'); END;
CREATE TRIGGER law8_bag_soaked BEFORE INSERT ON bag WHEN NEW.sealed_on IS NOT NULL AND NEW.soak_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM soak WHERE id = NEW.soak_id AND date(started_ms / 1000 + started_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: sealed before it was soaked'); END;
CREATE TRIGGER law8_bag_soaked_changed BEFORE UPDATE ON bag WHEN NEW.sealed_on IS NOT NULL AND NEW.soak_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM soak WHERE id = NEW.soak_id AND date(started_ms / 1000 + started_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: sealed before it was soaked'); END;
CREATE TRIGGER law8_pail BEFORE INSERT ON pail WHEN NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL
    AND date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: poured before it was mixed'); END;
CREATE TRIGGER law8_pail_changed BEFORE UPDATE ON pail WHEN NOT EXISTS (
    SELECT 1 FROM batch WHERE id = NEW.batch_id AND mixed_ms IS NOT NULL
    AND date(mixed_ms / 1000 + mixed_off * 60, 'unixepoch') <= NEW.sealed_on)
BEGIN SELECT RAISE(ABORT, 'law 8: poured before it was mixed'); END;
CREATE TRIGGER law8_weigh_in BEFORE INSERT ON weigh_in WHEN NEW.soak_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM soak WHERE id = NEW.soak_id AND started_ms <= NEW.at_ms)
BEGIN SELECT RAISE(ABORT, 'law 8: weighed before it was soaked'); END;
CREATE TRIGGER law8_weigh_in_changed BEFORE UPDATE ON weigh_in WHEN NEW.soak_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM soak WHERE id = NEW.soak_id AND started_ms <= NEW.at_ms)
BEGIN SELECT RAISE(ABORT, 'law 8: weighed before it was soaked'); END;
CREATE TRIGGER law8_bag_dates_move BEFORE UPDATE ON bag WHEN NEW.sealed_on IS NOT NULL AND EXISTS (
    SELECT 1 FROM placement WHERE bag_id = NEW.id AND void_reason IS NULL
    AND (placed_on < NEW.sealed_on OR (placed_on > NEW.use_by AND past_limit_reason IS NULL)))
BEGIN SELECT RAISE(ABORT, 'law 8: strips of this bag were placed outside these dates'); END;
CREATE TRIGGER law8_bag_unsealed BEFORE UPDATE ON bag WHEN NEW.sealed_on IS NULL AND EXISTS (
    SELECT 1 FROM placement WHERE bag_id = NEW.id AND void_reason IS NULL)
BEGIN SELECT RAISE(ABORT, 'law 4: strips of this bag hang in hives'); END;
