// SPDX-License-Identifier: GPL-3.0-or-later
// The reason of what is thrown away, counted anew or put right, with a few to pick from.
#pragma once

#include <QStringList>

namespace soakbook::ui {

class FormFrame;
class TextField;

/// Adds the field "reason" to a form, and under it a button for each of `picks`.
TextField* add_reason(FormFrame& form, const QString& help, const QStringList& picks);
/// The help under the reason of a correction.
QString correction_help();
/// Usual reasons of a correction.
QStringList correction_picks();

} // namespace soakbook::ui
