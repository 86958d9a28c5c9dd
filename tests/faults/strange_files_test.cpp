// SPDX-License-Identifier: GPL-3.0-or-later
// What is no sound workbook: named, left byte for byte, and nothing in it runs. And journals that belong to no work.
#include "bad_disk.h"
#include "child.h"
#include "core/book/schema.h"
#include "ground.h"
#include "open_and_list.h"

#include <QFile>

#include <utility>

#include <sqlite3.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

struct StrangeFile : ::testing::Test {
    Ground ground;
    QString path = ground.file("strange.soakbook");

    /// Opens and checks it in a process of its own, within ten seconds; the file must be as it was.
    std::string judged() const {
        const QByteArray before = bytes_of(path);
        Child child([&](const Child::Tell& tell) {
            ::alarm(10);
            const auto opened = book::Workbook::open(path);
            const bool sound = book::verify(path).sound();
            tell((opened ? "opened" : std::to_string(static_cast<int>(opened.error()))) + (sound ? ", sound" : ""));
        });
        const auto told = child.rest();
        EXPECT_EQ(child.died_of(), 0);
        EXPECT_EQ(told.size(), 1U);
        EXPECT_EQ(bytes_of(path), before);
        return told.empty() ? "said nothing" : told.front();
    }
    static std::string refused(book::NotOpened why) { return std::to_string(static_cast<int>(why)); }
    std::string script(const std::string& sql) const {
        sqlite3* db = nullptr;
        sqlite3_open(path.toUtf8().constData(), &db);
        char* message = nullptr;
        sqlite3_exec(db, sql.c_str(), nullptr, nullptr, &message);
        const std::string said = message ? message : "";
        sqlite3_free(message);
        sqlite3_close(db);
        return said;
    }
};

} // namespace

TEST_F(StrangeFile, that_is_no_workbook_is_named_for_what_it_is) {
    put(path, {});
    EXPECT_EQ(judged(), refused(book::NotOpened::empty_file));
    put(path, "<!DOCTYPE html><html><body>Sign in to download</body></html>" + QByteArray(4000, ' '));
    EXPECT_EQ(judged(), refused(book::NotOpened::not_a_workbook));
    put(path, QByteArray("PK\x03\x04", 4) + QByteArray(8000, '\x7f'));
    EXPECT_EQ(judged(), refused(book::NotOpened::not_a_workbook));
    QFile::remove(path);
    ASSERT_EQ(script("CREATE TABLE songs(title); INSERT INTO songs VALUES('x')"), "");
    EXPECT_EQ(judged(), refused(book::NotOpened::other_program));
}

TEST_F(StrangeFile, of_a_newer_version_is_left_alone) {
    put(path, filled_workbook());
    ASSERT_EQ(script("PRAGMA user_version=" + std::to_string(book::schema_version + 1)), "");
    EXPECT_EQ(judged(), refused(book::NotOpened::newer));
}

TEST_F(StrangeFile, with_SQL_of_its_own_runs_none_of_it) {
    const std::string endless = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT 1, count(*) FROM n";
    for (const std::string& hostile :
         {std::string("CREATE TRIGGER evil AFTER INSERT ON yard BEGIN DELETE FROM change; END"),
          std::string("CREATE TRIGGER evil INSTEAD OF INSERT ON bag_stock BEGIN UPDATE hive SET note = 'x'; END"),
          "DROP VIEW bag_stock; CREATE VIEW bag_stock(bag_id, left_over) AS " + endless,
          "CREATE VIEW extra AS " + endless,
          std::string("CREATE TABLE extra(a CHECK(a IN (load_extension('x'))))"),
          std::string("CREATE INDEX extra ON yard(name) WHERE length(zeroblob(900000000)) > 0"),
          "DROP TRIGGER change_kept; ALTER TABLE change RENAME TO hidden; CREATE VIEW change AS " + endless}) {
        put(path, filled_workbook());
        ASSERT_EQ(script(hostile), "") << hostile;
        EXPECT_EQ(judged(), refused(book::NotOpened::changed_structure)) << hostile;
    }
}

