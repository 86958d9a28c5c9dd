// SPDX-License-Identifier: GPL-3.0-or-later
// The tank while it heats: the probe's readings, the dial beside them, and the ceiling that must not be passed.
#pragma once

#include "core/exchange/quantity_text.h"
#include "ui/charts/plot.h"

#include <QLocale>

#include <optional>

namespace soakbook::ui {

struct TankReading {
    maths::Instant at;
    QString when; ///< as the user reads it: "3 Oct 14:30"
    std::optional<maths::Temperature> probe;
    std::optional<maths::Temperature> dial;
    bool stirred = false;
};

struct TankTemperature {
    std::vector<TankReading> readings; ///< in order of time
    std::optional<maths::Temperature> ceiling;
    exchange::TemperatureUnit unit = exchange::TemperatureUnit::celsius;
    QLocale locale;
};

class TankTemperatureChart : public Plot {
    Q_OBJECT

public:
    using Plot::Plot;
    void set_data(const TankTemperature& shown);

    QString name() const override;
    bool is_empty() const override;
    QString empty_sentence() const override;
    ChartTable table() const override;
    std::unique_ptr<Plot> twin() const override;

protected:
    void fill() override;

private:
    QString words_of(const TankReading& reading) const;
    QString text(maths::Temperature temperature) const;
    double hours(const TankReading& reading) const;
    bool is_over(const TankReading& reading) const;
    TankTemperature m_data;
};

} // namespace soakbook::ui
