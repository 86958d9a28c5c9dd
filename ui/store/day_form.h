// SPDX-License-Identifier: GPL-3.0-or-later
// A form with one field: the day on which something was done, left empty for today.
#pragma once

#include "core/maths/quantities.h"
#include "ui/parts/form_dialog.h"

#include <functional>
#include <optional>

namespace soakbook::ui {

class Desk;

struct DayForm {
    QString name; ///< of the dialog, for tests
    QString title;
    QString intro;
    QString label;
    QString button;
};
using OnDay = std::function<std::optional<work::Refusal>(std::optional<maths::Day> on)>;
void open_day_form(Desk& desk, const DayForm& form, QWidget* parent, OnDay on_day);

} // namespace soakbook::ui