TEST_F(StrangeFile, that_would_keep_a_reader_busy_for_ever_is_refused_at_once) {
    std::string nested = "CREATE VIEW v0 AS SELECT 1 AS a";
    for (int i = 1; i < 600; ++i)
        nested += "; CREATE VIEW v" + std::to_string(i) + " AS SELECT a FROM v" + std::to_string(i - 1) + " UNION ALL SELECT a FROM v" + std::to_string(i - 1);
    std::string many;
    for (int i = 0; i < 4000; ++i)
        many += "CREATE TABLE t" + std::to_string(i) + "(a CHECK(a > 0), b UNIQUE);";
    const std::string bomb = "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n LIMIT 1000000000) SELECT sum(i) FROM n";
    for (const std::string& hostile :
         {nested, many, "CREATE VIEW bomb(a) AS " + bomb, std::string("ALTER TABLE yard ADD COLUMN evil INTEGER GENERATED ALWAYS AS (length(zeroblob(900000000))) VIRTUAL"),
          std::string("CREATE TABLE huge(a TEXT DEFAULT '") + std::string(900'000, 'x') + "')", std::string("CREATE VIRTUAL TABLE words USING fts5(a)"),
          "CREATE TRIGGER evil AFTER INSERT ON yard WHEN (" + bomb + ") > 0 BEGIN SELECT 1; END",
          std::string("CREATE INDEX evil ON yard(CASE WHEN length(hex(zeroblob(1000))) > 0 THEN name END)")}) {
        put(path, filled_workbook());
        const std::string said = script(hostile);
        if (said.find("no such module") != std::string::npos)
            continue;
        ASSERT_EQ(said, "") << hostile.substr(0, 80);
        EXPECT_EQ(judged(), refused(book::NotOpened::changed_structure)) << hostile.substr(0, 80);
    }
}

TEST_F(StrangeFile, that_names_counts_no_disk_holds_ends_soon) {
    // Offsets of the header from "Database File Format", sqlite.org: pages 28, first free page 32, free pages 36, largest root 52.
    for (const int at : {28, 32, 36, 52, 20, 16}) {
        for (const char filling : {'\xff', '\x7f', '\0'}) {
            QByteArray bytes = filled_workbook();
            const int size = at == 16 ? 2 : at == 20 ? 1 : 4;
            for (int i = 0; i < size; ++i)
                bytes[at + i] = filling;
            put(path, bytes);
            (void)judged(); // within ten seconds, the file as it was
        }
    }
    // A row that says that it is longer than the file.
    QByteArray bytes = filled_workbook();
    const qsizetype name = bytes.indexOf("entry 12");
    ASSERT_GT(name, 20);
    for (int back = 1; back < 40; ++back) {
        QByteArray longer = bytes;
        longer[name - back] = '\xff';
        put(path, longer);
        (void)judged();
    }
}

