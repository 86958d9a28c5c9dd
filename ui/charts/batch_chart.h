// SPDX-License-Identifier: GPL-3.0-or-later
// One figure of every batch, in order of their days, with the mean and the limits that follow from how batches differ
// anyway; the batch that is looked at stands out.
#pragma once

#include "core/exchange/quantity_text.h"
#include "ui/charts/plot.h"

#include <QLocale>

#include <optional>

namespace soakbook::ui {

struct BatchPoint {
    QString code;
    QString day;
    maths::Mass figure;
    bool looked_at = false;
    bool outside = false; ///< beyond a limit
    bool in_run = false;  ///< of eight on one side
};

struct BatchSeries {
    QString figure_name;             ///< "acid in a strip"
    std::vector<BatchPoint> batches; ///< oldest first
    std::optional<maths::Mass> mean; ///< with both limits, or none of the three
    std::optional<maths::Mass> lower;
    std::optional<maths::Mass> upper;
    exchange::MassUnit unit = exchange::MassUnit::gram;
    QLocale locale;
};

class BatchChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const BatchSeries& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    QString text(maths::Mass mass) const;
    QString standing_of(const BatchPoint& batch) const;
    void add_limits(double from, double to);
    BatchSeries m_data;
};

} // namespace soakbook::ui
