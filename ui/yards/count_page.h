// SPDX-License-Identifier: GPL-3.0-or-later
// Count: mites of a yard's hives, each with its rate and how sure that is.
#pragma once

#include "ui/yards/count_rows.h"
#include "ui/yards/grid_page.h"

namespace soakbook::ui {

class ChoiceField;
class DayField;

class CountPage : public GridPage {
    Q_OBJECT

public:
    explicit CountPage(Desk& desk, QWidget* parent = nullptr);
    /// Shows the hives of that yard. What was typed there before still stands.
    void open(work::YardId yard);
    QString title() const override;
    void refresh() override;
    void forget_typing() override;

protected:
    void figure() override;
    void show_how() override;
    void refused_at(int index, const QString& part, const QString& words) override;

private:
    void make_form();
    void show_rounds();
    void use_kind();
    work::MiteCountKind kind() const;
    /// The number of bees used last in a count of this kind; nobody's number is invented.
    std::optional<int> bees_used_last() const;
    work::CountEntry entry() const;
    std::optional<work::Refusal> enter(const work::Confirmed& confirmed);

    ChoiceField* m_kind;
    DayField* m_day;
    ChoiceField* m_round;
    RowsModel<CountRow>* m_rows;
    work::YardId m_yard;
    QString m_yard_name;
    std::vector<work::HiveId> m_sent;
};

} // namespace soakbook::ui
