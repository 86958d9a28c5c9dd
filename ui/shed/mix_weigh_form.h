// SPDX-License-Identifier: GPL-3.0-or-later
// What was weighed in, line by line beside what was planned; the strength follows while it is typed.
// Field names: weigh_in_1, weigh_in_2 ... , weigh_in_scraped, weigh_in_when, weigh_in_who.
#pragma once

#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class ChoiceField;
class PlannedMassField;
class WhenField;
class YesNoField;

class MixWeighForm : public FormFrame {
    Q_OBJECT

public:
    MixWeighForm(Desk& desk, const work::BatchView& batch, QWidget* parent = nullptr);
    work::BatchId batch() const { return m_batch; }

private:
    void add_fields(const work::BatchView& batch);
    void reckon();
    work::WeighedMix mix() const;
    book::Doing doing() const;

    Desk& m_desk;
    work::BatchId m_batch;
    std::vector<std::pair<work::BatchInputId, PlannedMassField*>> m_masses;
    YesNoField* m_scraped = nullptr;
    WhenField* m_when = nullptr;
    ChoiceField* m_who = nullptr;
};

} // namespace soakbook::ui
