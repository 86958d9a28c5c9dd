// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/pails.h"
#include "tests/maths/answers.h"

#include <map>
#include <random>

namespace soakbook::maths {
namespace {

const Fraction forty_percent = percent(40);

PailWish wish_for(double kg) {
    return {kilograms(kg), forty_percent, percent(100), kilograms(1000), std::nullopt, std::nullopt};
}
PailAtHand pail(double kg, double strength, Day from = day(2026, 3, 1)) {
    return {kilograms(kg), percent(strength), from, std::nullopt};
}
std::vector<std::size_t> used(const PailChoice& choice) {
    std::vector<std::size_t> list;
    for (std::size_t i = 0; i < choice.places.size(); ++i)
        if (choice.places[i] == PailPlace::used)
            list.push_back(i);
    return list;
}

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Pails, taking_the_heaviest_first_would_use_less) {
    const std::vector pails{pail(7, 40), pail(6, 40), pail(5.5, 40)};
    const auto choice = choose_pails(pails, wish_for(12));
    ASSERT_TRUE(choice);
    EXPECT_THAT(used(*choice), ElementsAre(1, 2));
    EXPECT_EQ(choice->old_liquid, kilograms(11.5));
    EXPECT_EQ(choice->fresh, (Amounts{kilograms(0.2), kilograms(0.3)}));
    EXPECT_EQ(choice->mix, (Mixture{kilograms(12), kilograms(4.8)}));
    EXPECT_TRUE(choice->proved);
}

TEST(Pails, of_equal_choices_the_oldest_goes_in_then_the_fewest) {
    const std::vector by_age{pail(5, 40, day(2026, 5, 1)), pail(5, 40, day(2026, 2, 1)), pail(5, 40, day(2026, 4, 1))};
    EXPECT_THAT(used(choose_pails(by_age, wish_for(6)).value()), ElementsAre(1));
    const std::vector by_number{pail(10, 40), pail(1, 40), pail(1, 40), pail(6, 40), pail(6, 40)};
    EXPECT_THAT(used(choose_pails(by_number, wish_for(12)).value()), ElementsAre(3, 4));
}

TEST(Pails, of_one_pour_go_in_together_or_not_at_all) {
    std::vector pails{pail(5, 40), pail(6, 40), pail(7, 40)};
    pails[0].set = pails[1].set = 9;
    EXPECT_THAT(used(choose_pails(pails, wish_for(10)).value()), ElementsAre(2));
    EXPECT_THAT(used(choose_pails(pails, wish_for(12)).value()), ElementsAre(0, 1));
    EXPECT_EQ(choose_pails(pails, wish_for(10))->places[0], PailPlace::too_heavy);
}

TEST(Pails, of_unknown_strength_go_into_no_mix) {
    std::vector pails{pail(5, 40), pail(6, 40)};
    pails[0].strength = std::nullopt;
    const auto choice = choose_pails(pails, wish_for(40));
    ASSERT_TRUE(choice);
    EXPECT_THAT(choice->places, ElementsAre(PailPlace::strength_unknown, PailPlace::used));
    pails[0].set = pails[1].set = 1;
    EXPECT_THAT(used(choose_pails(pails, wish_for(40)).value()), IsEmpty());
}

TEST(Pails, each_is_told_why_it_stays) {
    const std::vector pails{pail(50, 40), pail(20, 90), pail(24, 5), pail(9, 40), pail(12, 40)};
    const auto choice = choose_pails(pails, wish_for(20));
    ASSERT_TRUE(choice);
    EXPECT_THAT(choice->places, ElementsAre(PailPlace::too_heavy, PailPlace::too_strong, PailPlace::too_heavy,
                                            PailPlace::left_over, PailPlace::used));
    const std::vector weak{pail(19.9, 5)};
    EXPECT_EQ(choose_pails(weak, wish_for(20))->places[0], PailPlace::too_weak);
}

TEST(Pails, strong_and_weak_ones_balance_each_other) {
    const std::vector pails{pail(10, 50), pail(10, 30)};
    const auto choice = choose_pails(pails, wish_for(20));
    ASSERT_TRUE(choice);
    EXPECT_THAT(used(*choice), ElementsAre(0, 1));
    EXPECT_EQ(choice->fresh, (Amounts{}));
}

TEST(Pails, say_which_shortage_stands_in_the_way) {
    PailWish wish = wish_for(20);
    wish.acid = kilograms(7);
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::acid_short));
    wish.glycerine = kilograms(11);
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::no_choice_fits));
    wish.acid = std::nullopt;
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::glycerine_short));
    const std::vector pails{pail(5, 40), pail(4, 40)};
    const auto with_pails = choose_pails(pails, wish);
    ASSERT_TRUE(with_pails);
    EXPECT_LE(with_pails->fresh.glycerine, kilograms(11));
}

