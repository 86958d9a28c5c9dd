// SPDX-License-Identifier: GPL-3.0-or-later
// Files and folders that may not be written: looked at, never changed by a byte, and never said to be saved.
#include "bad_disk.h"
#include "child.h"
#include "core/book/record_io.h"
#include "core/book/safe_copy.h"
#include "core/book/statement.h"
#include "ground.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <sys/stat.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

constexpr uid_t nobody = 65534;

/// Rights do not hold back the superuser: the child becomes somebody else.
void become_nobody() {
    if (::getuid() == 0 && (::setgid(nobody) != 0 || ::setuid(nobody) != 0))
        throw std::runtime_error("the child stayed the superuser");
}

struct ReadOnly : ::testing::Test {
    Ground ground;
    QString folder = ground.file("folder");
    QString path = folder + QStringLiteral("/book.soakbook");

    void SetUp() override {
        ASSERT_TRUE(QDir().mkpath(folder));
        ASSERT_EQ(::chmod(ground.path().toUtf8().constData(), 0755), 0);
        put(path, filled_workbook());
        (void)book::Workbook::open(path);
    }
    void TearDown() override { allow(0644, 0755); }
    void allow(mode_t file, mode_t place) const {
        ASSERT_EQ(::chmod(path.toUtf8().constData(), file), 0);
        ASSERT_EQ(::chmod(folder.toUtf8().constData(), place), 0);
    }
    /// What a person without rights sees: how many yards, and what an entry comes to.
    std::vector<std::string> look_and_try() const {
        Child child([&](const Child::Tell& tell) {
            become_nobody();
            auto opened = book::Workbook::open(path);
            if (!opened)
                return tell("refused " + std::to_string(static_cast<int>(opened.error())));
            tell(std::to_string(book::fetch_all<book::Yard>(**opened).size()));
            try {
                make_entry(**opened, 31);
                tell("saved");
            } catch (const book::ReadOnly&) {
                tell("read only");
            }
        });
        return child.rest();
    }
};

} // namespace

TEST_F(ReadOnly, a_file_can_be_looked_at_and_takes_no_entry) {
    allow(0444, 0755);
    EXPECT_EQ(look_and_try(), (std::vector<std::string>{"32", "read only"}));
    EXPECT_EQ(bytes_of(path), filled_workbook());
}

TEST_F(ReadOnly, a_folder_too) {
    allow(0444, 0555);
    EXPECT_EQ(look_and_try(), (std::vector<std::string>{"32", "read only"}));
    // The file may be written, but its journal finds no place.
    if (::getuid() == 0) {
        ASSERT_EQ(::chown(path.toUtf8().constData(), nobody, nobody), 0);
    }
    allow(0644, 0555);
    EXPECT_EQ(look_and_try(), (std::vector<std::string>{"32", "read only"}));
    EXPECT_EQ(bytes_of(path), filled_workbook());
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 1);
}

TEST_F(ReadOnly, a_file_that_may_not_be_read_is_refused_as_that) {
    allow(0000, 0755);
    EXPECT_EQ(look_and_try(), std::vector<std::string>{"refused " + std::to_string(static_cast<int>(book::NotOpened::unreadable))});
}

TEST_F(ReadOnly, work_that_was_broken_off_is_not_shown_torn) {
    Child dies([&](const Child::Tell&) {
        BadDisk disk;
        auto opened = book::Workbook::open(path);
        disk.fail(Act::remove, 1, BadDisk::How::process_dies);
        make_entry(**opened, 31);
    });
    dies.rest();
    ASSERT_TRUE(QFile::exists(path + QStringLiteral("-journal")));
    const QByteArray torn = bytes_of(path);
    ASSERT_NE(torn, filled_workbook());
    ASSERT_EQ(::chmod((path + QStringLiteral("-journal")).toUtf8().constData(), 0444), 0);
    allow(0444, 0555);
    const auto told = look_and_try();
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told.front().rfind("refused", 0), 0U) << told.front();
    EXPECT_EQ(bytes_of(path), torn);
    allow(0644, 0755);
    expect_sound(path, "with rights again");
    EXPECT_EQ(entries_in(path).size(), 30U);
}

TEST_F(ReadOnly, an_older_workbook_is_copied_but_left_as_it_is) {
    put(path, workbook_of_version_1());
    allow(0444, 0555);
    Child child([&](const Child::Tell& tell) {
        become_nobody();
        const auto opened = book::Workbook::open(path, QDir::tempPath() + QStringLiteral("/soakbook of ") + QString::number(::getpid()));
        tell(opened ? "opened" : std::to_string(static_cast<int>(opened.error())));
        QDir(QDir::tempPath() + QStringLiteral("/soakbook of ") + QString::number(::getpid())).removeRecursively();
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{std::to_string(static_cast<int>(book::NotOpened::not_brought_up))});
    EXPECT_EQ(bytes_of(path), workbook_of_version_1());
}

TEST_F(ReadOnly, a_place_for_safe_copies_is_named_and_the_workbook_unharmed) {
    allow(0644, 0555);
    Child child([&](const Child::Tell& tell) {
        become_nobody();
        const auto copied = book::make_safe_copy_at(path, folder + QStringLiteral("/copy.soakbook"));
        tell(copied ? "copied" : copied.error() == book::NotCopied::folder ? "folder" : "another reason");
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{"folder"});
    EXPECT_EQ(bytes_of(path), filled_workbook());
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 1);
}

} // namespace soakbook::faults
