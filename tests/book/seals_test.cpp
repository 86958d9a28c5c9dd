// SPDX-License-Identifier: GPL-3.0-or-later
// Each piece of work closes with a seal; what another program changed is kept, counted and sealed with the next one.
#include "core/book/records/person.h"
#include "core/book/seal.h"
#include "core/book/shown.h"
#include "core/book/undo_stack.h"
#include "core/book/verify.h"
#include "shelf.h"

#include <QCryptographicHash>
#include <QFile>

namespace soakbook::tests {

using namespace book;

namespace {

/// The verdict on the file as it is, without the book that has it open.
Verdict verdict_on(Shelf& shelf, const std::optional<VerifiedUntil>& from = {}) {
    const QString copy = shelf.folder() + QStringLiteral("/looked at");
    QFile::remove(copy);
    shelf.close();
    EXPECT_TRUE(QFile::copy(shelf.path(), copy));
    return verify(copy, from);
}

const CheckResult& result_of(const Verdict& verdict, Check check) {
    const auto found = std::find_if(verdict.checks.begin(), verdict.checks.end(), [check](const CheckResult& r) { return r.check == check; });
    if (found == verdict.checks.end())
        throw std::runtime_error("it was not looked at");
    return *found;
}

const char* const open_history = "DROP TRIGGER change_kept; DROP TRIGGER change_not_removed; DROP TRIGGER seal_kept; DROP TRIGGER seal_not_removed;";

/// Puts the guards of the history back as they were, so that the structure alone shows nothing.
std::string guards_of(Raw& raw) {
    return raw.cell("SELECT group_concat(sql, ';') FROM sqlite_schema WHERE name IN "
                    "('change_kept', 'change_not_removed', 'seal_kept', 'seal_not_removed')");
}

/// As somebody does who knows SQLite: guards away, `forgery`, guards back.
void forge(Shelf& shelf, const std::string& forgery) {
    Raw raw(shelf.path());
    const std::string guards = guards_of(raw);
    ASSERT_EQ(raw.run(open_history), "");
    ASSERT_EQ(raw.run("PRAGMA foreign_keys=OFF"), "");
    ASSERT_EQ(raw.run(forgery), "");
    ASSERT_EQ(raw.run(guards), "");
}

} // namespace

TEST(Seals, close_every_piece_of_work_and_hold_the_whole_chain) {
    Shelf shelf;
    shelf.fill();
    Raw raw(shelf.path());
    EXPECT_EQ(raw.cell("SELECT count(*) FROM seal"), "4");
    EXPECT_EQ(raw.cell("SELECT count(DISTINCT piece) FROM change WHERE seq IN (SELECT last_seq FROM seal)"), "4");
    EXPECT_EQ(raw.cell("SELECT max(last_seq) = (SELECT max(seq) FROM change) AND sum(outside) = 0 FROM seal"), "1");
    const Verdict verdict = verdict_on(shelf);
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.checks.size(), 7U);
    for (const CheckResult& check : verdict.checks)
        EXPECT_GT(check.looked_at + (check.check == Check::anchor ? 1 : 0), 0) << static_cast<int>(check.check);
    EXPECT_EQ(result_of(verdict, Check::seals).looked_at, 4);
    EXPECT_EQ(verdict.outside + verdict.unsealed, 0);
}

