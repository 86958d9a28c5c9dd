// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/stock_band.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QStackedBarSeries>
#include <QValueAxis>

#include <algorithm>

namespace soakbook::ui {

namespace {

int wanted_in(const MonthInBand& month) {
    int wanted = 0;
    for (const RoundInBand& round : month.rounds) {
        wanted += round.wanted;
    }
    return wanted;
}

} // namespace

void StockBandChart::set_data(const StockBand& shown) {
    m_data = shown;
    redraw();
}

//: name of a chart
QString StockBandChart::name() const { return tr("The year ahead"); }

int StockBandChart::most_above() const {
    int most = 0;
    for (const MonthInBand& month : m_data.months) {
        most = std::max(most, month.in_date);
    }
    return most;
}

int StockBandChart::most_below() const {
    int most = 0;
    for (const MonthInBand& month : m_data.months) {
        most = std::max(most, wanted_in(month));
    }
    return most;
}

bool StockBandChart::is_empty() const { return most_above() == 0 && most_below() == 0; }

QString StockBandChart::empty_sentence() const {
    //: instead of the band of the year ahead
    return tr("The year ahead stands here once there are bags on the shelf or a round is planned: what is in date, and what is wanted.");
}

QString StockBandChart::words_of(const MonthInBand& month) const {
    //: one month in words; %1 is a month with its year
    QString words = tr("%1: %n strips in date", nullptr, month.in_date).arg(month.words);
    if (month.reach_limit > 0) {
        //: goes on from one month in words
        words += QStringLiteral(", ") + tr("%n reach their limit", nullptr, month.reach_limit);
    }
    for (const RoundInBand& round : month.rounds) {
        //: goes on from one month in words; %1 is a round's name
        words += QStringLiteral(", ") + tr("%1 needs %n", nullptr, round.wanted).arg(round.name);
        if (round.short_of > 0) {
            //: goes on from what a round needs
            words += QStringLiteral(", ") + tr("%n short", nullptr, round.short_of);
        }
    }
    return words;
}

void StockBandChart::label_round(double x, const MonthInBand& month, double scale) {
    // Labels stand beside the bar where the year still has room, else before it; each gives way downward to the one before.
    const ChartLook& look = worn();
    const bool late = x > static_cast<double>(m_data.months.size()) - 3.5;
    const LabelSide side = late ? LabelSide::left : LabelSide::right;
    const double at_x = late ? x - 0.48 : x + 0.46;
    const auto say = [&](const QString& text, const QColor& ink) {
        add_label({at_x, -scale * 0.12}, text, ink, side);
    };
    for (const RoundInBand& round : month.rounds) {
        //: beside a bar; %1 is a round's name, %2 a number of strips
        say(tr("%1 needs %2").arg(round.name, m_data.locale.toString(round.wanted)), look.ink);
        if (round.short_of > 0) {
            //: beside a bar; %1 is a number of strips
            say(tr("%1 short").arg(m_data.locale.toString(round.short_of)), look.past);
        }
    }
}

void StockBandChart::fill() {
    const ChartLook& look = worn();
    auto* safe = new QBarSet(QString());
    auto* reach = new QBarSet(QString());
    auto* wanted = new QBarSet(QString());
    safe->setBrush(look.pale);
    safe->setPen(Qt::NoPen);
    reach->setBrush(look.pale);
    reach->setPen(QPen(look.near, 1.8, Qt::DashLine));
    wanted->setBrush(look.measured);
    wanted->setPen(Qt::NoPen);
    QStringList names;
    for (const MonthInBand& month : m_data.months) {
        const int dashed = std::min(month.reach_limit, month.in_date);
        safe->append(month.in_date - dashed);
        reach->append(dashed);
        wanted->append(-wanted_in(month));
        names.append(month.words);
    }
    auto* bars = new QStackedBarSeries;
    bars->append(safe);
    bars->append(reach);
    bars->append(wanted);
    bars->setBarWidth(0.95);
    auto* months = new QBarCategoryAxis;
    months->append(names);
    months->setVisible(false);
    chart()->addAxis(months, Qt::AlignBottom);
    const double above = std::max(1, most_above()) * 1.3;
    const double below = std::max(std::max(1, most_below()) * 1.06, above * 0.5);
    const double whole = above + below;
    QValueAxis* count = add_axis(Qt::AlignLeft, {-below, above, whole}, QString());
    count->setVisible(false);
    add_series(bars, months, count);
    use_axes(months, count);
    add_base_line(look.soft);
    for (std::size_t i = 0; i < m_data.months.size(); ++i) {
        const MonthInBand& month = m_data.months[i];
        const auto x = static_cast<double>(i);
        add_label({x, 0}, month.name, look.soft, LabelSide::foot);
        if (month.in_date > 0) {
            add_label({x, static_cast<double>(month.in_date)}, m_data.locale.toString(month.in_date), look.ink, LabelSide::above);
        }
        if (month.reach_limit > 0) {
            //: within a bar; %1 is a number of strips that reach their limit in that month
            const QString words = tr("%1\nto limit").arg(m_data.locale.toString(month.reach_limit));
            add_label({x, static_cast<double>(std::max(0, month.in_date - month.reach_limit))}, words, look.near, LabelSide::below);
        }
        add_stop({x, static_cast<double>(month.in_date)}, words_of(month));
    }
    // Last, since these give way to all others.
    for (std::size_t i = 0; i < m_data.months.size(); ++i) {
        label_round(static_cast<double>(i), m_data.months[i], below);
    }
}

ChartTable StockBandChart::table() const {
    ChartTable table;
    //: column of the table behind a chart
    table.header = {tr("Month"),
                    //: column of the table behind a chart
                    tr("Strips in date"),
                    //: column of the table behind a chart
                    tr("Reach their limit"),
                    //: column of the table behind a chart
                    tr("Rounds"),
                    //: column of the table behind a chart: strips that rounds want
                    tr("Wanted"),
                    //: column of the table behind a chart
                    tr("Short")};
    for (const MonthInBand& month : m_data.months) {
        QStringList names;
        int short_of = 0;
        for (const RoundInBand& round : month.rounds) {
            names.append(round.name);
            short_of += round.short_of;
        }
        table.rows.push_back({month.words, m_data.locale.toString(month.in_date), m_data.locale.toString(month.reach_limit),
                              names.join(QStringLiteral(", ")), m_data.locale.toString(wanted_in(month)), m_data.locale.toString(short_of)});
    }
    return table;
}

std::unique_ptr<Plot> StockBandChart::twin() const {
    auto twin = std::make_unique<StockBandChart>();
    twin->m_data = m_data;
    return twin;
}

} // namespace soakbook::ui
