// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/balance_table.h"

#include "ui/parts/theme.h"
#include "ui/shed/loss_form.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

namespace {

using Row = BalanceTable::Row;

std::vector<Column<Row>> balance_columns(const Desk& desk) {
    std::vector<Column<Row>> columns;
    //: Header of a column: what became of the liquid
    columns.push_back({.header = BalanceTable::tr("Where it went"), .text = [](const Row& row) { return row.what; },
                       .state = [](const Row& row) { return row.state; }});
    //: Header of a column: a mass
    columns.push_back({.header = large_header(desk, BalanceTable::tr("Mass")),
                       .text =
                           [&desk](const Row& row) {
                               const maths::Mass size = row.mass.count < 0 ? -row.mass : row.mass;
                               const QString sign = row.mass.count < 0                    ? QStringLiteral("\u2212")
                                                    : row.with_sign && row.mass.count > 0 ? QStringLiteral("+")
                                                                                          : QString();
                               const QString text = sign + large_number(desk, size);
                               return text;
                           },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    return columns;
}

std::vector<Row> balance_rows(const Desk& desk, const work::BatchView& batch) {
    const work::Balance& balance = *batch.balance;
    qint64 id = 0;
    std::vector<Row> rows;
    const auto add = [&rows, &id](const QString& what, maths::Mass mass) { rows.push_back({++id, what, mass, false, {}, false}); };
    //: A line of a balance: all that was weighed into the tank
    add(BalanceTable::tr("Went in"), balance.in);
    //: A line of a balance
    add(BalanceTable::tr("Taken up by bagged strips"), balance.in_strips);
    //: A line of a balance: liquid that lies free in bags
    add(BalanceTable::tr("Free in the bags"), balance.free_in_bags);
    //: A line of a balance
    add(BalanceTable::tr("In pails"), balance.in_pails);
    for (const work::LossLine& loss : batch.losses) {
        //: A line of a balance: a named loss; %1 what it was, %2 a note
        add(loss.note.isEmpty() ? BalanceTable::tr("Lost: %1").arg(loss_name(loss.kind))
                                : BalanceTable::tr("Lost: %1, %2").arg(loss_name(loss.kind), loss.note),
            loss.mass);
    }
    Row unexplained{++id, {}, balance.unexplained, true, balance.beyond_limit ? State::near : State::ready, true};
    // Before anything is poured the rest still stands in tank and bins.
    const bool too_early = !batch.closed && batch.pails.empty();
    unexplained.what = too_early
                           //: A line of a balance: liquid of a batch whose leftovers are not poured yet
                           ? BalanceTable::tr("Not accounted for yet")
                       : balance.limit
                           //: A line of a balance: what nothing accounts for; %1 the share that is allowed
                           ? BalanceTable::tr("Unexplained (up to %1 is usual here)").arg(desk.percent(*balance.limit))
                           //: A line of a balance: what nothing accounts for
                           : BalanceTable::tr("Unexplained");
    if (!balance.limit || too_early)
        unexplained.state.reset();
    rows.push_back(unexplained);
    return rows;
}

} // namespace

BalanceTable::BalanceTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/balance"), tr("Where every kilogram went"), parent), m_desk(desk),
      m_model(new RowsModel<Row>(balance_columns(desk), [](const Row& row) { return row.id; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_stretched_column(0);
    set_start_widths({280, 120});
}

QSize BalanceTable::sizeHint() const { return {scaled(560), RecordTable::sizeHint().height()}; }

void BalanceTable::show_batch(const work::BatchView& batch) {
    m_model->set_rows(batch.balance ? balance_rows(m_desk, batch) : std::vector<Row>{});
    setVisible(batch.balance.has_value());
}

} // namespace soakbook::ui
