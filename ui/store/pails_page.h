// SPDX-License-Identifier: GPL-3.0-or-later
// The pails of leftover liquid: what they hold together, the table, and the card of what is chosen.
#pragma once

#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/store/store_section.h"

#include <vector>

namespace soakbook::ui {

class EmptyPage;
class FilterRow;
class PageWithCard;
class PailCard;
class ShelfTable;
class Sentence;

class PailsPage : public StoreSection {
    Q_OBJECT

public:
    explicit PailsPage(Desk& desk);
    QString heading() const override;
    void refresh() override;
    void take_focus() override;
    /// Chooses these, and shows all pails where the filter would hide one. Gives back whether one is there.
    bool show_pails(const std::vector<qint64>& pails);
    PailCard* card() const { return m_card; }

private:
    QWidget* make_sentence_card();
    QWidget* make_table_card();
    void say_figures(const std::vector<work::PailLine>& standing);
    void show_rows();
    void show_chosen();

    Desk& m_desk;
    EmptyPage* m_empty;
    PageWithCard* m_content;
    Sentence* m_sentence = nullptr;
    FilterRow* m_filter = nullptr;
    ShelfTable* m_table = nullptr;
    RowsModel<work::PailLine>* m_rows = nullptr;
    PailCard* m_card;
};

} // namespace soakbook::ui
