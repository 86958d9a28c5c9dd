// SPDX-License-Identifier: GPL-3.0-or-later
// Bags on the shelf, gathered by the month of their limit, as the chart shows them.
#pragma once

#include "core/work/store_view.h"
#include "ui/charts/stock_by_month_chart.h"

#include <vector>

namespace soakbook::ui {

/// The months from the first limit, but none more than three months back, to the last, a year ahead at least. What is
/// older stands in one bar before them. A month that holds both strips past their limit and others has two bars.
StockByMonth stock_months(const std::vector<work::BagLine>& bags, maths::Day today, const QLocale& locale);

} // namespace soakbook::ui
