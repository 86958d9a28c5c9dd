// SPDX-License-Identifier: GPL-3.0-or-later
// Only SQLite opens the open workbook: one plain open and close of the same file in this process would drop its locks, and
// another program could write in between. Seen from outside by strace, and in the sources.
#include "child.h"
#include "core/book/record_io.h"
#include "core/book/safe_copy.h"
#include "ground.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>

#include <map>

namespace soakbook::faults {

namespace {

struct Opened {
    QString call;
    bool by_sqlite = false;
    bool for_writing = false;
};

/// The calls of the log that open `path`, in their order; the lines that begin with " >" say who called.
std::vector<Opened> opens_of(const QString& log, const QString& path) {
    std::vector<Opened> all;
    QFile file(log);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    bool ours = false;
    for (const QByteArray& raw : file.readAll().split('\n')) {
        const QString line = QString::fromUtf8(raw);
        if (line.startsWith(QLatin1String(" > "))) {
            if (ours)
                all.back().by_sqlite = all.back().by_sqlite || line.contains(QLatin1String("libsqlite3"));
            continue;
        }
        ours = line.contains(QLatin1Char('"') + path + QLatin1Char('"'));
        if (ours)
            all.push_back({line, false, line.contains(QLatin1String("O_RDWR")) || line.contains(QLatin1String("O_WRONLY")) || line.contains(QLatin1String("O_CREAT")) ||
                                            line.contains(QLatin1String("O_TRUNC")) || line.contains(QLatin1String("creat("))});
    }
    return all;
}

} // namespace

// Run by the test below, under strace: open, work, copy, close.
TEST(OnlySqlite, DISABLED_works_on_the_workbook_named_in_the_environment) {
    const QString path = qEnvironmentVariable("SOAKBOOK_TRACED");
    ASSERT_FALSE(path.isEmpty());
    auto opened = book::Workbook::open(path);
    ASSERT_TRUE(opened.has_value());
    for (int n = 31; n < 34; ++n)
        make_entry(**opened, n);
    (void)book::fetch_all<book::Yard>(**opened);
    ASSERT_TRUE(book::make_safe_copy(**opened, path + QStringLiteral(" copies")).has_value());
    EXPECT_FALSE((*opened)->changed_outside());
    make_entry(**opened, 34);
}

TEST(OnlySqlite, opens_the_workbook_once_it_is_open_and_nothing_else_ever_for_writing) {
    const QString strace = QStandardPaths::findExecutable(QStringLiteral("strace"));
    if (strace.isEmpty())
        GTEST_SKIP() << "strace is not here";
    const Ground ground;
    const QString path = ground.file("book.soakbook");
    const QString log = ground.file("log");
    put(path, filled_workbook());
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("SOAKBOOK_TRACED"), path);
    environment.insert(QStringLiteral("ASAN_OPTIONS"), QStringLiteral("detect_leaks=0"));
    process.setProcessEnvironment(environment);
    process.start(strace, {QStringLiteral("-f"), QStringLiteral("-k"), QStringLiteral("-e"), QStringLiteral("trace=open,openat,openat2,creat"), QStringLiteral("-o"), log,
                           QFile::symLinkTarget(QStringLiteral("/proc/self/exe")), QStringLiteral("--gtest_also_run_disabled_tests"),
                           QStringLiteral("--gtest_filter=OnlySqlite.DISABLED_*")});
    ASSERT_TRUE(process.waitForFinished(300'000));
    const QByteArray said = process.readAllStandardOutput() + process.readAllStandardError();
    if (said.contains("PTRACE") || said.contains("Operation not permitted"))
        GTEST_SKIP() << "strace may not look here: " << said.constData();
    ASSERT_EQ(process.exitCode(), 0) << said.constData();
    EXPECT_EQ(entries_in(path).size(), 34U);

    const auto opens = opens_of(log, path);
    bool is_open = false;
    int by_sqlite = 0;
    for (const Opened& one : opens) {
        is_open = is_open || (one.by_sqlite && one.for_writing);
        by_sqlite += one.by_sqlite ? 1 : 0;
        EXPECT_TRUE(one.by_sqlite || (!one.for_writing && !is_open)) << one.call.toStdString();
    }
    EXPECT_GT(by_sqlite, 0) << "strace did not say who called";
    RecordProperty("opens", static_cast<int>(opens.size()));
    const auto journal = opens_of(log, path + QStringLiteral("-journal"));
    EXPECT_GE(journal.size(), 4U);
    for (const Opened& one : journal)
        EXPECT_TRUE(one.by_sqlite) << one.call.toStdString();
}

// Each place in the sources that opens, copies, moves or removes a file, with what it is for. A new one belongs here with
// the reason why it cannot be the open workbook.
TEST(OnlySqlite, each_place_in_the_sources_that_touches_a_file_is_known) {
    static const std::map<QString, const char*> known{
#include "file_touchers.inc"
    };
    const QRegularExpression touches(QStringLiteral(
        R"(\bQFile\s+\w+\(|\bQFile\(|QFile::(copy|rename|remove|resize|link|setPermissions)|\bQSaveFile\b|(?<![\w>])::(open|rename|unlink|truncate)\(|\bfopen\(|std::[io]?fstream|QTemporaryFile|sqlite3_open)"));
    std::set<QString> found;
    for (const char* floor : {"core", "ui", "app"}) {
        QDirIterator files(QStringLiteral(SOAKBOOK_SOURCE_DIR "/") + QLatin1String(floor), {QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (files.hasNext()) {
            const QString path = files.next();
            if (QString::fromUtf8(bytes_of(path)).contains(touches))
                found.insert(QDir(QStringLiteral(SOAKBOOK_SOURCE_DIR)).relativeFilePath(path));
        }
    }
    for (const QString& path : found)
        EXPECT_TRUE(known.count(path)) << path.toStdString() << " touches files: say why it never touches the open workbook";
    for (const auto& [path, why] : known)
        EXPECT_TRUE(found.count(path)) << path.toStdString() << " touches no file any more: " << why;
}

} // namespace soakbook::faults
