// SPDX-License-Identifier: GPL-3.0-or-later
// A safe copy made beside the work, and the same copy carried to a second place.
#include "core/book/safe_copy_files.h"
#include "core/book/safe_copy_place.h"
#include "core/book/safe_copy_steps.h"
#include "shelf.h"

#include <QDir>
#include <QFile>

#include <thread>

namespace soakbook::tests {

using namespace book;

namespace {

struct SteppedCopy : ::testing::Test {
    Shelf shelf;
    QString folder = shelf.folder() + QStringLiteral("/copies");
    void SetUp() override {
        shelf.fill();
        for (int i = 0; i < 60; ++i)
            add_yard(i);
    }
    void add_yard(int i) {
        shelf.write("yard", [&](Writing& w) { insert(w, Yard{{}, QStringLiteral("yard %1").arg(i), {}, {}, true}); });
    }
    QStringList files_in(const QString& place) const { return QDir(place).entryList(QDir::Files); }
    /// Steps to the end; gives the number of steps.
    int step_through(CopyUnderWay& copying, int pages, const std::function<void(int)>& between = {}) {
        for (int steps = 1;; ++steps) {
            const auto step = copying.step(pages);
            EXPECT_TRUE(step.has_value());
            if (!step || *step == PageCopy::Step::done || steps > 100'000)
                return steps;
            if (between)
                between(steps);
        }
    }
    SafeCopy made() {
        auto copying = CopyUnderWay::begin(shelf.book(), folder);
        step_through(**copying, 64);
        const auto part = (*copying)->take();
        const auto named = name_part(*part, check_part(*part));
        EXPECT_TRUE(named.has_value());
        return named.value_or(SafeCopy{});
    }
};

} // namespace

TEST_F(SteppedCopy, goes_on_beside_the_work_and_holds_what_was_entered_meanwhile) {
    auto copying = CopyUnderWay::begin(shelf.book(), folder);
    ASSERT_TRUE(copying);
    int entered = 0;
    const int steps = step_through(**copying, 4, [&](int step) {
        if (step % 5 == 0)
            add_yard(1000 + entered++);
    });
    EXPECT_GT(steps, 10);
    EXPECT_GT(entered, 2);
    const auto part = (*copying)->take();
    ASSERT_TRUE(part);
    EXPECT_EQ(part->last_seq, shelf.book().last_seq());
    EXPECT_TRUE(QFile::exists(part->part));
    EXPECT_FALSE(QFile::exists(part->name)) << "a name before its check";
    // What is entered after the last page belongs to the next copy. The check runs elsewhere meanwhile.
    tl::expected<SafeCopy, NotCopied> named = tl::unexpected(NotCopied::folder);
    std::thread elsewhere([&] { named = name_part(*part, check_part(*part)); });
    add_yard(9999);
    elsewhere.join();
    ASSERT_TRUE(named);
    EXPECT_EQ(newest_safe_copy(shelf.book(), folder)->path, named->path);
    EXPECT_EQ(newest_safe_copy(shelf.book(), folder)->last_seq, shelf.book().last_seq() - 1);
    EXPECT_TRUE(verify(named->path).sound());
    EXPECT_EQ(files_in(folder).size(), 1) << "the part is gone";
}

TEST_F(SteppedCopy, is_begun_anew_when_another_program_writes) {
    auto copying = CopyUnderWay::begin(shelf.book(), folder);
    bool written = false;
    step_through(**copying, 4, [&](int step) {
        if (step == 10) {
            EXPECT_EQ(Raw(shelf.path()).run("INSERT INTO person(uid, name, active) VALUES(randomblob(16), 'Somebody else', 1)"), "");
            written = true;
        }
    });
    ASSERT_TRUE(written);
    const auto part = (*copying)->take();
    const auto named = name_part(*part, check_part(*part));
    ASSERT_TRUE(named);
    EXPECT_EQ(records_of(named->path), records_of(shelf.path()));
}

TEST_F(SteppedCopy, that_is_broken_off_leaves_nothing) {
    {
        auto copying = CopyUnderWay::begin(shelf.book(), folder);
        (void)(*copying)->step(4);
        EXPECT_EQ(files_in(folder).size(), 1);
    }
    EXPECT_TRUE(files_in(folder).isEmpty());
    // A process that died left one: the next copy sweeps it away.
    QFile left(folder + QStringLiteral("/shelf ") + mark_of_copies(shelf.book().uid()) + QStringLiteral(" being copied.soakbook.part"));
    ASSERT_TRUE(left.open(QIODevice::WriteOnly));
    left.write("half");
    left.close();
    EXPECT_EQ(made().last_seq, shelf.book().last_seq());
    EXPECT_EQ(files_in(folder).size(), 1);
}

TEST_F(SteppedCopy, gets_no_name_when_a_bit_of_it_flipped) {
    auto copying = CopyUnderWay::begin(shelf.book(), folder);
    step_through(**copying, 64);
    const auto part = (*copying)->take();
    QFile file(part->part);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    const QByteArray bytes = file.readAll();
    const qsizetype at = bytes.lastIndexOf("lower yard");
    ASSERT_GT(at, 0);
    file.seek(at);
    file.write("L");
    file.close();
    const Verdict verdict = check_part(*part);
    EXPECT_FALSE(verdict.sound());
    EXPECT_EQ(name_part(*part, verdict).error(), NotCopied::check_failed);
    EXPECT_TRUE(files_in(folder).isEmpty());
}

TEST_F(SteppedCopy, gets_no_name_when_it_is_another_sound_state) {
    const SafeCopy older = made();
    add_yard(2000);
    auto copying = CopyUnderWay::begin(shelf.book(), folder);
    step_through(**copying, 64);
    const auto part = (*copying)->take();
    ASSERT_TRUE(QFile::remove(part->part));
    ASSERT_TRUE(QFile::copy(older.path, part->part));
    EXPECT_FALSE(check_part(*part).sound());
}

TEST_F(SteppedCopy, sent_to_somebody_writes_over_nothing) {
    const QString to = shelf.folder() + QStringLiteral("/for the inspector.soakbook");
    auto copying = CopyUnderWay::begin_at(shelf.book(), to);
    ASSERT_TRUE(copying);
    step_through(**copying, 64);
    const auto part = (*copying)->take();
    const auto named = name_part(*part, check_part(*part));
    ASSERT_TRUE(named);
    EXPECT_EQ(named->path, to);
    EXPECT_TRUE(verify(to).sound());
    EXPECT_EQ(CopyUnderWay::begin_at(shelf.book(), to).error(), NotCopied::exists_already);
    EXPECT_EQ(CopyUnderWay::begin_at(shelf.book(), shelf.path()).error(), NotCopied::exists_already);
    EXPECT_FALSE(QFile::exists(to + QStringLiteral(".part")));
}

TEST_F(SteppedCopy, is_carried_to_a_second_place_and_read_back_there) {
    const SafeCopy copy = made();
    const QString stick = shelf.folder() + QStringLiteral("/stick");
    const QString mark = mark_of_copies(shelf.book().uid());
    EXPECT_EQ(carry_copy(copy, stick, mark, shelf.path()).error(), NotCopied::folder);
    EXPECT_FALSE(QDir(stick).exists()) << "a stick that is not in is not made up";
    ASSERT_TRUE(QDir().mkpath(stick));
    int told = 0;
    const auto carried = carry_copy(copy, stick, mark, shelf.path(), [&](int percent) {
        EXPECT_GE(percent, told);
        told = percent;
        return true;
    });
    ASSERT_TRUE(carried);
    EXPECT_EQ(told, 100);
    EXPECT_TRUE(verify(carried->path).sound());
    EXPECT_EQ(records_of(carried->path), records_of(shelf.path()));
    // The same once more is known to be there; one that was cut short is carried again.
    ASSERT_TRUE(carry_copy(copy, stick, mark, shelf.path()));
    QFile cut(carried->path);
    ASSERT_TRUE(cut.resize(cut.size() / 2));
    ASSERT_TRUE(carry_copy(copy, stick, mark, shelf.path()));
    EXPECT_TRUE(verify(carried->path).sound());
    QFile flipped(carried->path);
    ASSERT_TRUE(flipped.open(QIODevice::ReadWrite));
    flipped.seek(5000);
    flipped.write("?");
    flipped.close();
    ASSERT_TRUE(carry_copy(copy, stick, mark, shelf.path()));
    EXPECT_TRUE(verify(carried->path).sound());
    EXPECT_EQ(files_in(stick).size(), 1);
}

TEST_F(SteppedCopy, is_not_carried_further_when_it_is_to_end) {
    const SafeCopy copy = made();
    const QString stick = shelf.folder() + QStringLiteral("/stick");
    ASSERT_TRUE(QDir().mkpath(stick));
    const auto carried = carry_copy(copy, stick, mark_of_copies(shelf.book().uid()), shelf.path(), [](int) { return false; });
    EXPECT_EQ(carried.error(), NotCopied::busy);
    EXPECT_TRUE(files_in(stick).isEmpty());
}

} // namespace soakbook::tests
