// SPDX-License-Identifier: GPL-3.0-or-later
// Each rule is tried on a bad sample first: a check that finds nothing there would find nothing in the tree either.
#include "tests/house/floors.h"

#include <gtest/gtest.h>

namespace soakbook::house {
namespace {

std::size_t broken_includes(const char* path, const char* header) {
    return includes_against_the_floors({path, "#include \"" + std::string(header) + "\"\n"}).size();
}

TEST(TheTree, is_found) {
    EXPECT_GT(source_tree().size(), 100U);
    const auto& tree = source_tree();
    const auto has = [&tree](const char* path) {
        return std::any_of(tree.begin(), tree.end(), [path](const SourceFile& file) { return file.path == path; });
    };
    EXPECT_TRUE(has("core/maths/quantities.h"));
    EXPECT_TRUE(has("ui/parts/desk.h"));
    EXPECT_TRUE(has("tests/house/floors_test.cpp"));
}

TEST(Floors, upward_and_sideways_includes_are_found) {
    EXPECT_EQ(broken_includes("core/maths/mixing.cpp", "core/book/doing.h"), 1U);
    EXPECT_EQ(broken_includes("core/exchange/csv.cpp", "core/work/outcome.h"), 1U);
    EXPECT_EQ(broken_includes("core/book/workbook.cpp", "core/work/mix.h"), 1U);
    EXPECT_EQ(broken_includes("core/work/mix.cpp", "ui/parts/desk.h"), 1U);
    EXPECT_EQ(broken_includes("ui/parts/desk.cpp", "ui/shell/window.h"), 1U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "ui/store/page.h"), 1U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "page.h"), 1U) << "not from the root";
    EXPECT_EQ(broken_includes("ui/print/pdf.cpp", "ui/charts/heat.h"), 1U);
    EXPECT_EQ(broken_includes("ui/papers/sheet.cpp", "ui/shed/page.h"), 1U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "core/book/workbook.h"), 1U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "core/maths/mixing.h"), 1U);
    EXPECT_EQ(broken_includes("tests/work/round_test.cpp", "ui/parts/desk.h"), 1U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "core/work/mix.h"), 1U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "ui/parts/form.h"), 1U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "ui/print/ask_file.h"), 1U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "tests/work/bench.h"), 1U);
}

TEST(Floors, downward_includes_are_not) {
    EXPECT_EQ(broken_includes("core/work/mix.cpp", "core/book/workbook.h"), 0U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "core/work/mix.h"), 0U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "core/book/doing.h"), 0U);
    EXPECT_EQ(broken_includes("ui/shed/page.cpp", "ui/charts/heat.h"), 0U);
    EXPECT_EQ(broken_includes("ui/shell/window.cpp", "ui/store/page.h"), 0U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "app/session.h"), 0U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "ui/shell/frame.h"), 0U);
    EXPECT_EQ(broken_includes("tests/ui/main_job/story.cpp", "hands.h"), 0U);
    EXPECT_TRUE(includes_against_the_floors({"core/work/mix.cpp", "// #include \"ui/parts/desk.h\"\n"}).empty());
}

TEST(Floors, hold_in_the_tree) {
    EXPECT_TRUE(none(breaches_in_tree(includes_against_the_floors)));
}

