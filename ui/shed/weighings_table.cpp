// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/weighings_table.h"

#include "ui/papers/history_dialog.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/step_names.h"
#include "ui/shed/weigh_form.h"

#include <algorithm>

namespace soakbook::ui {

namespace {

using Row = WeighingsTable::Row;

std::vector<Column<Row>> weighing_columns(const Desk& desk) {
    std::vector<Column<Row>> columns;
    //: Header of a column: day and time
    columns.push_back({.header = WeighingsTable::tr("When"), .text = [&desk](const Row& row) {
                           const QString at = desk.moment(row.weighing.at);
                           //: A weighing whose first writing said something else; %1 its day and time
                           return row.weighing.corrected ? WeighingsTable::tr("%1, corrected").arg(at) : at;
                       }});
    //: Header of a column
    columns.push_back({.header = WeighingsTable::tr("Bin"), .text = [](const Row& row) { return row.bin; }});
    //: Header of a column: how long the strips had soaked
    columns.push_back({.header = WeighingsTable::tr("After"),
                       .text = [](const Row& row) { return how_long(row.weighing.hours); },
                       .align = Qt::AlignRight});
    //: Header of a column
    columns.push_back({.header = WeighingsTable::tr("Strips"),
                       .text = [&desk](const Row& row) { return desk.count(row.weighing.strips); },
                       .align = Qt::AlignRight});
    //: Header of a column: the mean weight of a strip
    columns.push_back({.header = small_header(desk, WeighingsTable::tr("Each")),
                       .text = [&desk](const Row& row) { return small_number(desk, row.weighing.figures.mean); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    //: Header of a column: what the weighing says
    columns.push_back({.header = WeighingsTable::tr("Verdict"),
                       .text = [&desk](const Row& row) { return verdict_words(desk, row.weighing.figures).word; },
                       .state = [&desk](const Row& row) -> std::optional<State> {
                           if (!row.weighing.figures.verdict)
                               return std::nullopt;
                           return verdict_words(desk, row.weighing.figures).state;
                       }});
    return columns;
}

} // namespace

WeighingsTable::WeighingsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/weighings"), tr("Weighings"), parent), m_desk(desk),
      m_model(new RowsModel<Row>(weighing_columns(desk), [](const Row& row) { return row.weighing.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_stretched_column(5);
    set_start_widths({170, 90, 90, 70, 90, 140});
    connect(this, &RecordTable::opened, this, &WeighingsTable::correct);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("weigh_in"), current_id()); });
}

void WeighingsTable::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_can_correct = is_open(batch);
    std::vector<Row> rows;
    for (const work::SoakLine& soak : batch.soaks) {
        for (const work::WeighLine& weighing : soak.weighings)
            rows.push_back({weighing, soak.id, soak.bin_name});
    }
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) { return b.weighing.at < a.weighing.at; });
    setVisible(!rows.empty());
    m_model->set_rows(std::move(rows));
}

void WeighingsTable::correct(qint64 id) {
    const Row* found = m_model->find(id);
    if (found == nullptr || !m_can_correct)
        return;
    const Row row = *found;
    //: Title of a dialog
    auto* dialog = new CorrectionDialog(m_desk, tr("Correct a weighing"),
                                        //: What an entry says now; %n strips, %1 their weight together, %2 day and time
                                        tr("%n strips of %1 stand for %2.", nullptr, row.weighing.strips)
                                            .arg(small(m_desk, row.weighing.total), m_desk.moment(row.weighing.at)),
                                        this);
    FormFrame* form = dialog->form();
    //: Label of a field
    auto* strips = form->add(tr("Strips on the scale"), new CountField(m_desk), QStringLiteral("strips"));
    //: Label of a field
    auto* total = form->add(tr("Weight together"), new MassField(m_desk, MassSize::small), QStringLiteral("total"));
    //: Label of a field
    auto* when = form->add(tr("When"), new WhenField(m_desk), QStringLiteral("at"));
    strips->setObjectName(QStringLiteral("correct_strips"));
    total->setObjectName(QStringLiteral("correct_total"));
    strips->set_value(row.weighing.strips);
    total->set_value(row.weighing.total);
    when->set_value(row.weighing.at);
    dialog->set_correct([this, strips, total, when, row](const QString& why, const work::Confirmed&) {
        work::WeighEntry entry;
        entry.soak = row.soak;
        if (const auto n = strips->value())
            entry.strips = static_cast<int>(*n);
        entry.total = total->value();
        entry.drip_minutes = row.weighing.drip_minutes;
        entry.at = corrected_moment(when->value(), row.weighing.at);
        entry.note = row.weighing.note;
        return refusal_of(work::correct_weighing(m_desk.workbook(), row.weighing.id, entry, m_desk.doing(why)));
    });
    //: Button of a dialog: the entry does not count any more
    dialog->set_make_void(tr("Make it void"), [this, row](const QString& why) {
        return refusal_of(work::void_weighing(m_desk.workbook(), row.weighing.id, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &WeighingsTable::corrected);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_weighing"), QStringLiteral("weigh"), m_batch, QStringLiteral("shed/weighings"), id));
    dialog->open();
}

} // namespace soakbook::ui
