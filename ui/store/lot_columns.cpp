// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/lot_columns.h"

#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

using Lot = work::LotLine;

struct LotColumnsWords {
    Q_DECLARE_TR_FUNCTIONS(LotColumns)
};

QVariant sortable(const std::optional<maths::Day>& day) {
    return day ? QVariant(to_qdate(*day)) : QVariant();
}

/// Sorts an amount within its material, so that kilograms do not stand among pieces.
QVariant amount_key(const Lot& lot, qint64 amount) {
    constexpr double larger_than_any = 1e12;
    return static_cast<double>(static_cast<int>(lot.entry.material)) * larger_than_any + static_cast<double>(amount);
}

/// "4 of 25 kg"; empty where the size of a container is not known.
QString containers(const Desk& desk, const Lot& lot) {
    const auto& entry = lot.entry;
    if (!entry.container_amount || *entry.container_amount <= 0 || !entry.amount)
        return {};
    const QString size = lot_amount(desk, entry.material, *entry.container_amount);
    if (*entry.amount % *entry.container_amount != 0) {
        //: How large the containers of a delivery are; %1 what one holds
        return LotColumnsWords::tr("of %1").arg(size);
    }
    //: Containers of a delivery; %1 their number, %2 what one holds
    return LotColumnsWords::tr("%1 of %2").arg(desk.count(*entry.amount / *entry.container_amount), size);
}

/// The content of acid as its label says it.
QString content(const Desk& desk, const Lot& lot) {
    if (lot.entry.material != work::MaterialKind::acid || !lot.entry.assay)
        return {};
    const QString percent = desk.percent(*lot.entry.assay, 2);
    //: Content of acid that is counted without its water of crystals; %1 a percentage
    return lot.entry.acid_form == work::FormOfAcid::anhydrous ? LotColumnsWords::tr("%1 anhydrous").arg(percent)
                                                              : percent;
}

Column<Lot> best_before_column(const Desk& desk) {
    //: Header of a column: the day until which a material keeps
    return {
        .header = LotColumnsWords::tr("Best before"),
        .text =
            [&desk](const Lot& lot) { return lot.entry.best_before ? desk.day(*lot.entry.best_before) : QString(); },
        .sort_key = [](const Lot& lot) { return sortable(lot.entry.best_before); },
        .state =
            [](const Lot& lot) { return lot.past_date && !lot.finished ? std::optional(State::past) : std::nullopt; }};
}

Column<Lot> left_column(const Desk& desk) {
    //: Header of a column: what is left of a delivery
    return {.header = LotColumnsWords::tr("Left"),
            .text =
                [&desk](const Lot& lot) {
                    //: In place of what is left of a delivery that is used up
                    return lot.finished ? LotColumnsWords::tr("finished")
                                        : lot_amount(desk, lot.entry.material, lot.left);
                },
            .align = Qt::AlignRight,
            .type = CellType::strong,
            .sort_key = [](const Lot& lot) { return amount_key(lot, lot.left); },
            .state = [](const Lot& lot) { return lot.finished ? std::optional(State::gone) : std::nullopt; }};
}

} // namespace

std::vector<Column<Lot>> lot_columns(const Desk& desk) {
    std::vector<Column<Lot>> columns;
    //: Header of a column: acid, glycerine, strips or bags
    columns.push_back({.header = LotColumnsWords::tr("Material"),
                       .text = [](const Lot& lot) { return material_word(lot.entry.material); },
                       .sort_key = [](const Lot& lot) { return QVariant(static_cast<int>(lot.entry.material)); }});
    //: Header of a column: number or name of a delivery
    columns.push_back({.header = LotColumnsWords::tr("Lot"),
                       .text = [](const Lot& lot) { return lot.entry.name; },
                       .type = CellType::strong,
                       .tip = [](const Lot& lot) { return lot.entry.name; }});
    columns.push_back(left_column(desk));
    //: Header of a column: the amount that came with a delivery
    columns.push_back(
        {.header = LotColumnsWords::tr("Came"),
         .text = [&desk](const Lot& lot) { return lot_amount(desk, lot.entry.material, lot.entry.amount.value_or(0)); },
         .align = Qt::AlignRight,
         .sort_key = [](const Lot& lot) { return amount_key(lot, lot.entry.amount.value_or(0)); }});
    //: Header of a column: number and size of the containers of a delivery
    columns.push_back({.header = LotColumnsWords::tr("Containers"),
                       .text = [&desk](const Lot& lot) { return containers(desk, lot); }});
    //: Header of a column: how much acid is in the acid, as its label says
    columns.push_back({.header = LotColumnsWords::tr("Content"),
                       .text = [&desk](const Lot& lot) { return content(desk, lot); },
                       .align = Qt::AlignRight});
    //: Header of a column: the day a delivery came
    columns.push_back(
        {.header = LotColumnsWords::tr("Received"),
         .text =
             [&desk](const Lot& lot) { return lot.entry.received_on ? desk.day(*lot.entry.received_on) : QString(); },
         .sort_key = [](const Lot& lot) { return sortable(lot.entry.received_on); }});
    columns.push_back(best_before_column(desk));
    //: Header of a column: who sold a delivery
    columns.push_back({.header = LotColumnsWords::tr("From"),
                       .text = [](const Lot& lot) { return lot.entry.supplier; },
                       .type = CellType::soft,
                       .tip = [](const Lot& lot) { return lot.entry.supplier; }});
    return columns;
}

std::vector<int> lot_column_widths() {
    return {110, 120, 100, 90, 120, 100, 106, 122, 110};
}
int lot_stretched_column() {
    return 1;
}

} // namespace soakbook::ui
