// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/inputs_table.h"

#include "ui/papers/history_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"

namespace soakbook::ui {

//: Read aloud: the name of a table
InputsTable::InputsTable(Desk& desk, QWidget* parent)
    : RecordTable(QStringLiteral("shed/inputs"), tr("What went in"), parent), m_desk(desk) {
    using Row = work::InputLine;
    std::vector<Column<Row>> columns;
    //: Header of a column: acid, glycerine or a pail
    columns.push_back({.header = tr("What"), .text = [](const Row& row) {
                           //: A pail that goes whole into a mix; %1 its code
                           return row.pail ? tr("Pail %1, whole").arg(row.name) : row.name;
                       }});
    //: Header of a column: the mass that was planned
    columns.push_back({.header = large_header(desk, tr("Planned")),
                       .text = [this](const Row& row) { return large_number(m_desk, row.planned); },
                       .align = Qt::AlignRight});
    //: Header of a column: the mass that was weighed in
    columns.push_back({.header = large_header(desk, tr("Weighed")),
                       .text = [this](const Row& row) { return row.mass ? large_number(m_desk, *row.mass) : QString(); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column: weighed less planned
    columns.push_back({.header = large_header(desk, tr("Off plan")),
                       .text =
                           [this](const Row& row) {
                               if (!row.mass || *row.mass == row.planned)
                                   return QString();
                               const QString sign = *row.mass < row.planned ? QStringLiteral("\u2212") : QStringLiteral("+");
                               const maths::Mass off = *row.mass - row.planned;
                               const QString text = sign + large_number(m_desk, off.count < 0 ? -off : off);
                               return text;
                           },
                       .align = Qt::AlignRight});
    m_model = new RowsModel<Row>(std::move(columns), [](const Row& row) { return row.id.value; }, this);
    set_rows_model(m_model);
    set_full_height(true);
    set_stretched_column(0);
    set_start_widths({200, 110, 110, 110});
    connect(this, &RecordTable::opened, this, &InputsTable::correct);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("batch_input"), current_id()); });
}

void InputsTable::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_can_correct = batch.mixed && !batch.closed && batch.line.state != work::BatchState::made_void;
    m_model->set_rows(batch.inputs);
}

void InputsTable::correct(qint64 id) {
    const work::InputLine* input = m_model->find(id);
    if (!m_can_correct || input == nullptr || !input->mass || input->pail)
        return;
    auto* dialog = new CorrectionDialog(
        //: Title of a dialog; %1 the name of a delivery
        m_desk, tr("Correct %1").arg(input->name),
        //: What an entry says now; %1 a mass
        tr("%1 stands as weighed in.").arg(m_desk.large(*input->mass)), this);
    auto* mass = dialog->form()->add(tr("Weighed"), new MassField(m_desk, MassSize::large), QStringLiteral("mass"));
    mass->setObjectName(QStringLiteral("correct_mass"));
    mass->set_value(input->mass);
    dialog->set_correct([this, mass, row = input->id](const QString& why, const work::Confirmed&) {
        if (!mass->value())
            return std::optional<work::Refusal>(work::Refusal{work::Why::missing, QStringLiteral("mass"), {}, false});
        return refusal_of(work::correct_weighed(m_desk.workbook(), row, *mass->value(), m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &InputsTable::corrected);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_input"), QStringLiteral("weigh_mix"), m_batch, QStringLiteral("shed/inputs"), id));
    dialog->open();
}

} // namespace soakbook::ui
