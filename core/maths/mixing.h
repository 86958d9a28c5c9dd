// SPDX-License-Identifier: GPL-3.0-or-later
// How much acid and glycerine make a liquid of a wanted strength, what strength a set of weighed inputs has, and how a
// mix that came out wrong is put right. All by mass. Strength is always the mass fraction of oxalic acid dihydrate in
// the finished liquid; the assay of a powder is the mass of dihydrate that one unit of powder stands for, so an
// anhydrous powder has an assay of up to 140.02 %. Source: conservation of mass; molar masses from the IUPAC abridged
// standard atomic weights.
#pragma once

#include "core/maths/quantities.h"
#include "core/maths/result.h"

#include <optional>
#include <span>

namespace soakbook::maths {

/// The two forms oxalic acid is sold and reckoned in.
enum class AcidForm { dihydrate, anhydrous };

constexpr double molar_mass_dihydrate = 126.064; ///< g/mol, C2H6O6
constexpr double molar_mass_anhydrous = 90.034;  ///< g/mol, C2H2O4
constexpr Fraction highest_assay{1'400'182};     ///< pure anhydrous acid, as dihydrate

/// The same acid, named in the other form. Refuses what is negative, and what would be more than pure.
Answer<Fraction> dihydrate_from_anhydrous(Fraction anhydrous);
Answer<Fraction> anhydrous_from_dihydrate(Fraction dihydrate);
/// The same, for a mass of acid. Refuses negative masses.
Answer<Mass> dihydrate_from_anhydrous(Mass anhydrous);
Answer<Mass> anhydrous_from_dihydrate(Mass dihydrate);

/// The assay as dihydrate of a powder whose label names `purity` (0 to 1) of `form`.
Answer<Fraction> assay_as_dihydrate(Fraction purity, AcidForm form);

/// Powder and glycerine to weigh out.
struct Amounts {
    Mass acid;
    Mass glycerine;

    constexpr bool operator==(const Amounts&) const = default;
    constexpr Mass total() const { return acid + glycerine; }
};

/// Acid `M s / a` to the nearest milligram, glycerine the rest, so that the two make `total` exactly.
/// Refuses: no mass, a strength outside 0 to 1, an assay outside 0 to 1.4, an assay below the strength.
Answer<Amounts> amounts_from_total(Mass total, Fraction strength, Fraction assay);
/// All of the acid at hand, and the glycerine `acid (a - s) / s` it needs. Refuses as above, and a strength of zero.
Answer<Amounts> amounts_from_acid(Mass acid, Fraction strength, Fraction assay);
/// All of the glycerine at hand, and the acid `glycerine s / (a - s)` it takes. Refuses as above, and an assay no
/// higher than the strength.
Answer<Amounts> amounts_from_glycerine(Mass glycerine, Fraction strength, Fraction assay);

/// Whole containers, and what is weighed out of the next one.
struct Containers {
    std::int64_t whole = 0;
    Mass last_part;

    constexpr bool operator==(const Containers&) const = default;
    /// How many have to be there: the last one counts whole.
    constexpr std::int64_t to_have() const { return whole + (last_part.count > 0 ? 1 : 0); }
};
/// `needed` out of containers of `each`: 37.5 kg out of 25 kg cans is one can and 12.5 kg. Refuses a container that
/// holds nothing and a negative need.
Answer<Containers> containers_for(Mass needed, Mass each);

/// How a mass sits in a vessel.
struct Fill {
    Mass room; ///< still free; zero when over
    Mass over; ///< what does not fit; zero when it fits

    constexpr bool operator==(const Fill&) const = default;
    constexpr bool fits() const { return over.count == 0; }
};
/// Refuses negative contents and a vessel that holds nothing.
Answer<Fill> fill_of(Mass contents, Mass capacity);

/// One weighed input of a mix: powder with its assay, glycerine with 0, a pail with its strength.
struct Input {
    Mass mass;
    Fraction strength;

    constexpr bool operator==(const Input&) const = default;
};
/// A liquid: its mass and the dihydrate in it.
struct Mixture {
    Mass total;
    Mass acid;

    constexpr bool operator==(const Mixture&) const = default;
    /// To the nearest ppm; zero for an empty one.
    Fraction strength() const;
};
/// What a set of weighed inputs comes to. The acid is summed exactly and rounded once. Refuses: nothing at all, a
/// negative mass, a strength outside 0 to 1.4, a result with more acid than liquid... which only unmixed anhydrous
/// powder can be.
Answer<Mixture> mixture_of(std::span<const Input> inputs);

/// Acid and glycerine to add to whole pails so that all together make `total` at `strength`. Refuses: pails heavier
/// than the total (overfills_vessel), pails too strong or too weak for that total (neither amount may be negative).
Answer<Amounts> amounts_with_pails(Mass total, Fraction strength, Fraction assay, std::span<const Input> pails);

/// How a mix is brought to the strength wanted.
struct Correction {
    Amounts add;      ///< acid when too weak, glycerine when too strong; the other is zero
    Mass total_after; ///< with `add` in
    Mass over;        ///< how much of that the vessel does not hold; zero when it fits or no vessel was named
    Mass take_out;    ///< when over: take this much of the mix out first ...
    Amounts add_then; ///< ... and add this instead: the vessel is then just full. When not over: the same as `add`

    constexpr bool operator==(const Correction&) const = default;
    constexpr bool fits() const { return over.count == 0; }
};
/// Too weak: acid `(s M - A) / (a - s)`. Too strong: glycerine `A / s - M`. Refuses: nothing there, a strength of zero
/// or above 1, an assay no higher than the strength when acid is needed, and nothing_to_correct when less than a
/// milligram would have to be added.
Answer<Correction> correct(Mixture mix, Fraction wanted, Fraction assay, std::optional<Mass> capacity = std::nullopt);

} // namespace soakbook::maths
