// SPDX-License-Identifier: GPL-3.0-or-later
// What the card of a bag works out is asked "How?" there, with the trade's check values (common practice, no source, unless
// another is named).
#include "tests/ui/store/room.h"
#include "ui/parts/how_button.h"

#include <gmock/gmock.h>

namespace soakbook::tests {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

class StoreHows : public testing::Test {
protected:
    StoreHows() { bench.say(work::Figure::rest_days, 7); }
    /// Twelve bags of 80; the first weighs that much. `off` grams between the heaviest and the lightest single strip.
    void bagged(double net_grams, std::optional<double> off) {
        const work::BatchId batch = bench.weighed_batch();
        if (off) {
            for (const work::SoakId soak : bench.soaks_of(batch)) {
                work::WeighEntry entry;
                entry.soak = soak;
                for (const double part : {-0.5, -0.3, -0.2, -0.1, 0.0, 0.0, 0.1, 0.2, 0.3, 0.5})
                    entry.singles.push_back(maths::grams(33.9 + part * *off));
                must(work::log_weighing(bench.book(), entry, on_day(2, 11)));
            }
        }
        work::BagEntry entry;
        entry.batch = batch;
        entry.bags = 12;
        entry.strips_per_bag = 80;
        ids = must(work::fill_bags(bench.book(), entry, on_day(2, 14))).bags;
        work::BagCorrection weighed;
        weighed.bag = ids[0];
        weighed.net = maths::grams(net_grams);
        must(work::correct_bag(bench.book(), weighed, because(QStringLiteral("weighed"), 2, 15)));
    }
    std::string card(std::size_t i) {
        room = std::make_unique<StoreRoom>(bench, 5);
        room->choose("store_bags", work::bag(bench.book(), ids[i], day_n(5))->code);
        return plain(room->words("bag_card"));
    }
    std::string how() {
        room->key(Qt::Key_F3);
        return plain(room->find<ui::HowButton>("bag_how")->is_open() ? room->find<ui::HowButton>("bag_how")->plain_text() : QString());
    }
    /// Numbers and units are joined by narrow spaces; these tests look at the words.
    static std::string plain(QString text) {
        return text.replace(QChar(0x202f), QLatin1Char(' ')).replace(QChar(0x00a0), QLatin1Char(' ')).toStdString();
    }

    YardsBench bench;
    std::vector<work::BagId> ids;
    std::unique_ptr<StoreRoom> room;
};

} // namespace

TEST_F(StoreHows, days_acid_and_hazard_of_a_bag_are_told_with_its_numbers) {
    bagged(2712, {});
    // 40 % as dihydrate: H302 from 18.75 %, H318 from 3 %, H312 only from 55 %: UN GHS, chapters 3.1 and 3.3.
    EXPECT_THAT(card(1), AllOf(HasSubstr("DANGER: H302, H318"), Not(HasSubstr("H312")), Not(HasSubstr("By weight"))));
    EXPECT_THAT(how(), AllOf(HasSubstr("(33.9 g − 11 g) × 40 % = 9.16 g as dihydrate"), HasSubstr("5 Aug 2026 + 7 (days) = 12 Aug 2026"),
                             HasSubstr("5 Aug 2026 + 12 (months) = 5 Aug 2027"), HasSubstr("375 mg/kg ÷ 40 % = 937.5 mg/kg"),
                             HasSubstr("UN GHS"), Not(HasSubstr("Strips by weight"))));
    EXPECT_FALSE(how().size()) << "F3 closes it again";
}

TEST_F(StoreHows, strips_are_counted_by_the_weight_of_the_bag) {
    // Between 79 (2.678 kg) and 80 (2.712 kg) at 33.9 g: with even strips 2.712 kg are 80.
    bagged(2712, 0.2);
    EXPECT_THAT(card(0), AllOf(HasSubstr("By weight"), HasSubstr("80 as packed")));
    EXPECT_THAT(how(), AllOf(HasSubstr("Strips by weight"), HasSubstr("Net 2.712 kg"), HasSubstr("Likeliest: 80")));
    EXPECT_EQ(clipped_texts(room->find<QWidget>("bag_card")), QStringList()) << "with the long answer open";
    if (qEnvironmentVariableIsSet("SOAKBOOK_PICTURES"))
        room->window().grab().save(qEnvironmentVariable("SOAKBOOK_PICTURES") + QStringLiteral("/bag-how.png"));
}

TEST_F(StoreHows, one_short_is_said) {
    bagged(2678, 0.2);
    EXPECT_THAT(card(0), AllOf(HasSubstr("79 by weight, not 80"), HasSubstr("Count again")));
}

TEST_F(StoreHows, without_single_weighings_it_says_why_the_count_cannot_be_told) {
    bagged(2686, {});
    EXPECT_THAT(card(0), HasSubstr("cannot be told until some strips of this kind were weighed one by one"));
    EXPECT_THAT(how(), HasSubstr("How far single strips differ is not known yet"));
}

TEST_F(StoreHows, several_bags_and_labels_without_a_bag_have_nothing_to_tell) {
    bagged(2712, {});
    card(0);
    room->key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_FALSE(room->is_seen("bag_how"));
    must(work::reserve_labels(bench.book(), work::bag(bench.book(), ids[0], day_n(5))->batch, 1, on_day(3)));
    room->place().refresh();
    room->press("bags_filter_reserved");
    EXPECT_FALSE(room->is_seen("bag_how"));
}

} // namespace soakbook::tests