TEST(Pails, only_pails_come_as_near_to_the_tank_as_they_can) {
    const std::vector pails{pail(7, 38), pail(6, 41), pail(5.5, 39), pail(30, 40)};
    const auto choice = choose_pails_only(pails, kilograms(12));
    ASSERT_TRUE(choice);
    EXPECT_THAT(used(*choice), ElementsAre(1, 2));
    EXPECT_EQ(choice->mix.total, kilograms(11.5));
    EXPECT_EQ(choice->mix.acid, kilograms(4.605));
    EXPECT_EQ(choice->fresh, (Amounts{}));
    EXPECT_THAT(choose_pails_only(pails, kilograms(5)), Refuses(Unanswerable::no_choice_fits));
    EXPECT_THAT(choose_pails_only({}, kilograms(5)), Refuses(Unanswerable::no_choice_fits));
}

TEST(Pails, refuse_wishes_that_cannot_be) {
    PailWish wish = wish_for(20);
    wish.capacity = kilograms(19);
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::overfills_vessel));
    wish = wish_for(20);
    wish.assay = percent(30);
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::assay_below_strength));
    wish = wish_for(20);
    wish.strength = Fraction{};
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::out_of_range));
    wish = wish_for(20);
    wish.total = Mass{-1};
    EXPECT_THAT(choose_pails({}, wish), Refuses(Unanswerable::not_a_quantity));
    const std::vector nothing{pail(0, 40)};
    EXPECT_THAT(choose_pails(nothing, wish_for(20)), Refuses(Unanswerable::not_a_quantity));
    const std::vector absurd{PailAtHand{Mass{INT64_MAX}, forty_percent, day(2026, 1, 1), {}}};
    EXPECT_THAT(choose_pails(absurd, wish_for(20)), Refuses(Unanswerable::too_large));
    EXPECT_THAT(choose_pails_only(absurd, kilograms(20)), Refuses(Unanswerable::too_large));
    const std::vector impossible{pail(5, 140)};
    EXPECT_THAT(choose_pails(impossible, wish_for(20)), Refuses(Unanswerable::out_of_range));
}

/// What is compared when every subset is tried: mass, then liquid by day, oldest first, then fewest pails.
struct Rank {
    Mass mass;
    std::vector<std::int64_t> by_day;
    std::int64_t pails = 0;

    bool better_than(const Rank& other) const {
        return std::tuple(mass.count, by_day, -pails) > std::tuple(other.mass.count, other.by_day, -other.pails);
    }
    bool operator==(const Rank&) const = default;
};

std::optional<Rank> rank(const std::vector<PailAtHand>& pails, const std::vector<bool>& in, const PailWish& wish) {
    Rank result;
    std::map<Day, std::int64_t> by_day;
    std::map<std::int64_t, bool> set_in;
    std::map<std::int64_t, Day> set_day;
    std::vector<Input> inputs;
    for (const PailAtHand& one : pails)
        if (one.set)
            set_day[*one.set] = set_day.contains(*one.set) ? std::min(set_day[*one.set], one.day) : one.day;
    for (std::size_t i = 0; i < pails.size(); ++i) {
        if (pails[i].set) {
            if (set_in.contains(*pails[i].set) && set_in[*pails[i].set] != in[i])
                return std::nullopt;
            set_in[*pails[i].set] = in[i];
        }
        by_day[pails[i].set ? set_day[*pails[i].set] : pails[i].day] += in[i] ? pails[i].mass.count : 0;
        if (in[i]) {
            result.mass += pails[i].mass;
            ++result.pails;
            inputs.push_back({pails[i].mass, *pails[i].strength});
        }
    }
    for (const auto& [from, mass] : by_day)
        result.by_day.push_back(mass);
    const auto fresh = amounts_with_pails(wish.total, wish.strength, wish.assay, inputs);
    if (!fresh || fresh->acid > wish.acid.value_or(wish.total) ||
        fresh->glycerine > wish.glycerine.value_or(wish.total))
        return std::nullopt;
    return result;
}

std::optional<Rank> best_of_every_subset(const std::vector<PailAtHand>& pails, const PailWish& wish) {
    std::optional<Rank> best;
    for (std::uint32_t set = 0; set < (1U << pails.size()); ++set) {
        std::vector<bool> in(pails.size());
        for (std::size_t i = 0; i < pails.size(); ++i)
            in[i] = (set >> i & 1U) != 0;
        const auto candidate = rank(pails, in, wish);
        if (candidate && (!best || candidate->better_than(*best)))
            best = candidate;
    }
    return best;
}

