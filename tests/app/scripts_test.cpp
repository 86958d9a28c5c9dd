// SPDX-License-Identifier: GPL-3.0-or-later
// soakbook --verify and --safe-copy as a script has them: without a display, by exit status and by lines.
#include "tests/book/shelf.h"

#include <QFile>
#include <QProcess>

namespace soakbook::tests {

namespace {

struct Told {
    int status = -1;
    QString out;
    QString error;
};

Told soakbook(const QStringList& arguments) {
    QProcess process;
    QProcessEnvironment bare = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        bare.remove(QLatin1String(name));
    bare.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
    process.setProcessEnvironment(bare);
    process.start(QStringLiteral(SOAKBOOK_PROGRAM), arguments);
    process.waitForFinished(60'000);
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1, QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

QByteArray bytes_of(const QString& path) {
    QFile in(path);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

struct Scripts : ::testing::Test {
    Shelf shelf;
    void SetUp() override { shelf.fill(); }
    QString file(const char* name) const { return shelf.folder() + QLatin1Char('/') + QLatin1String(name); }
    void damage() {
        shelf.close();
        QByteArray bytes = bytes_of(shelf.path());
        const qsizetype at = bytes.lastIndexOf("lower yard");
        ASSERT_GT(at, 0);
        bytes[at] = 'x';
        QFile out(shelf.path());
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes);
    }
};

} // namespace

TEST_F(Scripts, verify_says_a_line_for_each_check_of_a_sound_workbook_that_is_open_elsewhere) {
    const QByteArray before = bytes_of(shelf.path());
    const Told said = soakbook({QStringLiteral("--verify"), shelf.path()});
    EXPECT_EQ(said.status, 0) << said.error.toStdString();
    EXPECT_TRUE(said.error.isEmpty()) << said.error.toStdString();
    const QStringList lines = said.out.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 8);
    for (int i = 0; i < 7; ++i)
        EXPECT_TRUE(lines[i].startsWith(QStringLiteral("sound "))) << lines[i].toStdString();
    EXPECT_TRUE(lines[5].endsWith(QStringLiteral("seals: 4"))) << lines[5].toStdString();
    EXPECT_TRUE(lines[7].startsWith(QStringLiteral("entries: %1,").arg(shelf.book().last_seq()))) << lines[7].toStdString();
    EXPECT_EQ(bytes_of(shelf.path()), before);
}

TEST_F(Scripts, verify_names_the_first_bad_entry_of_a_damaged_one) {
    damage();
    const Told said = soakbook({QStringLiteral("--verify"), shelf.path()});
    EXPECT_EQ(said.status, 1);
    EXPECT_TRUE(said.out.contains(QStringLiteral("damaged  "))) << said.out.toStdString();
    EXPECT_EQ(said.error.count(QLatin1Char('\n')), 1) << said.error.toStdString();
}

TEST_F(Scripts, verify_tells_what_cannot_be_read_from_what_is_damaged) {
    EXPECT_EQ(soakbook({QStringLiteral("--verify"), file("none")}).status, 2);
    QFile page(file("page"));
    ASSERT_TRUE(page.open(QIODevice::WriteOnly));
    page.write("<html>");
    page.close();
    EXPECT_EQ(soakbook({QStringLiteral("--verify"), file("page")}).status, 2);
    QFile empty(file("empty"));
    ASSERT_TRUE(empty.open(QIODevice::WriteOnly));
    EXPECT_EQ(soakbook({QStringLiteral("--verify"), file("empty")}).status, 1);
}

TEST_F(Scripts, safe_copy_makes_a_whole_copy_and_writes_over_nothing) {
    const Told said = soakbook({QStringLiteral("--safe-copy"), shelf.path(), file("copy")});
    EXPECT_EQ(said.status, 0) << said.error.toStdString();
    EXPECT_EQ(records_of(file("copy")), records_of(shelf.path()));
    const QByteArray before = bytes_of(file("copy"));
    const Told again = soakbook({QStringLiteral("--safe-copy"), shelf.path(), file("copy")});
    EXPECT_EQ(again.status, 2);
    EXPECT_FALSE(again.error.isEmpty());
    EXPECT_EQ(bytes_of(file("copy")), before);
    EXPECT_EQ(soakbook({QStringLiteral("--safe-copy"), shelf.path(), file("no/such/folder/copy")}).status, 2);
}

TEST_F(Scripts, safe_copy_gives_no_name_to_a_copy_of_a_damaged_one) {
    damage();
    EXPECT_EQ(soakbook({QStringLiteral("--safe-copy"), shelf.path(), file("copy")}).status, 1);
    EXPECT_FALSE(QFile::exists(file("copy")));
    EXPECT_FALSE(QFile::exists(file("copy.part")));
}

TEST_F(Scripts, wrong_use_is_said_in_one_sentence) {
    for (const QStringList& arguments : {QStringList{QStringLiteral("--verify")}, QStringList{QStringLiteral("--safe-copy"), shelf.path()},
                                         QStringList{QStringLiteral("--verify"), shelf.path(), shelf.path()}}) {
        const Told said = soakbook(arguments);
        EXPECT_EQ(said.status, 2) << arguments.join(QLatin1Char(' ')).toStdString();
        EXPECT_EQ(said.error.count(QLatin1Char('\n')), 1) << said.error.toStdString();
        EXPECT_TRUE(said.out.isEmpty());
    }
}

TEST_F(Scripts, help_names_both) {
    const Told said = soakbook({QStringLiteral("--help")});
    EXPECT_EQ(said.status, 0);
    EXPECT_TRUE(said.out.contains(QStringLiteral("--verify FILE")) && said.out.contains(QStringLiteral("--safe-copy FILE TO")));
}

} // namespace soakbook::tests
