// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maths/mixing.h"

#include "core/maths/exact.h"

#include <algorithm>

namespace soakbook::maths {
namespace {

// The molar masses as whole numbers of mg/mol, so that conversions are rounded once.
constexpr std::int64_t dihydrate_milli = 126'064;
constexpr std::int64_t anhydrous_milli = 90'034;
constexpr std::int64_t million = 1'000'000;

bool is_assay(Fraction a) {
    return a.count > 0 && a <= highest_assay;
}
bool is_strength(Fraction s) {
    return s.count > 0 && s.count <= million;
}

std::optional<Unanswerable> unfit(Mass mass, Fraction strength, Fraction assay) {
    if (mass.count <= 0)
        return Unanswerable::not_a_quantity;
    if (mass > heaviest)
        return Unanswerable::too_large;
    if (!is_strength(strength) || !is_assay(assay))
        return Unanswerable::out_of_range;
    if (assay < strength)
        return Unanswerable::assay_below_strength;
    return std::nullopt;
}

} // namespace

Answer<Fraction> dihydrate_from_anhydrous(Fraction anhydrous) {
    if (!is_part(anhydrous))
        return unexpected(Unanswerable::out_of_range);
    return Fraction{times_over(anhydrous.count, dihydrate_milli, anhydrous_milli)};
}

Answer<Fraction> anhydrous_from_dihydrate(Fraction dihydrate) {
    if (dihydrate.count < 0 || dihydrate > highest_assay)
        return unexpected(Unanswerable::out_of_range);
    return Fraction{times_over(dihydrate.count, anhydrous_milli, dihydrate_milli)};
}

Answer<Mass> dihydrate_from_anhydrous(Mass anhydrous) {
    if (!is_amount_or_none(anhydrous))
        return unexpected(anhydrous.count < 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large);
    return Mass{times_over(anhydrous.count, dihydrate_milli, anhydrous_milli)};
}

Answer<Mass> anhydrous_from_dihydrate(Mass dihydrate) {
    if (!is_amount_or_none(dihydrate))
        return unexpected(dihydrate.count < 0 ? Unanswerable::not_a_quantity : Unanswerable::too_large);
    return Mass{times_over(dihydrate.count, anhydrous_milli, dihydrate_milli)};
}

Answer<Fraction> assay_as_dihydrate(Fraction purity, AcidForm form) {
    if (!is_part(purity) || purity.count == 0)
        return unexpected(Unanswerable::out_of_range);
    if (form == AcidForm::dihydrate)
        return purity;
    return dihydrate_from_anhydrous(purity);
}

Answer<Amounts> amounts_from_total(Mass total, Fraction strength, Fraction assay) {
    if (const auto why = unfit(total, strength, assay))
        return unexpected(*why);
    const Mass acid{times_over(total.count, strength.count, assay.count)};
    return Amounts{acid, total - acid};
}

Answer<Amounts> amounts_from_acid(Mass acid, Fraction strength, Fraction assay) {
    if (const auto why = unfit(acid, strength, assay))
        return unexpected(*why);
    const Wide glycerine = rounded_ratio(static_cast<Wide>(acid.count) * (assay - strength).count, strength.count);
    if (glycerine + acid.count > heaviest.count)
        return unexpected(Unanswerable::too_large);
    return Amounts{acid, Mass{static_cast<std::int64_t>(glycerine)}};
}

Answer<Amounts> amounts_from_glycerine(Mass glycerine, Fraction strength, Fraction assay) {
    if (const auto why = unfit(glycerine, strength, assay))
        return unexpected(*why);
    if (assay == strength)
        return unexpected(Unanswerable::assay_below_strength);
    const Wide acid = rounded_ratio(static_cast<Wide>(glycerine.count) * strength.count, (assay - strength).count);
    if (acid + glycerine.count > heaviest.count)
        return unexpected(Unanswerable::too_large);
    return Amounts{Mass{static_cast<std::int64_t>(acid)}, glycerine};
}

Answer<Containers> containers_for(Mass needed, Mass each) {
    if (each.count <= 0 || needed.count < 0)
        return unexpected(Unanswerable::not_a_quantity);
    return Containers{needed.count / each.count, Mass{needed.count % each.count}};
}

Answer<Fill> fill_of(Mass contents, Mass capacity) {
    if (contents.count < 0 || capacity.count <= 0)
        return unexpected(Unanswerable::not_a_quantity);
    const Mass room = capacity - contents;
    return room.count >= 0 ? Fill{room, Mass{}} : Fill{Mass{}, -room};
}

Fraction Mixture::strength() const {
    return total.count > 0 ? Fraction{times_over(acid.count, million, total.count)} : Fraction{};
}

Answer<Mixture> mixture_of(std::span<const Input> inputs) {
    Wide total = 0;
    Wide acid = 0;
    for (const Input& input : inputs) {
        if (input.mass.count < 0)
            return unexpected(Unanswerable::not_a_quantity);
        if (input.mass > heaviest)
            return unexpected(Unanswerable::too_large);
        if (input.strength.count < 0 || input.strength > highest_assay)
            return unexpected(Unanswerable::out_of_range);
        total += input.mass.count;
        acid += static_cast<Wide>(input.mass.count) * input.strength.count;
    }
    if (total == 0)
        return unexpected(Unanswerable::not_a_quantity);
    if (total > heaviest.count)
        return unexpected(Unanswerable::too_large);
    return Mixture{Mass{static_cast<std::int64_t>(total)},
                   Mass{static_cast<std::int64_t>(rounded_ratio(acid, million))}};
}

Answer<Amounts> amounts_with_pails(Mass total, Fraction strength, Fraction assay, std::span<const Input> pails) {
    if (const auto why = unfit(total, strength, assay))
        return unexpected(*why);
    if (pails.empty())
        return amounts_from_total(total, strength, assay);
    const auto old = mixture_of(pails);
    if (!old)
        return unexpected(old.error());
    if (old->total > total)
        return unexpected(Unanswerable::overfills_vessel);
    const Wide acid_short =
        static_cast<Wide>(total.count) * strength.count - static_cast<Wide>(old->acid.count) * million;
    const Mass acid{static_cast<std::int64_t>(rounded_ratio(acid_short, assay.count))};
    if (acid.count < 0)
        return unexpected(Unanswerable::mix_too_strong);
    const Mass glycerine = total - old->total - acid;
    if (glycerine.count < 0)
        return unexpected(Unanswerable::mix_too_weak);
    return Amounts{acid, glycerine};
}

Answer<Correction> correct(Mixture mix, Fraction wanted, Fraction assay, std::optional<Mass> capacity) {
    if (mix.total.count <= 0 || mix.acid.count < 0 || (capacity && capacity->count <= 0))
        return unexpected(Unanswerable::not_a_quantity);
    if (mix.total > heaviest || mix.acid > heaviest)
        return unexpected(Unanswerable::too_large);
    if (!is_strength(wanted) || !is_assay(assay))
        return unexpected(Unanswerable::out_of_range);

    // What is missing (above zero) or too much (below), in ppm of milligrams.
    const Wide missing =
        static_cast<Wide>(mix.total.count) * wanted.count - static_cast<Wide>(mix.acid.count) * million;
    const bool too_weak = missing > 0;
    if (too_weak && assay <= wanted)
        return unexpected(Unanswerable::assay_below_strength);
    const Wide added =
        too_weak ? rounded_ratio(missing, (assay - wanted).count) : rounded_ratio(-missing, wanted.count);
    if (added == 0)
        return unexpected(Unanswerable::nothing_to_correct);
    if (added + mix.total.count > heaviest.count)
        return unexpected(Unanswerable::too_large);

    const auto as_amounts = [too_weak](Mass m) { return too_weak ? Amounts{m, Mass{}} : Amounts{Mass{}, m}; };
    const Mass add{static_cast<std::int64_t>(added)};
    Correction correction{as_amounts(add), mix.total + add, Mass{}, Mass{}, as_amounts(add)};
    if (capacity && correction.total_after > *capacity) {
        correction.over = correction.total_after - *capacity;
        // Taking out mix leaves its strength as it is, so both parts shrink by the same factor.
        const Mass then{times_over(add.count, capacity->count, correction.total_after.count)};
        correction.add_then = as_amounts(then);
        correction.take_out = mix.total - (*capacity - then);
    }
    return correction;
}

} // namespace soakbook::maths