TEST(Floors, the_sums_know_no_qt_and_no_database) {
    EXPECT_EQ(machinery_in_maths(
                  {"core/maths/x.cpp", "#include <QString>\n#include <sqlite3.h>\n#include <QtCore/qstring.h>\n"})
                  .size(),
              3U);
    EXPECT_EQ(machinery_in_maths({"core/maths/x.cpp", "#include <vector>\n#include <gsl/gsl_cdf.h>\n"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(machinery_in_maths)));
}

TEST(Floors, the_main_job_is_read_with_programs_of_others) {
    EXPECT_EQ(readers_in_the_main_job({"tests/ui/main_job/x.cpp", "#include <QSqlQuery>\n#include <sqlite3.h>\n#include <zbar.h>\n"}).size(), 3U);
    EXPECT_EQ(readers_in_the_main_job({"tests/ui/main_job/x.cpp", "#include <QProcess>\n#include <QImage>\n"}).size(), 0U);
    EXPECT_EQ(readers_in_the_main_job({"tests/book/x.cpp", "#include <sqlite3.h>\n"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(readers_in_the_main_job)));
}

TEST(Floors, no_widget_below_ui) {
    EXPECT_EQ(widgets_below_ui({"core/work/x.cpp",
                                "#include <QWidget>\n#include <QPainter>\n#include <QColor>\n#include <QFont>\n"
                                "#include <QtGui/QImage>\n#include <QMessageDialog>\n"})
                  .size(),
              6U);
    EXPECT_EQ(
        widgets_below_ui({"core/work/x.cpp",
                          "#include <QString>\n#include <QLocale>\n#include <QTextStream>\n#include <QStringView>\n"})
            .size(),
        0U);
    EXPECT_EQ(widgets_below_ui({"ui/parts/x.cpp", "#include <QWidget>\n"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(widgets_below_ui)));
}

TEST(Floors, no_sql_outside_the_book) {
    for (const char* bad :
         {"q(\"SELECT name FROM bag\");", "q(\"INSERT INTO bag VALUES (1)\");", "q(\"UPDATE bag SET strips = 1\");",
          "q(\"DELETE FROM bag\");", "q(\"SELECT \"\n\"name FROM bag\");", "q(R\"(\n  SELECT a\n  FROM b)\");",
          "q(\"PRAGMA user_version\");", "q(\"select * from bag\");", "q(\"select a, b from bag where c\");",
          "q(\"insert into bag (a)\");", "#include <QSqlQuery>", "#include <sqlite3.h>"}) {
        EXPECT_EQ(sql_outside_the_book({"core/work/x.cpp", bad}).size(), 1U) << bad;
        EXPECT_EQ(sql_outside_the_book({"ui/shed/x.cpp", bad}).size(), 1U) << bad;
        EXPECT_EQ(sql_outside_the_book({"core/book/x.cpp", bad}).size(), 0U) << bad;
    }
    for (const char* good : {"tr(\"Select a bag from the list\");", "tr(\"Delete this draft?\");",
                             "tr(\"Update the yard and set a date\");", "// SELECT a FROM b", "selected(from);"}) {
        EXPECT_EQ(sql_outside_the_book({"ui/shed/x.cpp", good}).size(), 0U) << good;
    }
    EXPECT_TRUE(none(breaches_in_tree(sql_outside_the_book)));
}

TEST(Floors, ui_reckons_nothing) {
    EXPECT_EQ(sums_called_from_ui({"ui/shed/x.cpp", "auto a = maths::acid_needed(b);"}).size(), 1U);
    EXPECT_EQ(sums_called_from_ui({"ui/shed/x.cpp", "auto a = maths::share(b, c);"}).size(), 1U);
    EXPECT_EQ(sums_called_from_ui({"ui/shed/x.cpp", "auto a = maths::days_after(maths::day(2026, 1, 1), 3);"}).size(),
              0U);
    EXPECT_EQ(sums_called_from_ui({"core/work/x.cpp", "auto a = maths::acid_needed(b);"}).size(), 0U);
    EXPECT_TRUE(none(breaches_in_tree(sums_called_from_ui)));
}

TEST(Floors, libraries_link_only_downward) {
    EXPECT_EQ(
        links_against_the_floors({"core/maths/CMakeLists.txt", "target_link_libraries(a PUBLIC Qt6::Core)\n"}).size(),
        1U);
    EXPECT_EQ(links_against_the_floors({"core/book/CMakeLists.txt", "x(a PUBLIC soakbook_work)\n"}).size(), 1U);
    EXPECT_EQ(
        links_against_the_floors({"core/work/CMakeLists.txt", "x(a PUBLIC soakbook_book) # not soakbook_ui\n"}).size(),
        0U);
    EXPECT_TRUE(none(breaches_in_tree(links_against_the_floors)));
}

} // namespace
} // namespace soakbook::house
