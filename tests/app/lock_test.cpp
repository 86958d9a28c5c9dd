// SPDX-License-Identifier: GPL-3.0-or-later
// One writer a workbook: the lock names who has it, is never stolen because it is old, and is taken over without a word
// only from a process that is proven gone. With real processes.
#include "app/file_place.h"
#include "app/lock.h"
#include "tests/faults/child.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <sys/stat.h>
#include <unistd.h>

namespace soakbook::tests {

using app::Alive;
using app::Holder;
using app::is_alive;
using app::Lock;
using app::NotLocked;
using faults::Child;

namespace {

const QDateTime now = QDateTime::fromString(QStringLiteral("2026-10-03T14:30:00Z"), Qt::ISODate);

struct Locks : ::testing::Test {
    QTemporaryDir folder;
    QString file = folder.filePath(QStringLiteral("treatments.soakbook"));

    void SetUp() override { put(file, "a workbook"); }
    static void put(const QString& path, const QByteArray& bytes) {
        QFile out(path);
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        ASSERT_EQ(out.write(bytes), bytes.size());
    }
    static QByteArray bytes_of(const QString& path) {
        QFile in(path);
        return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
    }
    /// A lock with one line written otherwise.
    void leave_lock(int line, const QByteArray& text) const {
        QByteArray bytes;
        {
            const auto lock = Lock::take(file, now);
            ASSERT_TRUE(lock.has_value());
            bytes = bytes_of(Lock::path_of(file));
        }
        QList<QByteArray> lines = bytes.split('\n');
        ASSERT_GT(lines.size(), line);
        lines[line] = text;
        put(Lock::path_of(file), lines.join('\n'));
    }
    enum Line { host = 1, user, process, started, boot, room, since };
};

} // namespace

TEST_F(Locks, name_the_computer_the_person_and_since_when) {
    const auto lock = Lock::take(file, now);
    ASSERT_TRUE(lock.has_value());
    const auto holder = Lock::holder_of(file);
    ASSERT_TRUE(holder);
    EXPECT_EQ(holder->process, ::getpid());
    EXPECT_FALSE(holder->host.isEmpty());
    EXPECT_FALSE(holder->user.isEmpty());
    EXPECT_EQ(holder->since, now);
    EXPECT_EQ(is_alive(*holder, true), Alive::yes);
    EXPECT_TRUE((*lock)->is_ours());
    EXPECT_EQ(bytes_of(file), "a workbook");
}

TEST_F(Locks, end_with_whoever_holds_them_and_leave_nothing_behind) {
    { ASSERT_TRUE(Lock::take(file, now).has_value()); }
    EXPECT_FALSE(Lock::holder_of(file));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("treatments.soakbook")});
}

TEST_F(Locks, of_many_that_try_at_once_one_gets_it) {
    std::vector<std::unique_ptr<Child>> children;
    for (int i = 0; i < 12; ++i)
        children.push_back(std::make_unique<Child>([this](const Child::Tell& tell) {
            const auto lock = Lock::take(file, now);
            tell(lock ? "has it" : lock.error().why == NotLocked::Why::no_place ? "no place" : "has it not");
            // Held until all the others have tried.
            ::usleep(600'000);
        }));
    int holders = 0;
    for (const auto& child : children) {
        const std::string told = child->line();
        EXPECT_NE(told, "no place");
        holders += told == "has it" ? 1 : 0;
    }
    EXPECT_EQ(holders, 1);
}

TEST_F(Locks, of_a_killed_process_are_taken_over_by_one_of_many_without_a_word) {
    for (int round = 0; round < 10; ++round) {
        Child dies([this](const Child::Tell& tell) {
            const auto lock = Lock::take(file, now);
            tell(lock ? "has it" : "has it not");
            ::pause();
        });
        ASSERT_EQ(dies.line(), "has it");
        const auto refused = Lock::take(file, now);
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().why, NotLocked::Why::held);
        ASSERT_TRUE(refused.error().holder);
        EXPECT_EQ(is_alive(*refused.error().holder, true), Alive::yes);
        dies.kill();
        dies.rest();
        std::vector<std::unique_ptr<Child>> children;
        for (int i = 0; i < 6; ++i)
            children.push_back(std::make_unique<Child>([this](const Child::Tell& tell) {
                const auto lock = Lock::take(file, now);
                tell(lock ? "has it" : "has it not");
                ::usleep(300'000);
            }));
        int holders = 0;
        for (const auto& child : children)
            holders += child->line() == "has it" ? 1 : 0;
        EXPECT_EQ(holders, 1) << round;
        children.clear();
        QFile::remove(Lock::path_of(file));
    }
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("treatments.soakbook")});
}

