// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/mite_chart.h"

#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

void MiteChart::set_data(const MiteCounts& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString MiteChart::name() const {
    return tr("Mite counts");
}

bool MiteChart::is_empty() const {
    return m_data.points.empty();
}

QString MiteChart::empty_sentence() const {
    //: instead of the chart of mite counts
    return tr("Mite counts stand here, each with how sure it is, once the first was entered.");
}

QString MiteChart::rate(double value) const {
    return m_data.locale.toString(value, 'f', value < 10 ? 1 : 0) + QChar(0x202F) + m_data.unit;
}

QString MiteChart::words_of(const MitePoint& point) const {
    //: one count in words; %1 is a day, %2 a rate with its unit
    QString words = tr("%1: %2").arg(point.when, rate(point.rate));
    if (point.low && point.high) {
        //: goes on from one count in words; %1 and %2 are rates
        words += QStringLiteral(", ") + tr("between %1 and %2").arg(rate(*point.low), rate(*point.high));
    }
    if (!point.words.isEmpty()) {
        words += QStringLiteral(", ") + point.words;
    }
    if (m_data.threshold && point.rate > *m_data.threshold) {
        //: goes on from one count in words; %1 is a rate
        words += QStringLiteral(", ") + tr("over the threshold of %1").arg(rate(*m_data.threshold));
    }
    return words;
}

void MiteChart::fill() {
    const ChartLook& look = worn();
    const maths::Day first = m_data.points.front().day;
    const auto weeks = [first](maths::Day day) { return static_cast<double>(maths::days_between(first, day)) / 7; };
    double most = m_data.threshold.value_or(0);
    for (const MitePoint& point : m_data.points) {
        most = std::max({most, point.rate, point.high.value_or(0)});
    }
    const double last = std::max(1.0, weeks(m_data.points.back().day));
    const AxisSteps x = round_steps(0, last, 6);
    const AxisSteps y = round_steps(0, std::max(most, 1e-3), 4);
    //: unit on an axis: weeks
    QValueAxis* across = add_axis(Qt::AlignBottom, x, tr("wk"), 0.015);
    use_axes(across, add_axis(Qt::AlignLeft, y, m_data.unit));

    for (const StripsHung& hung : m_data.strips) {
        const double from = std::clamp(weeks(hung.from), x.from, x.to);
        const double to = std::clamp(weeks(hung.to), x.from, x.to);
        if (to > from) {
            add_band(from, to, y.from, y.to);
            //: names the days in the chart when strips hung in the hive
            const QString words = tr("strips in");
            add_label({(from + to) / 2, y.to}, words, look.wanted_ink, LabelSide::below);
        }
    }
    if (m_data.threshold) {
        add_line({{x.from, *m_data.threshold}, {x.to, *m_data.threshold}}, look.near, 1.4, Qt::DashLine);
        //: names a line in the chart; %1 is a rate
        const QString words = tr("threshold %1").arg(rate(*m_data.threshold));
        add_label({x.to, *m_data.threshold}, words, look.near, LabelSide::end);
    }
    std::vector<QPointF> points;
    std::vector<QPointF> over;
    std::vector<QPointF> course;
    for (const MitePoint& point : m_data.points) {
        const QPointF at(weeks(point.day), point.rate);
        course.push_back(at);
        (m_data.threshold && point.rate > *m_data.threshold ? over : points).push_back(at);
        if (point.low && point.high) {
            add_line({{at.x(), *point.low}, {at.x(), *point.high}}, look.lighter, 1.6);
        }
    }
    add_line(course, look.measured, 1.6);
    add_marks(points, Mark::ring, look.ink);
    add_marks(over, Mark::square, look.past);
    const auto highest = std::max_element(over.begin(), over.end(), [](QPointF a, QPointF b) { return a.y() < b.y(); });
    if (highest != over.end()) {
        //: at the highest count of the chart; %1 is a rate
        add_label(*highest, tr("%1, over the threshold").arg(rate(highest->y())), look.past, LabelSide::above, true,
                  true);
    }
    for (std::size_t i = 0; i < m_data.points.size(); ++i) {
        add_stop(course[i], words_of(m_data.points[i]));
    }
}

ChartTable MiteChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("When"),
                    //: column of the table behind a chart; %1 is a unit
                    tr("Rate, %1").arg(m_data.unit),
                    //: column of the table behind a chart: the lower end of an interval
                    tr("From"),
                    //: column of the table behind a chart: the upper end of an interval
                    tr("To"),
                    //: column of the table behind a chart
                    tr("Count")};
    const auto number = [&](const std::optional<double>& value) {
        return value ? m_data.locale.toString(*value, 'f', 2) : QString();
    };
    for (const MitePoint& point : m_data.points) {
        table.rows.push_back({point.when, number(point.rate), number(point.low), number(point.high), point.words});
    }
    return table;
}

std::unique_ptr<Plot> MiteChart::twin() const {
    auto twin = std::make_unique<MiteChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
