// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be written is open for looking alone: not a byte of it changes, and no file appears beside it.
#include "app/lock.h"
#include "app/opening.h"
#include "core/book/record_io.h"
#include "core/book/records/yard.h"
#include "core/work/setup.h"
#include "tests/book/shelf.h"
#include "tests/faults/child.h"

#include <QDir>
#include <QFile>

#include <csignal>

#include <sys/stat.h>
#include <unistd.h>

namespace soakbook::tests {

using app::LookingWhy;
using faults::Child;

namespace {

const QDateTime noon = QDateTime::fromString(QStringLiteral("2026-10-03T12:00:00Z"), Qt::ISODate);

QByteArray all_of(const QString& path) {
    QFile in(path);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

void put_at(const QString& path, const QByteArray& bytes) {
    QFile out(path);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly | QIODevice::Truncate));
    ASSERT_EQ(out.write(bytes), bytes.size());
}

struct Kept : ::testing::Test {
    Shelf shelf;
    QTemporaryDir place;
    QString folder = place.filePath(QStringLiteral("folder"));
    QString file = folder + QStringLiteral("/treatments.soakbook");

    void SetUp() override {
        shelf.fill();
        shelf.close();
        ASSERT_TRUE(QDir().mkpath(folder));
        ASSERT_EQ(::chmod(place.path().toUtf8().constData(), 0755), 0);
        put_at(file, all_of(shelf.path()));
    }
    void TearDown() override { allow(0644, 0755); }
    void allow(mode_t of_file, mode_t of_folder) const {
        for (const QFileInfo& one : QDir(folder).entryInfoList(QDir::Files | QDir::Hidden))
            ASSERT_EQ(::chmod(one.filePath().toUtf8().constData(), of_file), 0);
        ASSERT_EQ(::chmod(folder.toUtf8().constData(), of_folder), 0);
    }
    /// What somebody without rights gets: why it is for looking alone, how many yards are seen, and what an entry comes to.
    std::vector<std::string> seen_by_nobody() const {
        Child child([this](const Child::Tell& tell) {
            if (::getuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0))
                return tell("still the superuser");
            const auto open = app::open_book(file, {}, noon);
            if (!open)
                return tell(open.error().why ? "refused " + std::to_string(static_cast<int>(*open.error().why)) : "locked");
            tell(open->looking ? "looking " + std::to_string(static_cast<int>(*open->looking)) : "for entries");
            tell(std::to_string(book::fetch_all<book::Yard>(*open->workbook).size()));
            tell(open->aside ? "on a copy" : "itself");
            const auto entry = work::save_person(*open->workbook, {{}, QStringLiteral("Ida"), true}, on_day(70));
            tell(entry ? "saved" : entry.error().why == work::Why::looking_only ? "looking only" : "another refusal");
        });
        return child.rest();
    }
    static std::vector<std::string> looking(LookingWhy why, const char* where = "itself", const char* yards = "2") {
        return {"looking " + std::to_string(static_cast<int>(why)), yards, where, "looking only"};
    }
    void expect_untouched(const QByteArray& bytes, int files = 1) const {
        EXPECT_EQ(all_of(file), bytes);
        EXPECT_EQ(QDir(folder).entryList(QDir::Files | QDir::Hidden).size(), files);
    }
};

} // namespace

TEST_F(Kept, a_file_that_may_only_be_read) {
    const QByteArray before = all_of(file);
    allow(0444, 0777);
    EXPECT_EQ(seen_by_nobody(), looking(LookingWhy::file_kept));
    expect_untouched(before);
}

TEST_F(Kept, a_folder_in_which_nothing_may_be_written) {
    const QByteArray before = all_of(file);
    allow(0666, 0555);
    EXPECT_EQ(seen_by_nobody(), looking(LookingWhy::folder_kept));
    expect_untouched(before);
}

TEST_F(Kept, what_may_be_written_is_open_for_entries) {
    allow(0666, 0777);
    const auto seen = seen_by_nobody();
    ASSERT_EQ(seen.size(), 4U);
    EXPECT_EQ(seen[0], "for entries");
    EXPECT_EQ(seen[3], "saved");
}

TEST_F(Kept, an_older_workbook_is_looked_at_on_a_copy_that_was_brought_up) {
    put_at(file, qUncompress(all_of(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/version_1.qz"))));
    const QByteArray before = all_of(file);
    ASSERT_FALSE(before.isEmpty());
    allow(0444, 0555);
    const auto seen = seen_by_nobody();
    ASSERT_EQ(seen.size(), 4U) << seen.front();
    EXPECT_EQ(seen[0], "looking " + std::to_string(static_cast<int>(LookingWhy::file_kept)));
    EXPECT_EQ(seen[2], "on a copy");
    EXPECT_EQ(seen[3], "looking only");
    expect_untouched(before);
}

TEST_F(Kept, work_that_was_broken_off_is_named_as_that_and_nothing_torn_is_shown) {
    // A whole journal of another process, as it stands when the power fails in a commit.
    Child dies([this](const Child::Tell& tell) {
        Raw raw(file);
        raw.run("PRAGMA cache_size = 1");
        raw.run("BEGIN IMMEDIATE");
        for (int i = 0; i < 400; ++i)
            raw.run("INSERT INTO yard(name, note) SELECT 'yard ' || hex(randomblob(20)), hex(randomblob(1500))");
        tell(raw.run("UPDATE yard SET note = hex(randomblob(1400))"));
        ::raise(SIGKILL);
    });
    dies.rest();
    const QString journal = file + QStringLiteral("-journal");
    ASSERT_GT(QFileInfo(journal).size(), 0);
    const QByteArray before = all_of(file);
    allow(0444, 0555);
    EXPECT_EQ(seen_by_nobody(), std::vector<std::string>{"refused " + std::to_string(static_cast<int>(book::NotOpened::broken_off))});
    expect_untouched(before, 2);
}

TEST_F(Kept, a_safe_copy_is_looked_at_and_a_workbook_beside_the_copies_is_not) {
    const auto copy = app::open_book(file, folder, noon);
    ASSERT_TRUE(copy.has_value());
    EXPECT_EQ(copy->looking, LookingWhy::safe_copy);
    const auto workbook = app::open_book(file, place.filePath(QStringLiteral("fold")), noon);
    ASSERT_TRUE(workbook.has_value());
    EXPECT_FALSE(workbook->looking);
    EXPECT_TRUE(app::Lock::holder_of(file));
}

TEST_F(Kept, two_may_look_while_one_makes_entries) {
    const QByteArray before = all_of(file);
    const auto writer = app::open_book(file, {}, noon);
    ASSERT_TRUE(writer.has_value());
    const auto second = app::open_book(file, {}, noon);
    ASSERT_FALSE(second.has_value());
    EXPECT_FALSE(second.error().why);
    EXPECT_EQ(second.error().lock.why, app::NotLocked::Why::held);
    Child looks([this](const Child::Tell& tell) {
        app::Wish look;
        look.look = true;
        look.why = LookingWhy::held;
        const auto open = app::open_book(file, {}, noon, look);
        tell(open && open->looking == LookingWhy::held ? "looks" : "does not");
    });
    EXPECT_EQ(looks.rest(), std::vector<std::string>{"looks"});
    EXPECT_EQ(all_of(file), before);
}

} // namespace soakbook::tests
