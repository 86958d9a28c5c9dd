// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/pails_table.h"

#include "core/work/leftovers.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

namespace {

using Pail = work::BatchPail;

std::vector<Column<Pail>> pail_columns(const Desk& desk) {
    std::vector<Column<Pail>> columns;
    //: Header of a column: the code of a pail
    columns.push_back({.header = PailsTable::tr("Pail"), .text = [](const Pail& row) { return row.code; }, .type = CellType::code});
    //: Header of a column: a mass
    columns.push_back({.header = large_header(desk, PailsTable::tr("Contents")),
                       .text = [&desk](const Pail& row) { return large_number(desk, row.mass); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column: the strength of what is in a pail
    columns.push_back({.header = PailsTable::tr("Strength"),
                       .text =
                           [&desk](const Pail& row) {
                               //: The strength of a pail is not known
                               return row.strength ? desk.percent(*row.strength) : PailsTable::tr("unknown");
                           },
                       .align = Qt::AlignRight});
    //: Header of a column: the batch a pail went into
    columns.push_back({.header = PailsTable::tr("Went into"),
                       .text = [](const Pail& row) { return row.went_to; },
                       .type = CellType::code});
    return columns;
}

} // namespace

PailsTable::PailsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/pails"), tr("Pails of this batch"), parent), m_desk(desk),
      m_model(new RowsModel<Pail>(pail_columns(desk), [](const Pail& row) { return row.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_start_widths({90, 120, 110, 120});
    connect(this, &RecordTable::opened, this, &PailsTable::correct);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("pail"), current_id()); });
}

void PailsTable::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_model->set_rows(batch.pails);
    setVisible(!batch.pails.empty());
}

void PailsTable::correct(qint64 id) {
    const Pail* pail = m_model->find(id);
    if (pail == nullptr)
        return;
    //: Title of a dialog; %1 the code of a pail
    auto* dialog = new CorrectionDialog(m_desk, tr("Correct pail %1").arg(pail->code),
                                        //: What an entry says now; %1 a mass
                                        tr("%1 stand on it. A label that was printed is printed again.")
                                            .arg(large(m_desk, pail->mass)),
                                        this);
    //: Label of a field
    auto* mass = dialog->form()->add(tr("Contents"), new MassField(m_desk, MassSize::large), QStringLiteral("mass"));
    mass->setObjectName(QStringLiteral("correct_mass"));
    mass->set_value(pail->mass);
    const work::PailId row = pail->id;
    dialog->set_correct([this, mass, row](const QString& why, const work::Confirmed&) {
        if (!mass->value())
            return std::optional<work::Refusal>(work::Refusal{work::Why::missing, QStringLiteral("mass"), {}, false});
        return refusal_of(work::correct_pail(m_desk.workbook(), row, *mass->value(), m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &PailsTable::corrected);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_pail_of_batch"), QStringLiteral("leftovers"), m_batch, QStringLiteral("shed/pails"), id));
    dialog->open();
}

} // namespace soakbook::ui
