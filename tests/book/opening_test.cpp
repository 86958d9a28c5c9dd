// SPDX-License-Identifier: GPL-3.0-or-later
// Opening: only a sound workbook of this program opens; everything else is named and left as it is.
#include "core/book/schema.h"
#include "core/book/undo_stack.h"
#include "shelf.h"

#include <QDir>
#include <QFile>

#include <sqlite3.h>

namespace soakbook::tests {

using namespace book;

namespace {

struct Opening : ::testing::Test {
    Shelf shelf;
    void SetUp() override {
        shelf.fill();
        shelf.close();
    }
    QString file(const char* name) const { return shelf.folder() + QLatin1Char('/') + QLatin1String(name); }
    static QByteArray bytes_of(const QString& path) {
        QFile in(path);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }
    static void put(const QString& path, const QByteArray& bytes) {
        QFile out(path);
        if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size())
            throw std::runtime_error("a test file was not written");
    }
    /// Why it does not open; the file must be left byte for byte.
    static NotOpened refused(const QString& path) {
        const QByteArray before = bytes_of(path);
        const auto opened = Workbook::open(path);
        EXPECT_FALSE(opened.has_value());
        EXPECT_EQ(bytes_of(path), before);
        return opened ? NotOpened::busy : opened.error();
    }
    static void other_store(const QString& path, const char* script) {
        sqlite3* handle = nullptr;
        sqlite3_open(path.toUtf8().constData(), &handle);
        sqlite3_exec(handle, script, nullptr, nullptr, nullptr);
        sqlite3_close(handle);
    }
};

} // namespace

TEST_F(Opening, a_sound_workbook_opens_with_everything_in_it) {
    const std::string before = records_of(shelf.path());
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ((*opened)->uid().size(), 16);
    EXPECT_FALSE((*opened)->undo_stack().next_undo());
    opened->reset();
    EXPECT_EQ(records_of(shelf.path()), before);
}

TEST_F(Opening, what_is_not_there_or_no_file) {
    EXPECT_EQ(refused(file("nothing.soakbook")), NotOpened::not_there);
    EXPECT_FALSE(QFile::exists(file("nothing.soakbook")));
    EXPECT_EQ(refused(shelf.folder()), NotOpened::not_a_file);
}

TEST_F(Opening, a_file_cut_to_nothing_is_no_new_workbook) {
    put(file("cut.soakbook"), {});
    EXPECT_EQ(refused(file("cut.soakbook")), NotOpened::empty_file);
}

TEST_F(Opening, another_kind_of_file) {
    put(file("page.soakbook"), QByteArray("<html>") + QByteArray(5000, ' '));
    EXPECT_EQ(refused(file("page.soakbook")), NotOpened::not_a_workbook);
    put(file("short.soakbook"), "SQLite format 3");
    EXPECT_EQ(refused(file("short.soakbook")), NotOpened::not_a_workbook);
    put(file("archive.soakbook"), QByteArray("PK\x03\x04", 4) + QByteArray(5000, '\1'));
    EXPECT_EQ(refused(file("archive.soakbook")), NotOpened::not_a_workbook);
}

TEST_F(Opening, another_programs_store) {
    other_store(file("other.soakbook"), "CREATE TABLE t(a); INSERT INTO t VALUES(1);");
    EXPECT_EQ(refused(file("other.soakbook")), NotOpened::other_program);
}

TEST_F(Opening, a_workbook_of_a_newer_version_is_left_alone) {
    const std::string script = "PRAGMA application_id=" + std::to_string(application_id) +
                               "; PRAGMA user_version=" + std::to_string(schema_version + 1) +
                               "; CREATE TABLE later(a);";
    other_store(file("newer.soakbook"), script.c_str());
    EXPECT_EQ(refused(file("newer.soakbook")), NotOpened::newer);
}

TEST_F(Opening, a_file_cut_in_two_is_damaged) {
    const QByteArray whole = bytes_of(shelf.path());
    put(file("half.soakbook"), whole.left(whole.size() / 2));
    EXPECT_EQ(refused(file("half.soakbook")), NotOpened::damaged);
}

TEST_F(Opening, a_file_cut_at_any_page_never_opens_and_never_crashes) {
    const QByteArray whole = bytes_of(shelf.path());
    for (qsizetype size = 100; size < whole.size(); size += whole.size() / 60) {
        put(file("part.soakbook"), whole.left(size));
        const auto opened = Workbook::open(file("part.soakbook"));
        EXPECT_FALSE(opened.has_value()) << size;
        QFile::remove(file("part.soakbook"));
    }
}

