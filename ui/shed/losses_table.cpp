// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/losses_table.h"

#include "core/work/leftovers.h"
#include "ui/papers/history_dialog.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/loss_form.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/step_names.h"

namespace soakbook::ui {

namespace {

using Loss = work::LossLine;

std::vector<Column<Loss>> loss_columns(const Desk& desk) {
    std::vector<Column<Loss>> columns;
    //: Header of a column: drips, a spill ...
    columns.push_back({.header = LossesTable::tr("Lost"), .text = [](const Loss& row) { return loss_name(row.kind); }});
    //: Header of a column: a mass
    columns.push_back({.header = large_header(desk, LossesTable::tr("How much")),
                       .text = [&desk](const Loss& row) { return large_number(desk, row.mass); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column
    columns.push_back({.header = LossesTable::tr("Note"), .text = [](const Loss& row) { return row.note; }, .type = CellType::soft});
    return columns;
}

} // namespace

LossesTable::LossesTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/losses"), tr("Losses named for this batch"), parent), m_desk(desk),
      m_model(new RowsModel<Loss>(loss_columns(desk), [](const Loss& row) { return row.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_start_widths({200, 110, 240});
    connect(this, &RecordTable::opened, this, &LossesTable::make_void);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("batch_loss"), current_id()); });
}

void LossesTable::show_batch(const work::BatchView& batch) {
    m_can_correct = is_open(batch);
    m_model->set_rows(batch.losses);
    setVisible(!batch.losses.empty());
}

void LossesTable::make_void(qint64 id) {
    const Loss* loss = m_model->find(id);
    if (loss == nullptr || !m_can_correct)
        return;
    auto* dialog = new CorrectionDialog(
        //: Title of a dialog
        m_desk, tr("Make a loss void"),
        //: What becomes of a loss that is made void; %1 a mass
        tr("The loss of %1 does not count any more. It stays in the history; name it again if it was written wrongly.").arg(large(m_desk, loss->mass)), this);
    const work::LossId row = loss->id;
    //: Button of a dialog: the entry does not count any more
    dialog->set_make_void(tr("Make it void"), [this, row](const QString& why) {
        return refusal_of(work::void_loss(m_desk.workbook(), row, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &LossesTable::corrected);
    dialog->open();
}

} // namespace soakbook::ui
