// SPDX-License-Identifier: GPL-3.0-or-later
// Strips in: a yard of a round as a grid, as planned unless typed over.
#pragma once

#include "core/work/round.h"
#include "ui/yards/grid_page.h"
#include "ui/yards/visit_rows.h"

namespace soakbook::ui {

class ChoiceField;
class DayField;
class TextField;
class YesNoField;

class VisitPage : public GridPage {
    Q_OBJECT

public:
    explicit VisitPage(Desk& desk, QWidget* parent = nullptr);
    /// Shows that yard in that round. What was typed for the same yard and round before still stands there.
    void open(work::RoundId round, work::YardId yard);
    QString title() const override;
    void refresh() override;
    void forget_typing() override;

Q_SIGNALS:
    void wants_run_sheet(qint64 round, qint64 yard);

protected:
    void figure() override;
    void show_how() override;
    void refused_at(int index, const QString& part, const QString& words) override;

private:
    void offer_draft();
    void make_form();
    void make_grid(bool by_boxes);
    void show_rounds();
    void plan();
    void show_plan();
    void show_figures(const std::vector<VisitRow>& rows);
    void fill_bags();
    bool any_bag_past_limit() const;
    work::VisitEntry entry() const;
    std::optional<work::Refusal> enter(const work::Confirmed& confirmed);
    bool set_figure(work::HiveId hive, std::optional<int> figure);
    std::optional<work::BagId> bag_named(const QString& code) const;

    ChoiceField* m_round_field;
    DayField* m_day;
    YesNoField* m_supers;
    TextField* m_reason;
    RowsModel<VisitRow>* m_rows = nullptr;
    bool m_by_boxes = false;
    work::RoundId m_round;
    work::YardId m_yard;
    work::VisitPlan m_plan;
    work::RoundEntry m_rule;
    std::vector<work::HiveId> m_sent; ///< the hives of the entry that was sent last, in its order
};

} // namespace soakbook::ui
