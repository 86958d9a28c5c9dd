// SPDX-License-Identifier: GPL-3.0-or-later
// Mite counts of one hive or group over time, each with its interval, against the user's own threshold.
#pragma once

#include "core/maths/quantities.h"
#include "ui/charts/plot.h"

#include <QLocale>

#include <optional>

namespace soakbook::ui {

struct MitePoint {
    maths::Day day;
    QString when;      ///< as the user reads it
    double rate = 0;   ///< in the unit of the axis
    std::optional<double> low;  ///< of its interval, same unit
    std::optional<double> high;
    QString words;     ///< "9 mites on 300 bees"
};

/// A stretch of days with strips in the hive.
struct StripsHung {
    maths::Day from;
    maths::Day to;
};

struct MiteCounts {
    std::vector<MitePoint> points; ///< in order of days, all of one kind of count
    std::vector<StripsHung> strips;
    std::optional<double> threshold;
    QString unit;     ///< "%" or "a day"
    QLocale locale;
};

class MiteChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const MiteCounts& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    QString rate(double value) const;
    QString words_of(const MitePoint& point) const;
    MiteCounts m_data;
};

} // namespace soakbook::ui
