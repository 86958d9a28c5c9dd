// SPDX-License-Identifier: GPL-3.0-or-later
// Strips out: all that hangs in a yard as a grid, all pulled unless typed over.
#pragma once

#include "ui/yards/grid_page.h"
#include "ui/yards/pull_rows.h"

namespace soakbook::ui {

class DayField;

class PullPage : public GridPage {
    Q_OBJECT

public:
    explicit PullPage(Desk& desk, QWidget* parent = nullptr);
    /// Shows what hangs in that yard (0: everywhere). What was typed there before still stands.
    void open(work::YardId yard);
    QString title() const override;
    void refresh() override;
    void forget_typing() override;

Q_SIGNALS:
    void wants_pull_list(qint64 yard);

protected:
    void figure() override;
    void show_how() override;
    void refused_at(int index, const QString& part, const QString& words) override;

private:
    std::optional<work::Refusal> enter(const work::Confirmed& confirmed);
    work::PullEntry entry();

    DayField* m_day;
    RowsModel<PullRow>* m_rows;
    work::YardId m_yard;
    bool m_open = false;
    QString m_yard_name;
    std::vector<work::PlacementId> m_sent; ///< of the entry that was sent last, in its order
};

} // namespace soakbook::ui
