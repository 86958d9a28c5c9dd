// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/heat_tables.h"

#include "core/work/heat.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/correction_dialog.h"
#include "ui/shed/shed_draft.h"
#include "ui/shed/shed_words.h"
#include "ui/shed/step_names.h"

namespace soakbook::ui {

namespace {

using Reading = work::ReadingLine;
using Stir = work::StirLine;

QString degrees(const Habits& habits, const std::optional<maths::Temperature>& temperature) {
    return temperature ? temperature_number(habits, *temperature) : QString();
}

QString yes_or_no(std::optional<bool> answer) {
    if (!answer)
        return {};
    //: An answer in a table
    return *answer ? StirsTable::tr("yes")
                   //: An answer in a table
                   : StirsTable::tr("no");
}

std::vector<Column<Reading>> reading_columns(const Desk& desk) {
    std::vector<Column<Reading>> columns;
    //: Header of a column: day and time
    columns.push_back({.header = ReadingsTable::tr("When"),
                       .text = [&desk](const Reading& row) {
                           const QString at = desk.moment(row.at);
                           //: A reading that was entered later than it was made; %1 its day and time
                           return row.written_late ? ReadingsTable::tr("%1, entered later").arg(at) : at;
                       }});
    //: Header of a column: the temperature of the liquid
    columns.push_back({.header = temperature_header(desk, ReadingsTable::tr("Probe")),
                       .text = [&desk](const Reading& row) { return degrees(desk, row.probe); },
                       .align = Qt::AlignRight,
                       .type = CellType::strong,
                       .state = [](const Reading& row) {
                           return row.over_ceiling ? std::optional<State>(State::past) : std::nullopt;
                       }});
    //: Header of a column: the temperature the thermostat is set to
    columns.push_back({.header = temperature_header(desk, ReadingsTable::tr("Dial")),
                       .text = [&desk](const Reading& row) { return degrees(desk, row.dial); },
                       .align = Qt::AlignRight});
    //: Header of a column: the temperature of the room
    columns.push_back({.header = temperature_header(desk, ReadingsTable::tr("Room")),
                       .text = [&desk](const Reading& row) { return degrees(desk, row.room); },
                       .align = Qt::AlignRight});
    //: Header of a column: whether water stood in the tank's jacket
    columns.push_back({.header = ReadingsTable::tr("Jacket water"), .text = [](const Reading& row) {
                           return yes_or_no(row.jacket_seen);
                       }});
    return columns;
}

std::vector<Column<Stir>> stir_columns(const Desk& desk) {
    std::vector<Column<Stir>> columns;
    //: Header of a column: day and time
    columns.push_back({.header = StirsTable::tr("When"), .text = [&desk](const Stir& row) { return desk.moment(row.at); }});
    //: Header of a column: how long it was stirred
    columns.push_back({.header = StirsTable::tr("Stirred, min"),
                       .text = [&desk](const Stir& row) { return row.minutes ? desk.count(*row.minutes) : QString(); },
                       .align = Qt::AlignRight});
    //: Header of a column: whether the liquid was clear
    columns.push_back({.header = StirsTable::tr("Clear"),
                       .text = [](const Stir& row) { return yes_or_no(row.clear); },
                       .state = [](const Stir& row) { return row.clear ? std::optional<State>(State::ready) : std::nullopt; }});
    //: Header of a column: whether the liquid from the outlet was poured back
    columns.push_back({.header = StirsTable::tr("Outlet poured back"), .text = [](const Stir& row) {
                           return yes_or_no(row.outlet_poured_back);
                       }});
    return columns;
}

} // namespace

ReadingsTable::ReadingsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/readings"), tr("Readings"), parent), m_desk(desk),
      m_model(new RowsModel<Reading>(reading_columns(desk), [](const Reading& row) { return row.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_start_widths({170, 90, 90, 90, 110});
    connect(this, &RecordTable::opened, this, &ReadingsTable::correct);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("reading"), current_id()); });
}

void ReadingsTable::show_batch(const work::BatchView& batch) {
    m_batch = batch.line.id;
    m_can_correct = is_open(batch);
    m_model->set_rows({batch.readings.rbegin(), batch.readings.rend()});
    setVisible(!batch.readings.empty());
}

