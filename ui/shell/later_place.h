// SPDX-License-Identifier: GPL-3.0-or-later
// A place that is built when somebody goes there: in a workbook of many years filling every place would hold up the first.
#pragma once

#include "ui/parts/place.h"

#include <functional>

namespace soakbook::ui {

class LaterPlace : public Place {
    Q_OBJECT

public:
    using Make = std::function<Place*()>;
    /// `name` is what the place itself will say.
    LaterPlace(PlaceName place, const QString& name, Make make, QWidget* parent = nullptr);

    PlaceName place() const override { return m_place; }
    QString name() const override { return m_name; }
    QString title() const override { return m_inner != nullptr ? m_inner->title() : m_name; }
    QList<QAction*> head_actions() override { return m_inner != nullptr ? m_inner->head_actions() : QList<QAction*>(); }
    void open(const Intent& intent) override { built().open(intent); }
    void refresh() override;
    void take_focus() override { built().take_focus(); }
    /// The place itself, built by now.
    Place& built();

private:
    PlaceName m_place;
    QString m_name;
    Make m_make;
    Place* m_inner = nullptr;
};

} // namespace soakbook::ui
