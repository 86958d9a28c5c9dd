// SPDX-License-Identifier: GPL-3.0-or-later
// Strips into bags: how many of how many, filled in with what is still to bag.
// Field names: bag_count, bag_strips, bag_last, bag_net, bag_sealed, bag_lot, bag_stands.
#pragma once

#include "core/work/bag.h"
#include "core/work/count_check.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

namespace soakbook::ui {

class CountField;
class DayField;
class LotField;
class MassField;
class TextField;

class BagForm : public FormFrame {
    Q_OBJECT

public:
    explicit BagForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);

Q_SIGNALS:
    /// These bags were filled and have no label yet.
    void filled(const std::vector<soakbook::work::BagId>& bags);

private:
    void fill(const work::BatchView& batch);
    void reckon();
    work::BagEntry entry() const;
    static QString net_help();
    /// Nothing while weight or count is not typed, or strips were never weighed.
    std::optional<work::CountCheck> count_by_weight() const;

    Desk& m_desk;
    work::BatchId m_batch;
    CountField* m_bags;
    CountField* m_strips;
    CountField* m_last;
    MassField* m_net;
    DayField* m_sealed;
    LotField* m_lot;
    TextField* m_stands;
};

/// Strips in a bag of that kind, as Set-up says; nothing where it does not.
std::optional<int> strips_per_bag(const book::Workbook& workbook, work::StripKindId kind);
/// Where bags stand already, for a field that offers them; the place used last comes first.
QStringList bag_places(const Desk& desk);
/// What follows from bags filled like this, into the result of a form.
void show_bag_figures(FormFrame& form, const Habits& habits, const work::BagFigures& figures);

} // namespace soakbook::ui
