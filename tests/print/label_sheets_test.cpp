// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"
#include "tests/print/read_back.h"
#include "ui/print/label_printer.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <csignal>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace soakbook::ui;
using namespace soakbook::ui::test;

TEST(LabelSheets, the_stock_sheets_are_sound_and_told_by_their_dimensions) {
    // Dimensions: handbook of the trade, section 18 (from memory; printers differ).
    const std::vector<LabelSheet> sheets = stock_sheets();
    ASSERT_EQ(sheets.size(), 4U);
    QStringList names;
    for (const LabelSheet& sheet : sheets) {
        EXPECT_FALSE(fault_of(sheet).has_value()) << qPrintable(sheet_name(sheet));
        names.append(sheet_name(sheet));
    }
    EXPECT_EQ(names, QStringList({QStringLiteral("63.5 x 38.1 mm, 21 on A4"), QStringLiteral("99.1 x 67.7 mm, 8 on A4"),
                                  QStringLiteral("70 x 37 mm, 24 on A4"), QStringLiteral("4 x 2 in, 10 on Letter")}));
    const QRectF last = sheets[0].label_at(20);
    EXPECT_NEAR(last.left(), 7.25 + 2 * 66.0, 1e-9);
    EXPECT_NEAR(last.top(), 15.15 + 6 * 38.1, 1e-9);
}

TEST(LabelSheets, an_offset_moves_every_label) {
    LabelSheet sheet = stock_sheets()[0];
    const QPointF before = sheet.label_at(7).topLeft();
    sheet.offset_x = 1.5;
    sheet.offset_y = -0.5;
    EXPECT_NEAR(sheet.label_at(7).left() - before.x(), 1.5, 1e-9);
    EXPECT_NEAR(sheet.label_at(7).top() - before.y(), -0.5, 1e-9);
    EXPECT_FALSE(fault_of(sheet).has_value());
    sheet.offset_x = 25;
    EXPECT_EQ(fault_of(sheet), SheetFault::offset_too_far);
}

TEST(LabelSheets, what_cannot_be_is_refused_in_words) {
    LabelSheet sheet = stock_sheets()[0];
    sheet.columns = 4;
    EXPECT_EQ(fault_of(sheet), SheetFault::off_the_page);
    sheet = stock_sheets()[0];
    sheet.pitch_x = 60;
    EXPECT_EQ(fault_of(sheet), SheetFault::overlap);
    sheet = stock_sheets()[0];
    sheet.rows = 0;
    EXPECT_EQ(fault_of(sheet), SheetFault::no_labels);
    EXPECT_EQ(fault_of(roll_label({5, 100})), SheetFault::label_too_small);
    EXPECT_EQ(fault_of(roll_label({100, 3000})), SheetFault::page_too_large);
    EXPECT_FALSE(fault_of(roll_label({62, 100})).has_value());
    for (const SheetFault fault : {SheetFault::no_labels, SheetFault::label_too_small, SheetFault::page_too_large,
                                   SheetFault::off_the_page, SheetFault::overlap, SheetFault::offset_too_far}) {
        EXPECT_TRUE(sheet_fault_words(fault).endsWith(QLatin1Char('.')));
    }
}

TEST(LabelSheets, the_test_page_shows_every_label_and_its_number) {
    const QString path = picture_path(QStringLiteral("test-page.pdf"));
    ASSERT_FALSE(write_pdf(test_page_of(stock_sheets()[0]), path).has_value());
    const QString text = text_of_pdf(path);
    for (int n = 1; n <= 21; ++n) {
        EXPECT_TRUE(text.split(QLatin1Char(' ')).contains(QString::number(n))) << n;
    }
    EXPECT_TRUE(text.contains(QStringLiteral("offset")));
}

namespace {

PagedPaper some_labels() {
    return paper_of(std::make_shared<LabelRun>(*set_labels(bags(2), stock_sheets()[0], 0, english())));
}

} // namespace

TEST(PdfFiles, what_cannot_be_written_leaves_what_stood_there) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("labels.pdf"));
    QFile before(path);
    ASSERT_TRUE(before.open(QIODevice::WriteOnly));
    before.write("as it was");
    before.close();
    const QByteArray name = QFile::encodeName(path);
    const PagedPaper paper = some_labels();
    const pid_t child = fork();
    if (child == 0) {
        // A limit on the size of files stands in for a full disk.
        std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{4096, 4096};
        setrlimit(RLIMIT_FSIZE, &limit);
        const auto failure = write_pdf(paper, QFile::decodeName(name));
        _exit(failure && failure->fault == PaperFault::no_space ? 7 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 7);
    QFile after(path);
    ASSERT_TRUE(after.open(QIODevice::ReadOnly));
    EXPECT_EQ(after.readAll(), QByteArray("as it was"));
    EXPECT_EQ(QDir(folder.path()).entryList(QDir::Files), QStringList{QStringLiteral("labels.pdf")});
}

TEST(PdfFiles, a_folder_that_may_not_be_written_is_said) {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("labels.pdf"));
    const PagedPaper paper = some_labels();
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::ExeOwner | QFile::ReadOther | QFile::ExeOther);
    const pid_t child = fork();
    if (child == 0) {
        // The superuser may write anywhere: be somebody else.
        if (geteuid() == 0 && seteuid(65534) != 0) {
            _exit(2);
        }
        const auto failure = write_pdf(paper, path);
        _exit(failure && failure->fault == PaperFault::read_only ? 7 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 7) << WEXITSTATUS(status);
    QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    EXPECT_FALSE(QFileInfo::exists(path));
}

TEST(PdfFiles, a_missing_folder_and_an_empty_list_are_said) {
    const auto missing = write_pdf(some_labels(), QStringLiteral("/no/such/folder/labels.pdf"));
    ASSERT_TRUE(missing);
    EXPECT_EQ(missing->fault, PaperFault::no_such_folder);
    EXPECT_TRUE(paper_failure_words(*missing).contains(QStringLiteral("/no/such/folder/labels.pdf")));
    const auto nothing = write_pdf(paper_of(std::make_shared<LabelRun>()), picture_path(QStringLiteral("none.pdf")));
    ASSERT_TRUE(nothing);
    EXPECT_EQ(nothing->fault, PaperFault::nothing);
}

TEST(PdfFiles, a_printer_prints_the_same_pages) {
    const QString path = picture_path(QStringLiteral("printer.pdf"));
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFileName(path);
    const auto failure = print_on(printer, some_labels());
    EXPECT_FALSE(failure.has_value());
    EXPECT_EQ(pages_of_pdf(path), 1);
    EXPECT_NEAR(page_size_mm(path).width(), 210, 0.2);
    EXPECT_EQ(codes_in_pdf(path).size(), 2);
}
