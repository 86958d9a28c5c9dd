// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/read_back.h"

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

namespace soakbook::ui::test {

QString plain(const QString& text) { return text.normalized(QString::NormalizationForm_KC).simplified(); }

QString output_of(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(120000) || process.exitStatus() != QProcess::NormalExit) {
        return {};
    }
    return QString::fromUtf8(process.readAllStandardOutput());
}

QString text_of_pdf(const QString& path) {
    return plain(output_of(QStringLiteral("pdftotext"), {QStringLiteral("-enc"), QStringLiteral("UTF-8"), path, QStringLiteral("-")}));
}

QString text_of_page(const QString& path, int page) {
    const QString n = QString::number(page);
    return plain(output_of(QStringLiteral("pdftotext"), {QStringLiteral("-f"), n, QStringLiteral("-l"), n, QStringLiteral("-layout"),
                                                         QStringLiteral("-enc"), QStringLiteral("UTF-8"), path, QStringLiteral("-")}));
}

namespace {

QString info_line(const QString& path, const QString& name) {
    for (const QString& line : output_of(QStringLiteral("pdfinfo"), {path}).split(QLatin1Char('\n'))) {
        if (line.startsWith(name)) {
            return line.mid(name.size()).simplified();
        }
    }
    return {};
}

} // namespace

int pages_of_pdf(const QString& path) { return info_line(path, QStringLiteral("Pages:")).toInt(); }

QSizeF page_size_mm(const QString& path) {
    const QStringList words = info_line(path, QStringLiteral("Page size:")).split(QLatin1Char(' '));
    return words.size() < 3 ? QSizeF() : QSizeF(words[0].toDouble(), words[2].toDouble()) * (25.4 / 72);
}

QStringList codes_in_pdf(const QString& path, int dots_per_inch) {
    QTemporaryDir folder;
    output_of(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QString::number(dots_per_inch), QStringLiteral("-gray"), path,
                                           folder.filePath(QStringLiteral("page"))});
    QStringList codes;
    for (const QString& page : QDir(folder.path()).entryList({QStringLiteral("page*")}, QDir::Files, QDir::Name)) {
        const QString read = output_of(QStringLiteral("zbarimg"),
                                       {QStringLiteral("-q"), QStringLiteral("--raw"), QStringLiteral("--nodbus"),
                                        QStringLiteral("-Sdisable"), QStringLiteral("-Sqrcode.enable"), folder.filePath(page)});
        codes += read.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    }
    return codes;
}

QImage picture_of_page(const QString& path, int page, int dots_per_inch) {
    QTemporaryDir folder;
    const QString n = QString::number(page);
    const QString root = folder.filePath(QStringLiteral("page"));
    output_of(QStringLiteral("pdftoppm"), {QStringLiteral("-r"), QString::number(dots_per_inch), QStringLiteral("-f"), n,
                                           QStringLiteral("-l"), n, QStringLiteral("-singlefile"), QStringLiteral("-png"), path, root});
    const QString file = root + QStringLiteral(".png");
    return QImage(file);
}

} // namespace soakbook::ui::test
