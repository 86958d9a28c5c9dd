// SPDX-License-Identifier: GPL-3.0-or-later
// One line of a weigh-in: what was planned stands beside what is weighed, and is in the field already.
#pragma once

#include "ui/parts/quantity_field.h"

namespace soakbook::ui {

class PlannedMassField : public MassField {
    Q_OBJECT

public:
    PlannedMassField(const Habits& habits, maths::Mass planned, QWidget* parent = nullptr);
};

} // namespace soakbook::ui
