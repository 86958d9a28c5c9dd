// SPDX-License-Identifier: GPL-3.0-or-later
// One commit with its history and its seal, beside the same rows written by SQLite alone with the same care for the disk.
// The counter `of_plain` is the ratio of the two, measured turn by turn in one loop.
#include "core/book/record_io.h"
#include "core/book/records/yard.h"
#include "core/book/workbook.h"

#include <QTemporaryDir>

#include <benchmark/benchmark.h>
#include <chrono>
#include <sqlite3.h>
#include <stdexcept>

namespace soakbook::book {
namespace {

struct Done {
    explicit operator bool() const { return true; }
};

void commit(benchmark::State& state) {
    const QTemporaryDir folder;
    const Doing doing{{1'785'715'200'000, 0}, QStringLiteral("Ada"), {}, false};
    auto workbook = Workbook::create(folder.filePath(QStringLiteral("book")), doing);
    if (!workbook)
        throw std::runtime_error("no workbook");
    sqlite3* plain = nullptr;
    sqlite3_open(folder.filePath(QStringLiteral("plain")).toUtf8().constData(), &plain);
    sqlite3_exec(plain, "PRAGMA synchronous=EXTRA; CREATE TABLE yard(id INTEGER PRIMARY KEY, name TEXT UNIQUE, place TEXT, note TEXT, active INTEGER)", nullptr,
                 nullptr, nullptr);
    sqlite3_stmt* insert_plain = nullptr;
    sqlite3_prepare_v2(plain, "INSERT INTO yard(name, place, note, active) VALUES(?, '', '', 1)", -1, &insert_plain, nullptr);
    using Clock = std::chrono::steady_clock;
    Clock::duration ours{};
    Clock::duration theirs{};
    const auto rows = state.range(0);
    int number = 0;
    for (auto _ : state) {
        const auto a = Clock::now();
        (*workbook)->write({QStringLiteral("yard"), 1, {}}, doing, [&](Writing& writing) {
            for (std::int64_t i = 0; i < rows; ++i)
                insert(writing, Yard{{}, QStringLiteral("yard %1").arg(++number), {}, {}, true});
            return Done{};
        });
        const auto b = Clock::now();
        sqlite3_exec(plain, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr);
        for (std::int64_t i = 0; i < rows; ++i) {
            const QByteArray name = "yard " + QByteArray::number(number - static_cast<int>(i));
            sqlite3_bind_text(insert_plain, 1, name.constData(), static_cast<int>(name.size()), SQLITE_TRANSIENT);
            if (sqlite3_step(insert_plain) != SQLITE_DONE)
                throw std::runtime_error(sqlite3_errmsg(plain));
            sqlite3_reset(insert_plain);
        }
        sqlite3_exec(plain, "COMMIT", nullptr, nullptr, nullptr);
        const auto c = Clock::now();
        ours += b - a;
        theirs += c - b;
        state.SetIterationTime(std::chrono::duration<double>(b - a).count());
    }
    sqlite3_finalize(insert_plain);
    sqlite3_close(plain);
    state.counters["of_plain"] = static_cast<double>(ours.count()) / static_cast<double>(theirs.count());
}
BENCHMARK(commit)->Arg(1)->Arg(50)->UseManualTime()->Unit(benchmark::kMillisecond);

} // namespace
} // namespace soakbook::book
