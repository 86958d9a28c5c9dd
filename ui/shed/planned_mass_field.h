// SPDX-License-Identifier: GPL-3.0-or-later
// One line of a weigh-in: what was planned stands beside what is weighed, and is in the field already.
#pragma once

#include "ui/parts/quantity_field.h"

namespace soakbook::ui {

class PlannedMassField : public MassField {
    Q_OBJECT

public:
    /// `containers` says the planned mass in whole containers; may be empty.
    PlannedMassField(const Habits& habits, maths::Mass planned, const QString& containers, QWidget* parent = nullptr);
};

} // namespace soakbook::ui