TEST(Seals, are_SHA_256_of_what_went_before_and_of_each_cell_reckoned_here_by_other_means) {
    Shelf shelf;
    shelf.write("person", [](Writing& w) { insert(w, Person{{}, QStringLiteral("Zoë"), true}); });
    Raw raw(shelf.path());
    const auto cell = [&raw](const std::string& column, const std::string& table) {
        const QByteArray kind = QByteArray::fromStdString(raw.cell("SELECT typeof(" + column + ") FROM " + table)).left(1);
        const QByteArray value = QByteArray::fromStdString(raw.cell("SELECT hex(CAST(" + column + " AS BLOB)) FROM " + table));
        const QByteArray bytes = QByteArray::fromHex(value);
        return QByteArray((kind == "t" ? "s" : kind) + QByteArray::number(bytes.size()) + ':' + bytes);
    };
    QByteArray own("soakbook");
    for (const char* column : {"id", "uid", "made_ms", "made_off"})
        own += cell(column, "workbook");
    QByteArray entry = QCryptographicHash::hash(own, QCryptographicHash::Sha256);
    for (const char* column : {"seq", "piece", "work", "count", "subject", "who", "why", "version", "at_ms", "at_off", "clock_doubtful", "tbl",
                               "row_id", "what", "before", "after"})
        entry += cell(column, "change");
    entry += "seal 1 0";
    EXPECT_EQ(QByteArray::fromStdString(raw.cell("SELECT hex(hash) FROM seal")).toLower(),
              QCryptographicHash::hash(entry, QCryptographicHash::Sha256).toHex());
}

TEST(Seals, are_neither_changed_nor_removed_nor_put_in_by_others) {
    Shelf shelf;
    shelf.fill();
    Raw raw(shelf.path());
    EXPECT_THAT(raw.run("UPDATE seal SET outside = 1"), ::testing::HasSubstr("law 9"));
    EXPECT_THAT(raw.run("DELETE FROM seal"), ::testing::HasSubstr("law 9"));
    EXPECT_THAT(raw.run("INSERT OR REPLACE INTO seal SELECT last_seq, 0, zeroblob(32) FROM seal ORDER BY 1 DESC LIMIT 1"), ::testing::HasSubstr("law 9"));
    EXPECT_THAT(raw.run("INSERT INTO seal VALUES(1000000, 0, zeroblob(32))"), ::testing::HasSubstr("law 9"));
}

TEST(Seals, of_changes_from_another_program_come_with_the_next_piece_of_work_and_count_them) {
    Shelf shelf;
    shelf.fill();
    {
        Raw raw(shelf.path());
        ASSERT_EQ(raw.run("UPDATE yard SET note = 'from outside'"), "");
        EXPECT_EQ(raw.cell("SELECT count(*) FROM change WHERE piece IS NULL AND work = 'outside'"), "2");
    }
    shelf.close();
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    struct Done {
        explicit operator bool() const { return true; }
    };
    (*opened)->write({QStringLiteral("person"), 1, {}}, on_day(11), [](Writing& w) {
        insert(w, Person{{}, QStringLiteral("Bo"), true});
        return Done{};
    });
    opened->reset();
    Raw raw(shelf.path());
    EXPECT_EQ(raw.cell("SELECT outside FROM seal ORDER BY last_seq DESC LIMIT 1"), "2");
    const Verdict verdict = verdict_on(shelf);
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.outside, 2);
}

TEST(Seals, hold_undo_redo_papers_and_codes_too) {
    Shelf shelf;
    shelf.fill();
    shelf.write("printed", [&](Writing& w) {
        w.keep_from_undo();
        note_shown(w, QStringLiteral("bag"), {shelf.bag.value}, QStringLiteral("bag label"));
    });
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    ASSERT_TRUE(shelf.book().undo_stack().redo(on_day(11)).has_value());
    ASSERT_TRUE(shelf.book().undo_stack().undo(on_day(11)).has_value());
    Raw raw(shelf.path());
    EXPECT_EQ(raw.cell("SELECT count(*) FROM change WHERE tbl = 'given_code'"), raw.cell("SELECT count(*) FROM given_code"));
    EXPECT_EQ(raw.cell("SELECT count(*) FROM change WHERE tbl = 'shown'"), "1");
    EXPECT_EQ(raw.cell("SELECT count(*) FROM seal"), "8");
    EXPECT_TRUE(verdict_on(shelf).sound());
}

TEST(History, holds_a_name_of_which_only_the_case_changed) {
    Shelf shelf;
    shelf.fill();
    shelf.write("yard", [&](Writing& w) {
        Yard yard = *fetch(shelf.book(), shelf.yard);
        yard.name = QStringLiteral("Lower Yard");
        update(w, yard);
    });
    EXPECT_EQ(Raw(shelf.path()).cell("SELECT count(*) FROM change WHERE tbl = 'yard' AND what = 'changed'"), "1");
    EXPECT_TRUE(verdict_on(shelf).sound());
}

