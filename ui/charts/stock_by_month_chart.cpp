// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/stock_by_month_chart.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QStackedBarSeries>
#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

void StockByMonthChart::set_data(const StockByMonth& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString StockByMonthChart::name() const {
    return tr("Strips by month of their limit");
}

bool StockByMonthChart::is_empty() const {
    return std::all_of(m_data.months.begin(), m_data.months.end(),
                       [](const MonthOfStock& month) { return month.strips == 0; });
}

QString StockByMonthChart::empty_sentence() const {
    //: instead of the chart of stock
    return tr("Once bags are sealed, their strips stand here by the month in which they must be used.");
}

QString StockByMonthChart::state_words(MonthState state) const {
    switch (state) {
    case MonthState::past:
        //: how the strips of a month stand
        return tr("past the limit");
    case MonthState::near:
        //: how the strips of a month stand
        return tr("near the limit");
    case MonthState::in_date:
        break;
    }
    //: how the strips of a month stand
    return tr("in date");
}

void StockByMonthChart::fill() {
    const ChartLook& look = worn();
    auto* past = new QBarSet(state_words(MonthState::past));
    auto* near = new QBarSet(state_words(MonthState::near));
    auto* in_date = new QBarSet(state_words(MonthState::in_date));
    past->setBrush(look.on_paper ? QBrush(look.past, Qt::DiagCrossPattern) : QBrush(look.past));
    past->setPen(QPen(look.past, 1));
    near->setBrush(look.pale);
    near->setPen(QPen(look.near, 1.6, Qt::DashLine));
    in_date->setBrush(look.pale);
    in_date->setPen(Qt::NoPen);
    QStringList names;
    int most = 0;
    for (const MonthOfStock& month : m_data.months) {
        past->append(month.state == MonthState::past ? month.strips : 0);
        near->append(month.state == MonthState::near ? month.strips : 0);
        in_date->append(month.state == MonthState::in_date ? month.strips : 0);
        names.append(month.words); // categories must differ; the short names are set below
        most = std::max(most, month.strips);
    }
    auto* bars = new QStackedBarSeries;
    bars->append(past);
    bars->append(near);
    bars->append(in_date);
    bars->setBarWidth(0.9);
    auto* months = new QBarCategoryAxis;
    months->append(names);
    months->setVisible(false); // their names are labels, so that a state's word can stand beneath
    chart()->addAxis(months, Qt::AlignBottom);
    QValueAxis* count = add_axis(Qt::AlignLeft, round_steps(0, most * 1.18, 4), QString());
    count->setVisible(false);
    add_series(bars, months, count);
    add_base_line(look.soft);
    for (std::size_t i = 0; i < m_data.months.size(); ++i) {
        const MonthOfStock& month = m_data.months[i];
        const auto x = static_cast<double>(i);
        add_label({x, 0}, month.name, look.soft, LabelSide::foot);
        if (month.strips > 0) {
            const QColor ink = month.state == MonthState::past   ? look.past
                               : month.state == MonthState::near ? look.near
                                                                 : look.ink;
            const QString figure = m_data.locale.toString(month.strips);
            add_label({x, static_cast<double>(month.strips)}, figure, ink, LabelSide::above);
            if (month.state != MonthState::in_date) {
                //: under a bar of the chart: how its strips stand
                const QString past_words = tr("past");
                //: under a bar of the chart: how its strips stand
                const QString near_words = tr("near");
                add_label({x, 0}, month.state == MonthState::past ? past_words : near_words, ink,
                          LabelSide::second_foot, true);
            }
        }
        if (month.strips == 0) {
            //: one month in words; %1 is a month with its year
            const QString none = tr("%1: no strips").arg(month.words);
            add_stop({x, 0}, none);
            continue;
        }
        //: one bar in words; %1 is a month with its year, %2 "past the limit", "near the limit" or "in date"
        const QString words = tr("%1: %n strips, %2", nullptr, month.strips).arg(month.words, state_words(month.state));
        add_stop({x, static_cast<double>(month.strips)}, words);
    }
}

ChartTable StockByMonthChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("Limit in"),
                    //: column of the table behind a chart
                    tr("Strips"),
                    //: column of the table behind a chart
                    tr("Bags"),
                    //: column of the table behind a chart: in date, near the limit, past the limit
                    tr("State")};
    for (const MonthOfStock& month : m_data.months) {
        table.rows.push_back({month.words, m_data.locale.toString(month.strips), m_data.locale.toString(month.bags),
                              month.strips > 0 ? state_words(month.state) : QString()});
    }
    return table;
}

std::unique_ptr<Plot> StockByMonthChart::twin() const {
    auto twin = std::make_unique<StockByMonthChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
