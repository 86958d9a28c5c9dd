// SPDX-License-Identifier: GPL-3.0-or-later
// How a figure comes about, as data: which formula, and this case's numbers in a fixed order. The words are ui's.
#pragma once

#include <QStringList>

namespace soakbook::work {

/// One formula each. Behind each: the formula, its source, and the facts in their order (see core/work/facts.h). A fact
/// that is not known is empty.
enum class HowKind {
    // the liquid
    /// Acid = (M s - acid in pails) / a, glycerine the rest; s counts dihydrate, a is the assay as dihydrate.
    /// Source: conservation of mass; molar masses 126.064 and 90.034 g/mol, IUPAC abridged atomic weights.
    /// Facts: total M, strength s, assay a, acid, glycerine, old liquid from pails, the strength as anhydrous acid.
    mix_amounts,
    /// Too weak: acid (s M - A) / (a - s). Too strong: glycerine A / s - M. Source: conservation of mass.
    /// Facts: mix M, acid in it A, its strength, strength wanted s, assay a, acid to add, glycerine to add.
    mix_correction,
    /// Volume = mass / density; glycerol 1277 - 0.654 T kg/m3. Source: Cheng 2008, Ind. Eng. Chem. Res. 47:3285.
    /// Facts: mass, temperature, density in kg/m3, volume.
    level_mark,
    /// An estimate: density 1 / (s / 1653 + (1 - s) / glycerol), as if volumes added up; no density of the loaded
    /// liquid
    /// is published. Facts: mass, temperature, density in kg/m3, volume, strength.
    level_mark_estimate,
    /// The set of whole pails that uses most old liquid, then the oldest first, then the fewest pails; fresh acid and
    /// glycerine make up the rest. Source: conservation of mass; branch and bound, Land & Doig 1960, Econometrica
    /// 28:497. Facts: pails that go in, pails in the store, old liquid, total, strength, fresh acid, fresh glycerine,
    /// 1 when nothing better exists or else 0, how much more old liquid there could be.
    pails_chosen,
    /// Strips = whole part of M / (target - dry). Source: conservation of mass.
    /// Facts: liquid M, taken up by a strip, strips, the most that is left.
    yield,
    /// Up to three pairs: the dial that does not overshoot at the smallest offset seen. Source: common practice, none
    /// published. Facts: wanted, pairs, smallest offset, largest offset, dial, expected from, expected to, ceiling,
    /// highest dial.
    dial_by_range,
    /// From four pairs: the least-squares line of probe on dial and its 95 % prediction. Source: NIST/SEMATECH
    /// e-Handbook, 4.5.2. Facts: as dial_by_range.
    dial_by_line,

    // strips
    /// Taken up = mean - dry. Source: conservation of mass. Facts: mean, dry, taken up, strips weighed.
    taken_up,
    /// Acid = (mean - dry) s; anhydrous = 0.714193 of it (90.034 / 126.064). Source: conservation of mass, IUPAC
    /// abridged atomic weights. Facts: mean, dry, strength s, acid as dihydrate, the same as anhydrous acid.
    acid_in_strip,
    /// Mean +- t s / sqrt(n), 95 %, t of s's degrees of freedom. Source: NIST/SEMATECH e-Handbook, 1.3.5.2.
    /// Facts: n, mean, s, degrees, t, from, to.
    sample_interval,
    /// The fewest strips whose interval stays on one side of the nearer limit, less those weighed. Source: as
    /// sample_interval. Facts: more, strips weighed, mean, least good weight, most, s, strips s was learned from.
    more_to_weigh,
    /// w(t) = dry + U (1 - exp(-k t)), least squares with dry known. Source: Bates & Watts 1988, Nonlinear Regression
    /// Analysis, ch. 2; checked against NIST StRD Misra1a. Facts: dry, U, its standard error, k per hour, its standard
    /// error, weighings, R2, residual standard deviation.
    soak_curve,
    /// t = -ln(1 - (target - dry) / U) / k; interval by the delta method with Student's t. Source: as soak_curve.
    /// Facts: target, dry, U, k per hour, hours, from, to.
    target_hour,
    /// Soaking time goes with viscosity; that of pure glycerol. Sources: Washburn 1921, Phys. Rev. 17:273; Cheng 2008,
    /// Ind. Eng. Chem. Res. 47:3285. Facts: room, usual room, times as long.
    cold_room,
    /// Bayes' rule with every count equally likely before; n strips weigh n means with variance n s^2 + n^2 s^2 / m.
    /// Facts: net, mean, m strips it comes from, s, strips s was learned from, likeliest count, how sure, least, most.
    count_by_weight,

    // keeping, accounts
    /// Day sealed + calendar months, clamped to the month's last day. Source: W3C XML Schema Part 2, appendix E; the
    /// months are common practice or the label's. Facts: sealed, months, use by.
    use_by,
    /// Day sealed + days. Source: common practice, none published. Facts: sealed, days, rest until.
    rest,
    /// Unexplained = in - strips - free liquid in bags - pails - losses. Source: conservation of mass; the limit is the
    /// user's. Facts: in, in strips, free in bags, in pails, named losses, unexplained, limit.
    balance,
    /// (acid + glycerine + carried by pails + dry strips + bags) / strips; liquid shared over bags and pails by mass.
    /// Source: common practice, none published. Facts: acid, glycerine, carried, dry strips, bags, strips, each.
    strip_cost,
    /// Mean +- 3 MRbar / d2, d2 = 1.128379. Source: NIST/SEMATECH e-Handbook, 6.3.2.2; runs of eight: Western Electric
    /// rules. Facts: mean, mean moving range, lower, upper, batches.
    batch_limits,
    /// 100 / ATEmix = sum C / ATE; H302 from 18.75 % (rat LD50 375 mg/kg, the stricter), H312 from 55 %, H318 from 3 %.
    /// Source: UN GHS, chapters 3.1 and 3.3. Facts: strength, oral estimate in mg/kg, dermal estimate in mg/kg.
    hazard_class,

    // yards
    /// So many strips a hive. Source: the user's rule; the label or the vet decides.
    /// Facts: strips a hive, hives, least and most of all these hives, result.
    dose_fixed,
    /// So many strips a brood box. Source: as dose_fixed. Facts: strips a box, boxes, hives, least, most,
    /// result.
    dose_boxes,
    /// One strip for so many frames of bees, rounded up. Source: as dose_fixed. Facts: frames for a strip, frames of
    /// bees, hives that share them, least, most, result.
    dose_frames,
    /// Mites / bees; 95 % interval of Wilson. Sources: Dietemann et al. 2013, J. Apic. Res. 52(1); Newcombe 1998, Stat.
    /// Med. 17:857. Facts: mites, bees, rate, from, to, and the user's threshold where one was said.
    mite_rate,
    /// Mites / days. Source: Dietemann et al. 2013, J. Apic. Res. 52(1). Facts: mites, days, mites a day.
    mite_drop,
    /// 1 - (Ta Cb) / (Tb Ca). Source: Henderson & Tilton 1955, J. Econ. Entomol. 48:157. Facts: treated before, treated
    /// after, untreated before, untreated after, change.
    mite_change,
    /// (before - after) / before: without untreated hives a change, no efficacy. Facts: before, after, change.
    mite_fall,
    /// Day placed + least days to day placed + most days. Source: the user's rule; the label decides. Facts: placed,
    /// least days, most days, first day, last day.
    pull_window,
};

struct How {
    HowKind kind{};
    QStringList facts;
};

} // namespace soakbook::work
