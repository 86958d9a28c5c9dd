// SPDX-License-Identifier: GPL-3.0-or-later
// The deliveries of acid, glycerine, dry strips and bags, with what is left of each.
#pragma once

#include "core/work/materials.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/store/store_section.h"

#include <QVariant>

class QPushButton;

namespace soakbook::ui {

class Card;
class EmptyPage;
class FilterRow;
class ShelfTable;
class Sentence;

class LotsPage : public StoreSection {
    Q_OBJECT

public:
    explicit LotsPage(Desk& desk);
    QString heading() const override;
    void refresh() override;
    void take_focus() override;
    void show_lot(qint64 lot);
    /// Opens the form of a delivery; `material` may name one already.
    void enter_delivery(const QVariant& material = {});

private:
    void make_content();
    QWidget* make_buttons(Card* card);
    void show_rows();
    void settle_buttons();
    void say_left(const std::vector<work::LotLine>& open);
    void correct();
    const work::LotLine* chosen() const;

    Desk& m_desk;
    EmptyPage* m_empty = nullptr;
    QWidget* m_content = nullptr;
    Sentence* m_sentence = nullptr;
    FilterRow* m_filter = nullptr;
    ShelfTable* m_table = nullptr;
    RowsModel<work::LotLine>* m_rows = nullptr;
    QPushButton* m_correct = nullptr;
    QPushButton* m_recount = nullptr;
    QPushButton* m_finish = nullptr;
    QPushButton* m_history = nullptr;
};

} // namespace soakbook::ui
