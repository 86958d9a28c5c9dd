// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_columns.h"

#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

using Bag = work::BagLine;

struct BagColumnsWords {
    Q_DECLARE_TR_FUNCTIONS(BagColumns)
};

using DayOf = std::optional<maths::Day> Bag::*;

/// A column of days, with the year or without.
Column<Bag> day_column(const Desk& desk, const QString& header, DayOf day, bool with_year) {
    return {.header = header,
            .text =
                [&desk, day, with_year](const Bag& bag) {
                    if (!(bag.*day))
                        return QString();
                    return with_year ? desk.day(*(bag.*day)) : desk.day_short(*(bag.*day));
                },
            .sort_key = [day](const Bag& bag) { return bag.*day ? QVariant(to_qdate(*(bag.*day))) : QVariant(); },
            .tip = [&desk, day](const Bag& bag) { return bag.*day ? desk.day(*(bag.*day)) : QString(); }};
}

Column<Bag> days_left_column(const Desk& desk) {
    //: Header of a column: days until a bag's limit
    return {.header = BagColumnsWords::tr("Days"),
            .text =
                [&desk](const Bag& bag) {
                    return bag.days_left && bag.left > 0 ? with_sign(desk, *bag.days_left).remove(QLatin1Char('+'))
                                                         : QString();
                },
            .align = Qt::AlignRight,
            .sort_key = [](const Bag& bag) { return bag.days_left ? QVariant(*bag.days_left) : QVariant(); },
            .tip = [](const Bag& bag) { return days_left_words(bag); }};
}

Column<Bag> opened_column(const Desk& desk) {
    //: Header of a column: the day a bag was opened
    Column<Bag> column = day_column(desk, BagColumnsWords::tr("Opened"), &Bag::opened_on, false);
    column.state = [](const Bag& bag) { return bag.opened_too_long ? std::optional(State::near) : std::nullopt; };
    column.tip = [](const Bag& bag) {
        //: Tool tip of the day a bag was opened
        return bag.opened_too_long ? BagColumnsWords::tr("Opened longer ago than you allow in Set-up") : QString();
    };
    return column;
}

} // namespace

std::vector<Column<Bag>> bag_columns(const Desk& desk) {
    std::vector<Column<Bag>> columns;
    //: Header of a column: the code of a bag
    columns.push_back({.header = BagColumnsWords::tr("Bag"),
                       .text = [](const Bag& bag) { return bag.code; },
                       .type = CellType::code});
    //: Header of a column: resting, ready, near the limit
    columns.push_back({.header = BagColumnsWords::tr("State"),
                       .text = [](const Bag& bag) { return bag_state_word(bag.state); },
                       .sort_key = [](const Bag& bag) { return QVariant(static_cast<int>(bag.state)); },
                       .state = [](const Bag& bag) { return bag_shape(bag.state); },
                       .tip = [](const Bag& bag) { return bag.void_reason; }});
    //: Header of a column: strips that are left in a bag, of those that were packed
    columns.push_back({.header = BagColumnsWords::tr("Strips left"),
                       .text = [&desk](const Bag& bag) { return strips_words(desk, bag); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong,
                       .sort_key = [](const Bag& bag) { return bag.packed ? QVariant(bag.left) : QVariant(); }});
    //: Header of a column: the last day a bag may be used
    columns.push_back(day_column(desk, BagColumnsWords::tr("Use by"), &Bag::use_by, true));
    columns.push_back(days_left_column(desk));
    //: Header of a column: where a bag stands
    columns.push_back({.header = BagColumnsWords::tr("Stands"),
                       .text = [](const Bag& bag) { return bag.stands; },
                       .type = CellType::soft,
                       .tip = [](const Bag& bag) { return bag.stands; }});
    //: Header of a column: whether a label was printed
    columns.push_back(
        {.header = BagColumnsWords::tr("Label"),
         .text =
             [](const Bag& bag) { return bag.state == work::BagState::made_void ? QString() : label_word(bag.label); },
         .state =
             [](const Bag& bag) {
                 return bag.state == work::BagState::made_void ? std::nullopt : label_shape(bag.label);
             }});
    //: Header of a column: the code of a batch
    columns.push_back({.header = BagColumnsWords::tr("Batch"),
                       .text = [](const Bag& bag) { return bag.batch_code; },
                       .type = CellType::code});
    //: Header of a column: the day a bag was sealed
    columns.push_back(day_column(desk, BagColumnsWords::tr("Sealed"), &Bag::sealed_on, true));
    //: Header of a column: the day on which a bag's rest ends
    columns.push_back(day_column(desk, BagColumnsWords::tr("Rests until"), &Bag::rest_until, false));
    columns.push_back(opened_column(desk));
    return columns;
}

std::vector<int> bag_column_widths() {
    return {70, 148, 86, 108, 56, 88, 122, 70, 108, 96, 96};
}
int bag_stretched_column() {
    return 5;
}

} // namespace soakbook::ui
