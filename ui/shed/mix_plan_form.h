// SPDX-License-Identifier: GPL-3.0-or-later
// A new batch: what one starts from, the strength, tank, strips, materials and pails; the amounts follow while it is typed.
// Field names: mix_from, mix_amount, mix_strips, mix_strength, mix_tank, mix_strip_kind, mix_acid_lot, mix_glycerine_lot,
// mix_pails, mix_day; button suggest_pails.
#pragma once

#include "core/work/pail_advice.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"
#include "ui/parts/intent.h"

#include <optional>

namespace soakbook::ui {

class ChoiceField;
class CountField;
class DayField;
class LotField;
class MassField;
class NoticeBar;
class PailChecklist;
class PercentField;

class MixPlanForm : public FormFrame {
    Q_OBJECT

public:
    explicit MixPlanForm(Desk& desk, QWidget* parent = nullptr);
    /// Puts in what a wish brings along: "strips", or "total" in milligrams.
    void prefill(const QVariantMap& wish);
    /// Asks again for vessels, kinds and deliveries; what was chosen stays.
    void refresh();

Q_SIGNALS:
    void planned(qint64 batch);
    void wishes(const soakbook::ui::Intent& intent);

private:
    void add_fields();
    void fill(const work::MixStart& start);
    void show_start();
    void reckon();
    void suggest_pails();
    work::MixPlan plan() const;
    work::MixFrom from() const;

    Desk& m_desk;
    ChoiceField* m_from = nullptr;
    MassField* m_amount = nullptr;
    CountField* m_strips = nullptr;
    PercentField* m_strength = nullptr;
    ChoiceField* m_tank = nullptr;
    ChoiceField* m_kind = nullptr;
    LotField* m_acid = nullptr;
    LotField* m_glycerine = nullptr;
    PailChecklist* m_pails = nullptr;
    DayField* m_day = nullptr;
    NoticeBar* m_missing = nullptr;
    /// The pails that were suggested, and for which plan: another plan makes it old.
    std::optional<work::PailAdvice> m_advice;
    work::MixPlan m_advised;
};

} // namespace soakbook::ui
