// SPDX-License-Identifier: GPL-3.0-or-later
// What happened to a bag, oldest first: sealed, opened, hung where, thrown away, counted anew.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/store/fact_grid.h"

namespace soakbook::ui {

class BagStory : public FactGrid {
    Q_OBJECT

public:
    explicit BagStory(Desk& desk, QWidget* parent = nullptr);
    void show_bag(work::BagId bag);

private:
    QString what(const work::BagEvent& event) const;

    Desk& m_desk;
};

} // namespace soakbook::ui