TEST(Verifier, names_an_entry_of_the_history_that_was_changed) {
    Shelf shelf;
    shelf.fill();
    forge(shelf, "UPDATE change SET who = 'Eve' WHERE seq = (SELECT min(seq) FROM change WHERE piece = 2)");
    const Verdict verdict = verdict_on(shelf);
    EXPECT_FALSE(verdict.sound());
    EXPECT_EQ(verdict.first_bad()->check, Check::seals);
    EXPECT_EQ(verdict.first_bad()->bad, 1);
    EXPECT_EQ(verdict.first_bad()->first->piece, 2);
}

TEST(Verifier, finds_it_in_whichever_piece_of_work_it_was) {
    std::vector<qint64> pieces;
    {
        Shelf shelf;
        shelf.fill();
        for (int piece = 1; Raw(shelf.path()).cell("SELECT count(*) FROM change WHERE piece = " + std::to_string(piece)) != "0"; ++piece)
            pieces.push_back(piece);
    }
    ASSERT_GE(pieces.size(), 4U);
    for (const qint64 piece : pieces) {
        Shelf shelf;
        shelf.fill();
        forge(shelf, "UPDATE change SET who = 'Eve' WHERE seq = (SELECT max(seq) FROM change WHERE piece = " + std::to_string(piece) + ")");
        const CheckResult seals = result_of(verdict_on(shelf), Check::seals);
        ASSERT_EQ(seals.bad, 1) << piece;
        EXPECT_EQ(seals.first->piece, piece);
    }
}

TEST(Verifier, visits_every_seal_also_where_the_next_one_was_forged_to_fit) {
    Shelf shelf;
    shelf.fill();
    const std::string number = Raw(shelf.path()).cell("SELECT last_seq FROM seal ORDER BY last_seq LIMIT 1 OFFSET 1");
    for (const std::string& forgery :
         {"UPDATE seal SET hash = zeroblob(32) WHERE last_seq = " + number, "UPDATE seal SET outside = 3 WHERE last_seq = " + number,
          "DELETE FROM seal WHERE last_seq = " + number, "UPDATE seal SET last_seq = last_seq - 1 WHERE last_seq = " + number}) {
        Shelf again;
        again.fill();
        forge(again, forgery);
        EXPECT_GE(result_of(verdict_on(again), Check::seals).bad, 1) << forgery;
    }
}

TEST(Verifier, sees_that_the_newest_seal_or_entry_was_taken_away) {
    Shelf one;
    one.fill();
    forge(one, "DELETE FROM seal WHERE last_seq = (SELECT max(last_seq) FROM seal)");
    EXPECT_EQ(verdict_on(one).first_bad()->check, Check::seals);
    Shelf other;
    other.fill();
    forge(other, "DELETE FROM seal WHERE last_seq = (SELECT max(last_seq) FROM seal); DELETE FROM change WHERE piece = 4");
    EXPECT_EQ(verdict_on(other).first_bad()->check, Check::numbers) << "the counter remembers";
    Shelf gap;
    gap.fill();
    forge(gap, "DELETE FROM change WHERE seq = 5");
    const Verdict verdict = verdict_on(gap);
    EXPECT_EQ(verdict.first_bad()->check, Check::numbers);
    EXPECT_EQ(verdict.first_bad()->first->seq, 6);
}