TEST_F(StrangeFile, with_figures_at_the_end_of_all_numbers_is_listed_or_refused) {
    put(path, filled_workbook());
    // Past our checks, as a program may that sets out to.
    int written = 0;
    for (const char* change : {"mite_count SET mites = 9223372036854775807, bees = 1", "material_lot SET amount = 9223372036854775807", "hive SET frames_of_bees = -9223372036854775807",
                               "batch_input SET planned_mg = 9223372036854775807", "strip_kind SET dry_mg = 9223372036854775807", "weigh_in SET total_mg = 9223372036854775807",
                               "bag SET packed = 9223372036854775807", "pail SET mass_mg = 9223372036854775807", "figure SET value = -9223372036854775807"})
        written += script("PRAGMA ignore_check_constraints=ON; PRAGMA foreign_keys=OFF; UPDATE " + std::string(change)).empty() ? 1 : 0;
    EXPECT_GT(written, 3);
    const QByteArray before = bytes_of(path);
    Child child([&](const Child::Tell& tell) {
        ::alarm(10);
        (void)open_and_list(path);
        tell("listed");
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{"listed"});
    EXPECT_EQ(child.died_of(), 0);
    EXPECT_EQ(bytes_of(path), before);
}

TEST_F(StrangeFile, with_SQL_that_SQLite_itself_would_not_take_is_damaged) {
    for (const auto& [harmless, hostile] : {std::pair{"CREATE TABLE extra(a)", "CREATE TABLE extra(a CHECK(a IN (SELECT load_extension(''x''))))"},
                                            std::pair{"CREATE INDEX extra ON yard(name) WHERE length(name) > 0",
                                                      "CREATE INDEX extra ON yard(name) WHERE length(randomblob(900000000)) > 0"}}) {
        put(path, filled_workbook());
        ASSERT_EQ(script(std::string(harmless) + "; PRAGMA writable_schema=ON; UPDATE sqlite_schema SET sql = '" + hostile + "' WHERE name = 'extra'"), "");
        ASSERT_NE(script("SELECT * FROM yard"), "") << hostile << " is not there";
        EXPECT_EQ(judged(), refused(book::NotOpened::damaged)) << hostile;
    }
}

TEST_F(StrangeFile, whose_schema_was_written_over_by_hand) {
    put(path, filled_workbook());
    ASSERT_EQ(script("PRAGMA writable_schema=ON; UPDATE sqlite_schema SET sql = 'CREATE TRIGGER yard_added AFTER INSERT ON yard BEGIN DELETE FROM hive; END' "
                     "WHERE name = 'yard_added'"),
              "");
    EXPECT_EQ(judged(), refused(book::NotOpened::changed_structure));
    put(path, filled_workbook());
    ASSERT_EQ(script("PRAGMA writable_schema=ON; UPDATE sqlite_schema SET rootpage = 2 WHERE name = 'hive'"), "");
    ASSERT_NE(bytes_of(path), filled_workbook());
    EXPECT_NE(judged(), "opened, sound");
}

TEST_F(StrangeFile, left_in_write_ahead_mode_by_another_tool_loses_no_row) {
    put(path, filled_workbook());
    ASSERT_EQ(script("PRAGMA journal_mode=WAL; UPDATE yard SET note = 'from outside' WHERE id = 1"), "");
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ(book::fetch(**opened, book::Id<book::Yard>{1})->note, QStringLiteral("from outside"));
    EXPECT_NO_THROW(make_entry(**opened, 31));
    opened->reset();
    EXPECT_FALSE(QFile::exists(path + QStringLiteral("-wal")));
    expect_sound(path, "afterwards");
    EXPECT_EQ(tests::Raw(path).cell("PRAGMA journal_mode"), "delete");
}

TEST_F(StrangeFile, a_stray_journal_beside_a_sound_workbook_does_it_no_harm) {
    for (const QByteArray& stray : {QByteArray("not a journal at all"), QByteArray(5000, '\x55'), QByteArray(512, '\0')}) {
        put(path, filled_workbook());
        put(path + QStringLiteral("-journal"), stray);
        expect_sound(path, "with a stray journal");
        EXPECT_EQ(entries_in(path).size(), 30U);
    }
}

TEST_F(StrangeFile, a_journal_of_long_ago_put_beside_it_is_told) {
    put(path, filled_workbook());
    (void)book::Workbook::open(path);
    Child dies([&](const Child::Tell&) {
        BadDisk disk;
        auto opened = book::Workbook::open(path);
        disk.fail(Act::remove, 1, BadDisk::How::process_dies);
        make_entry(**opened, 31);
    });
    dies.rest();
    const QByteArray journal = bytes_of(path + QStringLiteral("-journal"));
    ASSERT_GT(journal.size(), 4096);
    expect_sound(path, "after the kill");
    {
        auto opened = book::Workbook::open(path);
        for (int n = 31; n < 60; ++n)
            make_entry(**opened, n);
    }
    const auto before = book::verify(path);
    ASSERT_TRUE(before.sound());
    put(path + QStringLiteral("-journal"), journal);
    const bool opens = book::Workbook::open(path).has_value();
    EXPECT_FALSE(opens && book::verify(path, before.until).sound());
}

} // namespace soakbook::faults
