// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/fixed_clock.h"
#include "tests/ui/parts/names_in_enum.h"
#include "core/work/facts.h"
#include "core/work/piece.h"
#include "ui/parts/figure_words.h"
#include "ui/parts/habits.h"
#include "ui/parts/piece_words.h"
#include "ui/parts/refusal_words.h"

#include <QFile>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <set>

namespace soakbook::ui {
namespace {

using work::Refusal;
using work::Why;

TEST(RefusalWords, every_reason_up_to_the_last_has_words_of_its_own) {
    const Habits habits(fixed_clock);
    const QStringList names = names_in_enum(QStringLiteral("core/work/outcome.h"), QStringLiteral("Why"));
    ASSERT_GT(names.size(), 70);
    std::set<QString> said;
    for (int i = 0; i < names.size(); ++i) {
        const auto why = static_cast<Why>(i);
        bool found = false;
        for (const auto& room : {form_refusals(), batch_refusals(), soak_refusals(), yard_refusals()}) {
            for (const RefusalText& text : room) {
                found = found || text.why == why;
            }
        }
        EXPECT_TRUE(found) << names[i].toStdString() << " has no words";
        const QString words = refusal_words({why, {}, {}, false}, habits);
        EXPECT_TRUE(said.insert(words).second) << names[i].toStdString() << " says what another says: " << words.toStdString();
        EXPECT_FALSE(words.contains(QLatin1Char('%'))) << words.toStdString();
    }
}

TEST(RefusalWords, facts_stand_in_the_sentence_and_leave_no_gap) {
    const Habits habits(fixed_clock);
    const QStringList facts{QStringLiteral("P3F"), QStringLiteral("m:11400000"), QStringLiteral("n:7")};
    for (const auto& room : {form_refusals(), batch_refusals(), soak_refusals(), yard_refusals()}) {
        for (const RefusalText& text : room) {
            const QString words = refusal_words({text.why, {}, facts, false}, habits);
            EXPECT_FALSE(words.contains(QRegularExpression(QStringLiteral("%[0-9]")))) << words.toStdString();
            if (text.facts > 0) {
                EXPECT_TRUE(words.contains(QStringLiteral("P3F"))) << words.toStdString();
            }
        }
    }
}

TEST(RefusalWords, half_a_pail_says_why_and_what_to_do) {
    const Habits habits(fixed_clock);
    const QString words = refusal_words({Why::pail_part_wanted, {}, {QStringLiteral("P3F"), work::fact(maths::kilograms(11.4))}, false}, habits);
    EXPECT_TRUE(words.startsWith(QStringLiteral("Pail P3F goes in whole"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("11.4")));
    EXPECT_TRUE(words.contains(QStringLiteral("settles")));
}

TEST(RefusalWords, a_name_that_holds_a_per_cent_sign_stays_as_it_is) {
    const Habits habits(fixed_clock);
    const QString words = refusal_words({Why::tank_in_use, {}, {QStringLiteral("Tank %2"), QStringLiteral("B7K")}, true}, habits);
    EXPECT_TRUE(words.contains(QStringLiteral("Tank %2"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("B7K")));
}

TEST(RefusalWords, facts_are_written_in_the_users_units) {
    Habits habits(fixed_clock);
    Preferences pounds = habits.preferences();
    pounds.language = QStringLiteral("en");
    pounds.temperature = exchange::TemperatureUnit::fahrenheit;
    habits.set_preferences(pounds);
    EXPECT_EQ(fact_words(work::fact(maths::celsius(60)), habits), habits.temperature(maths::celsius(60)));
    EXPECT_TRUE(fact_words(work::fact(maths::celsius(60)), habits).startsWith(QStringLiteral("140")));
    EXPECT_EQ(fact_words(work::fact(maths::grams(34)), habits), habits.small(maths::grams(34)));
    EXPECT_EQ(fact_words(work::fact(maths::kilograms(62.5)), habits), habits.large(maths::kilograms(62.5)));
    EXPECT_EQ(fact_words(work::fact(maths::day(2026, 10, 3)), habits), habits.day(maths::day(2026, 10, 3)));
    EXPECT_EQ(fact_words(work::fact(QStringLiteral("m:7")), habits), QStringLiteral("m:7"));
    EXPECT_EQ(fact_words(QStringLiteral("B7K"), habits), QStringLiteral("B7K"));
    habits.set_preferences({});
}

TEST(RefusalWords, a_missing_figure_is_named_and_not_its_key) {
    const Habits habits(fixed_clock);
    for (int i = 0; i < work::figure_count; ++i) {
        const auto figure = static_cast<work::Figure>(i);
        const QString key = QLatin1String(work::info(figure).key);
        const QString words = refusal_words({Why::figure_missing, {}, {key}, false}, habits);
        EXPECT_FALSE(figure_name(figure).isEmpty());
        EXPECT_TRUE(words.contains(figure_name(figure))) << words.toStdString();
        EXPECT_FALSE(figure_name(figure).contains(QLatin1Char('_')));
    }
}

TEST(UnreadableWords, every_unreadable_text_gets_its_reason) {
    std::set<QString> said;
    for (int i = 0; i <= static_cast<int>(exchange::Unreadable::two_meanings); ++i) {
        const QString words = unreadable_words(static_cast<exchange::Unreadable>(i));
        EXPECT_FALSE(words.isEmpty());
        EXPECT_TRUE(said.insert(words).second) << words.toStdString();
    }
}

TEST(PieceWords, what_is_taken_back_or_done_again_says_what_it_was) {
    EXPECT_EQ(piece_words({QStringLiteral("undo:mix_planned"), 1, QStringLiteral("B0017")}), QStringLiteral("taken back: batch B0017 planned"));
    EXPECT_EQ(piece_words({QStringLiteral("redo:mix_planned"), 1, QStringLiteral("B0017")}), QStringLiteral("done again: batch B0017 planned"));
}

TEST(PieceWords, every_paper_that_is_printed_has_a_name_for_people) {
    QString sources;
    for (const char* file : {"run_sheet", "pull_sheet", "mixing_paper", "batch_paper", "register_paper"}) {
        QFile source(QStringLiteral(SOAKBOOK_SOURCE_DIR "/ui/papers/%1.cpp").arg(QLatin1String(file)));
        ASSERT_TRUE(source.open(QIODevice::ReadOnly)) << file;
        sources += QString::fromUtf8(source.readAll());
    }
    static const QRegularExpression call(QStringLiteral("(?:sheet_printed\\(desk.workbook\\(\\), |note_shown\\(desk, filter, )QStringLiteral\\(\"([^\"]+)\"\\)"));
    QStringList papers{QStringLiteral("label")};
    for (auto match = call.globalMatch(sources); match.hasNext();)
        papers << match.next().captured(1);
    EXPECT_GE(papers.size(), 8) << qPrintable(papers.join(QLatin1Char('|')));
    for (const QString& paper : papers) {
        const QString words = piece_words({QStringLiteral("printed"), 3, paper});
        EXPECT_FALSE(words.contains(QStringLiteral("print of"))) << qPrintable(words);
    }
}

TEST(PieceWords, every_piece_of_work_has_words) {
    for (const char* key : work::piece::all) {
        EXPECT_TRUE(has_piece_words(QLatin1String(key))) << key;
        const QString words = piece_words({QLatin1String(key), 3, QStringLiteral("B7K")});
        EXPECT_FALSE(words.contains(QLatin1Char('%'))) << words.toStdString();
        EXPECT_FALSE(words.contains(QLatin1Char('_'))) << words.toStdString();
    }
    EXPECT_EQ(piece_words({QStringLiteral("mix_planned"), 1, QStringLiteral("B7K")}), QStringLiteral("batch B7K planned"));
    EXPECT_EQ(piece_words({QStringLiteral("no such work"), 1, {}}), QStringLiteral("an entry"));
}

} // namespace
} // namespace soakbook::ui