TEST_F(Opening, tables_or_triggers_that_are_not_its_own) {
    for (const char* change : {"CREATE TABLE extra(a)", "DROP TRIGGER change_kept", "CREATE VIEW v AS SELECT 1",
                               "CREATE TRIGGER evil AFTER INSERT ON yard BEGIN DELETE FROM hive; END",
                               "ALTER TABLE yard ADD COLUMN colour TEXT"}) {
        put(file("changed.soakbook"), bytes_of(shelf.path()));
        other_store(file("changed.soakbook"), change);
        EXPECT_EQ(refused(file("changed.soakbook")), NotOpened::changed_structure) << change;
    }
}

TEST_F(Opening, a_new_workbook_never_takes_the_place_of_a_file) {
    const QByteArray before = bytes_of(shelf.path());
    const auto made = Workbook::create(shelf.path(), on_day(0));
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error(), NotOpened::exists_already);
    EXPECT_EQ(bytes_of(shelf.path()), before);
    EXPECT_FALSE(Workbook::create(file("no/such/folder.soakbook"), on_day(0)).has_value());
}

TEST_F(Opening, two_new_workbooks_have_names_of_their_own) {
    const auto one = Workbook::create(file("one.soakbook"), on_day(0));
    const auto two = Workbook::create(file("two.soakbook"), on_day(0));
    ASSERT_TRUE(one && two);
    EXPECT_NE((*one)->uid(), (*two)->uid());
}

TEST_F(Opening, while_another_program_holds_it_writing_waits_for_nobody_and_loses_nothing) {
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    struct Done {
        explicit operator bool() const { return true; }
    };
    const auto add_yard = [&](const QString& name) {
        (*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11), [&](Writing& w) {
            insert(w, Yard{{}, name, {}, {}, true});
            return Done{};
        });
    };
    {
        Raw other(shelf.path());
        ASSERT_EQ(other.run("BEGIN IMMEDIATE"), "");
        EXPECT_THROW(add_yard(QStringLiteral("third")), Busy);
        ASSERT_EQ(other.run("ROLLBACK"), "");
    }
    EXPECT_NO_THROW(add_yard(QStringLiteral("third")));
    EXPECT_EQ(fetch_all<Yard>(**opened).size(), 3U);
}

TEST_F(Opening, what_another_program_changed_is_told_before_the_next_entry_which_then_goes_ahead) {
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    int told = 0;
    const auto stop = (*opened)->subscribe([&told](const Changed& changed) { told += changed.tables.count(QStringLiteral("yard")) ? 1 : 0; });
    ASSERT_EQ(Raw(shelf.path()).run("UPDATE yard SET note = 'from outside' WHERE id = 1"), "");
    struct Done {
        explicit operator bool() const { return true; }
    };
    const auto add_yard = [&] {
        (*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11), [](Writing& w) {
            insert(w, Yard{{}, QStringLiteral("third"), {}, {}, true});
            return Done{};
        });
    };
    const qint64 before = (*opened)->last_seq();
    EXPECT_TRUE((*opened)->changed_outside());
    EXPECT_THROW(add_yard(), ChangedOutside);
    EXPECT_EQ(told, 1);
    EXPECT_EQ((*opened)->last_seq(), before);
    EXPECT_NO_THROW(add_yard());
    EXPECT_EQ(fetch_all<Yard>(**opened).front().note, QStringLiteral("from outside"));
    EXPECT_EQ((*opened)->last_seq(), before + 1);
}

TEST_F(Opening, a_file_laid_over_the_open_one_gets_no_entry) {
    auto other = Workbook::create(file("other.soakbook"), on_day(0));
    ASSERT_TRUE(other.has_value());
    other->reset();
    for (const bool in_place : {true, false}) {
        put(file("open.soakbook"), bytes_of(shelf.path()));
        auto opened = Workbook::open(file("open.soakbook"));
        ASSERT_TRUE(opened.has_value());
        ASSERT_EQ(fetch_all<Yard>(**opened).size(), 2U);
        const QByteArray bytes = bytes_of(file("other.soakbook"));
        if (!in_place)
            QFile::remove(file("open.soakbook"));
        put(file("open.soakbook"), bytes);
        struct Done {
            explicit operator bool() const { return true; }
        };
        for (int again = 0; again < 2; ++again)
            EXPECT_THROW((*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11),
                                          [](Writing& w) {
                                              insert(w, Yard{{}, QStringLiteral("third"), {}, {}, true});
                                              return Done{};
                                          }),
                         Replaced)
                << in_place;
        EXPECT_EQ(bytes_of(file("open.soakbook")), bytes) << in_place;
    }
}

