// SPDX-License-Identifier: GPL-3.0-or-later
#include "tools.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace soakbook::tests {

QString run(const QString& program, const QStringList& arguments, int wait_ms) {
    QProcess process;
    process.start(program, arguments);
    const bool ended = process.waitForFinished(wait_ms);
    const QString said = QString::fromUtf8(process.readAllStandardOutput());
    EXPECT_TRUE(ended && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0)
        << program.toStdString() << ' ' << arguments.join(QLatin1Char(' ')).toStdString() << "\n"
        << process.readAllStandardError().toStdString() << said.toStdString();
    return said;
}

QString ask_file(const QString& workbook, const QString& sql) {
    return run(QStringLiteral("sqlite3"), {QStringLiteral("-readonly"), workbook, sql}).trimmed();
}

QString text_of_pdf(const QString& pdf) {
    // Spaces that do not break read as spaces.
    return run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")}).replace(QChar(0x00a0), QLatin1Char(' '));
}

QStringList codes_in_pdf(const QString& pdf) {
    QTemporaryDir folder;
    run(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QStringLiteral("200"), QStringLiteral("-gray"), QStringLiteral("-png"), pdf, folder.filePath(QStringLiteral("page"))});
    QStringList pages;
    for (const QString& page : QDir(folder.path()).entryList({QStringLiteral("*.png")}))
        pages << folder.filePath(page);
    QStringList arguments{QStringLiteral("--quiet"), QStringLiteral("--raw"), QStringLiteral("-Sdisable"), QStringLiteral("-Sqrcode.enable")};
    QStringList codes = run(QStringLiteral("zbarimg"), arguments + pages).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    codes.sort();
    return codes;
}

QString text_of_file(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

} // namespace soakbook::tests
