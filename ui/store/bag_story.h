// SPDX-License-Identifier: GPL-3.0-or-later
// What happened to a bag, oldest first: sealed, opened, hung where, thrown away, counted anew.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"

#include <QScrollArea>

namespace soakbook::ui {

class FactGrid;

class BagStory : public QScrollArea {
    Q_OBJECT

public:
    explicit BagStory(Desk& desk, QWidget* parent = nullptr);
    void show_bag(work::BagId bag);

private:
    QString what(const work::BagEvent& event) const;

    Desk& m_desk;
    FactGrid* m_lines;
};

} // namespace soakbook::ui