TEST(Verifier, names_a_record_that_is_not_as_the_history_has_it) {
    const auto without_history = [](const std::string& name, const std::string& change) {
        Shelf shelf;
        shelf.fill();
        {
            Raw raw(shelf.path());
            const std::string trigger = raw.cell("SELECT sql FROM sqlite_schema WHERE name = '" + name + "'");
            EXPECT_EQ(raw.run("PRAGMA foreign_keys=OFF; DROP TRIGGER " + name), "");
            EXPECT_EQ(raw.run(change), "");
            EXPECT_EQ(raw.run(trigger), "");
        }
        return result_of(verdict_on(shelf), Check::records);
    };
    const CheckResult changed = without_history("mite_count_changed", "UPDATE mite_count SET mites = 1");
    EXPECT_EQ(changed.bad, 1);
    EXPECT_EQ(changed.first->table, QStringLiteral("mite_count"));
    EXPECT_GT(changed.first->seq, 0);
    EXPECT_EQ(changed.first->piece, 4);
    EXPECT_EQ(without_history("mite_count_removed", "DELETE FROM mite_count").bad, 1);
    const CheckResult added = without_history("person_added", "INSERT INTO person(name) VALUES('Eve')");
    EXPECT_EQ(added.bad, 1);
    EXPECT_EQ(added.first->row, 2);
    EXPECT_EQ(without_history("given_code_added", "INSERT INTO given_code VALUES('B9X', 'B', 9, 0, 0)").bad, 1);
    EXPECT_EQ(without_history("given_code_not_removed", "DELETE FROM given_code WHERE kind = 'P'").bad, 1);
    EXPECT_EQ(without_history("yard_changed", "UPDATE yard SET name = upper(name) WHERE id = 1").bad, 1) << "case alone";
}

TEST(Verifier, names_a_link_that_leads_nowhere_and_a_counter_set_back) {
    Shelf shelf;
    shelf.fill();
    ASSERT_EQ(Raw(shelf.path()).run("PRAGMA foreign_keys=OFF; UPDATE hive SET yard_id = 77"), "");
    const Verdict verdict = verdict_on(shelf);
    EXPECT_EQ(verdict.first_bad()->check, Check::links);
    EXPECT_EQ(verdict.first_bad()->first->table, QStringLiteral("hive"));
    Shelf other;
    other.fill();
    ASSERT_EQ(Raw(other.path()).run("UPDATE sqlite_sequence SET seq = 0 WHERE name = 'bag'"), "");
    EXPECT_EQ(verdict_on(other).first_bad()->check, Check::numbers);
}

TEST(Verifier, goes_on_from_what_was_verified_before_if_that_is_still_there) {
    Shelf shelf;
    shelf.fill();
    const QString first = shelf.folder() + QStringLiteral("/first");
    shelf.close();
    ASSERT_TRUE(QFile::copy(shelf.path(), first));
    const Verdict before = verify(first);
    ASSERT_TRUE(before.sound());
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    struct Done {
        explicit operator bool() const { return true; }
    };
    (*opened)->write({QStringLiteral("person"), 1, {}}, on_day(11), [](Writing& w) {
        insert(w, Person{{}, QStringLiteral("Bo"), true});
        return Done{};
    });
    opened->reset();
    const Verdict after = verdict_on(shelf, before.until);
    EXPECT_TRUE(after.sound());
    EXPECT_EQ(result_of(after, Check::seals).looked_at, 1);
    EXPECT_EQ(result_of(after, Check::numbers).looked_at, 1);
    EXPECT_EQ(after.last_seq, before.last_seq + 1);
    // The older file put back in its place does not hold what was verified since; another workbook is looked at in whole.
    const Verdict older = verify(first, after.until);
    EXPECT_EQ(older.first_bad()->check, Check::anchor);
    EXPECT_EQ(older.first_bad()->first->seq, after.last_seq);
    VerifiedUntil of_another = after.until;
    of_another.uid = QByteArray(16, 'x');
    EXPECT_EQ(result_of(verify(first, of_another), Check::seals).looked_at, 4);
}

TEST(Verifier, says_nothing_about_a_file_that_is_not_there_and_changes_no_byte_of_one_that_is) {
    Shelf shelf;
    EXPECT_FALSE(verify(shelf.folder() + QStringLiteral("/none")).readable);
    EXPECT_FALSE(QFile::exists(shelf.folder() + QStringLiteral("/none")));
    shelf.fill();
    shelf.close();
    QFile file(shelf.path());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray before = file.readAll();
    EXPECT_TRUE(verify(shelf.path()).sound());
    file.seek(0);
    EXPECT_EQ(file.readAll(), before);
}

} // namespace soakbook::tests
