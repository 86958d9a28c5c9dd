// SPDX-License-Identifier: GPL-3.0-or-later
// Strips while they soak: the mean of each weighing over the hours since the soak began, bin by bin, and the weight wanted.
#pragma once

#include "core/exchange/quantity_text.h"
#include "ui/charts/plot.h"

#include <QLocale>

#include <optional>

namespace soakbook::ui {

struct StripSample {
    double hours = 0; ///< since its bin was flooded
    QString when;     ///< as the user reads it
    maths::Mass mean; ///< of one strip
    int strips = 0;   ///< on the scale
    QString verdict;  ///< "light by 1.0 g"; may be empty
};

/// The fitted curve of one bin and the band in which it lies.
struct FittedPoint {
    double hours = 0;
    maths::Mass weight;
    maths::Mass low;
    maths::Mass high;
};

struct BinOfSamples {
    QString name; ///< "bin 1"
    std::vector<StripSample> samples; ///< in order of time
    std::vector<FittedPoint> curve{}; ///< from the start on; empty: the samples are joined by straight lines
    std::optional<double> reached{};  ///< hours until the weight wanted; only with a curve
    QString reached_words{};          ///< the hour as the user reads it, with how sure that is
};

struct StripWeight {
    std::vector<BinOfSamples> bins;
    maths::Mass dry;
    std::optional<maths::Mass> target;
    std::optional<maths::Mass> wanted_from; ///< target less tolerance
    std::optional<maths::Mass> wanted_to;   ///< target and tolerance
    exchange::MassUnit unit = exchange::MassUnit::gram;
    QLocale locale;
};

class StripWeightChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const StripWeight& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    void add_bin(const BinOfSamples& bin, Qt::PenStyle style, const AxisSteps& heights);
    QString text(maths::Mass mass) const;
    QString words_of(const BinOfSamples& bin, const StripSample& sample) const;
    StripWeight m_data;
};

} // namespace soakbook::ui
