// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/pail_columns.h"

#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

using Pail = work::PailLine;

struct PailColumnsWords {
    Q_DECLARE_TR_FUNCTIONS(PailColumns)
};

constexpr int scale_decimals = 2;

Column<Pail> day_column(const Desk& desk, const QString& header, maths::Day Pail::*day) {
    return {.header = header,
            .text = [&desk, day](const Pail& pail) { return desk.day(pail.*day); },
            .sort_key = [day](const Pail& pail) { return QVariant(to_qdate(pail.*day)); }};
}

Column<Pail> mass_column(const Desk& desk) {
    //: Header of a column: the mass in a pail; %1 the sign of the unit
    return {.header = PailColumnsWords::tr("Mass, %1").arg(exchange::sign(desk.preferences().large_mass)),
            .text =
                [&desk](const Pail& pail) {
                    return exchange::write_mass_number(pail.mass, desk.preferences().large_mass, desk.locale(),
                                                       scale_decimals);
                },
            .align = Qt::AlignRight,
            .type = CellType::strong,
            .sort_key = [](const Pail& pail) { return QVariant::fromValue<qlonglong>(pail.mass.count); }};
}

Column<Pail> waiting_column(const Desk& desk) {
    //: Header of a column: days that a pail has been waiting
    return {.header = PailColumnsWords::tr("Days"),
            .text = [&desk](const Pail& pail) { return desk.count(pail.days_waiting); },
            .align = Qt::AlignRight,
            .sort_key = [](const Pail& pail) { return QVariant(pail.days_waiting); },
            .state = [](const Pail& pail) { return pail.waits_too_long ? std::optional(State::near) : std::nullopt; },
            .tip =
                [](const Pail& pail) {
                    //: Tool tip of the days that a pail has been waiting
                    return pail.waits_too_long ? PailColumnsWords::tr("Waits longer than you allow in Set-up")
                                               : QString();
                }};
}

} // namespace

std::vector<Column<Pail>> pail_columns(const Desk& desk) {
    std::vector<Column<Pail>> columns;
    //: Header of a column: the code of a pail
    columns.push_back({.header = PailColumnsWords::tr("Pail"),
                       .text = [](const Pail& pail) { return pail.code; },
                       .type = CellType::code});
    //: Header of a column: whether a pail can go into a mix
    columns.push_back({.header = PailColumnsWords::tr("State"),
                       .text = [](const Pail& pail) { return pail_state_word(pail); },
                       .sort_key = [](const Pail& pail) { return QVariant(static_cast<int>(pail.state)); },
                       .state = [](const Pail& pail) { return std::optional(pail_shape(pail.state)); },
                       .tip = [](const Pail& pail) { return pail.reason; }});
    columns.push_back(mass_column(desk));
    //: Header of a column: the strength of the liquid in a pail
    columns.push_back({.header = PailColumnsWords::tr("Strength"),
                       .text = [&desk](const Pail& pail) { return strength_or_unknown(desk, pail.strength); },
                       .align = Qt::AlignRight,
                       .sort_key =
                           [](const Pail& pail) {
                               return pail.strength ? QVariant::fromValue<qlonglong>(pail.strength->count) : QVariant();
                           }});
    columns.push_back(waiting_column(desk));
    //: Header of a column: codes of pails that go into a mix only together with this one
    columns.push_back({.header = PailColumnsWords::tr("Goes in with"),
                       .text = [](const Pail& pail) { return pail.set.join(QStringLiteral(", ")); },
                       .type = CellType::code,
                       .tip = [](const Pail& pail) { return pail.set.join(QStringLiteral(", ")); }});
    //: Header of a column: where a pail stands
    columns.push_back({.header = PailColumnsWords::tr("Stands"),
                       .text = [](const Pail& pail) { return pail.stands; },
                       .type = CellType::soft,
                       .tip = [](const Pail& pail) { return pail.stands; }});
    //: Header of a column: the code of a batch
    columns.push_back({.header = PailColumnsWords::tr("Batch"),
                       .text = [](const Pail& pail) { return pail.batch_code; },
                       .type = CellType::code});
    //: Header of a column: the day a pail was sealed
    columns.push_back(day_column(desk, PailColumnsWords::tr("Sealed"), &Pail::sealed_on));
    //: Header of a column: the day on which the oldest liquid in a pail was mixed
    columns.push_back(day_column(desk, PailColumnsWords::tr("Oldest liquid"), &Pail::oldest_on));
    //: Header of a column: how often the liquid in a pail was warmed
    columns.push_back({.header = PailColumnsWords::tr("Warmed"),
                       .text = [&desk](const Pail& pail) { return desk.count(pail.times_warmed); },
                       .align = Qt::AlignRight,
                       .sort_key = [](const Pail& pail) { return QVariant(pail.times_warmed); }});
    //: Header of a column: whether a label was printed
    columns.push_back({.header = PailColumnsWords::tr("Label"),
                       .text = [](const Pail& pail) { return label_word(pail.label); },
                       .state = [](const Pail& pail) { return label_shape(pail.label); }});
    return columns;
}

std::vector<int> pail_column_widths() {
    return {70, 148, 84, 92, 78, 104, 92, 70, 108, 112, 76, 122};
}
int pail_stretched_column() {
    return 6;
}

} // namespace soakbook::ui
