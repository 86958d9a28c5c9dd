// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule is tried on a bad sample first: a check that finds nothing there would find nothing in the tree either.
#include "tests/house/habits.h"

#include <gtest/gtest.h>

namespace soakbook::house {
namespace {

const std::string licence = "// SPDX-License-Identifier: GPL-3.0-or-later\n";

TEST(Habits, every_source_names_its_licence) {
    EXPECT_EQ(missing_licence_line({"a.cpp", "int a;\n"}).size(), 1U);
    EXPECT_EQ(missing_licence_line({"a.h", ""}).size(), 1U);
    EXPECT_EQ(missing_licence_line({"start", "#!/bin/bash\n# no line\n"}).size(), 1U);
    EXPECT_EQ(missing_licence_line({"a.sql", "\n\n-- SPDX-License-Identifier: GPL-3.0-or-later\n"}).size(), 1U)
        << "too late";
    EXPECT_EQ(missing_licence_line({"a.cpp", licence}).size(), 0U);
    EXPECT_EQ(missing_licence_line({"note.md", "words\n"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(missing_licence_line)));
}

TEST(Habits, a_file_fits_in_the_head) {
    std::string long_text;
    for (int i = 0; i < 501; ++i) {
        long_text += "\n";
    }
    EXPECT_EQ(too_long({"a.cpp", long_text}).size(), 1U);
    EXPECT_EQ(too_long({"a.cpp", long_text.substr(1)}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(too_long)));
}

TEST(Habits, the_clock_is_read_at_the_edge_only) {
    for (const char* bad :
         {"auto d = QDate::currentDate();", "auto t = QDateTime::currentDateTimeUtc();", "QTime::currentTime();",
          "std::chrono::system_clock::now();", "time(nullptr);", "q(\"datetime('now')\");"}) {
        EXPECT_EQ(clock_below_the_edge({"core/work/x.cpp", bad}).size(), 1U) << bad;
        EXPECT_EQ(clock_below_the_edge({"ui/shed/x.cpp", bad}).size(), 1U) << bad;
        EXPECT_EQ(clock_below_the_edge({"ui/parts/desk.cpp", bad}).size(), 0U) << bad;
        EXPECT_EQ(clock_below_the_edge({"ui/shell/x.cpp", bad}).size(), 0U) << bad;
    }
    EXPECT_EQ(clock_below_the_edge({"core/book/schema/x.sql", "DEFAULT CURRENT_TIMESTAMP\n"}).size(), 1U);
    EXPECT_EQ(clock_below_the_edge({"core/work/x.cpp", "// QDate::currentDate() is not for us\n"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(clock_below_the_edge)));
}

TEST(Habits, only_sqlite_opens_a_workbook_that_is_open) {
    for (const char* bad : {"QFile file(path);", "QFile::copy(workbook.path(), to);", "std::ifstream in(path);", "FILE* f = fopen(p, m);",
                            "int f = ::open(p, O_RDONLY);", "QSaveFile out{path};", "::rename(a, b);", "auto f = QFile(path);", "QLockFile lock(path);"}) {
        EXPECT_EQ(opened_past_sqlite({"core/book/x.cpp", bad}).size(), 1U) << bad;
        EXPECT_EQ(opened_past_sqlite({"core/book/file_header.cpp", bad}).size(), 0U) << bad;
        EXPECT_EQ(opened_past_sqlite({"tests/book/x.cpp", bad}).size(), 0U) << bad;
    }
    for (const char* good : {"QFile::exists(path);", "QFile::encodeName(path);", "QFileInfo info(path);", "Workbook::open(path);", "VisitPage::open(x);", "// QFile file(path);"}) {
        EXPECT_EQ(opened_past_sqlite({"app/x.cpp", good}).size(), 0U) << good;
    }
    EXPECT_TRUE(none(breaches_in_tree(opened_past_sqlite)));
}

TEST(Habits, chance_comes_in_as_an_argument) {
    EXPECT_EQ(chance_in_sums_or_work({"core/maths/x.cpp", "std::random_device d;"}).size(), 1U);
    EXPECT_EQ(chance_in_sums_or_work({"core/work/x.cpp", "QRandomGenerator::global();"}).size(), 1U);
    EXPECT_EQ(chance_in_sums_or_work({"core/work/x.cpp", "operand(1);"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(chance_in_sums_or_work)));
}

TEST(Habits, every_text_for_people_has_a_word_for_its_translator) {
    for (const char* bad :
         {"label(tr(\"Seal\"));", "//: far away\nint a;\nint b;\nint c;\nlabel(tr(\"Seal\"));",
          "// not for translators\ntr(\"Seal\");", "QCoreApplication::translate(\"Place\", \"Seal\");",
          "label(tr(\n\"Seal\"));", "//: one\na(tr(\"Seal\"));\nint b;\nint d;\nc(tr(\"Bag\"));",
          "translate(\"Refusal\",\n\"Seal\");", "static const char* s = QT_TR_NOOP(\"Seal\");"}) {
        EXPECT_EQ(untold_translator({"ui/shed/x.cpp", bad}).size(), 1U) << bad;
    }
    for (const char* good : {"//: A button\nlabel(tr(\"Seal\"));", "//: A button\nlabel(\n    tr(\"Seal\"));",
                             "//: A button\n//: of the form\nf(tr(\"Seal\"));",
                             "//: A button\n// that closes\n// the bag\n// for good\nint a;\nf(tr(\"Seal\"));",
                             "// says tr(\"x\")\nint a;", "QString tr(const QString& key);", "painter.translate(x, y);",
                             "translate(\"Refusal\", text->with);", "str(\"a\");"}) {
        EXPECT_EQ(untold_translator({"ui/shed/x.cpp", good}).size(), 0U) << good;
    }
    EXPECT_TRUE(none(breaches_in_tree(untold_translator)));
}

TEST(Habits, nothing_unfinished_and_no_machine_is_named) {
    for (const std::string& bad :
         {std::string("// TO") + "DO later", std::string("# FIX") + "ME", std::string("cd /wo") + "rk/main",
          std::string("\"/tmp/ba") + "sh_jobs.0\"", std::string("see /ho") + "me/someone"}) {
        EXPECT_EQ(unfit_words({"a.cpp", bad}).size(), 1U) << bad;
    }
    EXPECT_EQ(unfit_words({"a.cpp", "#include \"core/work/mix.h\" // see ../work/mix.h, ${SOURCE}/work/mix.h"}).size(),
              0U);
    EXPECT_TRUE(none(breaches_in_tree(unfit_words)));
}

} // namespace
} // namespace soakbook::house
