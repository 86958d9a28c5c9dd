// SPDX-License-Identifier: GPL-3.0-or-later
// A workbook of an older version: copied, brought up in one transaction, and nothing of it lost. Each golden file was
// made once, by the program as it was in that version, and is never made anew.
#include "core/book/connection.h"
#include "core/book/schema.h"
#include "core/book/seal.h"
#include "core/book/verify.h"
#include "shelf.h"

#include <QDir>
#include <QFile>

namespace soakbook::tests {

using namespace book;

namespace {

struct OlderVersion : ::testing::Test {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("old.soakbook"));
    QString copies = folder.filePath(QStringLiteral("copies"));
    void unpack(const QString& name, qsizetype size) {
        QFile packed(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/") + name);
        ASSERT_TRUE(packed.open(QIODevice::ReadOnly));
        const QByteArray whole = qUncompress(packed.readAll());
        ASSERT_EQ(whole.size(), size);
        QFile out(path);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        ASSERT_EQ(out.write(whole), whole.size());
    }
    void SetUp() override { unpack(QStringLiteral("version_1.qz"), 581632); }
    static QByteArray bytes_of(const QString& file) {
        QFile in(file);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }
};

struct SecondVersion : OlderVersion {
    void SetUp() override { unpack(QStringLiteral("version_2.qz"), 675840); }
};

} // namespace

TEST_F(OlderVersion, is_copied_and_brought_up_with_every_record_and_entry) {
    const std::string before = records_of(path);
    const std::string entries = Raw(path).cell("SELECT group_concat(quote(seq) || quote(piece) || work || who || why || tbl || quote(before) || quote(after)) FROM change");
    const QByteArray file = bytes_of(path);
    auto opened = Workbook::open(path, copies);
    ASSERT_TRUE(opened.has_value());
    EXPECT_EQ(version_of((*opened)->db()), schema_version);
    EXPECT_EQ(structure_of((*opened)->db()), known_structure());
    opened->reset();
    EXPECT_EQ(records_of(path), before);
    EXPECT_EQ(Raw(path).cell("SELECT group_concat(quote(seq) || quote(piece) || work || who || why || tbl || quote(before) || quote(after)) FROM change "
                             "WHERE seq <= 37"),
              entries);
    const QStringList kept = QDir(copies).entryList(QDir::Files);
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(records_of(QDir(copies).filePath(kept.first())), before);
    EXPECT_EQ(Raw(QDir(copies).filePath(kept.first())).cell("PRAGMA user_version"), "1");
}

TEST_F(OlderVersion, has_its_history_made_whole_and_sealed) {
    ASSERT_TRUE(Workbook::open(path, copies).has_value());
    Raw raw(path);
    // Version 1 did not see that only the case of a name had changed (of the yard, a later entry tells), and its history
    // held neither codes nor papers.
    EXPECT_EQ(raw.cell("SELECT count(*) FROM change WHERE seq > 37 AND work <> 'brought_up'"), "0");
    EXPECT_EQ(raw.cell("SELECT group_concat(n) FROM (SELECT tbl || ' ' || what || ' ' || count(*) AS n FROM change WHERE work = 'brought_up' "
                       "GROUP BY tbl ORDER BY tbl)"),
              "given_code added " + raw.cell("SELECT count(*) FROM given_code") + ",shown added 3,vessel changed 1");
    EXPECT_EQ(raw.cell("SELECT count(*) FROM seal"), "1");
    EXPECT_EQ(raw.cell("SELECT outside FROM seal"), "1") << "the note that another program wrote";
    EXPECT_TRUE(verify(path).sound());
}

TEST_F(OlderVersion, is_told_apart_from_a_damaged_one_before_anything_is_written) {
    ASSERT_EQ(Raw(path).run("CREATE TABLE extra(a)"), "");
    const QByteArray before = bytes_of(path);
    const auto opened = Workbook::open(path, copies);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error(), NotOpened::changed_structure);
    EXPECT_EQ(bytes_of(path), before);
    EXPECT_FALSE(QDir(copies).exists());
}

TEST_F(OlderVersion, is_left_as_it_is_when_no_safe_copy_can_be_made) {
    QFile in_the_way(copies);
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    const QByteArray before = bytes_of(path);
    const auto opened = Workbook::open(path, copies);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error(), NotOpened::not_copied);
    EXPECT_EQ(bytes_of(path), before);
}

TEST_F(OlderVersion, that_another_program_holds_is_left_as_it_is) {
    Raw other(path);
    ASSERT_EQ(other.run("BEGIN IMMEDIATE"), "");
    const auto opened = Workbook::open(path, copies);
    ASSERT_FALSE(opened.has_value());
    EXPECT_EQ(opened.error(), NotOpened::busy);
    ASSERT_EQ(other.run("ROLLBACK"), "");
    EXPECT_EQ(other.cell("PRAGMA user_version"), "1");
    EXPECT_TRUE(Workbook::open(path, copies).has_value());
}

TEST_F(OlderVersion, can_be_verified_as_far_as_it_goes_without_being_brought_up) {
    const QByteArray before = bytes_of(path);
    const Verdict verdict = verify(path);
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.version, 1);
    EXPECT_EQ(verdict.last_seq, 37);
    EXPECT_EQ(bytes_of(path), before);
}

TEST_F(SecondVersion, is_copied_and_gets_its_indexes_with_no_entry_more) {
    const std::string before = records_of(path);
    const std::string entries = Raw(path).cell("SELECT group_concat(quote(seq) || quote(piece) || work || who || why || tbl || quote(before) || quote(after)) FROM change");
    const std::string seals = Raw(path).cell("SELECT group_concat(last_seq || quote(hash)) FROM seal");
    {
        const auto opened = Workbook::open(path, copies);
        ASSERT_TRUE(opened.has_value());
        EXPECT_EQ(version_of((*opened)->db()), schema_version);
        EXPECT_EQ(structure_of((*opened)->db()), known_structure());
    }
    EXPECT_EQ(records_of(path), before);
    EXPECT_EQ(Raw(path).cell("SELECT group_concat(quote(seq) || quote(piece) || work || who || why || tbl || quote(before) || quote(after)) FROM change"), entries);
    EXPECT_EQ(Raw(path).cell("SELECT group_concat(last_seq || quote(hash)) FROM seal"), seals);
    const Verdict verdict = verify(path);
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.last_seq, 220);
    EXPECT_EQ(verdict.unsealed, 1) << "the note that another program wrote";
    const QStringList kept = QDir(copies).entryList(QDir::Files);
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(Raw(QDir(copies).filePath(kept.first())).cell("PRAGMA user_version"), "2");
}

TEST_F(SecondVersion, can_be_verified_as_it_stands) {
    const QByteArray before = bytes_of(path);
    const Verdict verdict = verify(path);
    EXPECT_TRUE(verdict.sound());
    EXPECT_EQ(verdict.version, 2);
    EXPECT_EQ(bytes_of(path), before);
}

TEST(Versions, a_new_workbook_has_the_structure_of_one_brought_up_step_by_step) {
    QSqlDatabase memory = connect_store(QStringLiteral(":memory:"));
    lay_out(memory);
    EXPECT_EQ(structure_of(memory), known_structure());
    EXPECT_NE(known_structure(1), known_structure(2));
    EXPECT_NE(known_structure(2), known_structure(3));
    disconnect_store(memory);
}

} // namespace soakbook::tests
