// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions that go with paper: short, and always deferring to the label, the data sheet and local rules.
#pragma once

#include <QStringList>

namespace soakbook::ui {

/// For weighing in acid and heating: what splashes, dusts and gives off gas.
QStringList mixing_cautions();
/// For hanging strips: gloves, supers, whose word counts.
QStringList hanging_cautions();
/// For pulling strips and what becomes of them.
QStringList pulling_cautions();
/// For carrying and keeping bags.
QStringList carrying_cautions();
/// On the register: a home-made strip is no authorised product.
QStringList register_cautions();

} // namespace soakbook::ui
