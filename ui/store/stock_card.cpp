// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/stock_card.h"

#include "ui/charts/chart_frame.h"
#include "ui/charts/stock_by_month_chart.h"
#include "ui/parts/theme.h"
#include "ui/store/stock_months.h"

#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int least_chart_height = 92;
constexpr int most_chart_height = 168; ///< with the line beneath: the table is what the page is for

} // namespace

StockCard::StockCard(Desk& desk, QWidget* parent)
    : Card({}, parent), m_desk(desk), m_sentence(new Sentence), m_chart(new StockByMonthChart),
      m_frame(new ChartFrame(m_chart)) {
    setObjectName(QStringLiteral("store_stock"));
    m_sentence->setObjectName(QStringLiteral("store_sentence"));
    m_frame->setObjectName(QStringLiteral("store_chart"));
    m_frame->set_least_height(least_chart_height);
    m_frame->setMaximumHeight(scaled(most_chart_height));
    column()->addWidget(m_sentence);
    column()->addWidget(m_frame);
}

void StockCard::show_bags(const std::vector<work::BagLine>& in_stock) {
    say_figures(work::stock_figures(m_desk.workbook(), m_desk.today()));
    m_chart->set_data(stock_months(in_stock, m_desk.today(), m_desk.locale()));
    m_frame->refresh();
    m_frame->set_hint(rounds_words());
}

void StockCard::say_figures(const work::StockFigures& figures) {
    m_sentence->clear();
    //: In the sentence over the chart of stock; %n strips may be used
    m_sentence->add(tr("<b>%n</b> strip(s) ready", nullptr, figures.ready));
    if (figures.resting > 0) {
        //: In the sentence over the chart of stock; %n strips still rest
        m_sentence->add(State::resting, tr("%n resting", nullptr, figures.resting));
    }
    if (figures.near_limit > 0) {
        //: In the sentence over the chart of stock; %n strips are near their use-by day
        m_sentence->add(State::near, tr("%n near the limit", nullptr, figures.near_limit));
    }
    if (figures.past_limit > 0) {
        //: In the sentence over the chart of stock; %n strips are past their use-by day
        m_sentence->add(State::past, tr("%n past the limit", nullptr, figures.past_limit));
    }
}

QString StockCard::rounds_words() const {
    QStringList months;
    for (const work::StockMonth& month : work::stock_by_month(m_desk.workbook(), m_desk.today())) {
        if (month.wanted > 0) {
            const QString name =
                m_desk.locale().standaloneMonthName(static_cast<int>(month.month), QLocale::ShortFormat);
            //: What planned rounds need in one month; %1 a number of strips, %2 a month
            months << tr("%1 in %2").arg(m_desk.count(month.wanted), name);
        }
    }
    if (months.isEmpty()) {
        //: Under the chart of stock, while no round is planned
        return tr("By the month of the limit. No planned round wants strips.");
    }
    //: Under the chart of stock; %1 such as "104 in Sep, 230 in Mar"
    return tr("By the month of the limit. Planned rounds want %1.").arg(months.join(QStringLiteral(", ")));
}

} // namespace soakbook::ui
