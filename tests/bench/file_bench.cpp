// SPDX-License-Identifier: GPL-3.0-or-later
// soakbook_bench_file FILE: what a workbook of some size costs, each beside what plain SQLite or the system takes for the
// same in the same run. It works on a copy beside FILE. Without FILE it makes one of a year. Nothing here passes or fails.
#include "page_reads.h"
#include "quiet_disk.h"
#include "years.h"

#include "core/book/record_io.h"
#include "core/book/records/mite_count.h"
#include "core/book/safe_copy.h"
#include "core/book/verify.h"
#include "core/work/hives.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <stdexcept>
#include <string>

#include <sqlite3.h>

namespace soakbook::tests {

namespace {

using Clock = std::chrono::steady_clock;

/// By the wall, and by the processor: on a machine that does other things as well the second is the one to compare.
struct Spent {
    double wall = 0;
    double processor = 0;
    Spent& operator+=(const Spent& other) {
        wall += other.wall;
        processor += other.processor;
        return *this;
    }
    Spent over(int turns) const { return {wall / turns, processor / turns}; }
};

template <class F> Spent spent(F&& f) {
    const auto begun = Clock::now();
    const std::clock_t busy = std::clock();
    f();
    const double processor = 1e3 * static_cast<double>(std::clock() - busy) / CLOCKS_PER_SEC;
    return {std::chrono::duration<double, std::milli>(Clock::now() - begun).count(), processor};
}

void say(const char* what, const Spent& ours, const Spent& plain = {}, const char* beside = "") {
    std::printf("  %-36s %9.1f ms  (busy %9.1f)", what, ours.wall, ours.processor);
    if (plain.wall > 0)
        std::printf("  %6.2f x %s of %.1f ms (busy %.1f)", ours.wall / plain.wall, beside, plain.wall, plain.processor);
    std::printf("\n");
    std::fflush(stdout);
}

/// Plain SQLite, as anybody would open it.
class Plain {
public:
    explicit Plain(const QString& path) {
        if (sqlite3_open(QFile::encodeName(path).constData(), &m_db) != SQLITE_OK)
            throw std::runtime_error("plain SQLite did not open it");
    }
    ~Plain() { sqlite3_close(m_db); }
    Plain(const Plain&) = delete;
    Plain& operator=(const Plain&) = delete;
    std::string run(const char* sql) {
        std::string last;
        char* message = nullptr;
        const auto take = [](void* into, int columns, char** values, char**) {
            *static_cast<std::string*>(into) = columns > 0 && values[0] != nullptr ? values[0] : "";
            return 0;
        };
        if (sqlite3_exec(m_db, sql, take, &last, &message) != SQLITE_OK) {
            const std::string text = message != nullptr ? message : "";
            sqlite3_free(message);
            throw std::runtime_error("plain SQLite: " + text);
        }
        return last;
    }

private:
    sqlite3* m_db = nullptr;
};

struct Done {
    explicit operator bool() const { return true; }
};

std::unique_ptr<book::Workbook> opened(const QString& path) {
    auto workbook = book::Workbook::open(path);
    if (!workbook)
        throw std::runtime_error("the workbook did not open: " + std::to_string(static_cast<int>(workbook.error())));
    return std::move(*workbook);
}

book::Doing on(maths::Day day) {
    const auto noon = std::chrono::duration_cast<std::chrono::milliseconds>(day.time_since_epoch() + std::chrono::hours{12});
    return {{noon.count(), 0}, QStringLiteral("Mira Oldfen"), {}, false};
}

void say_size(const QString& path) {
    Plain plain(path);
    std::printf("%s: %.1f MB", qPrintable(QFileInfo(path).fileName()), static_cast<double>(QFileInfo(path).size()) / 1e6);
    for (const char* table : {"change", "seal", "placement", "mite_count", "bag", "batch", "hive"})
        std::printf(", %s %s", plain.run((std::string("SELECT count(*) FROM ") + table).c_str()).c_str(), table);
    std::printf("\n");
}

void time_opening(const QString& path, maths::Day today) {
    const Spent plain_open = spent([&] { Plain(path).run("SELECT count(*) FROM yard"); });
    std::unique_ptr<book::Workbook> workbook;
    say("open", spent([&] { workbook = opened(path); }), plain_open, "plain open");
    workbook.reset();
    const Spent again = spent([&] { workbook = opened(path); });
    say("open again", again, plain_open, "plain open");
    const auto yards = work::yards(*workbook);
    work::YardTimeEntry time;
    time.yard = yards.front().id;
    time.kind = work::TimeKind::flow;
    time.what = QStringLiteral("clover");
    time.from = today;
    time.to = today;
    const Spent entry = spent([&] {
        if (!work::save_yard_time(*workbook, time, on(today)))
            throw std::runtime_error("the first entry was refused");
    });
    say("the first entry", entry);
    Spent both = again;
    both += entry;
    say("opened until the first entry is down", both);
}

void time_commits(const QString& path, maths::Day today) {
    const auto workbook = opened(path);
    const QString beside = path + QStringLiteral(".plain");
    QFile::remove(beside);
    {
        Plain plain(beside);
        plain.run("PRAGMA synchronous=EXTRA; CREATE TABLE mite_count(id INTEGER PRIMARY KEY, uid BLOB DEFAULT (randomblob(16)), hive_id INTEGER, round_id INTEGER, "
                  "on_day TEXT, kind TEXT, mites INTEGER, bees INTEGER, days INTEGER, counted_by TEXT, note TEXT, void_reason TEXT)");
        const auto hives = work::hives(*workbook, {});
        for (const int rows : {1, 50}) {
            Spent ours;
            Spent theirs;
            constexpr int turns = 20;
            for (int turn = 0; turn < turns; ++turn) {
                ours += spent([&] {
                    workbook->write({QStringLiteral("mites_counted"), rows, {}}, on(today), [&](book::Writing& writing) {
                        for (int i = 0; i < rows; ++i) {
                            book::MiteCount count;
                            count.hive = hives.at(static_cast<std::size_t>(i) % hives.size()).id;
                            count.on = today;
                            count.kind = book::CountKind::wash;
                            count.mites = i;
                            count.bees = 300;
                            count.counted_by = QStringLiteral("Mira Oldfen");
                            book::insert(writing, count);
                        }
                        return Done{};
                    });
                });
                theirs += spent([&] {
                    plain.run("BEGIN IMMEDIATE");
                    for (int i = 0; i < rows; ++i)
                        plain.run("INSERT INTO mite_count(hive_id, on_day, kind, mites, bees, counted_by, note) "
                                  "VALUES(7, '2026-08-03', 'wash', 5, 300, 'Mira Oldfen', '')");
                    plain.run("COMMIT");
                });
            }
            say(rows == 1 ? "one commit of 1 row" : "one commit of 50 rows", ours.over(turns), theirs.over(turns), "plain insert");
        }
    }
    QFile::remove(beside);
}

void time_verify(const QString& path) {
    const Spent check = spent([&] { Plain(path).run("PRAGMA integrity_check"); });
    book::Verdict verdict;
    say("whole verify", spent([&] { verdict = book::verify(path); }), check, "integrity_check");
    std::printf("  %-36s %s, %lld entries\n", "", verdict.sound() ? "sound" : "NOT SOUND", static_cast<long long>(verdict.last_seq));
    say("verify from there on", spent([&] { book::verify(path, verdict.until); }), check, "integrity_check");
}

void time_copy(const QString& path) {
    const QString plain_to = path + QStringLiteral(".cp");
    const QString to = path + QStringLiteral(".copy");
    QFile::remove(plain_to);
    QFile::remove(to);
    const Spent cp = spent([&] { QFile::copy(path, plain_to); });
    QFile::remove(plain_to);
    bool made = false;
    say("safe copy, checked in full", spent([&] { made = book::make_safe_copy_at(path, to).has_value(); }), cp, "plain copy");
    if (!made)
        std::printf("  NOT COPIED\n");
    QFile::remove(to);
}

void time_pages(const QString& path, maths::Day today) {
    const auto workbook = opened(path);
    for (const PageRead& page : page_reads(*workbook, today)) {
        std::size_t lines = 0;
        Spent best = spent([&] { lines = page.read(); });
        const double first = best.wall;
        for (int turn = 0; turn < 2 && best.wall < 2'000; ++turn)
            if (const Spent again = spent([&] { lines = page.read(); }); again.wall < best.wall)
                best = again;
        std::printf("  %-36s %9.1f ms  (busy %9.1f)  first %.1f ms, %zu lines\n", page.name, best.wall, best.processor, first, lines);
        std::fflush(stdout);
    }
}

void measure(const QString& file, maths::Day today) {
    say_size(file);
    const QString copy = file + QStringLiteral(".bench");
    QFile::remove(copy);
    if (!QFile::copy(file, copy))
        throw std::runtime_error("no copy to measure could be made");
    time_opening(copy, today);
    time_commits(copy, today);
    time_verify(copy);
    time_copy(copy);
    time_pages(copy, today);
    QFile::remove(copy);
}

} // namespace

} // namespace soakbook::tests

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    using namespace soakbook;
    const tests::YearsWish usual;
    try {
        if (argc > 1) {
            tests::measure(QString::fromLocal8Bit(argv[1]), usual.last);
            return 0;
        }
        const QTemporaryDir folder;
        const QString file = folder.filePath(QStringLiteral("year.soakbook"));
        {
            const tests::QuietDisk quiet;
            tests::workbook_of_years(file, usual);
        }
        tests::measure(file, usual.last);
    } catch (const std::exception& failure) {
        std::fprintf(stderr, "%s\n", failure.what());
        return 1;
    }
    return 0;
}
