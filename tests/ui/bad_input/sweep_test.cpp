// SPDX-License-Identifier: GPL-3.0-or-later
// Every form of the program under texts that nobody should type: it says so beside the field, writes nothing, and loses
// nothing of what was typed.
#include "tests/ui/bad_input/sweep.h"

#include <QElapsedTimer>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

std::vector<BadText> bad_texts(const QString& language) {
    if (language == QLatin1String("de"))
        return {{"point", QStringLiteral("12.5"), true}};
    return {
        {"empty", QString()},
        {"minus", QStringLiteral("-5")},
        {"huge_power", QStringLiteral("1e99")},
        {"huge", QStringLiteral("999999999999")},
        // Eight more than 2^32: held in 32 bits it would be a modest number.
        {"comes_round_to_eight", QStringLiteral("4294967304")},
        {"comma", QStringLiteral("12,5"), true},
        {"ten_thousand_letters", QString(10'000, QLatin1Char('7'))},
        // Hebrew letters, a number, and a mark that turns the direction of what follows.
        {"right_to_left", QStringLiteral("\u05e9\u05dc\u05d5\u05dd 12 \u202e34")},
        {"control", QStringLiteral("a\u0001\u0007b\u001bc\u007f")},
    };
}

class EveryForm : public testing::TestWithParam<FormCase> {
protected:
    void sweep(const QString& language) {
        auto room = std::make_unique<Room>(language);
        const auto open = [&room] {
            room->clear();
            GetParam().open(*room);
            fill_in(*room, GetParam());
        };
        open();
        const std::vector<Spot> all = spots(*room);
        ASSERT_EQ(all.empty(), !GetParam().has_texts);
        const std::vector<BadText> texts = bad_texts(language);
        int refused = 0;
        int asked = 0;
        int saved = 0;
        int nothing_to_do = 0;
        int beside = 0;
        for (const Spot& spot : all) {
            for (const BadText& bad : texts) {
                open();
                const Outcome outcome = try_text(*room, spot, bad);
                refused += outcome.kind == Outcome::Kind::refused ? 1 : 0;
                asked += outcome.kind == Outcome::Kind::asked ? 1 : 0;
                beside += outcome.kind == Outcome::Kind::refused && outcome.beside ? 1 : 0;
                saved += outcome.kind == Outcome::Kind::saved ? 1 : 0;
                nothing_to_do += outcome.kind == Outcome::Kind::nothing_to_do ? 1 : 0;
                for (const QString& fault : outcome.faults)
                    ADD_FAILURE() << GetParam().name << ", " << spot.name.toStdString() << ", " << bad.name << ": " << fault.toStdString();
                if (outcome.kind == Outcome::Kind::saved)
                    room = std::make_unique<Room>(language);
            }
        }
        std::cout << GetParam().name << " [" << language.toStdString() << "]: " << all.size() << " places to type, " << refused
                  << " refused, " << beside << " of them beside the very field, " << asked << " asked, " << saved << " taken, "
                  << nothing_to_do << " not typed\n";
        EXPECT_EQ(static_cast<std::size_t>(refused + asked + saved + nothing_to_do), all.size() * texts.size());
        EXPECT_EQ(static_cast<std::size_t>(nothing_to_do), static_cast<std::size_t>(GetParam().chosen_cells) * texts.size())
            << "a place that looks open and cannot be typed into";
        room->clear();
    }
};

} // namespace

TEST_P(EveryForm, filled_in_right_is_entered) {
    if (!GetParam().has_button)
        GTEST_SKIP() << "each choice takes hold at once";
    Room room(QStringLiteral("en"));
    GetParam().open(room);
    fill_in(room, GetParam());
    QString words;
    EXPECT_TRUE(enters(room, words)) << words.toStdString();
}

TEST_P(EveryForm, says_what_is_wrong_writes_nothing_and_keeps_what_was_typed) { sweep(QStringLiteral("en")); }

TEST_P(EveryForm, takes_a_point_where_a_comma_is_usual) { sweep(QStringLiteral("de")); }

INSTANTIATE_TEST_SUITE_P(swept, EveryForm, testing::ValuesIn(all_forms()),
                         [](const testing::TestParamInfo<FormCase>& form) { return std::string(form.param.name); });

} // namespace soakbook::tests
