-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 2: the change history is sealed. One seal closes the changes after the seal before it, up to `last_seq`; its hash
-- is of the hash before it and of every cell of those changes. `outside` counts those among them that came from another program.

CREATE TABLE seal(
    last_seq INTEGER PRIMARY KEY CHECK(last_seq > 0),
    outside INTEGER NOT NULL CHECK(outside >= 0),
    hash BLOB NOT NULL CHECK(length(hash) = 32)
) STRICT;
CREATE TRIGGER seal_kept BEFORE UPDATE ON seal BEGIN SELECT RAISE(ABORT, 'law 9: a seal is not changed'); END;
CREATE TRIGGER seal_not_removed BEFORE DELETE ON seal BEGIN SELECT RAISE(ABORT, 'law 9: a seal is not removed'); END;
CREATE TRIGGER seal_in_order BEFORE INSERT ON seal
WHEN NEW.last_seq <= (SELECT coalesce(max(last_seq), 0) FROM seal) OR NEW.last_seq IS NOT (SELECT max(seq) FROM change)
BEGIN SELECT RAISE(ABORT, 'law 9: a seal closes the newest changes'); END;
