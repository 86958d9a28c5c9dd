// SPDX-License-Identifier: GPL-3.0-or-later
// Find: codes as people type them, names, and what was given out and undone.
#include "core/work/find.h"
#include "core/work/undo.h"
#include "yards_bench.h"

namespace soakbook::tests {
namespace {

using namespace work;

TEST(Find, takes_a_code_in_any_case_with_spaces) {
    YardsBench b;
    const auto id = b.bags_of(b.bagged_batch()).at(0);
    const QString code = bag(b.book(), id, day_n(3))->code;
    for (const QString& typed :
         {code, code.toLower(), QString(QStringLiteral("  ") + code.left(1) + QLatin1Char(' ') + code.mid(1)),
          QString(code.left(2) + QLatin1Char('-') + code.mid(2))}) {
        const auto result = find(b.book(), typed);
        ASSERT_EQ(result.found.size(), 1u) << typed.toStdString();
        EXPECT_EQ(result.found[0].kind, FoundKind::bag);
        EXPECT_EQ(result.found[0].id, id.value);
        EXPECT_EQ(result.found[0].where, bag(b.book(), id, day_n(3))->batch_code);
    }
}

TEST(Find, a_slip_of_the_pen_is_said) {
    YardsBench b;
    const auto id = b.bags_of(b.bagged_batch()).at(0);
    QString code = bag(b.book(), id, day_n(3))->code;
    code[code.size() - 1] = code.back() == QLatin1Char('7') ? QLatin1Char('8') : QLatin1Char('7');
    const auto result = find(b.book(), code);
    EXPECT_TRUE(result.found.empty());
    EXPECT_EQ(result.why_not, NotFound::wrong_check_character);
}

TEST(Find, a_code_given_out_and_undone_is_remembered) {
    YardsBench b;
    const auto planned = must(plan_mix(b.book(), b.plan(), on_day(0, 9)));
    must(undo(b.book(), on_day(0, 10)));
    const auto result = find(b.book(), planned.code);
    ASSERT_EQ(result.found.size(), 1u);
    EXPECT_EQ(result.found[0].kind, FoundKind::given_but_undone);
    EXPECT_EQ(result.found[0].given, moment(0, 9));
}

TEST(Find, says_why_nothing_was_found) {
    YardsBench b;
    EXPECT_EQ(find(b.book(), QStringLiteral("   ")).why_not, NotFound::empty);
    EXPECT_EQ(find(b.book(), QStringLiteral("nowhere")).why_not, NotFound::no_such_name);
    YardsBench other;
    const QString code = bag(other.book(), other.bags_of(other.bagged_batch()).at(0), day_n(3))->code;
    EXPECT_EQ(find(b.book(), code).why_not, NotFound::no_such_code) << "given out in another workbook";
    EXPECT_EQ(find(b.book(), QString(10'000, QLatin1Char('x'))).why_not, NotFound::no_such_name);
}

TEST(Find, names_hold_the_text_whatever_its_case) {
    YardsBench b;
    const auto round = b.round(10, QStringLiteral("Late summer"));
    must(save_yard(b.book(), {{}, QStringLiteral("Über dem Wald"), {}, {}, true}, on_day(0)));
    EXPECT_EQ(find(b.book(), QStringLiteral("mill")).found.at(0).kind, FoundKind::yard);
    EXPECT_EQ(find(b.book(), QStringLiteral("ÜBER")).found.size(), 1u);
    const auto result = find(b.book(), QStringLiteral("SUMMER"));
    ASSERT_EQ(result.found.size(), 1u);
    EXPECT_EQ(result.found[0].kind, FoundKind::round);
    EXPECT_EQ(result.found[0].id, round.value);
    EXPECT_EQ(find(b.book(), QStringLiteral("glycerine")).found.at(0).kind, FoundKind::lot);
    const auto hives = find(b.book(), QStringLiteral("a1"));
    ASSERT_FALSE(hives.found.empty());
    EXPECT_EQ(hives.found[0].code, QStringLiteral("A1")) << "the whole name first";
    EXPECT_EQ(hives.found[0].where, QStringLiteral("Mill lane"));
    EXPECT_EQ(find(b.book(), QStringLiteral("a"), 5).found.size(), 5u);
}

} // namespace
} // namespace soakbook::tests
