// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/hive_rows.h"

#include "ui/yards/yard_words.h"

#include <QDate>

namespace soakbook::ui {

namespace {

QVariant number_key(std::optional<int> number) {
    return number ? QVariant(*number) : QVariant();
}

QVariant day_key(std::optional<maths::Day> day) {
    return day ? QVariant(to_qdate(*day)) : QVariant();
}

} // namespace

QString HiveGrid::supers_word(std::optional<bool> on) {
    if (!on) {
        return {};
    }
    //: Honey supers are on a hive
    return *on ? tr("on")
               //: Honey supers are off a hive
               : tr("off");
}

std::vector<int> HiveGrid::widths() {
    return {110, 96, 66, 72, 66, 84, 78, 54, 130, 116, 130, 72};
}

void HiveGrid::add_figures(std::vector<Column<HiveLineRow>>& columns, const Save& save, const std::function<void(const QString& hive)>& unread) {
    const auto number = [&](HiveColumn at, const QString& header, NumberCell HiveLineRow::*cell, std::optional<int> work::HiveEntry::*kept) {
        Column<HiveLineRow>& column = columns[at];
        column.header = header;
        column.align = Qt::AlignRight;
        column.text = [cell, kept](const HiveLineRow& row) { return (row.*cell).shown(row.line.entry.*kept); };
        column.sort_key = [kept](const HiveLineRow& row) { return number_key(row.line.entry.*kept); };
        column.marked = [cell](const HiveLineRow& row) { return (row.*cell).is_typed; };
        column.write = [cell, kept, save, unread](HiveLineRow& row, const QString& text) {
            (row.*cell).type(text);
            if ((row.*cell).is_wrong()) {
                unread(YardWords::hive(row.line.entry.name, row.line.entry.hives));
                return true;
            }
            work::HiveEntry entry = row.line.entry;
            entry.*kept = (row.*cell).value;
            if (entry.*kept == row.line.entry.*kept || save(entry)) {
                row.line.entry = entry;
                (row.*cell).clear();
            }
            return true;
        };
    };
    //: Column: brood boxes
    number(hive_boxes, tr("Boxes"), &HiveLineRow::boxes, &work::HiveEntry::brood_boxes);
    //: Column: frames covered with bees
    number(hive_frames, tr("Frames"), &HiveLineRow::frames, &work::HiveEntry::frames_of_bees);
    //: Tool tip of the column Frames
    columns[hive_frames].tip = [](const HiveLineRow&) { return tr("Frames of bees; type over them at once."); };

    Column<HiveLineRow>& supers = columns[hive_supers];
    //: Column: honey supers
    supers.header = tr("Supers");
    supers.text = [](const HiveLineRow& row) { return supers_word(row.line.entry.supers_on); };
    supers.write = [save](HiveLineRow& row, const QString& text) {
        work::HiveEntry entry = row.line.entry;
        entry.supers_on = text.isEmpty() ? std::nullopt : std::optional<bool>(text == supers_word(true));
        if (entry.supers_on != row.line.entry.supers_on && save(entry)) {
            row.line.entry = entry;
        }
        return true;
    };
}

void HiveGrid::add_strips(std::vector<Column<HiveLineRow>>& columns, const Habits& habits) {
    const Habits* ways = &habits;
    Column<HiveLineRow>& strips = columns[hive_strips];
    //: Column: strips that hang
    strips.header = tr("Strips");
    strips.align = Qt::AlignRight;
    strips.type = CellType::strong;
    strips.text = [](const HiveLineRow& row) { return row.line.strips == 0 ? QString() : QString::number(row.line.strips); };
    strips.sort_key = [](const HiveLineRow& row) { return QVariant(row.line.strips); };

    Column<HiveLineRow>& bags = columns[hive_bags];
    //: Column: the bags that strips come from
    bags.header = tr("Bags");
    bags.type = CellType::code;
    bags.text = [](const HiveLineRow& row) { return row.line.bags.join(QLatin1Char(' ')); };
    bags.tip = bags.text;

    Column<HiveLineRow>& since = columns[hive_since];
    //: Column: the day strips were hung
    since.header = tr("Since");
    since.align = Qt::AlignRight;
    since.text = [ways](const HiveLineRow& row) { return row.line.since ? YardWords::day(*row.line.since, *ways) : QString(); };
    since.sort_key = [](const HiveLineRow& row) { return day_key(row.line.since); };

    Column<HiveLineRow>& day = columns[hive_day];
    //: Column: 1 on the day strips were hung
    day.header = tr("Day");
    day.align = Qt::AlignRight;
    day.text = [](const HiveLineRow& row) { return row.line.since ? QString::number(row.line.day_number) : QString(); };
    day.sort_key = [](const HiveLineRow& row) { return row.line.since ? QVariant(row.line.day_number) : QVariant(); };

    Column<HiveLineRow>& window = columns[hive_window];
    //: Column: the first and the last day to pull
    window.header = tr("Pull window");
    window.text = [ways](const HiveLineRow& row) { return YardWords::days(row.line.pull_from, row.line.pull_by, *ways); };
    window.sort_key = [](const HiveLineRow& row) { return day_key(row.line.pull_by); };
    window.tip = [](const HiveLineRow& row) {
        //: Strips of two visits hang with days to pull that have none in common
        return row.line.windows_clash ? tr("Strips hang here whose pull windows do not meet: pull each in its own time.") : QString();
    };

    Column<HiveLineRow>& state = columns[hive_state];
    //: Column: how the strips hang
    state.header = tr("State");
    state.state = [](const HiveLineRow& row) { return YardWords::state(row.line); };
    state.text = [](const HiveLineRow& row) {
        const QString word = YardWords::word(row.line);
        //: %1 how strips hang; their pull windows have no day in common
        return row.line.windows_clash ? tr("%1, windows clash").arg(word) : word;
    };
    state.sort_key = [](const HiveLineRow& row) {
        return row.line.state ? QVariant(-static_cast<int>(*row.line.state)) : row.line.entry.state == work::StateOfHive::alive ? QVariant(1) : QVariant(2);
    };

    Column<HiveLineRow>& count = columns[hive_count];
    //: Column: the last mite count
    count.header = tr("Last count");
    count.text = [ways](const HiveLineRow& row) { return row.line.last_count ? YardWords::rate(row.line.last_count->figures, *ways) : QString(); };
    count.sort_key = [](const HiveLineRow& row) {
        const auto& last = row.line.last_count;
        return last && last->figures.rate ? QVariant(qint64{-last->figures.rate->count}) : QVariant();
    };
    count.tip = [ways](const HiveLineRow& row) {
        const auto& last = row.line.last_count;
        //: A mite count: %1 a day, %2 a way to count, %3 "9 on 300 bees"
        return last ? tr("%1, %2: %3").arg(YardWords::day(last->on, *ways), YardWords::kind(last->kind), YardWords::counted(last->kind, last->mites, last->bees, last->days))
                    : QString();
    };
}

std::vector<Column<HiveLineRow>> HiveGrid::columns(const Habits& habits, const Save& save, const std::function<void(const QString& hive)>& unread) {
    std::vector<Column<HiveLineRow>> columns(12);
    Column<HiveLineRow>& yard = columns[hive_yard];
    //: Column
    yard.header = tr("Yard");
    yard.text = [](const HiveLineRow& row) { return row.line.yard_name; };

    Column<HiveLineRow>& name = columns[hive_name];
    //: Column
    name.header = tr("Hive");
    name.type = CellType::code;
    name.text = [](const HiveLineRow& row) { return YardWords::hive(row.line.entry.name, row.line.entry.hives); };
    name.tip = [](const HiveLineRow& row) {
        //: A hive that is kept without strips to compare with
        return row.line.entry.untreated ? tr("left untreated on purpose") : row.line.entry.note;
    };
    add_figures(columns, save, unread);
    add_strips(columns, habits);
    return columns;
}

} // namespace soakbook::ui
