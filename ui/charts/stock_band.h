// SPDX-License-Identifier: GPL-3.0-or-later
// The year ahead as one band: months across; above the line the strips that are in date, those that reach their limit in
// that month dashed; below it what the rounds want and what is short.
#pragma once

#include "ui/charts/plot.h"

#include <QLocale>

namespace soakbook::ui {

struct RoundInBand {
    QString name;   ///< "Spring round"
    int wanted = 0; ///< strips
    int short_of = 0;
};

struct MonthInBand {
    QString name;        ///< "Dec"
    QString words;       ///< "December 2026"
    int in_date = 0;     ///< strips in date at the month's beginning, after the rounds before it
    int reach_limit = 0; ///< of these, how many reach their limit within it unused
    std::vector<RoundInBand> rounds;
};

struct StockBand {
    std::vector<MonthInBand> months; ///< twelve, from this one on
    QLocale locale;
};

class StockBandChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const StockBand& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    int most_above() const;
    int most_below() const;
    QString words_of(const MonthInBand& month) const;
    void label_round(double x, const MonthInBand& month, double scale);
    StockBand m_data;
};

} // namespace soakbook::ui
