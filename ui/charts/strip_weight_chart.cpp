// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/strip_weight_chart.h"

#include "ui/charts/value_in_unit.h"

#include <QValueAxis>

#include <algorithm>
#include <array>

namespace soakbook::ui {

void StripWeightChart::set_data(const StripWeight& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString StripWeightChart::name() const {
    return tr("Weight of one strip");
}

bool StripWeightChart::is_empty() const {
    return std::all_of(m_data.bins.begin(), m_data.bins.end(),
                       [](const BinOfSamples& bin) { return bin.samples.empty(); });
}

QString StripWeightChart::empty_sentence() const {
    //: instead of the chart of strip weights
    return tr("The weight of the strips stands here, with the band that is wanted, once the first sample was weighed.");
}

QString StripWeightChart::text(maths::Mass mass) const {
    return exchange::write_mass(mass, m_data.unit, m_data.locale, 1);
}

QString StripWeightChart::words_of(const BinOfSamples& bin, const StripSample& sample) const {
    //: one weighing in words; %1 is a bin, %2 day and time, %3 a number of hours, %4 a mass
    QString words = tr("%1, %2, %3 h in: %4 a strip")
                        .arg(bin.name, sample.when, m_data.locale.toString(sample.hours, 'f', 1), text(sample.mean));
    if (sample.strips > 0) {
        //: goes on from one weighing in words
        words += QStringLiteral(", ") + tr("%n weighed", nullptr, sample.strips);
    }
    if (!sample.verdict.isEmpty()) {
        words += QStringLiteral(", ") + sample.verdict;
    }
    return words;
}

void StripWeightChart::add_bin(const BinOfSamples& bin, Qt::PenStyle style, const AxisSteps& heights) {
    const ChartLook& look = worn();
    std::vector<QPointF> points;
    for (const StripSample& sample : bin.samples) {
        points.emplace_back(sample.hours, in_unit(sample.mean, m_data.unit));
    }
    std::vector<QPointF> course = points;
    course.insert(course.begin(), QPointF(0, in_unit(m_data.dry, m_data.unit)));
    if (!bin.curve.empty()) {
        course.clear();
        std::vector<QPointF> low;
        std::vector<QPointF> high;
        // Wide bands of young curves would leave the picture.
        const auto within = [&heights](double weight) { return std::clamp(weight, heights.from, heights.to); };
        for (const FittedPoint& point : bin.curve) {
            course.emplace_back(point.hours, within(in_unit(point.weight, m_data.unit)));
            low.emplace_back(point.hours, within(in_unit(point.low, m_data.unit)));
            high.emplace_back(point.hours, within(in_unit(point.high, m_data.unit)));
        }
        QColor band = look.measured;
        band.setAlphaF(0.12F);
        add_band(low, high, band);
    }
    add_line(course, look.measured, 2, style);
    add_marks(points, Mark::ring, look.ink);
    if (m_data.bins.size() > 1) {
        add_label(course.back(), bin.name, look.measured, LabelSide::end, true);
    }
    if (bin.reached && m_data.target) {
        const QPointF at(*bin.reached, in_unit(*m_data.target, m_data.unit));
        add_marks({at}, Mark::square, look.measured);
        //: one point of the chart in words; %1 is a bin, %2 an hour with how sure it is
        add_stop(at, tr("%1 reaches the weight wanted %2").arg(bin.name, bin.reached_words));
    }
}

void StripWeightChart::fill() {
    const ChartLook& look = worn();
    double last = 0;
    std::vector<double> heights = {in_unit(m_data.dry, m_data.unit)};
    for (const BinOfSamples& bin : m_data.bins) {
        for (const StripSample& sample : bin.samples) {
            last = std::max(last, sample.hours);
            heights.push_back(in_unit(sample.mean, m_data.unit));
        }
        for (const FittedPoint& point : bin.curve) {
            last = std::max(last, point.hours);
            heights.push_back(in_unit(point.weight, m_data.unit));
        }
    }
    for (const auto& edge : {m_data.wanted_from, m_data.wanted_to}) {
        if (edge) {
            heights.push_back(in_unit(*edge, m_data.unit));
        }
    }
    const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
    const double span = std::max(1e-6, *most - *least);
    const AxisSteps x = hour_steps(std::max(last, 1.0));
    const AxisSteps y = round_steps(std::max(0.0, *least - span * 0.08), *most + span * 0.05, 5);
    //: unit on an axis: hours
    QValueAxis* hours_axis = add_axis(Qt::AlignBottom, x, tr("h"), 0.015);
    use_axes(hours_axis, add_axis(Qt::AlignLeft, y, exchange::sign(m_data.unit)));

    if (m_data.wanted_from && m_data.wanted_to) {
        const double low = in_unit(*m_data.wanted_from, m_data.unit);
        const double high = in_unit(*m_data.wanted_to, m_data.unit);
        add_band(x.from, x.to, low, high);
        //: names the band of weights that is wanted
        const QString words = tr("wanted");
        add_label({x.to, (low + high) / 2}, words, look.wanted_ink, LabelSide::end);
    }
    const QPointF dry(0, in_unit(m_data.dry, m_data.unit));
    constexpr std::array<Qt::PenStyle, 4> styles = {Qt::SolidLine, Qt::DashLine, Qt::DotLine, Qt::DashDotLine};
    std::size_t style = 0;
    for (const BinOfSamples& bin : m_data.bins) {
        if (!bin.samples.empty()) {
            add_bin(bin, styles[style % styles.size()], y);
            ++style;
        }
    }
    add_marks({dry}, Mark::ring, look.ink);
    //: names the first point of the chart; %1 is a mass
    add_label(dry, tr("dry %1").arg(text(m_data.dry)), look.soft, LabelSide::below);
    //: one point of the chart in words; %1 is a mass
    add_stop(dry, tr("Dry: %1 a strip").arg(text(m_data.dry)));
    for (const BinOfSamples& bin : m_data.bins) {
        for (const StripSample& sample : bin.samples) {
            add_stop({sample.hours, in_unit(sample.mean, m_data.unit)}, words_of(bin, sample));
        }
    }
}

ChartTable StripWeightChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("Bin"),
                    //: column of the table behind a chart
                    tr("When"),
                    //: column of the table behind a chart: hours since the soak began
                    tr("Hours in"),
                    //: column of the table behind a chart; %1 is a unit
                    tr("One strip, %1").arg(exchange::sign(m_data.unit)),
                    //: column of the table behind a chart
                    tr("Strips weighed"),
                    //: column of the table behind a chart
                    tr("Verdict")};
    for (const BinOfSamples& bin : m_data.bins) {
        for (const StripSample& sample : bin.samples) {
            table.rows.push_back({bin.name, sample.when, m_data.locale.toString(sample.hours, 'f', 1),
                                  exchange::write_mass_number(sample.mean, m_data.unit, m_data.locale, 2),
                                  sample.strips > 0 ? m_data.locale.toString(sample.strips) : QString(),
                                  sample.verdict});
        }
    }
    return table;
}

std::unique_ptr<Plot> StripWeightChart::twin() const {
    auto twin = std::make_unique<StripWeightChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