TEST_F(Opening, the_settings_that_keep_it_safe_are_on) {
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    const auto setting = [&](const char* name) {
        Statement s((*opened)->db(), QStringLiteral("PRAGMA ") + QLatin1String(name));
        s.run();
        return s.next() ? s.get<QString>(0) : QString();
    };
    EXPECT_EQ(setting("journal_mode"), QStringLiteral("delete"));
    EXPECT_EQ(setting("synchronous"), QStringLiteral("3"));
    EXPECT_EQ(setting("foreign_keys"), QStringLiteral("1"));
    EXPECT_EQ(setting("recursive_triggers"), QStringLiteral("1"));
    EXPECT_EQ(setting("trusted_schema"), QStringLiteral("0"));
    EXPECT_EQ(setting("busy_timeout"), QStringLiteral("0"));
    EXPECT_EQ(setting("cell_size_check"), QStringLiteral("1"));
    EXPECT_EQ(setting("temp_store"), QStringLiteral("2"));
    EXPECT_EQ(setting("cache_spill"), QStringLiteral("0"));
    EXPECT_EQ(setting("mmap_size"), QStringLiteral("0"));
}

TEST_F(Opening, for_looking_alone_everything_is_read_and_nothing_is_written) {
    const QByteArray before = bytes_of(shelf.path());
    const auto opened = Workbook::open_for_looking(shelf.path());
    ASSERT_TRUE(opened.has_value());
    EXPECT_TRUE((*opened)->is_for_looking());
    EXPECT_FALSE((*opened)->is_newer());
    EXPECT_EQ(fetch_all<Yard>(**opened).size(), 2U);
    struct Done {
        explicit operator bool() const { return true; }
    };
    EXPECT_THROW((*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11), [](Writing&) { return Done{}; }), LookingOnly);
    EXPECT_EQ(bytes_of(shelf.path()), before);
    EXPECT_EQ(QDir(shelf.folder()).entryList(QDir::Files), QStringList{QFileInfo(shelf.path()).fileName()});
}

TEST_F(Opening, a_damaged_one_is_looked_at_only_where_that_was_asked_for) {
    const std::string root = Raw(shelf.path()).cell("SELECT rootpage FROM sqlite_schema WHERE name = 'placement'");
    QByteArray bytes = bytes_of(shelf.path());
    bytes.replace((std::stoll(root) - 1) * 4096, 4096, QByteArray(4096, 'x'));
    put(file("spoilt.soakbook"), bytes);
    EXPECT_EQ(refused(file("spoilt.soakbook")), NotOpened::damaged);
    const auto sound_only = Workbook::open_for_looking(file("spoilt.soakbook"));
    ASSERT_FALSE(sound_only.has_value());
    EXPECT_EQ(sound_only.error(), NotOpened::damaged);
    const auto opened = Workbook::open_for_looking(file("spoilt.soakbook"), Workbook::Pages::as_they_are);
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ(fetch_all<Yard>(**opened).size(), 2U);
    EXPECT_THROW(fetch_all<Placement>(**opened), StoreError);
    EXPECT_EQ(bytes_of(file("spoilt.soakbook")), bytes);
}

TEST_F(Opening, a_newer_one_is_looked_at_where_it_still_has_everything_that_is_known_here) {
    const std::string newer = "PRAGMA user_version=" + std::to_string(schema_version + 1);
    put(file("newer.soakbook"), bytes_of(shelf.path()));
    other_store(file("newer.soakbook"), (newer + "; CREATE TABLE later(a); ALTER TABLE yard ADD COLUMN colour TEXT").c_str());
    EXPECT_EQ(refused(file("newer.soakbook")), NotOpened::newer);
    {
        const auto opened = Workbook::open_for_looking(file("newer.soakbook"));
        ASSERT_TRUE(opened.has_value());
        EXPECT_TRUE((*opened)->is_newer());
        EXPECT_EQ(fetch_all<Yard>(**opened).size(), 2U);
    }
    // What is a view there could run anything.
    other_store(file("newer.soakbook"), "ALTER TABLE yard RENAME TO yard_2; CREATE VIEW yard AS SELECT * FROM yard_2");
    const auto changed = Workbook::open_for_looking(file("newer.soakbook"));
    ASSERT_FALSE(changed.has_value());
    EXPECT_EQ(changed.error(), NotOpened::newer);
}

TEST_F(Opening, while_entries_are_held_none_is_written) {
    auto opened = Workbook::open(shelf.path());
    ASSERT_TRUE(opened.has_value());
    (*opened)->hold_entries(true);
    struct Done {
        explicit operator bool() const { return true; }
    };
    const auto nothing = [](Writing&) { return Done{}; };
    EXPECT_THROW((*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11), nothing), BeingChecked);
    (*opened)->hold_entries(false);
    EXPECT_NO_THROW((*opened)->write({QStringLiteral("yard"), 1, {}}, on_day(11), nothing));
}

} // namespace soakbook::tests
