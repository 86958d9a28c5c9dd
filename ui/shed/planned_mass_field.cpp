// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/planned_mass_field.h"

#include "ui/parts/theme.h"
#include "ui/shed/shed_words.h"

#include <QHBoxLayout>
#include <QLabel>

namespace soakbook::ui {

PlannedMassField::PlannedMassField(const Habits& habits, maths::Mass planned, QWidget* parent)
    : MassField(habits, MassSize::large, parent) {
    //: Beside the field for a weighed mass; %1 the mass that was planned
    const QString text = tr("planned %1").arg(ui::large(habits, planned));
    auto* label = make_soft_label(text, Type::body, this, false);
    label->setMinimumWidth(scaled(140));
    row()->setSpacing(scaled(12));
    row()->insertWidget(0, label);
}

} // namespace soakbook::ui
