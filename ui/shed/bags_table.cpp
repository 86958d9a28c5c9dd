// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/bags_table.h"

#include "core/work/bag.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

namespace {

using Bag = work::BatchBag;

QString label_word(const Bag& bag) {
    if (bag.made_void) {
        //: A bag or label that was made void
        return BagsTable::tr("void");
    }
    if (bag.label == QLatin1String("printed")) {
        //: A label was printed
        return BagsTable::tr("printed");
    }
    if (bag.label == QLatin1String("stale")) {
        //: A label was printed, and its bag corrected since
        return BagsTable::tr("print again");
    }
    //: No label was printed yet
    return BagsTable::tr("to print");
}

std::optional<State> label_state(const Bag& bag) {
    if (bag.made_void)
        return State::gone;
    if (bag.label == QLatin1String("printed"))
        return State::ready;
    return bag.label == QLatin1String("stale") ? std::optional(State::near) : std::nullopt;
}

std::vector<Column<Bag>> bag_columns(const Desk& desk) {
    const auto day = [&desk](const std::optional<maths::Day>& d) { return d ? desk.day(*d) : QString(); };
    std::vector<Column<Bag>> columns;
    //: Header of a column: the code of a bag
    columns.push_back({.header = BagsTable::tr("Bag"),
                       .text = [](const Bag& row) { return row.code; },
                       .type = CellType::code});
    //: Header of a column: strips in a bag
    columns.push_back({.header = BagsTable::tr("Strips"),
                       .text = [&desk](const Bag& row) {
                           //: A label whose bag is not filled yet
                           return row.packed ? desk.count(*row.packed) : BagsTable::tr("not filled");
                       },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column: the weight of what is in a bag
    columns.push_back({.header = large_header(desk, BagsTable::tr("Contents")),
                       .text = [&desk](const Bag& row) { return row.net ? large_number(desk, *row.net) : QString(); },
                       .align = Qt::AlignRight});
    //: Header of a column: the day a bag was sealed
    columns.push_back({.header = BagsTable::tr("Sealed"), .text = [day](const Bag& row) { return day(row.sealed_on); }});
    //: Header of a column: the day until which a bag rests
    columns.push_back({.header = BagsTable::tr("Rests until"), .text = [day](const Bag& row) { return day(row.rest_until); }});
    //: Header of a column: the last day a bag may be used
    columns.push_back({.header = BagsTable::tr("Use by"), .text = [day](const Bag& row) { return day(row.use_by); }});
    //: Header of a column: whether the label of a bag was printed
    columns.push_back({.header = BagsTable::tr("Label"), .text = label_word, .state = label_state});
    return columns;
}

} // namespace

BagsTable::BagsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/bags"), tr("Bags of this batch"), parent), m_desk(desk),
      m_model(new RowsModel<Bag>(bag_columns(desk), [](const Bag& row) { return row.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_start_widths({80, 100, 110, 110, 110, 110, 100});
    connect(this, &RecordTable::opened, this, &BagsTable::correct);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("bag"), current_id()); });
}

void BagsTable::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_model->set_rows(batch.bags);
    setVisible(!batch.bags.empty());
}

void BagsTable::correct(qint64 id) {
    const Bag* found = m_model->find(id);
    if (found == nullptr || found->made_void)
        return;
    const Bag bag = *found;
    //: Title of a dialog; %1 the code of a bag
    auto* dialog = new CorrectionDialog(m_desk, tr("Correct bag %1").arg(bag.code),
                                        bag.packed
                                            //: What an entry says now; %n strips
                                            ? tr("%n strips stand on it. A label that was printed is printed again.", nullptr,
                                                 *bag.packed)
                                            //: A label whose bag is not filled yet
                                            : tr("The label is given out and the bag not filled."),
                                        this);
    if (bag.packed) {
        FormFrame* form = dialog->form();
        //: Label of a field
        auto* packed = form->add(tr("Strips in the bag"), new CountField(m_desk), QStringLiteral("packed"));
        //: Label of a field
        auto* net = form->add(tr("Contents weigh"), new MassField(m_desk, MassSize::large), QStringLiteral("net"));
        //: Label of a field
        auto* sealed = form->add(tr("Sealed on"), new DayField(m_desk), QStringLiteral("sealed_on"));
        packed->setObjectName(QStringLiteral("correct_packed"));
        net->setObjectName(QStringLiteral("correct_net"));
        sealed->setObjectName(QStringLiteral("correct_sealed"));
        packed->set_value(*bag.packed);
        net->set_value(bag.net);
        sealed->set_value(bag.sealed_on);
        dialog->set_correct([this, packed, net, sealed, bag](const QString& why, const work::Confirmed&) {
            work::BagCorrection entry{bag.id, std::nullopt, std::nullopt, std::nullopt};
            if (const auto n = packed->value(); n && *n != *bag.packed)
                entry.packed = static_cast<int>(*n);
            if (net->value() != bag.net)
                entry.net = net->value();
            if (sealed->value() != bag.sealed_on)
                entry.sealed_on = sealed->value();
            return refusal_of(work::correct_bag(m_desk.workbook(), entry, m_desk.doing(why)));
        });
    }
    //: Button of a dialog: a spoilt label or a burst bag does not count any more
    dialog->set_make_void(tr("Make it void"), [this, bag](const QString& why) {
        return refusal_of(work::void_bag(m_desk.workbook(), bag.id, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &BagsTable::corrected);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_bag_of_batch"), QStringLiteral("bag"), m_batch, QStringLiteral("shed/bags"), id));
    dialog->open();
}

} // namespace soakbook::ui