TEST_F(Locks, of_another_computer_are_never_too_old) {
    leave_lock(host, "shed");
    QByteArray bytes = bytes_of(Lock::path_of(file));
    QList<QByteArray> lines = bytes.split('\n');
    lines[since] = "1996-01-01T00:00:00Z";
    bytes = lines.join('\n');
    put(Lock::path_of(file), bytes);
    const auto refused = Lock::take(file, now);
    ASSERT_FALSE(refused.has_value());
    ASSERT_TRUE(refused.error().holder);
    EXPECT_EQ(refused.error().holder->host, QStringLiteral("shed"));
    EXPECT_EQ(is_alive(*refused.error().holder, true), Alive::unknown);
    EXPECT_EQ(bytes_of(Lock::path_of(file)), bytes);
}

TEST_F(Locks, of_a_process_number_that_was_given_again_are_of_nobody) {
    leave_lock(started, "17");
    EXPECT_EQ(is_alive(*Lock::holder_of(file), true), Alive::no);
    EXPECT_TRUE(Lock::take(file, now).has_value());
}

TEST_F(Locks, from_before_the_power_failed_are_of_nobody_on_this_computers_own_disk_alone) {
    leave_lock(boot, "another-start");
    const Holder holder = *Lock::holder_of(file);
    EXPECT_EQ(is_alive(holder, true), Alive::no);
    EXPECT_EQ(is_alive(holder, false), Alive::unknown) << "two computers on a network may have one name";
}

TEST_F(Locks, of_processes_that_are_not_seen_from_here_are_asked_about) {
    leave_lock(room, "pid:[1]");
    EXPECT_EQ(is_alive(*Lock::holder_of(file), true), Alive::unknown);
    EXPECT_FALSE(Lock::take(file, now).has_value());
}

TEST_F(Locks, are_taken_over_only_from_whoever_was_seen) {
    leave_lock(host, "shed");
    const auto seen = Lock::holder_of(file);
    ASSERT_TRUE(seen);
    QFile::remove(Lock::path_of(file));
    leave_lock(host, "barn");
    const auto refused = Lock::take_over(file, seen, now);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().holder->host, QStringLiteral("barn"));
    const auto taken = Lock::take_over(file, Lock::holder_of(file), now);
    ASSERT_TRUE(taken.has_value());
    EXPECT_TRUE((*taken)->is_ours());
}

TEST_F(Locks, that_were_taken_over_are_not_given_back_by_the_first) {
    auto first = Lock::take(file, now);
    ASSERT_TRUE(first.has_value());
    auto second = Lock::take_over(file, Lock::holder_of(file), now.addSecs(60));
    ASSERT_TRUE(second.has_value());
    EXPECT_FALSE((*first)->is_ours());
    first->reset();
    EXPECT_TRUE((*second)->is_ours());
}

TEST_F(Locks, that_do_not_say_whose_they_are_are_asked_about) {
    for (const char* bytes : {"", "garbage", "Soakbook has this workbook open\nshed\nida\n"}) {
        put(Lock::path_of(file), bytes);
        const auto refused = Lock::take(file, now);
        ASSERT_FALSE(refused.has_value());
        EXPECT_EQ(refused.error().why, NotLocked::Why::unreadable);
        EXPECT_FALSE(refused.error().holder);
    }
    EXPECT_TRUE(Lock::take_over(file, {}, now).has_value());
}

TEST_F(Locks, lie_beside_the_file_whatever_link_leads_there) {
    QDir(folder.path()).mkdir(QStringLiteral("elsewhere"));
    const QString link = folder.filePath(QStringLiteral("elsewhere/link.soakbook"));
    ASSERT_TRUE(QFile::link(file, link));
    const auto lock = Lock::take(link, now);
    ASSERT_TRUE(lock.has_value());
    EXPECT_EQ(Lock::path_of(link), Lock::path_of(file));
    EXPECT_FALSE(Lock::take(file, now).has_value());
    EXPECT_TRUE(app::is_same_file(link, file));
    EXPECT_FALSE(app::is_same_file(link, folder.path()));
    EXPECT_FALSE(app::is_same_file(folder.filePath(QStringLiteral("none")), folder.filePath(QStringLiteral("none"))));
}

TEST_F(Locks, find_no_place_where_nothing_may_be_written) {
    ASSERT_EQ(::chmod(folder.path().toUtf8().constData(), 0555), 0);
    Child child([this](const Child::Tell& tell) {
        if (::getuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0))
            return tell("still the superuser");
        const auto lock = Lock::take(file, now);
        tell(lock ? "taken" : lock.error().why == NotLocked::Why::no_place ? "no place" : "another reason");
        tell(app::writable(file) == app::Writable::yes ? "writable" : "kept");
    });
    EXPECT_EQ(child.rest(), (std::vector<std::string>{"no place", "kept"}));
    ASSERT_EQ(::chmod(folder.path().toUtf8().constData(), 0755), 0);
    EXPECT_EQ(app::writable(file), app::Writable::yes);
    EXPECT_FALSE(app::is_on_network(file));
}

} // namespace soakbook::tests