void ReadingsTable::correct(qint64 id) {
    const Reading* reading = m_model->find(id);
    if (reading == nullptr || !m_can_correct)
        return;
    //: Title of a dialog
    auto* dialog = new CorrectionDialog(m_desk, tr("Correct a reading"),
                                        //: What an entry says now; %1 the temperature, %2 day and time
                                        tr("%1 stands for %2.")
                                            .arg(reading->probe ? m_desk.temperature(*reading->probe) : tr("No probe reading"),
                                                 m_desk.moment(reading->at)),
                                        this);
    FormFrame* form = dialog->form();
    //: Label of a field
    auto* probe = form->add(tr("Probe in the liquid"), new TemperatureField(m_desk), QStringLiteral("probe"));
    //: Label of a field
    auto* dial = form->add(tr("Dial of the thermostat"), new TemperatureField(m_desk), QStringLiteral("dial"));
    //: Label of a field
    auto* room = form->add(tr("Room"), new TemperatureField(m_desk), QStringLiteral("room"));
    //: Label of a field
    auto* when = form->add(tr("Read when"), new WhenField(m_desk), QStringLiteral("at"));
    probe->setObjectName(QStringLiteral("correct_probe"));
    probe->set_value(reading->probe);
    dial->set_value(reading->dial);
    room->set_value(reading->room);
    when->set_value(reading->at);
    const work::ReadingId row = reading->id;
    const work::ReadingEntry before{m_batch, {}, {}, {}, reading->jacket_seen, {}, reading->note};
    const maths::Instant at = reading->at;
    dialog->set_correct([this, probe, dial, room, when, row, before, at](const QString& why, const work::Confirmed&) {
        work::ReadingEntry entry = before;
        entry.probe = probe->value();
        entry.dial = dial->value();
        entry.room = room->value();
        entry.at = corrected_moment(when->value(), at);
        return refusal_of(work::correct_reading(m_desk.workbook(), row, entry, m_desk.doing(why)));
    });
    //: Button of a dialog: the entry does not count any more
    dialog->set_make_void(tr("Make it void"), [this, row](const QString& why) {
        return refusal_of(work::void_reading(m_desk.workbook(), row, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &ReadingsTable::corrected);
    dialog->form()->set_draft(row_draft(QStringLiteral("correct_reading"), QStringLiteral("reading"), m_batch, QStringLiteral("shed/readings"), id));
    dialog->open();
}

StirsTable::StirsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("shed/stirs"), tr("Stirs"), parent), m_desk(desk),
      m_model(new RowsModel<Stir>(stir_columns(desk), [](const Stir& row) { return row.id.value; }, this)) {
    set_rows_model(m_model);
    set_full_height(true);
    set_start_widths({170, 110, 90, 150});
    connect(this, &RecordTable::opened, this, &StirsTable::make_void);
    give_history(m_desk, this, [this] { return history_of(m_desk, {}, QStringLiteral("stir"), current_id()); });
}

void StirsTable::show_batch(const work::BatchView& batch) {
    m_can_correct = is_open(batch);
    m_model->set_rows({batch.stirs.rbegin(), batch.stirs.rend()});
    setVisible(!batch.stirs.empty());
}

void StirsTable::make_void(qint64 id) {
    const Stir* stir = m_model->find(id);
    if (stir == nullptr || !m_can_correct)
        return;
    //: Title of a dialog
    auto* dialog = new CorrectionDialog(m_desk, tr("Make a stir void"),
                                        //: What becomes of an entry; %1 its day and time
                                        tr("The stir of %1 does not count any more. It stays in the history; enter it again if "
                                           "it was written wrongly.")
                                            .arg(m_desk.moment(stir->at)),
                                        this);
    const work::StirId row = stir->id;
    //: Button of a dialog: the entry does not count any more
    dialog->set_make_void(tr("Make it void"), [this, row](const QString& why) {
        return refusal_of(work::void_stir(m_desk.workbook(), row, m_desk.doing(why)));
    });
    connect(dialog, &QDialog::accepted, this, &StirsTable::corrected);
    dialog->open();
}

} // namespace soakbook::ui
