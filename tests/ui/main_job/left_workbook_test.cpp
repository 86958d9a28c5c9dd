// SPDX-License-Identifier: GPL-3.0-or-later
// The tour of the workbook that the main job left, seen later. Nothing was added to it by other means.
#include "tools.h"

#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace soakbook::tests {
namespace {

/// The day on which the main job ended.
const QDate last_day(2024, 4, 27);

/// Whether anything is drawn on it: more than one colour.
bool shows_something(const QImage& picture) {
    const QRgb first = picture.pixel(0, 0);
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) {
            if (picture.pixel(x, y) != first)
                return true;
        }
    }
    return false;
}

class LeftWorkbook : public testing::TestWithParam<int> {
protected:
    QString workbook() const { return QDir(QStringLiteral(SOAKBOOK_LEFT_WORKBOOK)).filePath(QStringLiteral("sallow-carr.soakbook")); }
};

TEST_P(LeftWorkbook, can_be_walked_through_days_later) {
    ASSERT_TRUE(QFileInfo::exists(workbook())) << "the main job comes first";
    const QString rows = QStringLiteral("SELECT count(*), max(seq) FROM change");
    const QString before = ask_file(workbook(), rows);
    QTemporaryDir folder;
    const QString day = last_day.addDays(GetParam()).toString(Qt::ISODate);
    const QString said = run(QStringLiteral(SOAKBOOK_PROGRAM), {QStringLiteral("--tour"), folder.path(), workbook(), QStringLiteral("--on"), day}, 180000);

    const QDir found(folder.path());
    const QStringList pictures = found.entryList({QStringLiteral("*.png")});
    const QStringList papers = found.entryList({QStringLiteral("*.pdf")});
    EXPECT_TRUE(said.contains(QStringLiteral("%1 pictures and %2 papers").arg(pictures.size()).arg(papers.size()))) << said.toStdString();
    EXPECT_EQ(pictures.filter(QStringLiteral("-light")).size(), pictures.filter(QStringLiteral("-dark")).size());
    for (const char* place : {"due", "shed-B0017", "store-bags", "store-pails", "store-deliveries", "yard-1", "register", "register-corrections",
                              "register-journal", "setup-figures", "round"})
        EXPECT_EQ(pictures.filter(QLatin1Char('-') + QLatin1String(place) + QLatin1Char('-')).filter(QStringLiteral(".png")).isEmpty(), false) << place;
    for (const QString& picture : pictures) {
        const QImage image(found.filePath(picture));
        ASSERT_FALSE(image.isNull()) << picture.toStdString();
        EXPECT_EQ(image.size(), QSize(1440, 900)) << picture.toStdString();
        EXPECT_TRUE(shows_something(image)) << picture.toStdString() << " is one flat colour";
    }
    for (const char* paper : {"register.pdf", "pull-list.pdf", "batch-sheet.pdf"})
        EXPECT_FALSE(text_of_pdf(found.filePath(QLatin1String(paper))).trimmed().isEmpty()) << paper;
    EXPECT_EQ(ask_file(workbook(), rows), before) << "a tour only looks";
}

INSTANTIATE_TEST_SUITE_P(SeenLater, LeftWorkbook, testing::Values(5, 30, 400), testing::PrintToStringParamName());

} // namespace
} // namespace soakbook::tests
