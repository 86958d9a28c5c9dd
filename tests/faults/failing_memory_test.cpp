// SPDX-License-Identifier: GPL-3.0-or-later
// The computer has no memory left at the k-th time that SQLite asks for some, once or for ever.
#include "child.h"
#include "trial.h"

#include "core/book/statement.h"

#include <sqlite3.h>

namespace soakbook::faults {

namespace {

struct Memory {
    sqlite3_mem_methods real{};
    int at = 0; // 0: never fails
    bool once = true;
    int asked = 0;
    bool came = false;

    bool strikes() {
        if (at == 0)
            return false;
        ++asked;
        const bool now = asked == at || (asked > at && !once);
        came = came || now;
        return now;
    }
};
Memory given_memory;

void* give(int bytes) { return given_memory.strikes() ? nullptr : given_memory.real.xMalloc(bytes); }
void* give_more(void* was, int bytes) { return given_memory.strikes() ? nullptr : given_memory.real.xRealloc(was, bytes); }

/// For a child alone: SQLite's memory is chosen before its first use.
bool take_memory_over() {
    sqlite3_shutdown();
    sqlite3_mem_methods ours;
    if (sqlite3_config(SQLITE_CONFIG_GETMALLOC, &given_memory.real) != SQLITE_OK)
        return false;
    ours = given_memory.real;
    ours.xMalloc = give;
    ours.xRealloc = give_more;
    return sqlite3_config(SQLITE_CONFIG_MALLOC, &ours) == SQLITE_OK && sqlite3_initialize() == SQLITE_OK;
}

const Failing failing_memory{"memory", [](int at, bool once) { given_memory = {given_memory.real, at, once, 0, false}; }, [] { return given_memory.came; },
                             [] { return given_memory.asked; }, [] { given_memory.at = 0; }};

class FailingMemory : public ::testing::TestWithParam<int> {};

/// Runs it in a child; failures are told as text.
int in_a_child(const std::function<int()>& work) {
    (void)filled_workbook();
    Child child([&](const Child::Tell& tell) {
        if (!take_memory_over())
            return tell("SQLite kept its own memory");
        const int failures = work();
        const auto* result = ::testing::UnitTest::GetInstance()->current_test_info()->result();
        for (int i = 0; i < result->total_part_count(); ++i)
            if (result->GetTestPartResult(i).failed())
                tell("failed: " + std::string(result->GetTestPartResult(i).message()).substr(0, 400));
        tell("failures " + std::to_string(failures));
    });
    const auto told = child.rest();
    EXPECT_EQ(child.died_of(), 0);
    int failures = -1;
    for (const std::string& line : told) {
        if (line.rfind("failures ", 0) == 0)
            failures = std::stoi(line.substr(9));
        else
            ADD_FAILURE() << line;
    }
    return failures;
}

} // namespace

TEST_P(FailingMemory, at_any_moment_of_a_piece_of_work_leaves_all_or_nothing_and_lets_it_be_done_again) {
    const PieceOfWork& piece = plain_pieces().at(static_cast<std::size_t>(GetParam()));
    const int failures = in_a_child([&] {
        int all = 0;
        for (const bool once : {true, false})
            all += try_every_failure(piece, failing_memory, once, cases(15, 500));
        return all;
    });
    RecordProperty("failures", failures);
    std::printf("  %s: %d failures\n", piece.name.c_str(), failures);
    EXPECT_GT(failures, 10);
}
INSTANTIATE_TEST_SUITE_P(Pieces, FailingMemory, ::testing::Range(0, 6));

TEST(FailingMemoryAtOpening, is_refused_and_the_workbook_opens_the_next_time_with_every_byte_the_same) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    const int failures = in_a_child([&] {
        int refused = 0;
        for (const bool once : {true, false}) {
            failing_memory.begin(1 << 30, true);
            (void)book::Workbook::open(path);
            const int moments = failing_memory.moments();
            for (int at = 1; at <= moments; at += 1 + moments / cases(30, 1'000)) {
                failing_memory.begin(at, once);
                const bool opened = book::Workbook::open(path).has_value();
                const bool came = failing_memory.came();
                const bool sound = book::verify(path).sound();
                failing_memory.heal();
                refused += opened ? 0 : 1;
                EXPECT_TRUE(opened || came) << at;
                EXPECT_TRUE(once || !came || !sound) << at << ": found sound without the memory to look";
                EXPECT_TRUE(book::Workbook::open(path).has_value()) << at << ": the next time";
                if (::testing::Test::HasFailure())
                    break;
            }
        }
        return refused;
    });
    RecordProperty("failures", failures);
    EXPECT_GT(failures, 20);
    EXPECT_EQ(bytes_of(path), filled_workbook());
    expect_sound(path, "afterwards");
}

} // namespace soakbook::faults
