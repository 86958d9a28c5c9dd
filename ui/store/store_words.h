// SPDX-License-Identifier: GPL-3.0-or-later
// Short phrases that the pages of the Store say alike.
#pragma once

#include "core/work/materials.h"
#include "core/work/store_view.h"
#include "ui/parts/habits.h"
#include "ui/parts/state.h"

#include <QString>

#include <optional>

namespace soakbook::ui {

/// A bag's shape; a label without a bag has none.
std::optional<State> bag_shape(work::BagState state);
QString bag_state_word(work::BagState state);
State pail_shape(work::PailState state);
QString pail_state_word(const work::PailLine& pail);
/// Whether a label was printed: "printed", "print again", "not printed".
QString label_word(const QString& label);
/// The label's shape: a tick, a triangle, or none.
std::optional<State> label_shape(const QString& label);

QString strength_or_unknown(const Habits& habits, const std::optional<maths::Fraction>& strength);
QString material_word(work::MaterialKind material);
bool is_by_mass(work::MaterialKind material);
/// An amount of a delivery: a mass for acid and glycerine, a number for strips and bags.
QString lot_amount(const Habits& habits, work::MaterialKind material, qint64 amount);
/// "41 of 80"; empty for a label without a bag.
QString strips_words(const Habits& habits, const work::BagLine& bag);
/// "13 days left", "4 days past"; empty for a bag that is gone.
QString days_left_words(const work::BagLine& bag);
/// A count as core/work takes it; what is larger than any stays refused as too large.
std::optional<int> as_strips(std::optional<qint64> n);
/// A difference with its sign.
QString with_sign(const Habits& habits, int n);

} // namespace soakbook::ui
