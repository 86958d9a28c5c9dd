// SPDX-License-Identifier: GPL-3.0-or-later
// The bags in order of their limit: figures, months, filters, the table, and the card of what is chosen.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/store/store_section.h"

#include <vector>

namespace soakbook::ui {

class BagCard;
class EmptyPage;
class FilterRow;
class PageWithCard;
class ShelfTable;
class StockCard;

class BagsPage : public StoreSection {
    Q_OBJECT

public:
    explicit BagsPage(Desk& desk);
    QString heading() const override;
    void refresh() override;
    void take_focus() override;
    /// Chooses these, and shows all bags where the filter would hide one. Gives back whether one is there.
    bool show_bags(const std::vector<qint64>& bags);
    BagCard* card() const { return m_card; }

private:
    QWidget* make_table_card();
    void show_rows();
    void show_chosen();
    void count_rows(const std::vector<work::BagLine>& stock, int ever);
    work::BagFilter filter() const;

    Desk& m_desk;
    EmptyPage* m_empty;
    PageWithCard* m_content;
    StockCard* m_stock;
    FilterRow* m_filter;
    ShelfTable* m_table;
    RowsModel<work::BagLine>* m_rows;
    BagCard* m_card;
};

} // namespace soakbook::ui
