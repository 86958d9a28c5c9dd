// SPDX-License-Identifier: GPL-3.0-or-later
// Bits flip and files are cut. Nothing crashes, and nothing that was stored changes without a word: the file does not
// open, or the check says it, or all that it holds is still the same.
#include "child.h"
#include "ground.h"

#include <QFile>

#include <random>

#include <unistd.h>

namespace soakbook::faults {

namespace {

struct Tally {
    int refused = 0;   ///< it did not open
    int told = 0;      ///< it opened, the check named it
    int harmless = 0;  ///< neither, and everything in it is the same
    int silent = 0;
    int crashed = 0;
    std::string examples;
};

/// Spoils the workbook `count` times by `spoil(bytes, number)`, in processes of their own, some at a time.
template <class Spoil> Tally spoil_many(const Ground& ground, int count, Spoil&& spoil) {
    constexpr int at_a_time = 25;
    const QString path = ground.file("spoilt.soakbook");
    const QByteArray& whole = filled_workbook();
    put(path, whole);
    (void)book::Workbook::open(path);
    const std::string everything = everything_in(path);
    EXPECT_GT(everything.size(), 10'000U);
    Tally tally;
    for (int first = 0; first < count; first += at_a_time) {
        Child child([&](const Child::Tell& tell) {
            for (int i = first; i < std::min(count, first + at_a_time); ++i) {
                QByteArray bytes = whole;
                const std::string what = spoil(bytes, i);
                put(path, bytes);
                QFile::remove(path + QStringLiteral("-journal"));
                ::alarm(20); // a file that keeps it busy for longer counts as a crash
                const bool opens = book::Workbook::open(path).has_value();
                const bool sound = book::verify(path).sound();
                if (!opens)
                    tell("refused");
                else if (!sound)
                    tell("told");
                else
                    tell(everything_in(path) == everything ? "harmless" : "silent " + what);
            }
        });
        for (const std::string& line : child.rest()) {
            tally.refused += line == "refused" ? 1 : 0;
            tally.told += line == "told" ? 1 : 0;
            tally.harmless += line == "harmless" ? 1 : 0;
            if (line.rfind("silent", 0) == 0 || line.rfind("thrown", 0) == 0) {
                ++tally.silent;
                tally.examples += line + '\n';
            }
        }
        tally.crashed += child.died_of() != 0 ? 1 : 0;
    }
    return tally;
}

void expect_told(const Tally& tally, int count) {
    EXPECT_EQ(tally.silent, 0) << tally.examples;
    EXPECT_EQ(tally.crashed, 0);
    EXPECT_EQ(tally.refused + tally.told + tally.harmless, count);
    ::testing::Test::RecordProperty("spoilt", count);
    ::testing::Test::RecordProperty("refused", tally.refused);
    ::testing::Test::RecordProperty("told", tally.told);
    ::testing::Test::RecordProperty("harmless", tally.harmless);
    std::printf("  of %d: %d not opened, %d named by the check, %d changed nothing, %d silent, %d crashed\n", count, tally.refused, tally.told,
                tally.harmless, tally.silent, tally.crashed);
}

} // namespace

TEST(Damaged, by_a_flipped_bit_it_never_crashes_and_is_never_silent) {
    const Ground ground;
    const int count = cases(250, 25'000);
    const Tally tally = spoil_many(ground, count, [](QByteArray& bytes, int number) {
        std::mt19937 random(static_cast<unsigned>(number));
        const auto at = static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size()));
        const auto bit = random() % 8U;
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
        return "byte " + std::to_string(at) + " bit " + std::to_string(bit);
    });
    expect_told(tally, count);
    EXPECT_GT(tally.told, 0);
    EXPECT_GT(tally.harmless, 0) << "free space was hit too";
}

TEST(Damaged, by_a_flipped_bit_where_something_is_stored) {
    const Ground ground;
    const int count = cases(250, 25'000);
    std::vector<qsizetype> filled;
    const QByteArray& whole = filled_workbook();
    for (qsizetype i = 0; i < whole.size(); ++i)
        if (whole[i] != '\0')
            filled.push_back(i);
    const Tally tally = spoil_many(ground, count, [&filled](QByteArray& bytes, int number) {
        std::mt19937 random(static_cast<unsigned>(number) + 1'000'000U);
        const qsizetype at = filled[random() % filled.size()];
        const auto bit = random() % 8U;
        bytes[at] = static_cast<char>(static_cast<unsigned char>(bytes[at]) ^ (1U << bit));
        return "byte " + std::to_string(at) + " bit " + std::to_string(bit);
    });
    expect_told(tally, count);
    EXPECT_GT(tally.refused + tally.told, count / 2);
}

TEST(Damaged, by_a_cut_it_never_crashes_and_never_opens_as_whole) {
    const Ground ground;
    const int count = cases(200, 5'000);
    const Tally tally = spoil_many(ground, count, [](QByteArray& bytes, int number) {
        std::mt19937 random(static_cast<unsigned>(number));
        auto size = static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size()));
        if (number % 2 == 0)
            size -= size % 4096; // at a page's end nothing looks torn
        bytes.truncate(size);
        return "cut to " + std::to_string(size);
    });
    expect_told(tally, count);
    EXPECT_EQ(tally.harmless, 0);
}

TEST(Damaged, by_a_block_of_zeros_or_of_an_older_state) {
    const Ground ground;
    const QByteArray older = [] {
        tests::Shelf shelf;
        shelf.fill();
        shelf.close();
        return bytes_of(shelf.path());
    }();
    const int count = cases(60, 2'000);
    const Tally tally = spoil_many(ground, count, [&older](QByteArray& bytes, int number) {
        std::mt19937 random(static_cast<unsigned>(number));
        const auto at = static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size() / 512)) * 512;
        for (qsizetype i = at; i < std::min(at + 512, bytes.size()); ++i)
            bytes[i] = number % 2 == 0 || i >= older.size() ? '\0' : older[i];
        return "block at " + std::to_string(at);
    });
    expect_told(tally, count);
}

} // namespace soakbook::faults
