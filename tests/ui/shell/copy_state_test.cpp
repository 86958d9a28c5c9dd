// SPDX-License-Identifier: GPL-3.0-or-later
// What the status line and Due say of the safe copies.
#include "ui/shell/copy_state.h"

#include "core/book/workbook.h"
#include "core/work/safe_copies.h"
#include "core/work/setup.h"
#include "ui/due/due_words.h"
#include "ui/parts/desk.h"
#include "ui/setup/copy_ages.h"
#include "ui/setup/copy_keeper.h"
#include "ui/setup/second_place.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSettings>
#include <QTemporaryDir>

#include <algorithm>

#include <gtest/gtest.h>

namespace soakbook::ui {
namespace {

constexpr qint64 hour = 3600 * 1000;
constexpr qint64 a_day = 24 * hour;

class FailingKeeper : public CopyKeeper {
public:
    Stage stage() const override { return Stage::idle; }
    int percent() const override { return 0; }
    QString failure() const override { return QStringLiteral("The disk is full."); }
    QString second_failure() const override { return {}; }
    void copy_now() override {}
    void send_copy(const QString&) override {}
    void look_at_second_place() override {}
    std::vector<work::CopyLine> second_copies() const override { return {}; }
};

class CopyStates : public testing::Test {
protected:
    CopyStates() {
        QSettings().clear();
        auto made = book::Workbook::create(folder.filePath(QStringLiteral("heron.soakbook")), {clock_now(), QStringLiteral("Ida"), {}, false});
        EXPECT_TRUE(made.has_value());
        workbook = std::move(*made);
        desk = std::make_unique<Desk>(*workbook, [this] { return now(); });
    }
    /// The wall's clock, since files go by it, and so much later.
    maths::Instant now() const {
        maths::Instant at = clock_now();
        at.utc_ms += later;
        return at;
    }
    void enter(const char* name) { ASSERT_TRUE(work::save_person(*workbook, {{}, QLatin1String(name), true}, desk->doing())); }
    void copy() { ASSERT_TRUE(work::make_safe_copy(*workbook, copies)); }
    QString status() const { return status_facts(*desk, copies).safe_copy; }
    std::vector<work::DueRow> rows(work::DueKind kind) const {
        std::vector<work::DueRow> found = late_copy(*desk, copies);
        found.erase(std::remove_if(found.begin(), found.end(), [kind](const work::DueRow& row) { return row.kind != kind; }), found.end());
        return found;
    }

    QTemporaryDir folder;
    QString copies = folder.filePath(QStringLiteral("copies"));
    qint64 later = 0;
    std::unique_ptr<book::Workbook> workbook;
    std::unique_ptr<Desk> desk;
};

TEST_F(CopyStates, the_status_line_says_how_old_the_last_copy_is_and_that_it_was_checked) {
    EXPECT_EQ(status(), QStringLiteral("No safe copy yet"));
    enter("Ida");
    copy();
    EXPECT_EQ(status(), QStringLiteral("Safe copy just now, checked"));
    later = 14 * 60'000 + 30'000;
    EXPECT_EQ(status(), QStringLiteral("Safe copy 14 min ago, checked"));
    later = 3 * hour + 60'000;
    enter("Jon");
    EXPECT_TRUE(status().startsWith(QLatin1String("Safe copy 3 h ago, 1 entry"))) << status().toStdString();
    EXPECT_FALSE(status_facts(*desk, copies).copy_state);
    later = 25 * hour;
    EXPECT_EQ(status_facts(*desk, copies).copy_state, State::near);
    EXPECT_TRUE(status().contains(QLatin1String("Safe copy "))) << status().toStdString();
    EXPECT_FALSE(status().contains(QLatin1String("ago"))) << "from a day on the day is said";
}

TEST_F(CopyStates, a_copy_of_the_future_is_said_with_its_day) {
    enter("Ida");
    copy();
    later = -2 * a_day;
    EXPECT_FALSE(status().contains(QLatin1String("ago")) || status().contains(QLatin1String("just now"))) << status().toStdString();
}

TEST_F(CopyStates, a_copy_that_failed_is_said_before_all_else) {
    enter("Ida");
    copy();
    const FailingKeeper keeper;
    const StatusFacts facts = status_facts(*desk, copies, &keeper);
    EXPECT_EQ(facts.safe_copy, QStringLiteral("No safe copy could be made"));
    EXPECT_EQ(facts.copy_state, State::past);
}

TEST_F(CopyStates, entries_without_a_copy_for_a_day_are_due) {
    enter("Ida");
    later = 23 * hour;
    EXPECT_TRUE(rows(work::DueKind::safe_copy_late).empty());
    later = 25 * hour;
    ASSERT_EQ(rows(work::DueKind::safe_copy_late).size(), 1U);
    copy();
    EXPECT_TRUE(rows(work::DueKind::safe_copy_late).empty());
    EXPECT_TRUE(late_copy(*desk, {}).empty()) << "of the example no copy is made";
}

TEST_F(CopyStates, a_second_place_is_asked_for_within_the_first_week_and_never_again_once_none_is_wanted) {
    later = 2 * a_day;
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
    later = 4 * a_day;
    ASSERT_EQ(rows(work::DueKind::second_place).size(), 1U);
    const work::DueRow row = rows(work::DueKind::second_place)[0];
    EXPECT_EQ(row.group, work::DueGroup::this_week);
    EXPECT_EQ(due_words(row, *desk).leads_to.task, QStringLiteral("safe_copies"));
    EXPECT_FALSE(due_words(row, *desk).what.isEmpty());
    choose_no_second_place(desk->now());
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
    later = 400 * a_day;
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
}

TEST_F(CopyStates, a_second_place_that_is_away_for_a_week_is_due) {
    choose_second_place(QStringLiteral("/a/stick"), desk->now());
    later = 6 * a_day;
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
    note_second_place(work::mark_of_copies(*workbook), {1, desk->now()});
    later = 12 * a_day;
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
    later = 14 * a_day;
    ASSERT_EQ(rows(work::DueKind::second_place).size(), 1U);
    EXPECT_EQ(rows(work::DueKind::second_place)[0].subject, QStringLiteral("/a/stick"));
    EXPECT_TRUE(due_words(rows(work::DueKind::second_place)[0], *desk).what.contains(QLatin1String("stick")));
    // Another one is given its week.
    choose_second_place(QStringLiteral("/another/stick"), desk->now());
    EXPECT_TRUE(rows(work::DueKind::second_place).empty());
}

} // namespace
} // namespace soakbook::ui
