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

QString state_words(const work::RegisterLine& line, maths::Day today) {
    if (!line.void_reason.isEmpty())
        //: State of a treatment in a table.
        return Words::tr("void");
    if (line.pulled_on)
        //: State of a treatment in a table: strips came out.
        return Words::tr("out");
    //: State of a treatment in a table: strips should be out; strips hang.
    return line.pull_by && *line.pull_by < today ? Words::tr("past") : Words::tr("hanging");
}
} // namespace

RowsModel<work::RegisterLine>* make_treatments_model(const Desk& desk, QObject* parent) {
    using Line = work::RegisterLine;
    return new RowsModel<Line>(
        {//: A column of the register: day strips were hung.
         {.header = Words::tr("In"), .text = [&desk](const Line& l) { return desk.day(l.placed_on); }, .sort_key = [](const Line& l) { return sortable(l.placed_on); }},
         //: A column of the register.
         {.header = Words::tr("Yard"), .text = [](const Line& l) { return l.yard; }},
         //: A column of the register.
         {.header = Words::tr("Hive"), .text = [](const Line& l) {
              //: A group of hives; %1 is its name, %2 how many.
              return l.hives > 1 ? Words::tr("%1 (%2)").arg(l.hive).arg(l.hives) : l.hive;
          }, .type = CellType::strong},
         //: A column of the register: number of strips.
         {.header = Words::tr("Strips"), .text = [&desk](const Line& l) { return desk.count(l.strips); }, .align = Qt::AlignRight, .sort_key = [](const Line& l) { return l.strips; }},
         //: A column of the register: code of the bag.
         {.header = Words::tr("Bag"), .text = [](const Line& l) { return l.bag_code; }, .type = CellType::code},
         //: A column of the register: code of the batch.
         {.header = Words::tr("Batch"), .text = [](const Line& l) { return l.batch_code; }, .type = CellType::code},
         //: A column of the register: mass of acid hung in the hive.
         {.header = Words::tr("Acid"), .text = [&desk](const Line& l) { return l.acid ? desk.small(*l.acid, 1) : QString(); }, .align = Qt::AlignRight,
          .sort_key = [](const Line& l) { return l.acid ? QVariant::fromValue<qint64>(l.acid->count) : QVariant(); }},
         //: A column of the register: day strips came out.
         {.header = Words::tr("Out"), .text = [&desk](const Line& l) { return l.pulled_on ? desk.day(*l.pulled_on) : QString(); }, .sort_key = [](const Line& l) { return sortable(l.pulled_on); }},
         //: A column of the register: strips that came out.
         {.header = Words::tr("Pulled"), .text = [](const Line& l) { return pulled_words(l); }, .align = Qt::AlignRight},
         //: A column of the register.
         {.header = Words::tr("State"), .text = [&desk](const Line& l) { return state_words(l, desk.today()); }, .state = [&desk](const Line& l) { return state_of(l, desk.today()); }},
         //: A column of the register.
         {.header = Words::tr("By"), .text = [](const Line& l) { return l.placed_by; }},
         //: A column of the register.
         {.header = Words::tr("Notes"), .text = [&desk](const Line& l) { return treatment_notes(l, desk); }, .type = CellType::soft, .tip = [&desk](const Line& l) { return treatment_notes(l, desk); }}},
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
         {.header = Words::tr("Why"), .text = [](const Line& l) { return l.line.why; }, .tip = [](const Line& l) { return l.line.why; }},
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
              //: In the journal: another program changed the workbook.
              return l.outside ? Words::tr("changed by another program") : piece_words(l.piece);
          }, .type = CellType::strong, .state = [](const Line& l) { return l.outside ? std::optional(State::past) : std::nullopt; }},
         //: A column of the journal: how many records an entry touched.
         {.header = Words::tr("Records"), .text = [&desk](const Line& l) { return desk.count(l.records); }, .align = Qt::AlignRight, .sort_key = [](const Line& l) { return l.records; }},
         //: A column of a table in the register.
         {.header = Words::tr("By"), .text = [](const Line& l) { return l.who; }},
         //: A column of a table in the register.
         {.header = Words::tr("Why"), .text = [](const Line& l) { return l.why; }, .type = CellType::soft}},
        [](const Line& l) { return l.seq; }, parent);
}

} // namespace soakbook::ui
