-- SPDX-License-Identifier: GPL-3.0-or-later
-- Schema 1, beside the records: who does what, the change history, the codes given out, what was shown outside. None of
-- these takes part in undo.

CREATE TABLE workbook(
    id INTEGER PRIMARY KEY CHECK(id = 1),
    uid BLOB NOT NULL CHECK(length(uid) = 16),
    made_ms INTEGER NOT NULL,
    made_off INTEGER NOT NULL
) STRICT;

-- One row while a piece of work is written, none otherwise: triggers cannot see temporary tables, and a change that finds
-- no row here came from another program.
CREATE TABLE now_doing(
    id INTEGER PRIMARY KEY CHECK(id = 1),
    piece INTEGER NOT NULL,
    work TEXT NOT NULL,
    count INTEGER NOT NULL,
    subject TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    version TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL,
    clock_doubtful INTEGER NOT NULL
) STRICT;

CREATE TABLE change(
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    piece INTEGER,
    work TEXT NOT NULL,
    count INTEGER NOT NULL,
    subject TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    version TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL,
    clock_doubtful INTEGER NOT NULL,
    tbl TEXT NOT NULL,
    row_id INTEGER NOT NULL,
    what TEXT NOT NULL CHECK(what IN ('added', 'changed', 'removed')),
    before TEXT,
    after TEXT
) STRICT;
CREATE INDEX change_of_row ON change(tbl, row_id);
CREATE INDEX change_of_piece ON change(piece);
CREATE TRIGGER change_kept BEFORE UPDATE ON change BEGIN SELECT RAISE(ABORT, 'law 9: the history is not changed'); END;
CREATE TRIGGER change_not_removed BEFORE DELETE ON change BEGIN SELECT RAISE(ABORT, 'law 9: the history is not shortened'); END;
CREATE TRIGGER change_not_replaced BEFORE INSERT ON change WHEN EXISTS (SELECT 1 FROM change WHERE seq = NEW.seq)
BEGIN SELECT RAISE(ABORT, 'law 9: the history is not overwritten'); END;

CREATE TABLE given_code(
    code TEXT PRIMARY KEY CHECK(length(code) BETWEEN 3 AND 12 AND code NOT GLOB '*[^0-9A-Z]*'),
    kind TEXT NOT NULL CHECK(kind IN ('B', 'S', 'P') AND kind = substr(code, 1, 1)),
    number INTEGER NOT NULL CHECK(number > 0),
    given_ms INTEGER NOT NULL,
    given_off INTEGER NOT NULL,
    UNIQUE(kind, number)
) STRICT;
CREATE TRIGGER given_code_kept BEFORE UPDATE ON given_code BEGIN SELECT RAISE(ABORT, 'law 6: a code is given for ever'); END;
CREATE TRIGGER given_code_not_removed BEFORE DELETE ON given_code BEGIN SELECT RAISE(ABORT, 'law 6: a code is given for ever'); END;
CREATE TRIGGER given_code_not_replaced BEFORE INSERT ON given_code
WHEN EXISTS (SELECT 1 FROM given_code WHERE code = NEW.code OR (kind = NEW.kind AND number = NEW.number))
BEGIN SELECT RAISE(ABORT, 'law 6: a code is given once'); END;

-- A record that something printed or exported has shown outside.
CREATE TABLE shown(
    tbl TEXT NOT NULL,
    row_id INTEGER NOT NULL,
    paper TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    at_off INTEGER NOT NULL,
    PRIMARY KEY(tbl, row_id, paper)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER shown_kept BEFORE UPDATE ON shown BEGIN SELECT RAISE(ABORT, 'law 7: what was shown stays shown'); END;
CREATE TRIGGER shown_not_removed BEFORE DELETE ON shown BEGIN SELECT RAISE(ABORT, 'law 7: what was shown stays shown'); END;
