// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/tank_temperature_chart.h"

#include "ui/charts/value_in_unit.h"

#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

void TankTemperatureChart::set_data(const TankTemperature& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString TankTemperatureChart::name() const {
    return tr("Temperature of the tank");
}

bool TankTemperatureChart::is_empty() const {
    return std::none_of(m_data.readings.begin(), m_data.readings.end(),
                        [](const TankReading& r) { return r.probe || r.dial; });
}

QString TankTemperatureChart::empty_sentence() const {
    //: instead of the chart of the tank's temperature
    return tr("The tank's temperature stands here once the probe was read for the first time.");
}

QString TankTemperatureChart::text(maths::Temperature temperature) const {
    return exchange::write_temperature(temperature, m_data.unit, m_data.locale, 1);
}

double TankTemperatureChart::hours(const TankReading& reading) const {
    return maths::hours_between(m_data.readings.front().at, reading.at);
}

bool TankTemperatureChart::is_over(const TankReading& reading) const {
    return reading.probe && m_data.ceiling && *reading.probe > *m_data.ceiling;
}

QString TankTemperatureChart::words_of(const TankReading& reading) const {
    QStringList parts = {reading.when};
    if (reading.probe) {
        //: in the sentence on one reading; %1 is a temperature
        parts.append(tr("probe %1").arg(text(*reading.probe)));
    }
    if (reading.dial) {
        //: in the sentence on one reading; %1 is a temperature
        parts.append(tr("dial %1").arg(text(*reading.dial)));
    }
    if (is_over(reading)) {
        //: in the sentence on one reading; %1 is a temperature
        parts.append(tr("over the ceiling of %1").arg(text(*m_data.ceiling)));
    }
    if (reading.stirred) {
        //: in the sentence on one reading
        parts.append(tr("stirred"));
    }
    return parts.join(QStringLiteral(", "));
}

void TankTemperatureChart::fill() {
    const ChartLook& look = worn();
    std::vector<QPointF> probe;
    std::vector<QPointF> over;
    std::vector<QPointF> dial;
    std::vector<double> heights;
    const TankReading* highest = nullptr;
    for (const TankReading& reading : m_data.readings) {
        if (reading.probe) {
            const QPointF at(hours(reading), in_unit(*reading.probe, m_data.unit));
            (is_over(reading) ? over : probe).push_back(at);
            heights.push_back(at.y());
            if (is_over(reading) && (highest == nullptr || *reading.probe > *highest->probe)) {
                highest = &reading;
            }
        }
        if (reading.dial) {
            dial.emplace_back(hours(reading), in_unit(*reading.dial, m_data.unit));
            heights.push_back(dial.back().y());
        }
    }
    if (m_data.ceiling) {
        heights.push_back(in_unit(*m_data.ceiling, m_data.unit));
    }
    const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
    const double last = hours(m_data.readings.back());
    const AxisSteps x = hour_steps(std::max(last, 1.0));
    const AxisSteps y = round_steps(*least - 1, *most + 1, 5);
    //: unit on an axis: hours
    QValueAxis* hours_axis = add_axis(Qt::AlignBottom, x, tr("h"), 0.015);
    use_axes(hours_axis, add_axis(Qt::AlignLeft, y, exchange::sign(m_data.unit)));

    if (m_data.ceiling) {
        const double ceiling = in_unit(*m_data.ceiling, m_data.unit);
        add_line({{x.from, ceiling}, {x.to, ceiling}}, look.past, 1.4, Qt::DashLine);
        //: names a line in the chart; %1 is a temperature
        const QString words = tr("ceiling %1").arg(text(*m_data.ceiling));
        add_label({x.to, ceiling}, words, look.past, LabelSide::end);
    }
    if (!dial.empty()) {
        add_line(dial, look.lighter, 1.4);
        add_marks(dial, Mark::dot, look.lighter);
        //: names a line in the chart: what the thermostat's dial is set to
        add_label(dial.back(), tr("dial"), look.on_paper ? look.soft : look.ink, LabelSide::end);
    }
    std::vector<QPointF> all = probe;
    all.insert(all.end(), over.begin(), over.end());
    std::sort(all.begin(), all.end(), [](QPointF a, QPointF b) { return a.x() < b.x(); });
    if (!all.empty()) {
        add_line(all, look.measured, 2.2);
        add_marks(probe, Mark::ring, look.ink);
        add_marks(over, Mark::square, look.past);
        //: names a line in the chart: the thermometer in the liquid
        add_label(all.back(), tr("probe"), look.measured, LabelSide::end, true);
    }
    if (highest != nullptr) {
        const QPointF at(hours(*highest), in_unit(*highest->probe, m_data.unit));
        //: at the highest point of the chart; %1 is a temperature over the ceiling
        add_label(at, tr("%1, over the ceiling").arg(text(*highest->probe)), look.past, LabelSide::above, true, true);
    }
    for (const TankReading& reading : m_data.readings) {
        if (reading.probe || reading.dial) {
            add_stop({hours(reading), in_unit(reading.probe ? *reading.probe : *reading.dial, m_data.unit)},
                     words_of(reading));
        }
    }
}

ChartTable TankTemperatureChart::table() const {
    ChartTable table;
    const QString unit = exchange::sign(m_data.unit);
    //: column of the table behind a chart
    table.header = {tr("When"),
                    //: column of the table behind a chart; %1 is a unit
                    tr("Probe, %1").arg(unit),
                    //: column of the table behind a chart; %1 is a unit
                    tr("Dial, %1").arg(unit),
                    //: column of the table behind a chart
                    tr("Note")};
    const auto number = [&](const std::optional<maths::Temperature>& t) {
        return t ? exchange::write_temperature_number(*t, m_data.unit, m_data.locale, 1) : QString();
    };
    for (const TankReading& reading : m_data.readings) {
        QStringList notes;
        if (is_over(reading)) {
            //: in the table behind a chart
            notes.append(tr("over the ceiling"));
        }
        if (reading.stirred) {
            //: in the table behind a chart
            notes.append(tr("stirred"));
        }
        table.rows.push_back(
            {reading.when, number(reading.probe), number(reading.dial), notes.join(QStringLiteral(", "))});
    }
    return table;
}

std::unique_ptr<Plot> TankTemperatureChart::twin() const {
    auto twin = std::make_unique<TankTemperatureChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
