// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the card of a step while it is open.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/intent.h"

#include <QWidget>

namespace soakbook::ui {

class StepBody : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;
    /// Shows that batch, again after each piece of work; what was typed for the same batch stays.
    virtual void show_batch(const work::BatchView& batch) = 0;
    /// Puts the keyboard into the first field to fill.
    virtual void take_focus() = 0;
    /// Turns to the form a wish asks for, such as "stir" within Heat and clear.
    virtual void turn_to(const Intent&) {}
    /// Whether a form holds something typed that was not entered.
    virtual bool has_typed() const { return false; }

Q_SIGNALS:
    /// An entry was made: the course asks the workbook again and goes on to what comes next.
    void entry_made();
    void wishes(const soakbook::ui::Intent& intent);
};

} // namespace soakbook::ui
