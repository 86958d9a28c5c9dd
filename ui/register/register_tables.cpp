// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_tables.h"

#include "ui/papers/record_words.h"
#include "ui/parts/desk.h"
#include "ui/parts/piece_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class Words {
    Q_DECLARE_TR_FUNCTIONS(RegisterTables)
};

QVariant sortable(const std::optional<maths::Day>& day) { return day ? QVariant(to_qdate(*day)) : QVariant(); }

std::optional<State> state_of(const work::RegisterLine& line, maths::Day today) {
    if (!line.void_reason.isEmpty())
        return State::gone;
    if (line.pulled_on)
        return State::ready;
    return line.pull_by && *line.pull_by < today ? State::past : State::resting;
}

/// The day strips came out, or how they hang.
QString out_words(const work::RegisterLine& line, const Desk& desk) {
    if (!line.void_reason.isEmpty())
        //: State of a treatment in a table.
        return Words::tr("void");
    if (line.pulled_on)
        return desk.day(*line.pulled_on);
    //: State of a treatment in a table: strips should be out; strips hang.
    return line.pull_by && *line.pull_by < desk.today() ? Words::tr("overdue") : Words::tr("hanging");
}

/// Who took the strips out, or by when they come out.
QString below_out(const work::RegisterLine& line, const Desk& desk) {
    if (line.pulled_on || !line.void_reason.isEmpty())
        return line.pulled_by;
    //: Small under the state of a treatment: %1 is the last day for strips to come out.
    return line.pull_by ? Words::tr("by %1").arg(desk.day_short(*line.pull_by)) : QString();
}
} // namespace

RowsModel<work::RegisterLine>* make_treatments_model(const Desk& desk, QObject* parent) {
    using Line = work::RegisterLine;
    return new RowsModel<Line>(
        {//: A column of the register: day strips were hung; small under it stands who hung them.
         {.header = Words::tr("In"), .text = [&desk](const Line& l) { return desk.day(l.placed_on); }, .sort_key = [](const Line& l) { return sortable(l.placed_on); },
          .below = [](const Line& l) { return l.placed_by; }},
         //: A column of the register; small under the hive stands its yard.
         {.header = Words::tr("Hive"), .text = [](const Line& l) {
              //: A group of hives; %1 is its name, %2 how many.
              return l.hives > 1 ? Words::tr("%1 (%2)").arg(l.hive).arg(l.hives) : l.hive;
          }, .type = CellType::strong, .sort_key = [](const Line& l) { return QVariant(QString(l.yard + QLatin1Char(' ') + l.hive)); },
          .below = [](const Line& l) { return l.yard; }},
         //: A column of the register: number of strips; small under it stands their acid.
         {.header = Words::tr("Strips, acid"), .text = [&desk](const Line& l) { return desk.count(l.strips); }, .align = Qt::AlignRight, .sort_key = [](const Line& l) { return l.strips; },
          .below = [&desk](const Line& l) { return l.acid ? desk.small(*l.acid, 1) : QString(); }},
         //: A column of the register: code of the bag; small under it stands that of its batch.
         {.header = Words::tr("Bag, batch"), .text = [](const Line& l) { return l.bag_code; }, .type = CellType::code,
          .below = [](const Line& l) { return l.batch_code; }},
         //: A column of the register: the day strips came out, or how they hang; small under it stands who took them out.
         {.header = Words::tr("Out"), .text = [&desk](const Line& l) { return out_words(l, desk); }, .sort_key = [](const Line& l) { return sortable(l.pulled_on); },
          .state = [&desk](const Line& l) { return state_of(l, desk.today()); }, .below = [&desk](const Line& l) { return below_out(l, desk); }},
         //: A column of the register: how many strips came out; small under it how many were missing.
         {.header = Words::tr("Pulled"), .text = [&desk](const Line& l) { return l.pulled_on ? desk.count(l.pulled.value_or(0)) : QString(); }, .align = Qt::AlignRight,
          .below = [](const Line& l) {
              //: Small under the number of strips that came out.
              return l.missing.value_or(0) > 0 ? Words::tr("%n missing", nullptr, *l.missing) : QString();
          }},
         //: A column of the register: the first day on which honey may be taken.
         {.header = Words::tr("Harvest from"), .text = [&desk](const Line& l) { return l.no_harvest_before ? desk.day(*l.no_harvest_before) : QString(); },
          .sort_key = [](const Line& l) { return sortable(l.no_harvest_before); }},
         //: A column of the register.
         {.header = Words::tr("Notes"), .text = [&desk](const Line& l) { return treatment_notes(l, desk); }, .type = CellType::note, .tip = [&desk](const Line& l) { return treatment_notes(l, desk); }}},
        [](const Line& l) { return l.placement.value; }, parent);
}

