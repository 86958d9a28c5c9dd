// SPDX-License-Identifier: GPL-3.0-or-later
// What an inspector is shown: treatments, entries made late, corrections, voids and what was undone after it was shown.
#include "core/work/bag.h"
#include "core/work/papers.h"
#include "core/work/register_view.h"
#include "core/work/shed_view.h"
#include "core/work/undo.h"
#include "yards_bench.h"

#include <algorithm>

namespace soakbook::tests {
namespace {

using namespace work;

struct Treated : YardsBench {
    BatchId batch = bagged_batch();
    RoundId the_round = round(10);

    RegisterLine line(HiveId hive) {
        const auto name = work::hive(book(), hive)->name;
        for (RegisterLine& l : treatments(book(), {}))
            if (l.hive == name)
                return std::move(l);
        throw std::runtime_error("not in the register");
    }
};

TEST(Register, a_treatment_says_what_went_where) {
    Treated b;
    b.visit(b.the_round, 10);
    b.pull(b.yard, 55);
    const auto line = b.line(b.hives[0]);
    EXPECT_EQ(line.placed_on, day_n(10));
    EXPECT_EQ(line.yard, QStringLiteral("Mill lane"));
    EXPECT_EQ(line.strips, 4);
    // Trade's check value: 33.9 g a strip, 11 g dry, 40 %: 9.16 g of dihydrate.
    EXPECT_EQ(line.acid_per_strip, maths::grams(9.16));
    EXPECT_EQ(line.acid, maths::grams(4 * 9.16));
    EXPECT_EQ(line.strength, maths::percent(40));
    EXPECT_EQ(line.placed_by, QStringLiteral("Ada"));
    EXPECT_FALSE(line.written_late);
    EXPECT_FALSE(line.pulled_late);
    EXPECT_FALSE(line.pull_written_late);
    EXPECT_EQ(line.pulled_on, day_n(55));
    EXPECT_EQ(line.pulled, 4);
    EXPECT_EQ(line.missing, 0);
    EXPECT_EQ(line.no_harvest_before, day_n(69));
    EXPECT_EQ(line.supers_on, false);
    EXPECT_EQ(line.round, QStringLiteral("Late summer"));
    EXPECT_EQ(line.batch_code, batch_view(b.book(), b.batch, day_n(10))->line.code);
}

TEST(Register, entries_made_late_are_marked) {
    Treated b;
    const auto entry = b.as_planned(b.the_round, b.yard, 10);
    must(enter_visit(b.book(), entry, on_day(11)));
    PullEntry pull;
    pull.on = day_n(55);
    for (const PullLine& line : hanging(b.book(), b.yard, day_n(55)))
        pull.rows.push_back({line.placement, {}, {}, {}});
    must(enter_pull(b.book(), pull, on_day(57)));
    const auto line = b.line(b.hives[0]);
    EXPECT_TRUE(line.written_late);
    EXPECT_EQ(line.written, moment(11, 12));
    EXPECT_TRUE(line.pull_written_late);
    EXPECT_FALSE(line.pulled_late) << "it came out within its window";
}

TEST(Register, strips_out_after_the_last_day_of_their_window_are_marked) {
    Treated b;
    b.visit(b.the_round, 10);
    PullEntry pull;
    pull.on = day_n(66);
    pull.rows.push_back({b.placement(b.hives[0]), {}, {}, {}});
    must(enter_pull(b.book(), pull, on_day(66)));
    pull.on = day_n(67);
    pull.rows[0].placement = b.placement(b.hives[1]);
    must(enter_pull(b.book(), pull, on_day(67)));
    EXPECT_FALSE(b.line(b.hives[0]).pulled_late);
    EXPECT_TRUE(b.line(b.hives[1]).pulled_late);
    EXPECT_FALSE(b.line(b.hives[1]).pull_written_late);
}

TEST(Register, corrections_and_voids_stay_readable) {
    Treated b;
    b.visit(b.the_round, 10);
    const auto first = b.placement(b.hives[0]);
    const auto second = b.placement(b.hives[1]);
    must(correct_placement(b.book(), first, 3, {}, because(QStringLiteral("three, not four"), 12)));
    must(void_placement(b.book(), second, because(QStringLiteral("hung in A3"), 13)));
    const auto corrected = b.line(b.hives[0]);
    ASSERT_EQ(corrected.corrections.size(), 1u);
    EXPECT_EQ(corrected.corrections[0].column, QStringLiteral("strips"));
    EXPECT_EQ(corrected.corrections[0].before, QStringLiteral("4"));
    EXPECT_EQ(corrected.corrections[0].after, QStringLiteral("3"));
    EXPECT_EQ(corrected.corrections[0].why, QStringLiteral("three, not four"));
    EXPECT_EQ(corrected.corrections[0].who, QStringLiteral("Ada"));
    EXPECT_EQ(corrected.corrections[0].at, moment(12, 12));
    const auto voided = b.line(b.hives[1]);
    EXPECT_EQ(voided.void_reason, QStringLiteral("hung in A3"));
    ASSERT_EQ(voided.corrections.size(), 1u);
    EXPECT_TRUE(voided.corrections[0].made_void);
    RegisterFilter without;
    without.also_void = false;
    EXPECT_EQ(treatments(b.book(), without).size() + 1, treatments(b.book(), {}).size());
}

TEST(Register, corrections_of_treatments_stand_in_the_list_with_the_others) {
    Treated b;
    const auto orchard = must(save_yard(b.book(), {{}, QStringLiteral("Orchard"), {}, {}, true}, on_day(0)));
    b.visit(b.the_round, 10);
    must(correct_placement(b.book(), b.placement(b.hives[0]), 3, {}, because(QStringLiteral("three, not four"), 12)));
    b.pull(b.yard, 55);
    const auto lines = corrections(b.book(), {});
    ASSERT_EQ(lines.size(), 1u) << "taking strips out corrects nothing";
    EXPECT_EQ(lines[0].column, QStringLiteral("strips"));
    EXPECT_EQ(lines[0].before, QStringLiteral("4"));
    EXPECT_EQ(lines[0].after, QStringLiteral("3"));
    EXPECT_EQ(lines[0].why, QStringLiteral("three, not four"));
    EXPECT_TRUE(lines[0].record.startsWith(QStringLiteral("A1, "))) << lines[0].record.toStdString();
    RegisterFilter filter;
    filter.yard = b.yard;
    filter.batch = b.batch;
    filter.from = day_n(10);
    EXPECT_EQ(corrections(b.book(), filter).size(), 1u);
    filter = {};
    filter.yard = orchard;
    EXPECT_TRUE(corrections(b.book(), filter).empty());
    filter = {};
    filter.from = day_n(11);
    EXPECT_TRUE(corrections(b.book(), filter).empty()) << "it belongs to a treatment of another day";
}

TEST(Register, a_visit_undone_after_a_print_is_still_shown) {
    Treated b;
    b.visit(b.the_round, 10);
    std::vector<PlacementId> shown;
    for (const PullLine& line : hanging(b.book(), {}, day_n(10)))
        shown.push_back(line.placement);
    must(sheet_printed(b.book(), QStringLiteral("register"), {}, {}, shown, on_day(10, 13)));
    must(undo(b.book(), on_day(10, 14)));
    EXPECT_TRUE(hanging(b.book(), {}, day_n(10)).empty());
    const auto lines = treatments(b.book(), {});
    ASSERT_EQ(lines.size(), shown.size());
    for (const RegisterLine& line : lines) {
        EXPECT_EQ(line.void_reason, QStringLiteral("undone"));
        ASSERT_EQ(line.corrections.size(), 1u);
        EXPECT_TRUE(line.corrections[0].undone);
    }
    EXPECT_EQ(stock_figures(b.book(), day_n(10)).ready, 960) << "the strips are back in their bags";
}

TEST(Register, a_visit_undone_before_anybody_saw_it_leaves_no_line) {
    Treated b;
    b.visit(b.the_round, 10);
    must(undo(b.book(), on_day(10)));
    EXPECT_TRUE(treatments(b.book(), {}).empty());
    EXPECT_EQ(journal(b.book(), 2).front().piece.key, QStringLiteral("undo:strips_in"))
        << "the history keeps it all the same";
}

TEST(Register, questions_answered_with_yes_stand_beside_the_treatment) {
    Treated b;
    must(save_yard_time(b.book(), {{}, b.yard, TimeKind::flow, QStringLiteral("ivy"), day_n(5), day_n(40)}, on_day(0)));
    auto entry = b.as_planned(b.the_round, b.yard, 10);
    entry.supers_on = true;
    must(enter_visit(b.book(), entry, on_day(10), {Why::supers_on, Why::in_flow, Why::bag_resting}));
    EXPECT_EQ(b.line(b.hives[0]).asked, (QStringList{QStringLiteral("supers_on"), QStringLiteral("in_flow")}))
        << "only what was asked";
    EXPECT_EQ(b.line(b.hives[0]).supers_on, true);
}

TEST(Register, a_strip_past_its_limit_shows_its_reason) {
    Treated b;
    const auto ids = b.bags_of(b.batch);
    const int late = static_cast<int>(maths::days_between(first_day, *bag(b.book(), ids[0], day_n(3))->use_by)) + 5;
    PlaceEntry entry;
    entry.hive = b.hives[0];
    entry.strips = 4;
    entry.bag = ids[0];
    entry.supers_on = false;
    entry.past_limit_reason = QStringLiteral("nothing else at hand");
    must(place_strips(b.book(), entry, on_day(late)));
    EXPECT_EQ(b.line(b.hives[0]).past_limit_reason, QStringLiteral("nothing else at hand"));
}

TEST(Register, is_narrowed_by_days_yard_and_batch) {
    Treated b;
    const auto orchard = must(save_yard(b.book(), {{}, QStringLiteral("Orchard"), {}, {}, true}, on_day(0)));
    must(add_hives(b.book(), {orchard, QStringLiteral("O"), 1, 3, 1, {}, 8}, on_day(0)));
    const auto other = b.bagged_batch(12, 1);
    b.visit(b.the_round, 10);
    const auto second = b.round(20, QStringLiteral("second"), {orchard});
    auto entry = b.as_planned(second, orchard, 20);
    for (auto& row : entry.rows)
        row.bag = b.bags_of(other)[0];
    must(enter_visit(b.book(), entry, on_day(20)));
    RegisterFilter filter;
    filter.yard = orchard;
    EXPECT_EQ(treatments(b.book(), filter).size(), 3u);
    filter = {};
    filter.batch = other;
    EXPECT_EQ(treatments(b.book(), filter).size(), 3u);
    filter = {};
    filter.to = day_n(10);
    for (const auto& line : treatments(b.book(), filter))
        EXPECT_EQ(line.yard, QStringLiteral("Mill lane"));
    filter.from = day_n(11);
    filter.to = day_n(19);
    EXPECT_TRUE(treatments(b.book(), filter).empty());
}

TEST(Register, a_weighing_put_right_shows_its_total_and_mean_before_and_after) {
    Treated b;
    const auto soak = batch_view(b.book(), b.batch, day_n(3))->soaks.front();
    WeighEntry right;
    right.soak = soak.id;
    right.strips = 10;
    right.total = maths::grams(341);
    must(correct_weighing(b.book(), soak.weighings.front().id, right,
                          because(QStringLiteral("read the wrong line"), 3)));
    b.visit(b.the_round, 10);
    const auto lines = corrections(b.book(), {});
    const auto find = [&](const char* column) {
        return std::find_if(lines.begin(), lines.end(),
                            [&](const CorrectionLine& l) { return l.column == QLatin1String(column); });
    };
    ASSERT_NE(find("total_mg"), lines.end());
    EXPECT_EQ(find("total_mg")->before, QStringLiteral("339000"));
    EXPECT_EQ(find("total_mg")->after, QStringLiteral("341000"));
    EXPECT_EQ(find("total_mg")->why, QStringLiteral("read the wrong line"));
    ASSERT_NE(find("mean_mg"), lines.end());
    EXPECT_EQ(find("mean_mg")->before, QStringLiteral("33900"));
    EXPECT_EQ(find("mean_mg")->after, QStringLiteral("34100"));
    EXPECT_TRUE(find("total_mg")->record.endsWith(QStringLiteral("bin 1")));
    // It stands behind this batch's treatments and behind no other's.
    const auto other = b.bagged_batch(12, 1);
    RegisterFilter filter;
    filter.batch = b.batch;
    EXPECT_EQ(corrections(b.book(), filter).size(), lines.size());
    filter.batch = other;
    EXPECT_TRUE(corrections(b.book(), filter).empty());
}

TEST(Register, a_bag_put_right_or_made_void_is_shown) {
    Treated b;
    const auto ids = b.bags_of(b.batch);
    BagCorrection correction;
    correction.bag = ids[0];
    correction.packed = 78;
    must(correct_bag(b.book(), correction, because(QStringLiteral("counted again"), 4)));
    must(void_bag(b.book(), ids[1], because(QStringLiteral("burst"), 5)));
    const auto lines = corrections(b.book(), {});
    ASSERT_GE(lines.size(), 2u);
    EXPECT_EQ(lines.front().column, QStringLiteral("packed"));
    EXPECT_EQ(lines.front().before, QStringLiteral("80"));
    EXPECT_EQ(lines.front().record, bag(b.book(), ids[0], day_n(5))->code);
    EXPECT_TRUE(lines.back().made_void);
    EXPECT_EQ(lines.back().after, QStringLiteral("burst"));
    must(undo(b.book(), on_day(5)));
    EXPECT_TRUE(corrections(b.book(), {}).back().undone) << "taken back, and both are read";
}

TEST(Register, hives_found_dead_or_left_without_strips_are_listed) {
    Treated b;
    auto treated = *hive(b.book(), b.hives[4]);
    treated.untreated = true;
    must(save_hive(b.book(), treated, on_day(4)));
    auto entry = b.as_planned(b.the_round, b.yard, 10);
    entry.rows[0].strips = 0;
    entry.rows[0].state = StateOfHive::dead;
    entry.rows[0].note = QStringLiteral("robbed out");
    entry.rows[1].strips = 0;
    must(enter_visit(b.book(), entry, on_day(10)));
    must(add_hives(b.book(), {b.yard, QStringLiteral("N"), 1, 1, 1, {}, {}}, on_day(12))); // came later
    const auto lines = hive_states(b.book(), {});
    ASSERT_EQ(lines.size(), 3u);
    const auto of = [&](const char* name) {
        return *std::find_if(lines.begin(), lines.end(),
                             [&](const HiveStateLine& l) { return l.hive == QLatin1String(name); });
    };
    EXPECT_EQ(of("A1").state, QStringLiteral("dead"));
    EXPECT_EQ(of("A1").note, QStringLiteral("robbed out"));
    EXPECT_EQ(of("A1").on, day_n(10));
    EXPECT_EQ(of("A2").state, QStringLiteral("none_hung"));
    EXPECT_EQ(of("A5").state, QStringLiteral("untreated"));
    RegisterFilter later;
    later.from = day_n(11);
    EXPECT_TRUE(hive_states(b.book(), later).empty());
}

TEST(Register, the_history_of_a_record_reads_newest_first) {
    Treated b;
    b.visit(b.the_round, 10);
    const auto id = b.placement(b.hives[0]);
    must(correct_placement(b.book(), id, 3, {}, because(QStringLiteral("three"), 12)));
    const auto lines = history(b.book(), QStringLiteral("placement"), id.value);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_EQ(lines[0].column, QStringLiteral("strips"));
    EXPECT_EQ(lines[1].column, QStringLiteral("added"));
    EXPECT_TRUE(lines[0].record.startsWith(QStringLiteral("A1, S")));
    const auto newest = journal(b.book(), 3);
    ASSERT_EQ(newest.size(), 3u);
    EXPECT_EQ(newest[0].piece, (book::Piece{QStringLiteral("corrected"), 1, QStringLiteral("A1")}));
    EXPECT_EQ(newest[1].piece, (book::Piece{QStringLiteral("strips_in"), 26, QStringLiteral("Mill lane")}));
    EXPECT_FALSE(newest[0].outside);
}

} // namespace
} // namespace soakbook::tests
