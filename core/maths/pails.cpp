// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/pails.h"

#include "core/maths/exact.h"
#include "core/maths/pail_search.h"

#include <algorithm>
#include <limits>
#include <map>

namespace soakbook::maths {
namespace {

constexpr std::int64_t million = 1'000'000;
// Up to this mass, mass times assay fits a whole number of 64 bits.
constexpr Mass heaviest_mix{1'000'000'000'000};

/// Pails that go in together, as one unit and as indices of what was given.
struct Together {
    PailUnit unit;
    std::vector<std::size_t> members;
    bool known = true;
};

std::optional<Unanswerable> unfit(std::span<const PailAtHand> pails) {
    Wide total = 0;
    for (const PailAtHand& pail : pails) {
        if (pail.mass.count <= 0)
            return Unanswerable::not_a_quantity;
        if (pail.strength && !is_part(*pail.strength))
            return Unanswerable::out_of_range;
        total += pail.mass.count;
    }
    if (total > heaviest_mix.count)
        return Unanswerable::too_large;
    return std::nullopt;
}

/// Pails of one set as one unit; a set with one pail of unknown strength is unknown as a whole.
std::vector<Together> put_together(std::span<const PailAtHand> pails, Fraction assay) {
    std::vector<Together> all;
    std::map<std::int64_t, std::size_t> place_of_set;
    for (std::size_t i = 0; i < pails.size(); ++i) {
        const PailAtHand& pail = pails[i];
        std::size_t place = all.size();
        if (pail.set)
            place = place_of_set.try_emplace(*pail.set, place).first->second;
        if (place == all.size()) {
            all.emplace_back();
            all.back().unit = {0, 0, 0, pail.day, 0, place};
        }
        Together& together = all[place];
        const std::int64_t acid = pail.mass.count * pail.strength.value_or(Fraction{}).count;
        together.known = together.known && pail.strength.has_value();
        together.unit.mass += pail.mass.count;
        together.unit.acid += acid;
        together.unit.glycerine += pail.mass.count * assay.count - acid;
        together.unit.day = std::min(together.unit.day, pail.day);
        ++together.unit.pails;
        together.members.push_back(i);
    }
    return all;
}

PailPlace place_alone(const Together& together, const PailBounds& bounds, Mass total) {
    if (!together.known)
        return PailPlace::strength_unknown;
    if (together.unit.mass > total.count)
        return PailPlace::too_heavy;
    if (together.unit.acid > bounds.most_acid)
        return PailPlace::too_strong;
    if (together.unit.glycerine > bounds.most_glycerine || together.unit.glycerine < 0)
        return together.unit.glycerine < 0 ? PailPlace::too_strong : PailPlace::too_weak;
    return PailPlace::left_over;
}

struct Found {
    PailChoice choice;
    Wide acid_in_pails = 0; ///< ppm of milligrams
};

std::optional<Found> find(std::span<const PailAtHand> pails, const PailBounds& bounds, Mass total) {
    const std::vector<Together> all = put_together(pails, Fraction{bounds.scale});
    Found found;
    found.choice.places.resize(pails.size());
    std::vector<PailUnit> units;
    for (const Together& together : all) {
        const PailPlace place = place_alone(together, bounds, total);
        for (const std::size_t member : together.members)
            found.choice.places[member] = place;
        if (place == PailPlace::left_over)
            units.push_back(together.unit);
    }
    const auto result = search_pails(std::move(units), bounds);
    if (!result)
        return std::nullopt;
    found.choice.proved = result->proved;
    found.choice.could_be_more = Mass{result->could_be_more};
    for (const PailUnit& unit : result->taken) {
        found.choice.old_liquid += Mass{unit.mass};
        found.acid_in_pails += unit.acid;
        for (const std::size_t member : all[unit.label].members)
            found.choice.places[member] = PailPlace::used;
    }
    return found;
}

PailBounds bounds_for(const PailWish& wish, bool mind_acid, bool mind_glycerine) {
    PailBounds bounds;
    bounds.scale = wish.assay.count;
    bounds.most_acid = wish.total.count * wish.strength.count;
    bounds.most_glycerine = wish.total.count * (wish.assay - wish.strength).count;
    const auto least = [&wish](std::int64_t most, const std::optional<Mass>& there_is) {
        if (!there_is)
            return std::int64_t{0};
        return most - std::min(*there_is, wish.total).count * wish.assay.count;
    };
    if (mind_acid)
        bounds.least_acid = least(bounds.most_acid, wish.acid);
    if (mind_glycerine)
        bounds.least_glycerine = least(bounds.most_glycerine, wish.glycerine);
    return bounds;
}

std::optional<Unanswerable> unfit(const PailWish& wish) {
    if (wish.total.count <= 0 || wish.capacity.count <= 0 || (wish.acid && wish.acid->count < 0) ||
        (wish.glycerine && wish.glycerine->count < 0))
        return Unanswerable::not_a_quantity;
    if (wish.total > heaviest_mix)
        return Unanswerable::too_large;
    if (wish.total > wish.capacity)
        return Unanswerable::overfills_vessel;
    const auto alone = amounts_from_total(wish.total, wish.strength, wish.assay);
    if (!alone)
        return alone.error();
    return std::nullopt;
}

/// Which shortage stands in the way.
Unanswerable what_is_short(std::span<const PailAtHand> pails, const PailWish& wish) {
    if (find(pails, bounds_for(wish, false, true), wish.total))
        return Unanswerable::acid_short;
    if (find(pails, bounds_for(wish, true, false), wish.total))
        return Unanswerable::glycerine_short;
    return Unanswerable::no_choice_fits;
}

} // namespace

Answer<PailChoice> choose_pails(std::span<const PailAtHand> pails, const PailWish& wish) {
    if (const auto why = unfit(pails))
        return unexpected(*why);
    if (const auto why = unfit(wish))
        return unexpected(*why);
    auto found = find(pails, bounds_for(wish, true, true), wish.total);
    if (!found)
        return unexpected(what_is_short(pails, wish));
    PailChoice& choice = found->choice;
    const Wide acid_short = static_cast<Wide>(wish.total.count) * wish.strength.count - found->acid_in_pails;
    choice.fresh.acid = Mass{static_cast<std::int64_t>(rounded_ratio(acid_short, wish.assay.count))};
    choice.fresh.glycerine = wish.total - choice.old_liquid - choice.fresh.acid;
    const Wide acid = found->acid_in_pails + static_cast<Wide>(choice.fresh.acid.count) * wish.assay.count;
    choice.mix = {wish.total, Mass{static_cast<std::int64_t>(rounded_ratio(acid, million))}};
    return choice;
}

Answer<PailChoice> choose_pails_only(std::span<const PailAtHand> pails, Mass working_mass) {
    if (const auto why = unfit(pails))
        return unexpected(*why);
    if (working_mass.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (working_mass > heaviest_mix)
        return unexpected(Unanswerable::too_large);
    // Strength does not bind here: all of a pail's mass is put down as glycerine, none as acid.
    std::vector<PailAtHand> plain(pails.begin(), pails.end());
    for (PailAtHand& pail : plain)
        if (pail.strength)
            pail.strength = Fraction{};
    PailBounds bounds;
    bounds.scale = million;
    bounds.most_glycerine = working_mass.count * million;
    auto found = find(plain, bounds, working_mass);
    if (!found || found->choice.old_liquid.count == 0)
        return unexpected(Unanswerable::no_choice_fits);
    std::vector<Input> inputs;
    for (std::size_t i = 0; i < pails.size(); ++i)
        if (found->choice.places[i] == PailPlace::used)
            inputs.push_back({pails[i].mass, *pails[i].strength});
    const auto mix = mixture_of(inputs);
    if (!mix)
        return unexpected(mix.error());
    found->choice.mix = *mix;
    return found->choice;
}

} // namespace soakbook::maths
