// SPDX-License-Identifier: GPL-3.0-or-later
// Strips on the shelf by the month in which their limit falls.
#pragma once

#include "ui/charts/plot.h"

#include <QLocale>

#include <functional>

namespace soakbook::ui {

/// How a month's strips stand today.
enum class MonthState { past, near, in_date };

struct MonthOfStock {
    QString name;  ///< "Oct"
    QString words; ///< "October 2026", for the sentence and the table
    int strips = 0;
    MonthState state = MonthState::in_date;
    int bags = 0;
};

struct StockByMonth {
    std::vector<MonthOfStock> months; ///< in order, none left out between first and last
    QLocale locale;
};

class StockByMonthChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const StockByMonth& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    QString state_words(MonthState state) const;
    StockByMonth m_data;
};

} // namespace soakbook::ui
