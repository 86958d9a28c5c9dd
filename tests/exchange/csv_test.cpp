// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that go to a spreadsheet and come back.
#include "core/exchange/csv.h"
#include "tests/exchange/wording.h"

#include <stdexcept>

namespace soakbook::exchange {
namespace {

CsvCell words(const char16_t* utf16) {
    return {text(utf16), false};
}
CsvCell number(const char16_t* utf16) {
    return {text(utf16), true};
}

std::vector<QStringList> rows_of(const QByteArray& file) {
    const auto read = read_csv(file);
    return read ? *read : std::vector<QStringList>{};
}

CsvRefusal refusal_of(const QByteArray& file) {
    const auto read = read_csv(file);
    EXPECT_FALSE(read.has_value());
    return read ? CsvRefusal{} : read.error();
}

TEST(Csv, is_written_as_the_standard_says) {
    // RFC 4180, section 2: CRLF ends each record; cells with quotes, commas or line ends are quoted, quotes doubled.
    const QByteArray file =
        write_csv({{words(u"bag"), words(u"note")}, {words(u"S1"), words(u"cold, \"damp\"\nroom")}});
    EXPECT_EQ(file, QByteArray("bag,note\r\nS1,\"cold, \"\"damp\"\"\nroom\"\r\n"));
}

TEST(Csv, separator_and_byte_order_mark_are_the_users_choice) {
    const std::vector<CsvRow> table{{words(u"a,b"), words(u"c;d")}};
    EXPECT_EQ(write_csv(table, {u';', true}), QByteArray("\xEF\xBB\xBF"
                                                         "a,b;\"c;d\"\r\n"));
    EXPECT_EQ(write_csv(table, {u',', false}), QByteArray("\"a,b\",c;d\r\n"));
}

TEST(Csv, text_that_looks_like_a_formula_is_guarded_and_numbers_are_not) {
    const QByteArray file = write_csv({{words(u"=1+1"), words(u"+5"), words(u"-1"), words(u"@x"), words(u"\tx"),
                                        number(u"-1,5"), words(u"'quoted'"), words(u"'=1")}},
                                      {u';', false});
    EXPECT_EQ(file, QByteArray("'=1+1;'+5;'-1;'@x;'\tx;-1,5;'quoted';''=1\r\n"));
}

TEST(Csv, what_is_written_is_read_back) {
    const std::vector<const char16_t*> samples{u"",        u" ",    u" x ",       u"=1+1",         u"'=1+1",
                                               u"''=1",    u"'",    u"-",         u"a;b",          u"a,b",
                                               u"a\tb",    u"\"",   u"\"\"",      u"line\nline",   u"line\r\nline",
                                               u"\r",      u"\n",   u"\u202Eabc", u"\u05D0\u05D1", u"\U0001F41D",
                                               u"\uFEFFx", u"12,5", u"\uFF1D1"};
    for (const QChar separator : {QChar(u','), QChar(u';'), QChar(u'\t')}) {
        for (const bool mark : {false, true}) {
            std::vector<CsvRow> rows;
            std::vector<QStringList> expected;
            for (const char16_t* first : samples) {
                for (const char16_t* second : samples) {
                    rows.push_back({words(first), words(second), words(u"end")});
                    expected.push_back({text(first), text(second), text(u"end")});
                }
            }
            const auto read = read_csv(write_csv(rows, {separator, mark}), separator);
            ASSERT_TRUE(read.has_value()) << "line " << read.error().line;
            EXPECT_EQ(*read, expected);
        }
    }
}

TEST(Csv, one_column_with_empty_cells_keeps_its_rows) {
    const std::vector<CsvRow> rows{{words(u"a")}, {words(u"")}, {words(u"b")}, {words(u"")}};
    EXPECT_EQ(rows_of(write_csv(rows)),
              (std::vector<QStringList>{{text(u"a")}, {text(u"")}, {text(u"b")}, {text(u"")}}));
}

TEST(Csv, what_no_text_file_carries_is_marked) {
    const QString with_nul = QStringLiteral("a") + QChar(u'\0') + QStringLiteral("b");
    const QString half = QStringLiteral("a") + QChar(0xD83D) + QStringLiteral("b");
    EXPECT_EQ(rows_of(write_csv({{{with_nul, false}, {half, false}}})),
              (std::vector<QStringList>{{text(u"a\uFFFDb"), text(u"a\uFFFDb")}}));
}

TEST(Csv, a_table_that_is_no_rectangle_is_not_written) {
    EXPECT_THROW(write_csv({{words(u"a"), words(u"b")}, {words(u"c")}}), std::invalid_argument);
    EXPECT_THROW(write_csv({CsvRow{}}), std::invalid_argument);
    EXPECT_EQ(write_csv({}), QByteArray());
}

TEST(Csv, line_ends_of_every_system_and_empty_lines_at_the_end) {
    const std::vector<QStringList> expected{{text(u"a"), text(u"b")}, {text(u"c"), text(u"d")}};
    for (const char* file : {"a,b\r\nc,d\r\n", "a,b\nc,d\n", "a,b\rc,d\r", "a,b\nc,d", "a,b\nc,d\n\n\r\n"}) {
        EXPECT_EQ(rows_of(file), expected) << file;
    }
}

TEST(Csv, the_separator_is_found_in_the_first_row) {
    EXPECT_EQ(rows_of("a;b;c\n1,5;2;3\n").back(), (QStringList{text(u"1,5"), text(u"2"), text(u"3")}));
    EXPECT_EQ(rows_of("a\tb\n1\t2\n").back(), (QStringList{text(u"1"), text(u"2")}));
    EXPECT_EQ(rows_of("\"x;y;z\",b\n1,2\n").back(), (QStringList{text(u"1"), text(u"2")}))
        << "quoted ones do not count";
    EXPECT_EQ(rows_of("only\none\n").size(), 2U);
}

TEST(Csv, ragged_rows_are_refused_with_their_line) {
    const CsvRefusal refusal = refusal_of("a,b\n\"x\ny\",2\n3\n4,5\n");
    EXPECT_EQ(refusal.fault, CsvFault::ragged);
    EXPECT_EQ(refusal.line, 4);
    EXPECT_EQ(refusal.cells, 1);
    EXPECT_EQ(refusal.expected, 2);
    EXPECT_EQ(refusal_of("a,b\n1,2,3\n").fault, CsvFault::ragged);
    const CsvRefusal gap = refusal_of("a,b\n\n1,2\n");
    EXPECT_EQ(gap.fault, CsvFault::ragged) << "an empty line between rows";
    EXPECT_EQ(gap.line, 2);
}

TEST(Csv, quotation_marks_out_of_place) {
    EXPECT_EQ(refusal_of("a,b\n1\"2,3\n").fault, CsvFault::stray_quote);
    EXPECT_EQ(refusal_of("a,b\n\"1\"2,3\n").fault, CsvFault::stray_quote);
    const CsvRefusal open = refusal_of("a,b\n1,\"2\n3,4\n");
    EXPECT_EQ(open.fault, CsvFault::open_quote);
    EXPECT_EQ(open.line, 2) << "where it was opened";
}

TEST(Csv, bytes_that_are_no_text) {
    EXPECT_EQ(refusal_of("a,b\n\xE4,2\n").fault, CsvFault::undecodable) << "Latin-1";
    EXPECT_EQ(refusal_of("a,\xC0\xAF\n").fault, CsvFault::undecodable) << "overlong";
    EXPECT_EQ(refusal_of(QByteArray("a,b\0\n", 5)).fault, CsvFault::undecodable);
    EXPECT_EQ(refusal_of("a,b\xC3").fault, CsvFault::undecodable) << "cut in the middle of a letter";
    EXPECT_EQ(refusal_of(QByteArray("\xFF\xFE"
                                    "a\0,",
                                    5))
                  .fault,
              CsvFault::undecodable)
        << "UTF-16 with an odd byte";
    EXPECT_EQ(refusal_of("").fault, CsvFault::empty);
    EXPECT_EQ(refusal_of("\xEF\xBB\xBF").fault, CsvFault::empty);
    EXPECT_EQ(refusal_of("\r\n\n").fault, CsvFault::empty);
}

TEST(Csv, utf16_of_both_orders_is_read) {
    const std::vector<QStringList> expected{{text(u"\u00E4"), text(u"b")}};
    EXPECT_EQ(rows_of(QByteArray("\xFF\xFE\xE4\0,\0b\0\n\0", 10)), expected);
    EXPECT_EQ(rows_of(QByteArray("\xFE\xFF\0\xE4\0,\0b\0\n", 10)), expected);
    EXPECT_EQ(rows_of("\xEF\xBB\xBF\xC3\xA4,b\n"), expected) << "UTF-8 with its mark";
}

TEST(Csv, a_hundred_thousand_rows_come_back_equal) {
    std::vector<CsvRow> rows;
    for (int i = 0; i < 100'000; ++i) {
        rows.push_back({{QString::number(i), true},
                        {QStringLiteral("bag \"") + QString::number(i) + QStringLiteral("\", shelf"), false}});
    }
    const std::vector<QStringList> read = rows_of(write_csv(rows));
    ASSERT_EQ(read.size(), rows.size());
    EXPECT_EQ(read.back(), (QStringList{QStringLiteral("99999"), QStringLiteral("bag \"99999\", shelf")}));
}

} // namespace
} // namespace soakbook::exchange
