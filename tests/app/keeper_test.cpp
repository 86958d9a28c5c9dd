// SPDX-License-Identifier: GPL-3.0-or-later
// Whoever keeps the workbook safe: when copies are made, what is said when they are not, and the second place. The clock
// is one that the test turns.
#include "app/keeper.h"
#include "core/book/safe_copy.h"
#include "tests/book/shelf.h"
#include "ui/setup/second_place.h"

#include <QDir>
#include <QFile>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>

namespace soakbook::tests {

using namespace book;
using Stage = ui::CopyKeeper::Stage;

namespace {

constexpr qint64 minute = 60'000;

struct Keeping : ::testing::Test {
    Shelf shelf;
    QString folder = shelf.folder() + QStringLiteral("/copies");
    QString stick = shelf.folder() + QStringLiteral("/stick");
    maths::Instant now = moment(30);
    std::unique_ptr<app::Keeper> keeper;
    int copied = 0;
    int damaged = 0;
    QStringList failed;
    int entered = 0;

    void SetUp() override {
        QSettings().clear();
        shelf.fill();
        begin();
    }
    void begin() {
        keeper.reset();
        keeper = std::make_unique<app::Keeper>(shelf.book(), folder, [this] { return now; });
        QObject::connect(keeper.get(), &app::Keeper::copied, keeper.get(), [this](const Verdict& verdict) {
            EXPECT_TRUE(verdict.sound());
            ++copied;
        });
        QObject::connect(keeper.get(), &app::Keeper::found_damaged, keeper.get(), [this](const Verdict& verdict) {
            EXPECT_FALSE(verdict.sound());
            ++damaged;
        });
        QObject::connect(keeper.get(), &app::Keeper::failed, keeper.get(), [this](const QString& why) { failed << why; });
    }
    void TearDown() override { keeper.reset(); }
    void enter(int pieces = 1) {
        for (int i = 0; i < pieces; ++i)
            shelf.write("yard", [&](Writing& w) { insert(w, Yard{{}, QStringLiteral("yard %1").arg(++entered), {}, {}, true}); });
        QCoreApplication::processEvents();
    }
    void pass(qint64 ms) { now.utc_ms += ms; }
    /// Until nothing is under way any more.
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return keeper->stage() == Stage::idle; }, 60'000));
    }
    /// Looks at the clock and waits for what comes of it. Gives how many copies were made.
    int look() {
        const int before = copied;
        keeper->look();
        settle();
        return copied - before;
    }
    QStringList files_in(const QString& place) const { return QDir(place).entryList(QDir::Files); }
    qint64 newest() const {
        const auto copy = newest_safe_copy(shelf_book(), folder);
        return copy ? copy->last_seq : 0;
    }
    const Workbook& shelf_book() const { return const_cast<Shelf&>(shelf).book(); }
};

} // namespace

TEST_F(Keeping, copies_at_the_start_what_was_entered_since_and_then_rests) {
    EXPECT_EQ(look(), 1);
    EXPECT_EQ(newest(), shelf.book().last_seq());
    EXPECT_EQ(look(), 0);
    pass(5 * minute);
    EXPECT_EQ(look(), 0);
    begin();
    EXPECT_EQ(look(), 0) << "opened again, nothing entered";
    enter();
    begin();
    EXPECT_EQ(look(), 1) << "opened again with an entry that no copy holds";
    EXPECT_TRUE(failed.isEmpty());
    EXPECT_EQ(damaged, 0);
}

TEST_F(Keeping, copies_after_twenty_pieces_of_work) {
    ASSERT_EQ(look(), 1);
    enter(19);
    EXPECT_EQ(keeper->stage(), Stage::idle);
    enter();
    EXPECT_NE(keeper->stage(), Stage::idle);
    settle();
    EXPECT_EQ(copied, 2);
    EXPECT_EQ(newest(), shelf.book().last_seq());
    enter(19);
    EXPECT_EQ(keeper->stage(), Stage::idle) << "counted from the last copy on";
}

TEST_F(Keeping, copies_half_an_hour_after_the_last_copy_and_only_if_something_was_entered) {
    ASSERT_EQ(look(), 1);
    pass(31 * minute);
    EXPECT_EQ(look(), 0);
    enter();
    EXPECT_EQ(look(), 1);
    enter();
    pass(29 * minute);
    EXPECT_EQ(look(), 0);
    pass(2 * minute);
    EXPECT_EQ(look(), 1);
}

