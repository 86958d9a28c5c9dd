// SPDX-License-Identifier: GPL-3.0-or-later
// The reason of what is thrown away, counted anew or put right, with a few to pick from.
#pragma once

#include <QStringList>

#include <functional>

namespace soakbook::ui {

class FormFrame;
class TextField;

/// Adds the field "reason" to a form, and under it a button for each of `picks`.
TextField* add_reason(FormFrame& form, const QString& help, const QStringList& picks);
/// A row of buttons, one for each of `picks`; `picked` fills its reason in.
void add_picks(FormFrame& form, const QStringList& picks, const std::function<void(const QString& pick)>& picked);
/// The help under the reason of a correction.
QString correction_help();
/// Usual reasons of a correction.
QStringList correction_picks();
/// Usual reasons why strips in or out of a hive, or a count, are put right or made void.
QStringList strips_picks();
/// Usual reasons why a name, or the state of a hive, is put right.
QStringList naming_picks();

} // namespace soakbook::ui
