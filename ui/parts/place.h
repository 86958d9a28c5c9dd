// SPDX-License-Identifier: GPL-3.0-or-later
// What the frame knows of a place: nothing but this.
#pragma once

#include "ui/parts/intent.h"

#include <QAction>
#include <QList>
#include <QWidget>

namespace soakbook::ui {

/// One place of the house: a page the navigation shows. Rooms derive from it; the frame holds them by this interface.
class Place : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;
    virtual PlaceName place() const = 0;
    /// The name in the navigation, translated.
    virtual QString name() const = 0;
    /// What stands over the page now, as "Batch B7K"; the frame asks again on title_changed().
    virtual QString title() const { return name(); }
    /// The quiet buttons at the right of the head, such as a sheet to print.
    virtual QList<QAction*> head_actions() { return {}; }
    /// Opens the form or record that is wished for.
    virtual void open(const Intent& intent) = 0;
    /// Asks the workbook again: called when the page becomes visible, after each piece of work, and when the day turns.
    virtual void refresh() = 0;
    /// Puts the keyboard where work on this page begins.
    virtual void take_focus() { setFocus(); }

Q_SIGNALS:
    void title_changed();
    void wishes(const soakbook::ui::Intent& intent);
};

} // namespace soakbook::ui
