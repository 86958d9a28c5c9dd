// SPDX-License-Identifier: GPL-3.0-or-later
// The strips on the shelf in one sentence, and by the month of their limit as a picture.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"

#include <vector>

namespace soakbook::ui {

class ChartFrame;
class StockByMonthChart;

class StockCard : public Card {
    Q_OBJECT

public:
    explicit StockCard(Desk& desk, QWidget* parent = nullptr);
    /// `in_stock`: the bags with strips in them.
    void show_bags(const std::vector<work::BagLine>& in_stock);

private:
    void say_figures(const work::StockFigures& figures);
    QString rounds_words() const;

    Desk& m_desk;
    Sentence* m_sentence;
    StockByMonthChart* m_chart;
    ChartFrame* m_frame;
};

} // namespace soakbook::ui
