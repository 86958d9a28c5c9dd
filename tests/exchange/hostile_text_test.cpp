// SPDX-License-Identifier: GPL-3.0-or-later
// Text that no careful hand types: it is read as it looks or refused, never as something else.
#include "core/exchange/date_text.h"
#include "core/exchange/quantity_text.h"
#include "tests/exchange/wording.h"

namespace soakbook::exchange {
namespace {

using maths::milligrams;

Read<maths::Mass> kg(const QString& typed) {
    return read_mass(typed, MassUnit::kilogram);
}

TEST(HostileText, digits_of_other_scripts_mean_what_they_show) {
    EXPECT_TRUE(reads_as(kg(text(u"\u0661\u0662\u066B\u0665")), milligrams(12'500'000))) << "Arabic-Indic";
    EXPECT_TRUE(reads_as(kg(text(u"\u06F1\u06F2\u066B\u06F5")), milligrams(12'500'000))) << "Persian";
    EXPECT_TRUE(reads_as(kg(text(u"\uFF11\uFF12\uFF0E\uFF15")), milligrams(12'500'000))) << "full-width";
    EXPECT_TRUE(reads_as(kg(text(u"\u0661\u066B\u0662\u0663\u0664")), milligrams(1'234'000)))
        << "this mark is never a thousand's";
    EXPECT_TRUE(is_refused(kg(text(u"\u0661\u066C\u0662\u0663\u0664")), Unreadable::grouping)) << "this one always";
    EXPECT_TRUE(is_refused(kg(text(u"\u096B")), Unreadable::not_a_number)) << "a set that is not read";
    EXPECT_TRUE(is_refused(kg(text(u"1\u00B2")), Unreadable::not_a_number)) << "not twelve";
    EXPECT_TRUE(is_refused(kg(text(u"\u2460")), Unreadable::not_a_number)) << "a circled one";
    EXPECT_TRUE(
        reads_as(read_day(text(u"\uFF13\uFF0F\uFF11\uFF10"), maths::day(2026, 10, 5), QLocale(QStringLiteral("en_GB"))),
                 maths::day(2026, 10, 3)));
}

TEST(HostileText, every_kind_of_space_is_a_space) {
    for (const char16_t* typed :
         {u"12.5 kg", u"12.5\u00A0kg", u"12.5\u2009kg", u"12.5\u202Fkg", u"\u300012.5\u2003kg\u00A0", u"12.5\tkg"}) {
        EXPECT_TRUE(reads_as(kg(text(typed)), milligrams(12'500'000))) << text(typed).toStdString();
    }
}

TEST(HostileText, direction_characters_cannot_turn_a_number_round) {
    EXPECT_TRUE(is_refused(kg(text(u"\u202E12")), Unreadable::not_a_number)) << "shown as 21";
    EXPECT_TRUE(is_refused(kg(text(u"12\u200F34")), Unreadable::not_a_number)) << "may be shown as 3412";
    EXPECT_TRUE(is_refused(kg(text(u"\u206712\u2069")), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(text(u"1\u200B2")), Unreadable::not_a_number)) << "zero width";
    EXPECT_TRUE(is_refused(kg(text(u"12 k\u200Bg")), Unreadable::not_a_number)) << "in the unit too";
    EXPECT_TRUE(is_refused(kg(text(u"\uFEFF12")), Unreadable::not_a_number));
    EXPECT_TRUE(reads_as(kg(text(u"\u200E12 kg\u200F")), milligrams(12'000'000))) << "marks at the ends change nothing";
}

TEST(HostileText, nul_and_broken_pairs_are_refused_not_cut) {
    const QString with_nul = QStringLiteral("12") + QChar(u'\0') + QStringLiteral("34");
    EXPECT_TRUE(is_refused(kg(with_nul), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(QString(QStringLiteral("12") + QChar(u'\0'))), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(QString(QStringLiteral("12") + QChar(0xD835))), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(read_day(with_nul, maths::day(2026, 10, 5), QLocale::c()), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(read_time(with_nul), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(text(u"12\n34")), Unreadable::not_a_number));
}

TEST(HostileText, a_million_characters_are_refused_at_once) {
    constexpr qsizetype million = 1'000'000;
    EXPECT_TRUE(is_refused(kg(QString(million, u'9')), Unreadable::too_large));
    EXPECT_TRUE(is_refused(kg(QString(million, u'x')), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(QString(million, u'.')), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(kg(QString(QStringLiteral("1.") + QString(million, u'1'))), Unreadable::too_fine));
    EXPECT_TRUE(reads_as(kg(QString(QString(million, u'0') + u'7')), milligrams(7'000'000))) << "idle zeros";
    EXPECT_TRUE(is_refused(kg(QString(million, u' ')), Unreadable::empty));
    EXPECT_TRUE(
        is_refused(read_day(QString(million, u'1'), maths::day(2026, 10, 5), QLocale::c()), Unreadable::not_a_number));
    EXPECT_TRUE(is_refused(read_time(QString(million, u'1')), Unreadable::not_a_number));
}

TEST(HostileText, right_to_left_words_are_unknown_units) {
    EXPECT_TRUE(is_refused(kg(text(u"12 \u05E7\u05D9\u05DC\u05D5")), Unreadable::unknown_unit));
    EXPECT_TRUE(is_refused(kg(text(u"\u05E7\u05D9\u05DC\u05D5 12")), Unreadable::not_a_number));
}

} // namespace
} // namespace soakbook::exchange
