// SPDX-License-Identifier: GPL-3.0-or-later
// Days as a beekeeper types them.
#include "core/exchange/date_text.h"
#include "tests/exchange/wording.h"

namespace soakbook::exchange {
namespace {

using maths::day;
using maths::Day;

const Day reading_day = day(2026, 10, 5);

QLocale british() {
    return QLocale(QStringLiteral("en_GB"));
}
QLocale american() {
    return QLocale(QStringLiteral("en_US"));
}
QLocale german() {
    return QLocale(QStringLiteral("de_DE"));
}

Read<Day> typed_day(const char16_t* utf16, const QLocale& locale = british(), Day now = reading_day) {
    return read_day(text(utf16), now, locale);
}

TEST(Days, months_by_name_in_english_and_in_the_users_language) {
    EXPECT_TRUE(reads_as(typed_day(u"3 oct"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3 OCT 2025"), day(2025, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3oct"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3-Oct-26"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"October 3, 2026"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"oct 3"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3. Okt. 2026", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3 oct", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3 marz 2026", german()), day(2026, 3, 3))) << "an umlaut left out";
    EXPECT_TRUE(reads_as(typed_day(u"3 f\u00E9vr. 2026", QLocale(QStringLiteral("fr_FR"))), day(2026, 2, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3 fevrier 2026", QLocale(QStringLiteral("fr_FR"))), day(2026, 2, 3)));
}

TEST(Days, a_word_that_fits_two_months_or_none_is_refused) {
    EXPECT_TRUE(is_refused(typed_day(u"3 jui", QLocale(QStringLiteral("fr_FR"))), Unreadable::two_meanings))
        << "juin, juillet";
    EXPECT_TRUE(is_refused(typed_day(u"3 oc"), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(typed_day(u"3 honey"), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(typed_day(u"oct"), Unreadable::not_a_number));
}

TEST(Days, finnish_march_is_not_mistaken_for_november) {
    // "mar" is March in English and begins marraskuu, November, in Finnish.
    const auto read = typed_day(u"3 mar 2026", QLocale(QStringLiteral("fi_FI")));
    EXPECT_TRUE(!read || *read == day(2026, 3, 3));
    EXPECT_TRUE(reads_as(typed_day(u"3 marras 2026", QLocale(QStringLiteral("fi_FI"))), day(2026, 11, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3 maalis 2026", QLocale(QStringLiteral("fi_FI"))), day(2026, 3, 3)));
}

TEST(Days, numbers_go_in_the_locales_order) {
    EXPECT_TRUE(reads_as(typed_day(u"3/10"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"10/3", american()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3.10.2026", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"3.10.", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"03. 10. 2026", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"2026-10-03", american()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"2026/10/3", german()), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"10-03", QLocale(QStringLiteral("sv_SE"))), day(2026, 10, 3)));
}

TEST(Days, the_order_is_never_turned_round_to_make_a_day_possible) {
    EXPECT_TRUE(is_refused(typed_day(u"10/25/2026"), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"25/10/2026", american()), Unreadable::impossible_date));
}

TEST(Days, a_short_year_that_leaves_two_readings_is_asked) {
    EXPECT_TRUE(is_refused(typed_day(u"03/04/26"), Unreadable::two_meanings));
    EXPECT_TRUE(is_refused(typed_day(u"03/04/26", american()), Unreadable::two_meanings));
    EXPECT_TRUE(is_refused(typed_day(u"03.04.26", german()), Unreadable::two_meanings));
    EXPECT_TRUE(is_refused(typed_day(u"26-04-03", QLocale(QStringLiteral("sv_SE"))), Unreadable::two_meanings));
    EXPECT_TRUE(reads_as(typed_day(u"25/04/26"), day(2026, 4, 25))) << "one reading, and never 1926";
    EXPECT_TRUE(reads_as(typed_day(u"04/25/26", american()), day(2026, 4, 25)));
    EXPECT_TRUE(reads_as(typed_day(u"04/04/26"), day(2026, 4, 4))) << "both readings are the same day";
    EXPECT_TRUE(reads_as(typed_day(u"03/04/2026"), day(2026, 4, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"03/04/2026", american()), day(2026, 3, 4)));
}

TEST(Days, days_that_no_calendar_has) {
    EXPECT_TRUE(is_refused(typed_day(u"31.02.2026", german()), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"2026-02-30"), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"31.02."), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"31 feb"), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"0 jan"), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"00/10/2026"), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(typed_day(u"29/02/2026"), Unreadable::impossible_date));
    EXPECT_TRUE(reads_as(typed_day(u"29/02/2028"), day(2028, 2, 29)));
    EXPECT_TRUE(is_refused(typed_day(u"29 feb"), Unreadable::impossible_date)) << "2025, 2026 and 2027 have none";
    EXPECT_TRUE(reads_as(typed_day(u"29 feb", british(), day(2027, 12, 1)), day(2028, 2, 29)));
}

TEST(Days, counted_from_today) {
    EXPECT_TRUE(reads_as(typed_day(u"-2"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"\u22122"), day(2026, 10, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"0"), reading_day));
    EXPECT_TRUE(reads_as(typed_day(u"+7"), day(2026, 10, 12)));
    EXPECT_TRUE(reads_as(typed_day(u"-1", british(), day(2028, 3, 1)), day(2028, 2, 29)));
    EXPECT_TRUE(is_refused(typed_day(u"-99999"), Unreadable::too_large));
    EXPECT_TRUE(is_refused(typed_day(u"7"), Unreadable::not_a_number)) << "the seventh, or in seven days?";
}

TEST(Days, without_a_year_the_nearest_is_meant) {
    EXPECT_TRUE(reads_as(typed_day(u"3 jan", british(), day(2026, 12, 28)), day(2027, 1, 3)));
    EXPECT_TRUE(reads_as(typed_day(u"28 dec", british(), day(2027, 1, 3)), day(2026, 12, 28)));
    EXPECT_TRUE(reads_as(typed_day(u"28/12", british(), day(2027, 1, 3)), day(2026, 12, 28)));
    EXPECT_TRUE(reads_as(typed_day(u"1 jul", british(), day(2026, 7, 1)), day(2026, 7, 1)));
    // 2027-03-02 to 2027-09-01 are 183 days, and so are they from 2026-08-31: of two as near the earlier counts.
    EXPECT_TRUE(reads_as(typed_day(u"1 sep", british(), day(2028, 3, 2)), day(2027, 9, 1)));
}

TEST(Days, years_out_of_sense_and_other_junk) {
    EXPECT_TRUE(is_refused(typed_day(u"3 oct 1826"), Unreadable::too_large));
    EXPECT_TRUE(is_refused(typed_day(u"3 oct 9999"), Unreadable::too_large));
    EXPECT_TRUE(is_refused(typed_day(u""), Unreadable::empty));
    for (const char16_t* junk : {u"3/10.2026", u"20261003", u"3/10/026", u"3/10/2026/1", u"2026-10", u"3 oct 20260",
                                 u"3 10", u"1.5.7.9", u"oct 3 oct", u"3 oct\n2026", u"--2", u"1e3", u"tomorrow"}) {
        EXPECT_TRUE(is_refused(typed_day(junk), Unreadable::not_a_number)) << text(junk).toStdString();
    }
}

TEST(Days, written_in_the_users_language) {
    EXPECT_EQ(write_day(day(2026, 10, 3), british()), text(u"3 Oct 2026"));
    EXPECT_EQ(write_day_short(day(2026, 10, 3), british()), text(u"3 Oct"));
    EXPECT_EQ(write_day(day(2026, 10, 3), german()), text(u"3. Okt. 2026"));
    EXPECT_EQ(write_day(day(2026, 10, 3), QLocale(QStringLiteral("ja_JP"))), text(u"3 Oct 2026"))
        << "no month of letters";
    EXPECT_EQ(write_day_iso(day(2026, 3, 4)), text(u"2026-03-04"));
}

TEST(Days, files_hold_one_form_only) {
    EXPECT_TRUE(reads_as(read_day_iso(text(u"2026-03-04")), day(2026, 3, 4)));
    for (const char16_t* junk :
         {u"2026-3-4", u" 2026-03-04", u"2026-03-04\n", u"04.03.2026", u"\u0662\u0660\u0662\u0666-03-04"}) {
        EXPECT_TRUE(is_refused(read_day_iso(text(junk)), Unreadable::not_a_number)) << text(junk).toStdString();
    }
    EXPECT_TRUE(is_refused(read_day_iso(text(u"2026-02-29")), Unreadable::impossible_date));
    EXPECT_TRUE(is_refused(read_day_iso({}), Unreadable::empty));
}

} // namespace
} // namespace soakbook::exchange
