// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy is good or it is not there: of a damaged workbook none gets its name, and its place may fail in any way.
#include "bad_disk.h"
#include "child.h"
#include "core/book/safe_copy.h"
#include "ground.h"

#include <QDir>
#include <QFile>

#include <algorithm>

#include <sys/stat.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

/// One letter of a name differs: the store's own check sees nothing, the history does.
QByteArray workbook_with_a_changed_letter() {
    QByteArray bytes = filled_workbook();
    const qsizetype at = bytes.lastIndexOf("lower yard");
    EXPECT_GT(at, 0);
    bytes[at] = 'x';
    return bytes;
}

QStringList files_in(const QString& folder) { return QDir(folder).entryList(QDir::Files | QDir::Hidden); }

struct CopyOfDamaged : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    QString copies = ground.file("copies");
    void SetUp() override {
        put(path, workbook_with_a_changed_letter());
        ASSERT_FALSE(book::verify(path).sound());
    }
};

struct CopyPlace : ::testing::Test {
    Ground ground;
    QString path = ground.file("book.soakbook");
    QString copies = ground.file("copies");
    void SetUp() override { put(path, filled_workbook()); }
    void TearDown() override { ::chmod(copies.toUtf8().constData(), 0755); }
};

} // namespace

TEST_F(CopyOfDamaged, gets_no_name) {
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(opened.has_value());
    const auto copied = book::make_safe_copy(**opened, copies);
    ASSERT_FALSE(copied.has_value());
    EXPECT_EQ(copied.error(), book::NotCopied::check_failed);
    EXPECT_EQ(files_in(copies), QStringList());
}

TEST_F(CopyOfDamaged, sent_elsewhere_gets_no_name) {
    const auto sent = book::make_safe_copy_at(path, ground.file("sent.soakbook"));
    ASSERT_FALSE(sent.has_value());
    EXPECT_EQ(sent.error(), book::NotCopied::check_failed);
    EXPECT_EQ(files_in(ground.path()), QStringList{QStringLiteral("book.soakbook")});
}

TEST_F(CopyOfDamaged, takes_no_good_one_away) {
    put(path, filled_workbook());
    {
        auto opened = book::Workbook::open(path);
        ASSERT_TRUE(book::make_safe_copy(**opened, copies).has_value());
    }
    const QStringList before = files_in(copies);
    put(path, workbook_with_a_changed_letter());
    auto opened = book::Workbook::open(path);
    for (int n = 31; n < 60; ++n) {
        make_entry(**opened, n);
        EXPECT_FALSE(book::make_safe_copy(**opened, copies).has_value());
    }
    EXPECT_EQ(files_in(copies), before);
    EXPECT_TRUE(book::verify(QDir(copies).filePath(before.front())).sound());
}

TEST_F(CopyPlace, that_fails_at_any_write_or_sync_leaves_no_part_and_no_name) {
    int failures = 0;
    int entry = 30;
    for (const Act act : {Act::read, Act::write, Act::truncate, Act::sync}) {
        for (int at = 1; at < 100'000 && !HasFailure(); at += cases(23, 1)) {
            QDir(copies).removeRecursively();
            BadDisk disk;
            auto opened = book::Workbook::open(path);
            ASSERT_TRUE(opened.has_value());
            disk.fail(act, at, BadDisk::How::fails_from_then_on);
            const bool copied = book::make_safe_copy(**opened, copies).has_value();
            const bool came = disk.came();
            disk.heal();
            EXPECT_EQ(files_in(copies).size(), copied ? 1 : 0) << static_cast<int>(act) << " number " << at;
            // What a failing disk wrote is not taken for written.
            EXPECT_TRUE(!copied || book::verify(QDir(copies).filePath(files_in(copies).front())).sound());
            if (!came)
                break;
            failures += copied ? 0 : 1;
            EXPECT_TRUE(book::make_safe_copy(**opened, copies).has_value()) << at << ": done again";
            EXPECT_NO_THROW(make_entry(**opened, ++entry)) << at;
        }
    }
    RecordProperty("failures", failures);
    EXPECT_GT(failures, 3);
    expect_sound(path, "after the copies");
}

TEST_F(CopyPlace, that_is_gone_is_made_again_and_one_that_is_a_file_is_named) {
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(book::make_safe_copy(**opened, copies).has_value());
    QDir(copies).removeRecursively();
    EXPECT_TRUE(book::make_safe_copy(**opened, copies).has_value()) << "the folder was removed";
    QDir(copies).removeRecursively();
    put(copies, "a file");
    const auto copied = book::make_safe_copy(**opened, copies);
    ASSERT_FALSE(copied.has_value());
    EXPECT_EQ(copied.error(), book::NotCopied::folder);
    EXPECT_EQ(bytes_of(copies), QByteArray("a file"));
    EXPECT_NO_THROW(make_entry(**opened, 31));
    opened->reset();
    expect_sound(path, "after the copies");
}

TEST_F(CopyPlace, that_is_removed_while_the_copy_is_made_is_named) {
    ASSERT_TRUE(QDir().mkpath(copies));
    // A medium pulled out: the folder is there, then it is not.
    Child child([&](const Child::Tell& tell) {
        auto opened = book::Workbook::open(path);
        for (int i = 0; i < cases(60, 600); ++i) {
            const auto copied = book::make_safe_copy(**opened, copies);
            tell(copied ? "copied" : copied.error() == book::NotCopied::folder || copied.error() == book::NotCopied::disk_full ||
                                             copied.error() == book::NotCopied::check_failed
                                         ? "named"
                                         : "another reason");
        }
        make_entry(**opened, 31);
        tell("saved");
    });
    for (int i = 0; i < cases(30, 300); ++i) {
        QDir(copies).removeRecursively();
        ::usleep(1500);
    }
    const auto told = child.rest();
    ASSERT_FALSE(told.empty());
    EXPECT_EQ(told.back(), "saved");
    EXPECT_EQ(std::count(told.begin(), told.end(), "another reason"), 0);
    for (const QString& name : files_in(copies))
        EXPECT_TRUE(name.endsWith(QStringLiteral(".part")) || book::verify(QDir(copies).filePath(name)).sound()) << name.toStdString();
    expect_sound(path, "after the copies");
}

} // namespace soakbook::faults