TEST_F(Keeping, copies_when_the_clock_was_set_back) {
    ASSERT_EQ(look(), 1);
    enter();
    pass(-10 * 365 * 24 * 60 * minute);
    EXPECT_EQ(look(), 1);
}

TEST_F(Keeping, checks_the_whole_every_week_although_nothing_was_entered) {
    ASSERT_EQ(look(), 1);
    pass(6 * 24 * 60 * minute);
    EXPECT_EQ(look(), 0);
    pass(25 * 60 * minute);
    EXPECT_EQ(look(), 1);
    EXPECT_EQ(look(), 0);
    EXPECT_EQ(files_in(folder).size(), 1) << "of one state one copy";
}

TEST_F(Keeping, entries_made_while_it_copies_are_not_held_up_and_no_entry_is_taken_for_copied) {
    keeper->copy_now();
    enter(3);
    EXPECT_TRUE(keeper->is_at_it());
    settle();
    EXPECT_EQ(copied, 1);
    enter();
    EXPECT_EQ(shelf.book().last_seq() - newest(), 1);
}

TEST_F(Keeping, says_that_no_copy_can_be_made_and_tries_again) {
    QFile in_the_way(folder);
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    EXPECT_EQ(look(), 0);
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0].contains(QDir::toNativeSeparators(folder))) << failed[0].toStdString();
    EXPECT_EQ(keeper->failure(), failed[0]);
    pass(5 * minute);
    EXPECT_EQ(look(), 0);
    EXPECT_EQ(failed.size(), 1) << "not every minute";
    in_the_way.remove();
    pass(6 * minute);
    EXPECT_EQ(look(), 1);
    EXPECT_TRUE(keeper->failure().isEmpty());
}

TEST_F(Keeping, finds_a_workbook_damaged_only_when_a_second_copy_is_unsound_too) {
    ASSERT_EQ(look(), 1);
    const QStringList before = files_in(folder);
    EXPECT_EQ(Raw(shelf.path()).run("DROP TRIGGER yard_changed"), "");
    keeper->copy_now();
    settle();
    EXPECT_EQ(damaged, 1);
    EXPECT_EQ(failed.size(), 1);
    EXPECT_EQ(files_in(folder), before) << "the good copy stays, and no other is there";
}

TEST_F(Keeping, sends_a_copy_with_its_seal_and_writes_over_nothing) {
    const QString to = shelf.folder() + QStringLiteral("/for the inspector.soakbook");
    ASSERT_EQ(look(), 1);
    const QStringList at_home = files_in(folder);
    QSignalSpy sent(keeper.get(), &ui::CopyKeeper::sent);
    QSignalSpy not_sent(keeper.get(), &ui::CopyKeeper::not_sent);
    keeper->send_copy(to);
    settle();
    ASSERT_EQ(sent.size(), 1);
    EXPECT_EQ(sent[0][0].toString(), to);
    EXPECT_EQ(sent[0][1].toLongLong(), shelf.book().last_seq());
    EXPECT_EQ(sent[0][2].toString(), QString::fromLatin1(newest_seal(shelf.book().db()).hash.toHex().left(16)));
    EXPECT_TRUE(verify(to).sound());
    EXPECT_EQ(files_in(folder), at_home) << "it is no safe copy of this computer";
    keeper->send_copy(to);
    settle();
    EXPECT_EQ(not_sent.size(), 1);
    // While another copy is under way it waits its turn.
    keeper->copy_now();
    keeper->send_copy(to + QStringLiteral(" 2.soakbook"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return sent.size() == 2 && keeper->stage() == Stage::idle; }, 60'000));
    EXPECT_EQ(copied, 2);
}

TEST_F(Keeping, copies_before_it_is_closed) {
    ASSERT_EQ(look(), 1);
    EXPECT_EQ(keeper->finish(), QString());
    EXPECT_EQ(files_in(folder).size(), 1) << "nothing entered, nothing copied";
    begin();
    enter(2);
    keeper->copy_now();
    enter();
    EXPECT_EQ(keeper->finish(), QString());
    EXPECT_EQ(newest(), shelf.book().last_seq());
    QFile in_the_way(shelf.folder() + QStringLiteral("/taken"));
    ASSERT_TRUE(in_the_way.open(QIODevice::WriteOnly));
    folder = in_the_way.fileName();
    begin();
    EXPECT_FALSE(keeper->finish().isEmpty());
}

TEST_F(Keeping, can_be_let_go_at_any_moment) {
    for (int events = 0; events < 12; ++events) {
        begin();
        enter();
        keeper->copy_now();
        for (int i = 0; i < events; ++i)
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::ExcludeUserInputEvents, 2);
        keeper.reset();
        for (const QString& name : files_in(folder))
            ASSERT_FALSE(name.endsWith(QStringLiteral(".part"))) << name.toStdString();
    }
    for (const SafeCopy& copy : safe_copies_of(shelf.book(), folder))
        EXPECT_TRUE(verify(copy.path).sound());
}

