// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/exact.h"
#include "core/maths/mixing.h"
#include "tests/maths/answers.h"

#include <array>
#include <random>
#include <vector>

namespace soakbook::maths {
namespace {

const Fraction pure = percent(100);
const Fraction forty = percent(40);

// Common practice, no source.
TEST(Mixing, twenty_five_kilograms_of_acid_take_thirty_seven_and_a_half_of_glycerine) {
    const Amounts wanted{kilograms(25), kilograms(37.5)};
    EXPECT_TRUE(amounts_from_total(kilograms(62.5), forty, pure) == wanted);
    EXPECT_TRUE(amounts_from_acid(kilograms(25), forty, pure) == wanted);
    EXPECT_TRUE(amounts_from_glycerine(kilograms(37.5), forty, pure) == wanted);
    const std::array inputs{Input{kilograms(25), pure}, Input{kilograms(37.5), Fraction{}}};
    const auto mix = mixture_of(inputs);
    ASSERT_TRUE(mix);
    EXPECT_EQ(mix->total, kilograms(62.5));
    EXPECT_EQ(mix->strength(), forty);
}

TEST(Mixing, weak_powder_is_weighed_heavier) {
    const auto amounts = amounts_from_total(kilograms(10), forty, percent(99.6));
    ASSERT_TRUE(amounts);
    EXPECT_EQ(amounts->acid, milligrams(4'016'064)); // 4 kg / 0.996
    EXPECT_EQ(amounts->total(), kilograms(10));
}

TEST(Mixing, anhydrous_powder_counts_as_more_than_its_weight_of_dihydrate) {
    const auto assay = assay_as_dihydrate(percent(100), AcidForm::anhydrous);
    EXPECT_THAT(assay, Is(Fraction{1'400'182})); // 126.064 / 90.034
    const auto amounts = amounts_from_total(kilograms(10), forty, *assay);
    ASSERT_TRUE(amounts);
    EXPECT_EQ(amounts->acid, milligrams(2'856'771)); // 4 kg / 1.400182
    EXPECT_THAT(assay_as_dihydrate(percent(99), AcidForm::dihydrate), Is(percent(99)));
}

TEST(Mixing, acid_weaker_than_the_liquid_is_refused) {
    EXPECT_THAT(amounts_from_total(kilograms(1), forty, percent(39.9)), Refuses(Unanswerable::assay_below_strength));
    EXPECT_THAT(amounts_from_acid(kilograms(1), forty, percent(39.9)), Refuses(Unanswerable::assay_below_strength));
    EXPECT_THAT(amounts_from_glycerine(kilograms(1), forty, forty), Refuses(Unanswerable::assay_below_strength));
    const auto acid_alone = amounts_from_total(kilograms(1), forty, forty);
    ASSERT_TRUE(acid_alone);
    EXPECT_EQ(acid_alone->glycerine, Mass{});
}

TEST(Mixing, nothing_negative_or_absurd_is_mixed) {
    for (const Mass none : {Mass{}, kilograms(-1), Mass{INT64_MIN}}) {
        EXPECT_THAT(amounts_from_total(none, forty, pure), Refuses(Unanswerable::not_a_quantity));
        EXPECT_THAT(amounts_from_acid(none, forty, pure), Refuses(Unanswerable::not_a_quantity));
        EXPECT_THAT(amounts_from_glycerine(none, forty, pure), Refuses(Unanswerable::not_a_quantity));
    }
    EXPECT_THAT(amounts_from_total(Mass{INT64_MAX}, forty, pure), Refuses(Unanswerable::too_large));
    EXPECT_THAT(amounts_from_acid(heaviest, Fraction{1}, pure), Refuses(Unanswerable::too_large));
    EXPECT_THAT(amounts_from_glycerine(heaviest, Fraction{999'999}, pure), Refuses(Unanswerable::too_large));
    for (const Fraction strength : {Fraction{}, Fraction{-1}, Fraction{1'000'001}})
        EXPECT_THAT(amounts_from_total(kilograms(1), strength, pure), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(amounts_from_total(kilograms(1), forty, Fraction{}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(amounts_from_total(kilograms(1), forty, Fraction{1'400'183}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(dihydrate_from_anhydrous(Fraction{-1}), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(anhydrous_from_dihydrate(kilograms(-1)), Refuses(Unanswerable::not_a_quantity));
}

// Common practice, no source.
TEST(Mixing, thirty_seven_and_a_half_kilograms_are_a_can_and_a_half) {
    const auto cans = containers_for(kilograms(37.5), kilograms(25));
    ASSERT_TRUE(cans);
    EXPECT_EQ(cans->whole, 1);
    EXPECT_EQ(cans->last_part, kilograms(12.5));
    EXPECT_EQ(cans->to_have(), 2);
    EXPECT_EQ(containers_for(kilograms(50), kilograms(25))->to_have(), 2);
    EXPECT_EQ(containers_for(Mass{}, kilograms(25))->to_have(), 0);
    EXPECT_THAT(containers_for(kilograms(1), Mass{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(containers_for(kilograms(-1), kilograms(25)), Refuses(Unanswerable::not_a_quantity));
}

TEST(Mixing, a_vessel_says_what_it_does_not_hold) {
    EXPECT_TRUE(fill_of(kilograms(60), kilograms(62.5)) == (Fill{kilograms(2.5), Mass{}}));
    EXPECT_TRUE(fill_of(kilograms(65), kilograms(62.5)) == (Fill{Mass{}, kilograms(2.5)}));
    EXPECT_TRUE(fill_of(kilograms(62.5), kilograms(62.5))->fits());
    EXPECT_THAT(fill_of(kilograms(1), Mass{}), Refuses(Unanswerable::not_a_quantity));
}

TEST(Mixing, strength_of_inputs_refuses_what_is_no_liquid) {
    EXPECT_THAT(mixture_of({}), Refuses(Unanswerable::not_a_quantity));
    const std::array nothing{Input{Mass{}, pure}};
    EXPECT_THAT(mixture_of(nothing), Refuses(Unanswerable::not_a_quantity));
    const std::array negative{Input{kilograms(2), pure}, Input{kilograms(-1), pure}};
    EXPECT_THAT(mixture_of(negative), Refuses(Unanswerable::not_a_quantity));
    const std::array beyond{Input{kilograms(2), Fraction{1'400'183}}};
    EXPECT_THAT(mixture_of(beyond), Refuses(Unanswerable::out_of_range));
    const std::vector many(3, Input{heaviest, pure});
    EXPECT_THAT(mixture_of(many), Refuses(Unanswerable::too_large));
}

TEST(Mixing, whole_pails_and_fresh_material_make_the_total) {
    const std::array pails{Input{kilograms(9), percent(37)}, Input{kilograms(6), percent(41)}};
    const auto fresh = amounts_with_pails(kilograms(40), forty, percent(99), pails);
    ASSERT_TRUE(fresh);
    EXPECT_EQ(fresh->acid, milligrams(10'313'131)); // (16 - 3.33 - 2.46) / 0.99
    EXPECT_EQ(fresh->total(), kilograms(25));
    EXPECT_TRUE(amounts_with_pails(kilograms(40), forty, pure, {}) == amounts_from_total(kilograms(40), forty, pure));
}

TEST(Mixing, pails_that_cannot_be_brought_to_the_strength_are_refused) {
    const std::array strong{Input{kilograms(30), percent(60)}};
    EXPECT_THAT(amounts_with_pails(kilograms(40), forty, pure, strong), Refuses(Unanswerable::mix_too_strong));
    const std::array weak{Input{kilograms(39), percent(20)}};
    EXPECT_THAT(amounts_with_pails(kilograms(40), forty, pure, weak), Refuses(Unanswerable::mix_too_weak));
    EXPECT_THAT(amounts_with_pails(kilograms(38), forty, pure, weak), Refuses(Unanswerable::overfills_vessel));
}

// Common practice, no source.
TEST(Correcting, sixty_two_and_a_half_kilograms_two_per_cent_off) {
    const auto weak = correct({kilograms(62.5), kilograms(23.75)}, forty, pure);
    ASSERT_TRUE(weak);
    EXPECT_EQ(weak->add, (Amounts{milligrams(2'083'333), Mass{}}));
    EXPECT_TRUE(weak->fits());
    const auto strong = correct({kilograms(62.5), kilograms(26.25)}, forty, pure);
    ASSERT_TRUE(strong);
    EXPECT_EQ(strong->add, (Amounts{Mass{}, kilograms(3.125)}));
    EXPECT_EQ(strong->total_after, kilograms(65.625));
}

TEST(Correcting, a_full_vessel_says_what_to_take_out_first) {
    const auto strong = correct({kilograms(62.5), kilograms(26.25)}, forty, pure, kilograms(63));
    ASSERT_TRUE(strong);
    EXPECT_FALSE(strong->fits());
    EXPECT_EQ(strong->over, kilograms(2.625));
    EXPECT_EQ(strong->take_out, kilograms(2.5));
    EXPECT_EQ(strong->add_then, (Amounts{Mass{}, kilograms(3)}));
}

TEST(Correcting, refuses_what_needs_none_or_cannot_be) {
    EXPECT_THAT(correct({kilograms(10), kilograms(4)}, forty, pure), Refuses(Unanswerable::nothing_to_correct));
    EXPECT_THAT(correct({kilograms(10), kilograms(3)}, forty, forty), Refuses(Unanswerable::assay_below_strength));
    EXPECT_THAT(correct({Mass{}, Mass{}}, forty, pure), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(correct({kilograms(10), kilograms(3)}, Fraction{}, pure), Refuses(Unanswerable::out_of_range));
    EXPECT_THAT(correct({kilograms(10), kilograms(3)}, forty, pure, Mass{}), Refuses(Unanswerable::not_a_quantity));
    EXPECT_THAT(correct({heaviest, heaviest}, Fraction{1}, pure), Refuses(Unanswerable::too_large));
}

TEST(MixingProperty, mass_is_kept_and_the_strength_is_the_one_asked) {
    std::mt19937_64 random(20'110);
    std::uniform_int_distribution<std::int64_t> mass(1'000'000, 500'000'000'000);
    std::uniform_int_distribution<std::int64_t> strength(1'000, 900'000);
    for (int i = 0; i < 20'000; ++i) {
        const Mass total{mass(random)};
        const Fraction wanted{strength(random)};
        std::uniform_int_distribution<std::int64_t> purity(wanted.count, highest_assay.count);
        const Fraction assay{purity(random)};
        const auto amounts = amounts_from_total(total, wanted, assay);
        ASSERT_TRUE(amounts);
        ASSERT_EQ(amounts->total(), total);
        const std::array inputs{Input{amounts->acid, assay}, Input{amounts->glycerine, Fraction{}}};
        const auto mix = mixture_of(inputs);
        ASSERT_TRUE(mix);
        ASSERT_NEAR(static_cast<double>(mix->strength().count), static_cast<double>(wanted.count), 1.0);
    }
}

TEST(MixingProperty, a_correction_lands_on_the_strength_asked_and_a_full_vessel_is_just_full) {
    std::mt19937_64 random(20'111);
    std::uniform_int_distribution<std::int64_t> mass(10'000'000, 500'000'000);
    std::uniform_int_distribution<std::int64_t> part(10'000, 900'000);
    int corrected = 0;
    for (int i = 0; i < 20'000; ++i) {
        const Mass total{mass(random)};
        const Mixture mix{total, part_of(total, Fraction{part(random)})};
        const Fraction wanted{part(random)};
        const Mass capacity = total + Mass{mass(random)} - Mass{mass(random) / 4};
        if (capacity <= Mass{})
            continue;
        const auto fix = correct(mix, wanted, pure, capacity);
        if (!fix) {
            ASSERT_EQ(fix.error(), Unanswerable::nothing_to_correct);
            continue;
        }
        ++corrected;
        const Mixture after{total + fix->add.total(), mix.acid + fix->add.acid};
        ASSERT_NEAR(static_cast<double>(after.strength().count), static_cast<double>(wanted.count), 1.0);
        ASSERT_EQ(after.total, fix->total_after);
        const Mass kept = total - fix->take_out;
        if (fix->fits()) {
            ASSERT_EQ(fix->take_out, Mass{});
            continue;
        }
        ASSERT_EQ(kept + fix->add_then.total(), capacity);
        const Mixture then{capacity, part_of(kept, mix.strength()) + fix->add_then.acid};
        ASSERT_NEAR(static_cast<double>(then.strength().count), static_cast<double>(wanted.count), 3.0);
    }
    EXPECT_GT(corrected, 15'000);
}

TEST(MixingProperty, pails_and_fresh_material_together_are_what_was_asked) {
    std::mt19937_64 random(20'112);
    std::uniform_int_distribution<std::int64_t> mass(1'000'000, 25'000'000);
    std::uniform_int_distribution<std::int64_t> part(300'000, 500'000);
    int answered = 0;
    for (int i = 0; i < 5'000; ++i) {
        std::vector<Input> inputs;
        for (int n = 0; n < 4; ++n)
            inputs.push_back({Mass{mass(random)}, Fraction{part(random)}});
        const Mass total{4 * mass(random)};
        const auto fresh = amounts_with_pails(total, forty, percent(99), inputs);
        if (!fresh)
            continue;
        ++answered;
        ASSERT_GE(fresh->acid, Mass{});
        ASSERT_GE(fresh->glycerine, Mass{});
        inputs.push_back({fresh->acid, percent(99)});
        inputs.push_back({fresh->glycerine, Fraction{}});
        const auto mix = mixture_of(inputs);
        ASSERT_TRUE(mix);
        ASSERT_EQ(mix->total, total);
        ASSERT_NEAR(static_cast<double>(mix->strength().count), 400'000.0, 1.0);
    }
    EXPECT_GT(answered, 500);
}

} // namespace
} // namespace soakbook::maths
