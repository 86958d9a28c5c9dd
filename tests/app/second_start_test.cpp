// SPDX-License-Identifier: GPL-3.0-or-later
// The real program, started twice on one workbook: by the same path, by a link and by another name; and after it was killed.
#include "app/lock.h"
#include "app/second_start.h"
#include "tests/book/shelf.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QThread>

#include <unistd.h>

namespace soakbook::tests {

namespace {

struct SecondStart : ::testing::Test {
    Shelf shelf;
    QTemporaryDir own;
    QString file = shelf.path();

    void SetUp() override {
        shelf.fill();
        shelf.close();
    }
    std::unique_ptr<QProcess> start(const QString& path) const {
        auto process = std::make_unique<QProcess>();
        QProcessEnvironment around = QProcessEnvironment::systemEnvironment();
        around.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        around.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
        for (const char* name : {"XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_RUNTIME_DIR", "HOME"})
            around.insert(QLatin1String(name), own.path());
        process->setProcessEnvironment(around);
        process->setProcessChannelMode(QProcess::ForwardedErrorChannel);
        process->start(QStringLiteral(SOAKBOOK_PROGRAM), {path});
        EXPECT_TRUE(process->waitForStarted());
        return process;
    }
    /// Waits until that process has the workbook.
    bool has_it(const QProcess& process) const {
        QElapsedTimer timer;
        timer.start();
        while (timer.elapsed() < 60'000) {
            const auto holder = app::Lock::holder_of(file);
            if (holder && holder->process == process.processId())
                return true;
            QThread::msleep(20);
        }
        return false;
    }
};

} // namespace

TEST_F(SecondStart, on_the_same_file_raises_the_first_and_ends) {
    const auto first = start(file);
    ASSERT_TRUE(has_it(*first));
    QDir(shelf.folder()).mkdir(QStringLiteral("elsewhere"));
    const QString link = shelf.folder() + QStringLiteral("/elsewhere/link.soakbook");
    ASSERT_TRUE(QFile::link(file, link));
    const QString other_name = shelf.folder() + QStringLiteral("/elsewhere/other name.soakbook");
    ASSERT_EQ(::link(QFile::encodeName(file).constData(), QFile::encodeName(other_name).constData()), 0);
    for (const QString& path : {file, link, other_name}) {
        const auto second = start(path);
        ASSERT_TRUE(second->waitForFinished(60'000)) << path.toStdString();
        EXPECT_EQ(second->exitStatus(), QProcess::NormalExit);
        EXPECT_EQ(second->exitCode(), 0) << path.toStdString();
        EXPECT_EQ(app::Lock::holder_of(file)->process, first->processId());
    }
    EXPECT_FALSE(first->waitForFinished(0));
    EXPECT_EQ(first->state(), QProcess::Running);
    first->kill();
    first->waitForFinished();
}

TEST_F(SecondStart, after_the_first_was_killed_has_the_workbook_at_once) {
    const auto first = start(file);
    ASSERT_TRUE(has_it(*first));
    first->kill();
    ASSERT_TRUE(first->waitForFinished());
    ASSERT_TRUE(app::Lock::holder_of(file)) << "a killed process puts nothing away";
    const auto second = start(file);
    EXPECT_TRUE(has_it(*second));
    second->kill();
    second->waitForFinished();
}

} // namespace soakbook::tests
