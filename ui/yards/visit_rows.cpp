// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/visit_rows.h"

#include "ui/yards/yard_words.h"

namespace soakbook::ui {

using work::StateOfHive;

std::optional<int> VisitRow::strips() const {
    if (typed.is_typed) {
        return typed.value;
    }
    // A hive that is dead gets none unless somebody says so.
    return state != StateOfHive::alive ? std::optional<int>(0) : line.planned;
}

bool VisitRow::is_exception() const {
    return strips() != line.planned || state != StateOfHive::alive;
}

void VisitRow::take_typing(const VisitRow& other) {
    typed = other.typed;
    figure = other.figure;
    bag = other.bag;
    state = other.state;
    note = other.note;
}

work::VisitEntry::Row VisitRow::entry() const {
    const auto changed = state == StateOfHive::alive ? std::nullopt : std::optional<StateOfHive>(state);
    return {line.hive, strips(), bag, changed, note};
}

QString VisitRow::unread() const {
    return typed.is_wrong() ? QStringLiteral("strips") : figure.is_wrong() ? QStringLiteral("figure") : QString();
}

std::vector<int> VisitGrid::widths() {
    return {110, 116, 80, 86, 150, 94, 130};
}

std::vector<Column<VisitRow>> VisitGrid::columns(const VisitTyping& typing) {
    const auto changed = typing.changed;
    std::vector<Column<VisitRow>> columns(7);

    Column<VisitRow>& hive = columns[visit_hive];
    //: Column
    hive.header = tr("Hive");
    hive.type = CellType::code;
    hive.text = [](const VisitRow& row) { return YardWords::hive(row.line.name, row.line.hives); };
    hive.tip = [](const VisitRow& row) {
        //: A hive that is kept without strips to compare with
        return row.line.untreated ? tr("left untreated on purpose") : QString();
    };

    Column<VisitRow>& figure = columns[visit_figure];
    //: Column: how many frames are covered with bees
    figure.header = typing.by_boxes ? tr("Brood boxes") : tr("Frames of bees");
    figure.align = Qt::AlignRight;
    const bool by_boxes = typing.by_boxes;
    figure.text = [by_boxes](const VisitRow& row) { return row.figure.shown(by_boxes ? row.line.brood_boxes : row.line.frames_of_bees); };
    const auto set_figure = typing.set_figure;
    figure.at_once = true;
    figure.write = [changed, set_figure](VisitRow& row, const QString& text) {
        row.figure.type(text);
        if (!row.figure.is_wrong() && set_figure(row.line.hive, row.figure.value)) {
            row.figure.clear();
        }
        changed();
        return true;
    };

    Column<VisitRow>& planned = columns[visit_planned];
    //: Column: strips by the round's rule
    planned.header = tr("Planned");
    planned.align = Qt::AlignRight;
    planned.type = CellType::soft;
    planned.text = [](const VisitRow& row) { return row.line.planned ? cell_text(row.line.planned) : QStringLiteral("?"); };

    Column<VisitRow>& strips = columns[visit_strips];
    //: Column: strips hung on this visit
    strips.header = tr("Strips in");
    strips.align = Qt::AlignRight;
    strips.type = CellType::strong;
    strips.text = [](const VisitRow& row) { return row.typed.shown(row.strips()); };
    strips.marked = [](const VisitRow& row) { return row.strips() != row.line.planned || row.typed.is_wrong(); };
    strips.tip = [](const VisitRow& row) {
        //: %n strips hang in the hive already
        return row.line.hanging > 0 ? tr("%n strips hang there already", nullptr, row.line.hanging) : QString();
    };
    strips.write = [changed](VisitRow& row, const QString& text) {
        row.typed.type(text);
        // Emptied, the cell goes back to what was planned.
        if (!row.typed.is_wrong() && !row.typed.value) {
            row.typed.clear();
        }
        changed();
        return true;
    };

    Column<VisitRow>& bag = columns[visit_bag];
    //: Column: the bag from which strips come
    bag.header = tr("From bag");
    bag.type = CellType::code;
    bag.text = [](const VisitRow& row) { return YardWords::bags(row.from); };
    bag.marked = [](const VisitRow& row) { return row.bag.has_value(); };
    const auto bag_named = typing.bag_named;
    bag.write = [changed, bag_named](VisitRow& row, const QString& code) {
        row.bag = code.isEmpty() ? std::nullopt : bag_named(code);
        changed();
        return code.isEmpty() || row.bag.has_value();
    };

    Column<VisitRow>& state = columns[visit_state];
    //: Column: alive, dead or gone
    state.header = tr("State");
    state.text = [](const VisitRow& row) { return YardWords::word(row.state); };
    state.state = [](const VisitRow& row) {
        return row.state == StateOfHive::alive ? std::nullopt : std::optional<State>(State::gone);
    };
    state.marked = [](const VisitRow& row) { return row.state != StateOfHive::alive; };
    state.write = [changed](VisitRow& row, const QString& text) {
        for (const StateOfHive one : {StateOfHive::alive, StateOfHive::dead, StateOfHive::gone}) {
            if (YardWords::word(one) == text) {
                row.state = one;
                changed();
                return true;
            }
        }
        return false;
    };

    Column<VisitRow>& note = columns[visit_note];
    //: Column
    note.header = tr("Note");
    note.type = CellType::soft;
    // What was known of the hive stands there until something is noted on this visit.
    note.text = [](const VisitRow& row) { return row.note.isEmpty() ? row.line.note : row.note; };
    note.write = [changed](VisitRow& row, const QString& text) {
        row.note = text.trimmed() == row.line.note ? QString() : text.trimmed();
        changed();
        return true;
    };
    return columns;
}

} // namespace soakbook::ui
