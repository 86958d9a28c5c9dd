// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/mass_flow_chart.h"

#include "ui/charts/value_in_unit.h"

#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr double bar_from = 0.12; // of a row's height, from its foot
constexpr double bar_to = 0.52;

} // namespace

void MassFlowChart::set_data(const MassFlow& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString MassFlowChart::name() const {
    return tr("Where every kilogram went");
}

maths::Mass MassFlowChart::went_in() const {
    maths::Mass sum;
    for (const MassFlowPart& part : m_data.parts) {
        if (part.kind == FlowKind::went_in) {
            sum += part.mass;
        }
    }
    return sum;
}

bool MassFlowChart::is_empty() const {
    return went_in().count <= 0;
}

QString MassFlowChart::empty_sentence() const {
    //: instead of the chart of where a batch's liquid went
    return tr("Once the amounts are weighed in, this shows where each kilogram of the batch went.");
}

QString MassFlowChart::text(maths::Mass mass) const {
    return exchange::write_mass(mass, m_data.unit, m_data.locale, 2);
}

QString MassFlowChart::share_of(maths::Mass mass) const {
    const double part = static_cast<double>(mass.count) / static_cast<double>(went_in().count) * 100.0;
    return m_data.locale.toString(part, 'f', 1) + QStringLiteral("\u202F%");
}

void MassFlowChart::fill() {
    const ChartLook& look = worn();
    const double whole = in_unit(went_in(), m_data.unit);
    double most = whole;
    double least = 0;
    double place = 0;
    for (const MassFlowPart& part : m_data.parts) {
        place += part.kind == FlowKind::went_in ? 0 : in_unit(part.mass, m_data.unit);
        most = std::max(most, place);
        least = std::min(least, place);
    }
    const AxisSteps x = round_steps(least, most, 5);
    const auto rows = static_cast<double>(m_data.parts.size());
    QValueAxis* upright = add_axis(Qt::AlignLeft, {0, rows, rows}, QString());
    upright->setVisible(false);
    use_axes(add_axis(Qt::AlignBottom, x, exchange::sign(m_data.unit), 0.05), upright);
    // The line that the last part has to end at.
    add_line({{whole, 0}, {whole, rows}}, look.line, 1.2, Qt::DashLine);
    place = 0;
    double row = rows;
    for (const MassFlowPart& part : m_data.parts) {
        row -= 1;
        const double mass = in_unit(part.mass, m_data.unit);
        const double from = place;
        const double to = place + mass;
        if (part.kind != FlowKind::went_in) {
            place = to;
        }
        const bool there = part.kind == FlowKind::went_in || part.kind == FlowKind::still_here;
        const QColor colour = there                             ? look.pale
                              : part.kind == FlowKind::went_out ? look.measured
                              : part.beyond_limit               ? look.past
                                                                : look.near;
        // A hair of a bar still shows where it stands.
        const double thin = (x.to - x.from) * 0.002;
        const double left = std::min(from, to);
        const double right = std::max({from, to, left + thin});
        add_band({{left, row + bar_from}, {right, row + bar_from}}, {{left, row + bar_to}, {right, row + bar_to}},
                 colour);
        //: a bar of the chart: %1 is where the liquid went, %2 a mass, %3 a part in per cent
        const QString words = tr("%1: %2 (%3)").arg(part.name, text(part.mass), share_of(part.mass));
        add_label({left, row + bar_to}, words, part.beyond_limit ? look.past : look.ink, LabelSide::above,
                  part.beyond_limit);
        add_stop({(left + right) / 2, row + (bar_from + bar_to) / 2}, words);
    }
}

ChartTable MassFlowChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("Where it went"),
                    //: column of the table behind a chart; %1 is a unit
                    tr("Mass, %1").arg(exchange::sign(m_data.unit)),
                    //: column of the table behind a chart: part of all that went in
                    tr("Of all, %")};
    for (const MassFlowPart& part : m_data.parts) {
        table.rows.push_back({part.name, exchange::write_mass_number(part.mass, m_data.unit, m_data.locale, 2),
                              is_empty() ? QString() : share_of(part.mass)});
    }
    return table;
}

std::unique_ptr<Plot> MassFlowChart::twin() const {
    auto twin = std::make_unique<MassFlowChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
