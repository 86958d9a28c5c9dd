// SPDX-License-Identifier: GPL-3.0-or-later
// Law 3 under any order of work: packed = placed + discarded + corrected + left, for each bag after each step, and no
// trigger of the store ever fires.
#include "core/work/register_view.h"
#include "core/work/stock.h"
#include "core/work/undo.h"
#include "yards_bench.h"

#include <random>

namespace soakbook::tests {
namespace {

using namespace work;

/// One long season of random work on one workbook.
class Season {
public:
    explicit Season(unsigned seed) : m_random(seed) {
        m_bench.say(Figure::rest_days, 3);
        m_bench.bagged_batch();
        m_bench.bagged_batch(4, 1);
        for (const BagLine& line : bags(m_bench.book(), day_n(8)))
            m_bags.push_back(line.id);
    }
    void step(int n) {
        m_day = n;
        switch (pick(9)) {
        case 0:
        case 1:
            visit();
            break;
        case 2:
            pull();
            break;
        case 3:
            discard();
            break;
        case 4:
            recount();
            break;
        case 5:
            place();
            break;
        case 6:
            correct();
            break;
        case 7:
            take_back();
            break;
        default:
            make_void();
            break;
        }
        check();
    }
    int taken() const { return m_taken; }

private:
    int pick(int n) { return static_cast<int>(std::uniform_int_distribution<int>(0, n - 1)(m_random)); }
    BagId any_bag() { return m_bags[static_cast<std::size_t>(pick(static_cast<int>(m_bags.size())))]; }
    template <class T> void count(const Outcome<T>& outcome) { m_taken += outcome ? 1 : 0; }
    const Confirmed m_yes{Why::hive_has_strips, Why::bag_resting, Why::window_not_open, Why::dose_outside,
                          Why::long_ago};

    void visit() {
        const auto name = QStringLiteral("round %1").arg(++m_rounds);
        RoundEntry entry;
        entry.name = name;
        entry.planned_on = day_n(m_day);
        entry.yards = {m_bench.yard};
        const auto round = plan_round(m_bench.book(), entry, on_day(m_day));
        if (!round)
            return;
        auto typed = m_bench.as_planned(*round, m_bench.yard, m_day - pick(3));
        for (auto& row : typed.rows) {
            row.strips = pick(3) == 0 ? pick(9) : 0;
            if (pick(10) == 0)
                row.bag = any_bag();
        }
        count(enter_visit(m_bench.book(), typed, on_day(m_day), m_yes));
    }
    void place() {
        PlaceEntry entry;
        entry.hive = m_bench.hives[static_cast<std::size_t>(pick(20))];
        entry.strips = pick(100);
        entry.supers_on = false;
        if (pick(2))
            entry.bag = any_bag();
        count(place_strips(m_bench.book(), entry, on_day(m_day), m_yes));
    }
    void pull() {
        PullEntry entry;
        entry.on = day_n(m_day);
        for (const PullLine& line : hanging(m_bench.book(), {}, day_n(m_day)))
            if (pick(2))
                entry.rows.push_back({line.placement, pick(line.strips + 2), {}, {}});
        count(enter_pull(m_bench.book(), entry, on_day(m_day), m_yes));
    }
    void discard() {
        count(discard_strips(m_bench.book(), any_bag(), pick(60), {}, QStringLiteral("mouldy"), on_day(m_day)));
    }
    void recount() {
        count(recount_bag(m_bench.book(), any_bag(), pick(90), QStringLiteral("counted"), on_day(m_day)));
    }
    std::optional<PlacementId> any_placement() {
        const auto lines = treatments(m_bench.book(), {});
        return lines.empty()
                   ? std::nullopt
                   : std::optional(lines[static_cast<std::size_t>(pick(static_cast<int>(lines.size())))].placement);
    }
    void correct() {
        if (const auto id = any_placement()) {
            const auto why = because(QStringLiteral("put right"), m_day);
            count(correct_placement(m_bench.book(), *id, pick(12),
                                    pick(2) ? std::optional(day_n(m_day - pick(4))) : std::nullopt, why));
            count(correct_pull(m_bench.book(), *id, pick(6), {}, {}, why));
        }
    }
    void make_void() {
        if (const auto id = any_placement())
            count(void_placement(m_bench.book(), *id, because(QStringLiteral("wrong hive"), m_day)));
    }
    void take_back() {
        const int times = 1 + pick(3);
        for (int i = 0; i < times; ++i)
            if (pick(3) == 0)
                count(redo(m_bench.book(), on_day(m_day)));
            else if (next_undo(m_bench.book()) && next_undo(m_bench.book())->key != QStringLiteral("bags_filled"))
                count(undo(m_bench.book(), on_day(m_day)));
    }
    /// Each bag's sum from its own list of events, which is another way than the one that made `left`.
    void check() {
        for (const BagLine& line : bags(m_bench.book(), day_n(m_day), BagFilter::all)) {
            ASSERT_GE(line.left, 0);
            ASSERT_EQ(*line.packed, line.placed + line.discarded - line.recounted + line.left);
            int told = 0;
            for (const BagEvent& event : bag_events(m_bench.book(), line.id))
                if (!event.made_void)
                    told += event.strips;
            ASSERT_EQ(told, line.left) << "day " << m_day << ", bag " << line.code.toStdString();
        }
        int hung = 0;
        for (const RegisterLine& line : treatments(m_bench.book(), {}))
            hung += line.void_reason.isEmpty() ? line.strips : 0;
        int placed = 0;
        for (const BagLine& line : bags(m_bench.book(), day_n(m_day), BagFilter::all))
            placed += line.placed;
        ASSERT_EQ(hung, placed);
    }

    YardsBench m_bench;
    std::mt19937 m_random;
    std::vector<BagId> m_bags;
    int m_day = 0;
    int m_rounds = 0;
    int m_taken = 0;
};

TEST(Law3, holds_for_every_bag_after_every_step_of_a_random_season) {
    int taken = 0;
    for (const unsigned seed : {1u, 2u, 3u, 4u}) {
        Season season(seed);
        for (int n = 9; n < 69; ++n) {
            season.step(n);
            if (::testing::Test::HasFatalFailure())
                FAIL() << "seed " << seed << ", day " << n;
        }
        taken += season.taken();
    }
    EXPECT_GT(taken, 100) << "most steps are to do something";
}

} // namespace
} // namespace soakbook::tests
