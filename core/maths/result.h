// SPDX-License-Identifier: GPL-3.0-or-later
// A question without an answer is answered with the reason, never with a guess or a NaN.
#pragma once

#include <tl/expected.hpp>

namespace soakbook::maths {

/// Why a sum has no answer.
enum class Unanswerable {
    not_a_quantity,        ///< zero, negative or not finite where an amount is needed
    out_of_range,          ///< a fraction outside 0 to 1, a temperature outside the formula's range
    assay_below_strength,  ///< acid weaker than the strength wanted
    overfills_vessel,      ///< the result is more than the vessel holds
    nothing_taken_up,      ///< wet strips that weigh no more than dry ones
    too_few,               ///< fewer readings than the sum needs
    zero_below_the_line,   ///< the formula would divide by zero
    nothing_to_correct,    ///< the mix already is what was asked for
    not_reached,           ///< the wanted value is never reached
    no_spread_known,       ///< how sure cannot be said without single weights
    bad_code,              ///< a code with characters or a length that no code has
    no_choice_fits,        ///< no set of whole pails meets the wish
    too_late,              ///< the day needed has gone by
    too_large,             ///< more than any workshop holds; the sum would lose its last digits
    wrong_check,           ///< a code whose check character does not fit: a slip of the pen
    mix_too_strong,        ///< what goes in is stronger than wanted and there is no room for the glycerine it needs
    mix_too_weak,          ///< what goes in is weaker than wanted and there is no room for the acid it needs
    acid_short,            ///< there is not enough fresh acid
    glycerine_short,       ///< there is not enough fresh glycerine
    no_rise,               ///< the weights do not rise with time
    no_fit,                ///< no curve of the kind asked for goes through the readings
    circular,              ///< a batch that would be an input of itself
};

template <class T> using Answer = tl::expected<T, Unanswerable>;
using tl::unexpected;

} // namespace soakbook::maths
