// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_place.h"

#include "ui/charts/chart_frame.h"
#include "ui/charts/stock_band.h"
#include "ui/due/due_list.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/drafts.h"
#include "ui/parts/page_scroll.h"

#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace soakbook::ui {

namespace {

StockBand band_of(const work::YearAhead& year, const QLocale& locale) {
    StockBand band;
    band.locale = locale;
    for (std::size_t i = 0; i < year.months.size(); ++i) {
        const work::StockMonth& month = year.months[i];
        const int number = static_cast<int>(month.month);
        MonthInBand m{locale.standaloneMonthName(number, QLocale::ShortFormat),
                      locale.standaloneMonthName(number, QLocale::LongFormat) + QLatin1Char(' ') + QString::number(month.year),
                      i < year.in_date_after_rounds.size() ? year.in_date_after_rounds[i] : 0, i < year.reach_limit.size() ? year.reach_limit[i] : 0, {}};
        for (const work::YearRound& round : year.rounds) {
            const std::chrono::year_month_day on{round.on};
            if (static_cast<int>(on.year()) == month.year && static_cast<unsigned>(on.month()) == month.month)
                m.rounds.push_back({round.name, round.wanted, round.short_of});
        }
        band.months.push_back(std::move(m));
    }
    return band;
}

class DuePlace : public Place {
    Q_OBJECT

public:
    DuePlace(Desk& desk, MoreDue more) : m_desk(desk), m_more(std::move(more)) {
        auto* page = new PageScroll;
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(page);
        m_year = new Card;
        m_sentence = new Sentence;
        m_band = new StockBandChart;
        m_chart = new ChartFrame(m_band);
        m_year->column()->addWidget(m_sentence);
        m_year->column()->addWidget(m_chart);
        page->column()->addWidget(m_year);
        m_list = new DueList;
        page->column()->addWidget(m_list);
        m_empty = new EmptyPage(QStringLiteral("due"),
                                //: Head of an empty page.
                                tr("Nothing is due"),
                                //: On an empty page.
                                tr("Here stands what is to be done, over the whole workbook: tanks to read, strips to weigh, bags near their limit, "
                                   "strips to pull. It fills by itself from what you enter; a batch in the Shed is the beginning."),
                                //: A button on an empty page.
                                tr("Start a batch"));
        connect(m_empty, &EmptyPage::started, this, [this] { Q_EMIT wishes({PlaceName::shed, QStringLiteral("new_batch"), {}, {}}); });
        page->column()->addWidget(m_empty);
        page->column()->addStretch();
        connect(m_list, &DueList::wishes, this, &Place::wishes);
        // Hours pass without an entry: a stir or a weighing becomes due.
        auto* minute = new QTimer(this);
        minute->start(60'000);
        connect(minute, &QTimer::timeout, this, [this] {
            if (isVisible())
                refresh();
        });
    }

    PlaceName place() const override { return PlaceName::due; }
    //: A place in the navigation: what is to be done.
    QString name() const override { return tr("Due"); }
    void open(const Intent&) override { refresh(); }
    void take_focus() override { m_list->take_focus(); }

    void refresh() override {
        follow_drafts();
        std::vector<work::DueRow> rows = work::due(m_desk.workbook(), m_desk.now());
        for (work::DueRow& row : m_more ? m_more() : std::vector<work::DueRow>{})
            rows.push_back(std::move(row));
        std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.group < b.group; });
        m_list->set_rows(rows, m_desk);
        m_list->setVisible(!rows.empty());
        m_empty->setVisible(rows.empty());
        show_year();
    }

protected:
    void showEvent(QShowEvent* event) override {
        Place::showEvent(event);
        if (std::exchange(m_behind, false))
            QTimer::singleShot(0, this, &Place::refresh);
    }

private:
    /// A draft that is entered or thrown away elsewhere leaves the list.
    void follow_drafts() {
        Drafts* drafts = Drafts::of(m_desk);
        if (drafts == m_drafts)
            return;
        m_drafts = drafts;
        connect(drafts, &Drafts::changed, this, [this] {
            m_behind = !isVisible();
            if (isVisible())
                refresh();
        });
    }
    void show_year() {
        const work::DueFigures figures = work::due_figures(m_desk.workbook(), m_desk.today());
        const work::YearAhead year = work::year_ahead(m_desk.workbook(), m_desk.today());
        const bool any = figures.stock.ready + figures.stock.resting + figures.stock.past_limit + figures.hives_carrying > 0 || !year.rounds.empty();
        m_year->setVisible(any);
        if (!any)
            return;
        m_sentence->clear();
        //: Begins the sentence over the chart of the year.
        m_sentence->add(tr("<b>The year ahead</b>"));
        //: In a sentence of figures; %n strips are ready.
        m_sentence->add(tr("<b>%n</b> strip(s) ready", nullptr, figures.stock.ready));
        if (figures.stock.resting > 0)
            //: In a sentence of figures; %n strips still rest.
            m_sentence->add(State::resting, tr("<b>%n</b> resting", nullptr, figures.stock.resting));
        //: In a sentence of figures.
        m_sentence->add(tr("<b>%n</b> hive(s) carry strips", nullptr, figures.hives_carrying));
        if (figures.hives_past_pull > 0)
            //: In a sentence of figures; hives whose strips should be out.
            m_sentence->add(State::past, tr("<b>%n</b> past their pull date", nullptr, figures.hives_past_pull));
        if (figures.stock.near_limit > 0)
            //: In a sentence of figures; strips near their use-by day.
            m_sentence->add(State::near, tr("<b>%n</b> strip(s) near the limit", nullptr, figures.stock.near_limit));
        if (figures.stock.past_limit > 0)
            //: In a sentence of figures; strips past their use-by day.
            m_sentence->add(State::past, tr("<b>%n</b> strip(s) past the limit", nullptr, figures.stock.past_limit));
        //: Explains the chart of the year at its right end.
        m_sentence->set_remark(tr("above: strips in date, after each round; below: what rounds want"));
        m_band->set_data(band_of(year, m_desk.locale()));
        m_chart->refresh();
    }

    Desk& m_desk;
    MoreDue m_more;
    Drafts* m_drafts = nullptr;
    bool m_behind = false; ///< a draft came or went while another place was shown
    Card* m_year;
    Sentence* m_sentence;
    StockBandChart* m_band;
    ChartFrame* m_chart;
    DueList* m_list;
    EmptyPage* m_empty;
};

} // namespace

Place* make_due_place(Desk& desk, MoreDue more) { return new DuePlace(desk, std::move(more)); }

} // namespace soakbook::ui

#include "due_place.moc"