TEST_F(Keeping, leaves_a_workbook_that_is_only_looked_at_alone) {
    keeper.reset();
    shelf.close();
    auto looked_at = Workbook::open_for_looking(shelf.path());
    ASSERT_TRUE(looked_at);
    app::Keeper looking(**looked_at, folder, [this] { return now; });
    looking.look();
    EXPECT_EQ(looking.stage(), Stage::idle);
    EXPECT_EQ(looking.finish(), QString());
    EXPECT_TRUE(files_in(folder).isEmpty());
}

TEST_F(Keeping, brings_each_good_copy_to_the_second_place) {
    ASSERT_TRUE(QDir().mkpath(stick));
    ui::choose_second_place(stick, now);
    ASSERT_EQ(look(), 1);
    ASSERT_EQ(files_in(stick), files_in(folder));
    EXPECT_TRUE(verify(QDir(stick).filePath(files_in(stick)[0])).sound());
    ASSERT_EQ(keeper->second_copies().size(), 1U);
    EXPECT_TRUE(keeper->second_copies()[0].elsewhere);
    const QString mark = work::mark_of_copies(shelf.book());
    EXPECT_EQ(ui::second_place_news(mark).newest_entry, shelf.book().last_seq());
    EXPECT_EQ(ui::second_place_news(mark).answered, now);
    enter();
    EXPECT_EQ(keeper->finish(), QString());
    EXPECT_EQ(files_in(stick), files_in(folder)) << "when it is closed, too";
    EXPECT_EQ(files_in(stick).size(), 2);
}

TEST_F(Keeping, says_that_the_second_place_is_away_and_brings_the_copy_when_it_is_back) {
    ui::choose_second_place(stick, now);
    ASSERT_EQ(look(), 1);
    EXPECT_TRUE(keeper->second_failure().contains(QDir::toNativeSeparators(stick))) << keeper->second_failure().toStdString();
    EXPECT_TRUE(keeper->failure().isEmpty()) << "the copy at home is good";
    EXPECT_FALSE(QDir(stick).exists());
    ASSERT_TRUE(QDir().mkpath(stick));
    pass(5 * minute);
    look();
    EXPECT_TRUE(files_in(stick).isEmpty()) << "asked again only after a while";
    pass(6 * minute);
    look();
    EXPECT_EQ(files_in(stick), files_in(folder));
    EXPECT_TRUE(keeper->second_failure().isEmpty());
    // With nothing to bring it is looked at daily, so that it is known to answer.
    pass(25 * 60 * minute);
    look();
    EXPECT_EQ(ui::second_place_news(work::mark_of_copies(shelf.book())).answered, now);
}

TEST_F(Keeping, chosen_anew_gets_the_newest_copy_at_once) {
    ASSERT_EQ(look(), 1);
    ASSERT_TRUE(QDir().mkpath(stick));
    ui::choose_second_place(stick, now);
    keeper->look_at_second_place();
    settle();
    EXPECT_EQ(files_in(stick), files_in(folder));
    ui::choose_no_second_place(now);
    keeper->look_at_second_place();
    settle();
    EXPECT_TRUE(keeper->second_copies().empty());
    enter();
    keeper->copy_now();
    settle();
    EXPECT_EQ(files_in(stick).size(), 1) << "none is wanted any more";
}

} // namespace soakbook::tests
