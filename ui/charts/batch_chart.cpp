// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/batch_chart.h"

#include "ui/charts/value_in_unit.h"

#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr std::size_t most_named = 12; // more codes than that run into each other

} // namespace

void BatchChart::set_data(const BatchSeries& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart; %1 is a figure, "acid in a strip"
QString BatchChart::name() const {
    return tr("Batch beside batch: %1").arg(m_data.figure_name);
}

bool BatchChart::is_empty() const {
    return m_data.batches.size() < 2;
}

QString BatchChart::empty_sentence() const {
    //: instead of the chart of batches
    return tr("From the second batch of this kind of strip on, the batches stand here beside each other.");
}

QString BatchChart::text(maths::Mass mass) const {
    return exchange::write_mass(mass, m_data.unit, m_data.locale, 2);
}

QString BatchChart::standing_of(const BatchPoint& batch) const {
    if (batch.outside) {
        //: how a batch stands on the chart of batches
        return tr("outside the limits");
    }
    if (batch.in_run) {
        //: how a batch stands on the chart of batches
        return tr("eight in a row on one side");
    }
    //: how a batch stands on the chart of batches
    return m_data.mean ? tr("as usual") : QString();
}

void BatchChart::add_limits(double from, double to) {
    if (!m_data.mean || !m_data.lower || !m_data.upper) {
        return;
    }
    const ChartLook& look = worn();
    const double mean = in_unit(*m_data.mean, m_data.unit);
    const double lower = in_unit(*m_data.lower, m_data.unit);
    const double upper = in_unit(*m_data.upper, m_data.unit);
    add_band(from, to, lower, upper);
    add_line({{from, mean}, {to, mean}}, look.soft, 1.2, Qt::DashLine);
    //: names the middle line of the chart of batches; %1 is a mass
    const QString mean_words = tr("mean %1").arg(text(*m_data.mean));
    //: names a limit of the chart of batches; %1 is a mass
    const QString limit_words = tr("limit %1");
    add_label({to, mean}, mean_words, look.soft, LabelSide::end);
    add_label({to, upper}, limit_words.arg(text(*m_data.upper)), look.wanted_ink, LabelSide::end);
    add_label({to, lower}, limit_words.arg(text(*m_data.lower)), look.wanted_ink, LabelSide::end);
}

void BatchChart::fill() {
    const ChartLook& look = worn();
    std::vector<double> heights;
    for (const BatchPoint& batch : m_data.batches) {
        heights.push_back(in_unit(batch.figure, m_data.unit));
    }
    for (const auto& line : {m_data.lower, m_data.upper}) {
        if (line) {
            heights.push_back(in_unit(*line, m_data.unit));
        }
    }
    const auto [least, most] = std::minmax_element(heights.begin(), heights.end());
    const auto last = static_cast<double>(m_data.batches.size() - 1);
    QValueAxis* along = add_axis(Qt::AlignBottom, {-0.5, last + 0.5, last + 1}, QString());
    along->setVisible(false);
    use_axes(along, add_axis(Qt::AlignLeft, round_steps(*least, *most, 4), exchange::sign(m_data.unit)));
    add_limits(-0.5, last + 0.5);
    std::vector<QPointF> course;
    for (std::size_t i = 0; i < m_data.batches.size(); ++i) {
        course.emplace_back(static_cast<double>(i), in_unit(m_data.batches[i].figure, m_data.unit));
    }
    add_line(course, look.measured, 1.6);
    for (std::size_t i = 0; i < m_data.batches.size(); ++i) {
        const BatchPoint& batch = m_data.batches[i];
        const QPointF at = course[i];
        add_marks({at}, batch.outside ? Mark::square : Mark::ring, batch.outside ? look.past : look.ink);
        const bool named = batch.looked_at || m_data.batches.size() <= most_named;
        if (named) {
            add_label({at.x(), 0}, batch.code, batch.looked_at ? look.ink : look.soft, LabelSide::foot,
                      batch.looked_at);
        }
        QStringList said{batch.code, batch.day, text(batch.figure), standing_of(batch)};
        said.removeAll(QString());
        add_stop(at, said.join(QStringLiteral(", ")));
    }
}

ChartTable BatchChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("Batch"),
                    //: column of the table behind a chart
                    tr("Day"),
                    //: column of the table behind a chart; %1 is a figure, %2 a unit
                    tr("%1, %2").arg(m_data.figure_name, exchange::sign(m_data.unit)),
                    //: column of the table behind a chart: as usual, outside the limits
                    tr("Stands")};
    for (const BatchPoint& batch : m_data.batches) {
        table.rows.push_back({batch.code, batch.day,
                              exchange::write_mass_number(batch.figure, m_data.unit, m_data.locale, 2),
                              standing_of(batch)});
    }
    return table;
}

std::unique_ptr<Plot> BatchChart::twin() const {
    auto twin = std::make_unique<BatchChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
