// SPDX-License-Identifier: GPL-3.0-or-later
// The seeds of the fuzz target and some thousand spoilt ones, without libFuzzer: a workbook of each version, its numbers,
// texts and pages changed at random. Opening and listing neither crashes nor runs for ever nor takes all the memory.
#include "child.h"
#include "ground.h"
#include "open_and_list.h"

#include "core/book/schema.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <random>

#include <sys/resource.h>
#include <unistd.h>

namespace soakbook::faults {

namespace {

/// One for each version of the schema: older ones as those versions left them, the present one made here.
std::vector<QByteArray> seeds() {
    std::vector<QByteArray> all;
    for (int version = 1; version < book::schema_version; ++version) {
        const QByteArray packed = bytes_of(QStringLiteral(SOAKBOOK_SOURCE_DIR "/tests/book/data/version_%1.qz").arg(version));
        if (!packed.isEmpty())
            all.push_back(qUncompress(packed));
    }
    all.push_back(filled_workbook());
    return all;
}

void spoil(QByteArray& bytes, unsigned number) {
    std::mt19937 random(number);
    const auto below = [&](qsizetype most) { return static_cast<qsizetype>(random() % static_cast<unsigned>(std::max<qsizetype>(most, 1))); };
    const auto times = 1 + random() % 6;
    for (auto i = times; i > 0; --i) {
        // Half of them in the first page, where the header, the schema and the counts stand.
        const qsizetype at = random() % 2 == 0 ? below(std::min<qsizetype>(4096, bytes.size())) : below(bytes.size());
        switch (random() % 6) {
        case 0:
            bytes[at] = static_cast<char>(random());
            break;
        case 1: // a number of four bytes: nothing, everything, or just over
            for (qsizetype k = at; k < std::min(at + 4, bytes.size()); ++k)
                bytes[k] = random() % 2 == 0 ? '\xff' : '\0';
            break;
        case 2: { // a piece of it somewhere else
            const QByteArray piece = bytes.mid(below(bytes.size()), 1 + below(300));
            bytes.replace(at, std::min<qsizetype>(piece.size(), bytes.size() - at), piece.left(bytes.size() - at));
            break;
        }
        case 3: { // a page in the place of another
            const QByteArray page = bytes.mid(below(bytes.size() / 4096) * 4096, 4096);
            bytes.replace(at / 4096 * 4096, page.size(), page);
            break;
        }
        case 4:
            bytes.truncate(std::max<qsizetype>(at, 1));
            break;
        default:
            bytes.insert(at, QByteArray(1 + below(40), static_cast<char>(random())));
        }
    }
}

} // namespace

TEST(FuzzedOpening, lists_each_seed) {
    const Ground ground;
    const QString path = ground.file("seed.soakbook");
    int number = 0;
    for (const QByteArray& seed : seeds()) {
        put(path, seed);
        ++number;
        EXPECT_EQ(open_and_list(path), seed == filled_workbook()) << "only one of this version opens for looking";
        EXPECT_EQ(bytes_of(path), seed);
        // Where the fuzz target finds them.
        if (const QString folder = qEnvironmentVariable("SOAKBOOK_SEEDS"); !folder.isEmpty())
            put(QDir(folder).filePath(QStringLiteral("seed %1").arg(number)), seed);
    }
    EXPECT_GE(number, 2);
}

TEST(FuzzedOpening, of_spoilt_ones_neither_crashes_nor_runs_for_ever_nor_takes_all_memory) {
    const Ground ground;
    const QString path = ground.file("spoilt.soakbook");
    const std::vector<QByteArray> all = seeds();
    const int count = cases(300, 20'000);
    constexpr int at_a_time = 50;
    int crashed = 0;
    int opened = 0;
    for (int first = 0; first < count; first += at_a_time) {
        Child child([&](const Child::Tell& tell) {
#ifndef __SANITIZE_ADDRESS__
            const rlimit memory{1U << 30U, 1U << 30U};
            ::setrlimit(RLIMIT_AS, &memory);
#endif
            for (int i = first; i < std::min(first + at_a_time, count); ++i) {
                QByteArray bytes = all[static_cast<std::size_t>(i) % all.size()];
                spoil(bytes, static_cast<unsigned>(i));
                put(path, bytes);
                tell("at " + std::to_string(i));
                ::alarm(20);
                if (open_and_list(path))
                    tell("opened");
                EXPECT_EQ(bytes_of(path), bytes) << i;
            }
            tell(::testing::Test::HasFailure() ? "changed" : "ended");
        });
        const auto told = child.rest();
        ASSERT_FALSE(told.empty());
        if (child.died_of() != 0) {
            ++crashed;
            ADD_FAILURE() << "signal " << child.died_of() << ", " << told.back();
        } else {
            EXPECT_EQ(told.back(), "ended");
        }
        opened += static_cast<int>(std::count(told.begin(), told.end(), "opened"));
    }
    RecordProperty("inputs", count);
    RecordProperty("opened", opened);
    RecordProperty("crashed", crashed);
    std::printf("  of %d: %d opened, %d crashed\n", count, opened, crashed);
    EXPECT_GT(opened, 0) << "spoilt so much that nothing behind the door was reached";
}

} // namespace soakbook::faults