RowsModel<NumberedCorrection>* make_corrections_model(const Desk& desk, QObject* parent) {
    using Line = NumberedCorrection;
    return new RowsModel<Line>(
        {//: A column of a table of corrections.
         {.header = Words::tr("When"), .text = [&desk](const Line& l) { return desk.moment(l.line.at); }, .sort_key = [](const Line& l) { return QVariant::fromValue<qint64>(l.line.at.utc_ms); }},
         //: A column of a table of corrections: which record.
         {.header = Words::tr("Record"), .text = [](const Line& l) { return l.line.record; }, .type = CellType::strong},
         //: A column of a table of corrections: what was changed.
         {.header = Words::tr("What"), .text = [&desk](const Line& l) { return correction_words(l.line, desk); }, .tip = [&desk](const Line& l) { return correction_words(l.line, desk); }},
         //: A column of a table of corrections: the reason.
         {.header = Words::tr("Why"), .text = [](const Line& l) { return l.line.why; }, .type = CellType::note, .tip = [](const Line& l) { return l.line.why; }},
         //: A column of a table of corrections: who made it.
         {.header = Words::tr("By"), .text = [](const Line& l) { return l.line.who; }}},
        [](const Line& l) { return l.number; }, parent);
}

RowsModel<NumberedHiveState>* make_hive_states_model(const Desk& desk, QObject* parent) {
    using Line = NumberedHiveState;
    return new RowsModel<Line>(
        {//: A column of a table of hives.
         {.header = Words::tr("Day"), .text = [&desk](const Line& l) { return desk.day(l.line.on); }, .sort_key = [](const Line& l) { return sortable(l.line.on); }},
         //: A column of a table in the register.
         {.header = Words::tr("Yard"), .text = [](const Line& l) { return l.line.yard; }},
         //: A column of a table in the register.
         {.header = Words::tr("Hive"), .text = [](const Line& l) { return l.line.hive; }, .type = CellType::strong},
         //: A column of a table in the register.
         {.header = Words::tr("State"), .text = [](const Line& l) { return hive_state_words(l.line.state); }},
         //: A column of a table in the register.
         {.header = Words::tr("Notes"), .text = [](const Line& l) { return l.line.note; }, .type = CellType::soft}},
        [](const Line& l) { return l.number; }, parent);
}

RowsModel<work::JournalLine>* make_journal_model(const Desk& desk, QObject* parent) {
    using Line = work::JournalLine;
    return new RowsModel<Line>(
        {//: A column of the journal: number of the entry.
         {.header = Words::tr("Entry"), .text = [&desk](const Line& l) { return desk.count(l.seq); }, .align = Qt::AlignRight, .sort_key = [](const Line& l) { return l.seq; }},
         //: A column of a table in the register.
         {.header = Words::tr("When"), .text = [&desk](const Line& l) { return desk.moment(l.at); }, .sort_key = [](const Line& l) { return QVariant::fromValue<qint64>(l.at.utc_ms); }},
         //: A column of a table in the register.
         {.header = Words::tr("What"), .text = [](const Line& l) {
              //: In the journal: another program changed a record in the file.
              return l.outside ? Words::tr("made outside Soakbook") : piece_words(l.piece);
          }, .type = CellType::strong, .state = [](const Line& l) { return l.outside ? std::optional(State::past) : std::nullopt; }},
         //: A column of the journal: how many records an entry touched.
         {.header = Words::tr("Records"), .text = [&desk](const Line& l) { return desk.count(l.records); }, .align = Qt::AlignRight, .sort_key = [](const Line& l) { return l.records; }},
         //: A column of a table in the register.
         {.header = Words::tr("By"), .text = [](const Line& l) {
              //: In place of a name: another program changed the record.
              return l.outside ? Words::tr("outside Soakbook") : l.who;
          }},
         //: A column of a table in the register.
         {.header = Words::tr("Why"), .text = [](const Line& l) { return l.why; }, .type = CellType::soft}},
        [](const Line& l) { return l.seq; }, parent);
}

} // namespace soakbook::ui
