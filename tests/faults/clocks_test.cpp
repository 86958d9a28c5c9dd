// SPDX-License-Identifier: GPL-3.0-or-later
// Ten years of days, time zones, clocks that are put forward and back, a second before midnight: days of the calendar are
// the same wherever they are read, the order is that of the entries, and of each time some safe copies stay.
#include "child.h"
#include "core/book/history.h"
#include "core/book/record_io.h"
#include "core/book/records/mite_count.h"
#include "core/book/records/yard_time.h"
#include "core/book/safe_copy.h"
#include "ground.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cstdlib>
#include <ctime>

namespace soakbook::faults {

namespace {

/// Rules as POSIX writes them, so that no table of zones is needed: "Base Specifications", 8.3, TZ.
constexpr const char* zones[] = {
    "UTC0", "CET-1CEST,M3.5.0,M10.5.0/3", "NZST-12NZDT,M9.5.0,M4.1.0/3", "HST10", "<+0530>-5:30", "<+14>-14", "<-12>12", "NST3:30NDT,M3.2.0,M11.1.0",
};

void stand_in(const char* zone) {
    ::setenv("TZ", zone, 1);
    ::tzset();
}

/// The moment at which a wall clock here shows it, as the edge makes it.
book::Doing at_wall(const QDate& day, const QTime& time) {
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(QDateTime(day, time).toMSecsSinceEpoch());
    return {{moment.toMSecsSinceEpoch(), moment.offsetFromUtc() / 60}, QStringLiteral("Ada"), {}, false};
}

maths::Day day_of(const QDate& date) {
    return maths::day(date.year(), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

struct Done {
    explicit operator bool() const { return true; }
};

/// A yard's time of three days, today in the middle, and a count of today.
void enter(book::Workbook& workbook, const book::Doing& doing) {
    const auto yard = book::fetch_all<book::Yard>(workbook).front().id;
    const auto hive = book::fetch_all<book::Hive>(workbook).front().id;
    workbook.write({QStringLiteral("yard_time"), 1, {}}, doing, [&](book::Writing& writing) {
        book::insert(writing, book::YardTime{{}, yard, book::YardTimeKind::flow, QStringLiteral("lime"), maths::days_after(doing.today(), -1),
                                             maths::days_after(doing.today(), 1), {}});
        book::MiteCount count;
        count.hive = hive;
        count.on = doing.today();
        count.kind = book::CountKind::wash;
        count.mites = 9;
        count.bees = 300;
        book::insert(writing, count);
        return Done{};
    });
}

/// Every day of the calendar in these tables.
std::string days_in(const QString& path) {
    tests::Raw raw(path);
    return raw.cell("SELECT group_concat(from_day || ' ' || to_day, ' / ') FROM (SELECT * FROM yard_time ORDER BY id)") + '\n' +
           raw.cell("SELECT group_concat(on_day, ' ') FROM (SELECT * FROM mite_count ORDER BY id)");
}

std::string days_as_read(const book::Workbook& workbook) {
    std::string text;
    for (const auto& time : book::fetch_all<book::YardTime>(workbook))
        text += book::day_text(time.from).toStdString() + ' ' + book::day_text(time.to).toStdString() + '\n';
    for (const auto& count : book::fetch_all<book::MiteCount>(workbook))
        text += book::day_text(count.on).toStdString() + '\n';
    return text;
}

} // namespace

TEST(Clocks, at_the_edges_of_days_and_of_summer_time_every_zone_writes_the_days_its_wall_shows) {
    const Ground ground;
    std::string days;
    std::string read;
    for (const char* zone : zones) {
        const QString path = ground.file("book.soakbook");
        put(path, filled_workbook());
        Child child([&](const Child::Tell& tell) {
            stand_in(zone);
            auto opened = book::Workbook::open(path);
            // Days on which clocks are changed somewhere, leap days, the turn of a year.
            for (const QDate& day : {QDate(2027, 3, 28), QDate(2027, 10, 31), QDate(2027, 4, 4), QDate(2027, 9, 26), QDate(2028, 2, 29), QDate(2027, 12, 31),
                                     QDate(2028, 1, 1), QDate(2027, 3, 14), QDate(2027, 11, 7)})
                for (const QTime& time : {QTime(0, 0, 0), QTime(2, 30, 0), QTime(12, 0, 0), QTime(23, 59, 59)}) {
                    const book::Doing doing = at_wall(day, time);
                    if (doing.today() != day_of(day))
                        tell("another day: " + day.toString(Qt::ISODate).toStdString() + ' ' + time.toString().toStdString());
                    enter(**opened, doing);
                }
        });
        for (const std::string& line : child.rest())
            ADD_FAILURE() << zone << ": " << line;
        expect_sound(path, zone);
        const std::string written = days_in(path);
        EXPECT_TRUE(days.empty() || written == days) << zone;
        days = written;
        // Read where the clocks are different.
        for (const char* other : zones) {
            Child reader([&](const Child::Tell& tell) {
                stand_in(other);
                const auto opened = book::Workbook::open(path);
                tell(std::to_string(std::hash<std::string>{}(days_as_read(**opened))));
            });
            const auto told = reader.rest();
            ASSERT_EQ(told.size(), 1U);
            EXPECT_TRUE(read.empty() || told.front() == read) << zone << " read in " << other;
            read = told.front();
        }
    }
    EXPECT_NE(days.find("2028-02-29"), std::string::npos);
}

TEST(Clocks, the_hour_that_comes_twice_keeps_the_order_of_its_entries) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    put(path, filled_workbook());
    Child child([&](const Child::Tell& tell) {
        stand_in("CET-1CEST,M3.5.0,M10.5.0/3");
        auto opened = book::Workbook::open(path);
        // 0:30 to 1:30 by Greenwich on 31 October 2027: half past two twice on the wall.
        const qint64 first = QDateTime(QDate(2027, 10, 31), QTime(0, 30), Qt::UTC).toMSecsSinceEpoch();
        for (int i = 0; i <= 6; ++i) {
            const QDateTime wall = QDateTime::fromMSecsSinceEpoch(first + i * 600'000);
            enter(**opened, {{wall.toMSecsSinceEpoch(), wall.offsetFromUtc() / 60}, {}, {}, false});
        }
        const auto changes = book::newest_changes(**opened, 14);
        for (std::size_t i = 1; i < changes.size(); ++i)
            if (changes[i].seq >= changes[i - 1].seq || changes[i - 1].at < changes[i].at)
                tell("out of order");
        tell(std::to_string(changes.front().at.offset_minutes) + ' ' + std::to_string(changes.back().at.offset_minutes));
    });
    EXPECT_EQ(child.rest(), std::vector<std::string>{"60 120"});
    expect_sound(path, "after the hour");
}

TEST(Clocks, run_through_ten_years_with_an_entry_a_day_keep_every_entry_and_copies_of_every_year) {
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    const QString copies = ground.file("copies");
    put(path, filled_workbook());
    const int step = cases(29, 1);
    const QDate begin(2027, 1, 1);
    const QDate end(2037, 1, 1);
    int days = 0;
    int made = 0;
    Child child([&](const Child::Tell& tell) {
        stand_in(zones[1]);
        std::unique_ptr<book::Workbook> workbook;
        int n = 0;
        for (QDate day = begin; day < end; day = day.addDays(step), ++n) {
            // The workbook is opened anew each week.
            if (n % 7 == 0) {
                workbook.reset();
                auto opened = book::Workbook::open(path);
                if (!opened)
                    return tell("not opened on " + day.toString(Qt::ISODate).toStdString());
                workbook = std::move(*opened);
            }
            const book::Doing doing = at_wall(day, n % 3 == 0 ? QTime(23, 59, 59) : n % 3 == 1 ? QTime(0, 0) : QTime(2, 30));
            if (doing.today() != day_of(day))
                tell("another day: " + day.toString(Qt::ISODate).toStdString());
            enter(*workbook, doing);
            if (n % 2 == 0) {
                const auto copy = book::make_safe_copy(*workbook, copies);
                if (!copy)
                    return tell("not copied on " + day.toString(Qt::ISODate).toStdString());
                QFile file(copy->path);
                if (file.open(QIODevice::ReadWrite))
                    file.setFileTime(QDateTime(day, QTime(12, 0)), QFileDevice::FileModificationTime);
                tell("copied");
            }
            tell("day");
        }
    });
    for (const std::string& line : child.rest()) {
        days += line == "day" ? 1 : 0;
        made += line == "copied" ? 1 : 0;
        EXPECT_TRUE(line == "day" || line == "copied") << line;
    }
    EXPECT_EQ(child.died_of(), 0);
    EXPECT_EQ(days, static_cast<int>((begin.daysTo(end) + step - 1) / step));
    RecordProperty("days", days);
    RecordProperty("copies", made);
    expect_sound(path, "after ten years");
    EXPECT_EQ(tests::Raw(path).cell("SELECT count(DISTINCT on_day) FROM mite_count WHERE on_day >= '2027-01-01'"), std::to_string(days));

    const QFileInfoList left = QDir(copies).entryInfoList({QStringLiteral("*.soakbook")}, QDir::Files);
    std::set<int> years;
    for (const QFileInfo& copy : left) {
        years.insert(copy.lastModified().date().year());
        EXPECT_TRUE(book::verify(copy.filePath()).sound()) << copy.fileName().toStdString();
    }
    std::printf("  %d days, %d copies made, %d left\n", days, made, static_cast<int>(left.size()));
    // While copies were rotated the newest one bore the day of this test, whose year took the place of one of the ten.
    EXPECT_GE(years.size(), 9U);
    EXPECT_GE(left.size(), 20);
    // 20 newest, 14 days, 8 weeks, 24 months, 10 years at the most; some are more than one of these.
    EXPECT_LE(left.size(), 20 + 14 + 8 + 24 + 10);
}

} // namespace soakbook::faults