/// Masses and strengths in whole steps: there both ways reckon exactly, so that they must agree to the milligram.
std::vector<PailAtHand> random_pails(std::mt19937_64& random, std::size_t n, std::int64_t step, bool with_sets) {
    std::uniform_int_distribution<std::int64_t> mass(3'000'000 / step, 20'000'000 / step);
    std::uniform_int_distribution<std::int64_t> strength(30, 50);
    std::uniform_int_distribution<std::int64_t> age(0, 5);
    std::vector<PailAtHand> pails;
    for (std::size_t i = 0; i < n; ++i) {
        PailAtHand one{Mass{mass(random) * step}, percent(static_cast<double>(strength(random))),
                       days_after(day(2026, 1, 1), age(random)), std::nullopt};
        if (with_sets && age(random) == 0)
            one.set = age(random) % 2;
        pails.push_back(one);
    }
    return pails;
}

TEST(PailsProperty, the_choice_equals_trying_every_subset) {
    std::mt19937_64 random(9'001);
    int answered = 0;
    int short_of_something = 0;
    for (int i = 0; i < 300; ++i) {
        const std::size_t n = 1 + static_cast<std::size_t>(i) % 10;
        const auto pails = random_pails(random, n, i % 2 == 0 ? 1'000'000 : 1'000, i % 3 == 0);
        PailWish wish = wish_for(10.0 + i % 70);
        if (i % 4 == 0)
            wish.acid = kilograms(i % 11);
        if (i % 5 == 0)
            wish.glycerine = kilograms(i % 17);
        const auto expected = best_of_every_subset(pails, wish);
        const auto choice = choose_pails(pails, wish);
        ASSERT_EQ(choice.has_value(), expected.has_value()) << i;
        if (!choice) {
            ++short_of_something;
            continue;
        }
        ++answered;
        std::vector<bool> in;
        for (const PailPlace place : choice->places)
            in.push_back(place == PailPlace::used);
        ASSERT_TRUE(rank(pails, in, wish) == expected) << i;
        ASSERT_TRUE(choice->proved);
        ASSERT_EQ(choice->mix.total, wish.total);
        ASSERT_EQ(choice->old_liquid + choice->fresh.total(), wish.total);
    }
    EXPECT_GT(answered, 150);
    EXPECT_GT(short_of_something, 15);
}

TEST(PailsProperty, twenty_pails_equal_trying_every_subset) {
    std::mt19937_64 random(9'002);
    for (int i = 0; i < 2; ++i) {
        const auto pails = random_pails(random, 20, i == 0 ? 1'000'000 : 1'000, false);
        const PailWish wish = wish_for(62.5);
        const auto choice = choose_pails(pails, wish);
        ASSERT_TRUE(choice);
        Mass best;
        for (std::uint32_t set = 0; set < (1U << 20U); ++set) {
            std::int64_t mass = 0;
            std::int64_t acid = 0; // ppm of milligrams
            for (std::uint32_t bits = set; bits != 0; bits &= bits - 1) {
                const PailAtHand& one = pails[static_cast<std::size_t>(__builtin_ctz(bits))];
                mass += one.mass.count;
                acid += one.mass.count * one.strength->count;
            }
            const std::int64_t acid_short = wish.total.count * 400'000 - acid;
            if (acid_short >= 0 && (wish.total.count - mass) * 1'000'000 >= acid_short)
                best = std::max(best, Mass{mass});
        }
        EXPECT_EQ(choice->old_liquid, best);
    }
}

TEST(PailsProperty, sixty_pails_use_nearly_all_they_could) {
    std::mt19937_64 random(9'003);
    for (const double kg : {30.0, 62.5, 100.0, 450.0}) {
        const auto pails = random_pails(random, 60, 1'000, false);
        const auto choice = choose_pails(pails, wish_for(kg));
        const auto only = choose_pails_only(pails, kilograms(kg));
        ASSERT_TRUE(choice && only);
        EXPECT_GE(choice->old_liquid, kilograms(kg * 0.99));
        EXPECT_LE(choice->old_liquid, kilograms(kg));
        EXPECT_TRUE(choice->proved || choice->could_be_more < kilograms(0.05));
        EXPECT_TRUE(!choice->proved || choice->could_be_more == Mass{});
    }
}

TEST(PailsProperty, sixty_like_pails_are_no_harder) {
    const std::vector pails(60, pail(12, 39.5));
    const auto choice = choose_pails(pails, wish_for(62.5));
    ASSERT_TRUE(choice);
    EXPECT_TRUE(choice->proved);
    EXPECT_EQ(choice->old_liquid, kilograms(60));
}

} // namespace
} // namespace soakbook::maths
