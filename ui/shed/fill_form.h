// SPDX-License-Identifier: GPL-3.0-or-later
// Fills bags whose labels were given out before. Field names: fill_count, fill_rows with fill_strips_1 and fill_net_1 ...,
// fill_sealed, fill_stands.
#pragma once

#include "core/work/bag.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class CountField;
class DayField;
class ReservedRows;
class TextField;

class FillForm : public FormFrame {
    Q_OBJECT

public:
    FillForm(Desk& desk, const work::BatchView& batch, QWidget* parent = nullptr);
    int labels() const;

Q_SIGNALS:
    void filled(const std::vector<soakbook::work::BagId>& bags);

private:
    void spread();
    void count_by_weight();
    work::FillReserved entry() const;

    Desk& m_desk;
    work::BatchId m_batch;
    int m_to_bag = 0;
    int m_each = 0;
    CountField* m_count;
    ReservedRows* m_rows;
    DayField* m_sealed;
    TextField* m_stands;
};

/// Labels of that batch whose bags are not filled yet.
std::vector<work::BatchBag> reserved_bags(const work::BatchView& batch);

} // namespace soakbook::ui
