// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/stock_months.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <map>

namespace soakbook::ui {

namespace {

using std::chrono::months;
using std::chrono::year_month;
using std::chrono::year_month_day;

struct StockMonthsWords {
    Q_DECLARE_TR_FUNCTIONS(StockMonths)
};

constexpr months most_back{3};
constexpr months least_ahead{11};
constexpr months most_ahead{20};

year_month month_of(maths::Day day) {
    const year_month_day date{day};
    return date.year() / date.month();
}

MonthState state_of(const work::BagLine& bag) {
    if (bag.state == work::BagState::past_limit)
        return MonthState::past;
    return bag.state == work::BagState::near_limit ? MonthState::near : MonthState::in_date;
}

struct Heap {
    int strips = 0;
    int bags = 0;
};
/// What lies in one month: past, near, in date.
using Month = std::array<Heap, 3>;

QString month_words(year_month month, const QLocale& locale) {
    const int number = static_cast<int>(static_cast<unsigned>(month.month()));
    const QString name = locale.standaloneMonthName(number, QLocale::LongFormat);
    return name + QLatin1Char(' ') + QString::number(static_cast<int>(month.year()));
}

void add_bars(StockByMonth& shown, const Month& month, const QString& name, const QString& words) {
    constexpr std::array states{MonthState::past, MonthState::near, MonthState::in_date};
    bool any = false;
    for (std::size_t i = 0; i < states.size(); ++i) {
        if (month[i].bags == 0)
            continue;
        //: A second bar of the same month; %1 a month with its year
        shown.months.push_back({name, any ? StockMonthsWords::tr("later in %1").arg(words) : words, month[i].strips,
                                states[i], month[i].bags});
        any = true;
    }
    if (!any)
        shown.months.push_back({name, words, 0, MonthState::in_date, 0});
}

} // namespace

StockByMonth stock_months(const std::vector<work::BagLine>& bags, maths::Day today, const QLocale& locale) {
    const year_month now = month_of(today);
    std::map<year_month, Month> by_month;
    Month before{};
    for (const work::BagLine& bag : bags) {
        if (!bag.use_by || bag.left <= 0)
            continue;
        const year_month limit = std::min(month_of(*bag.use_by), now + most_ahead);
        Month& month = limit < now - most_back ? before : by_month[limit];
        Heap& heap = month[static_cast<std::size_t>(state_of(bag))];
        heap.strips += bag.left;
        ++heap.bags;
    }
    StockByMonth shown;
    shown.locale = locale;
    if (by_month.empty() && before[0].bags == 0)
        return shown;
    const year_month first = by_month.empty() ? now : std::min(now, by_month.begin()->first);
    const year_month last =
        by_month.empty() ? now + least_ahead : std::max(now + least_ahead, by_month.rbegin()->first);
    if (before[0].bags > 0) {
        //: Name of a bar of the chart of stock: all months before those shown
        add_bars(shown, before, StockMonthsWords::tr("earlier"),
                 StockMonthsWords::tr("before %1").arg(month_words(first, locale)));
    }
    for (year_month month = first; month <= last; month += months{1}) {
        const int number = static_cast<int>(static_cast<unsigned>(month.month()));
        add_bars(shown, by_month[month], locale.standaloneMonthName(number, QLocale::ShortFormat),
                 month_words(month, locale));
    }
    return shown;
}

} // namespace soakbook::ui
