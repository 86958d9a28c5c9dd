// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/pull_rows.h"

#include "ui/yards/yard_words.h"

#include <algorithm>

namespace soakbook::ui {

std::optional<int> PullRow::strips_pulled() const {
    return pulled.is_typed ? pulled.value : std::optional<int>(line.strips);
}

std::optional<int> PullRow::strips_missing() const {
    if (stays() || pulled.is_wrong()) {
        return std::nullopt;
    }
    return missing.is_typed && (missing.value || missing.is_wrong()) ? missing.value : std::max(0, line.strips - *strips_pulled());
}

QString PullRow::unread() const {
    return pulled.is_wrong() ? QStringLiteral("pulled") : missing.is_wrong() ? QStringLiteral("missing") : QString();
}

void PullRow::take_typing(const PullRow& other) {
    pulled = other.pulled;
    missing = other.missing;
    note = other.note;
}

std::vector<int> PullGrid::widths() {
    return {120, 104, 78, 80, 80, 54, 130, 140, 80, 82, 120};
}

std::vector<Column<PullRow>> PullGrid::columns(const Habits& habits, std::function<void()> changed) {
    std::vector<Column<PullRow>> columns(11);
    const Habits* ways = &habits;

    Column<PullRow>& yard = columns[pull_yard];
    //: Column
    yard.header = tr("Yard");
    yard.text = [](const PullRow& row) { return row.line.yard_name; };

    Column<PullRow>& hive = columns[pull_hive];
    //: Column
    hive.header = tr("Hive");
    hive.type = CellType::code;
    hive.text = [](const PullRow& row) { return YardWords::hive(row.line.hive_name, row.line.hives); };
    hive.tip = [](const PullRow& row) {
        //: %1 the yard where a hive stood when its strips were hung
        return row.line.placed_in.isEmpty() ? QString() : tr("hung in %1").arg(row.line.placed_in);
    };

    Column<PullRow>& bag = columns[pull_bag];
    //: Column: the bag that the strips came from
    bag.header = tr("Bag");
    bag.type = CellType::code;
    bag.text = [](const PullRow& row) { return row.line.bag_code; };

    Column<PullRow>& hanging = columns[pull_hanging];
    //: Column: strips that hang
    hanging.header = tr("Hanging");
    hanging.align = Qt::AlignRight;
    hanging.type = CellType::soft;
    hanging.text = [](const PullRow& row) { return QString::number(row.line.strips); };

    Column<PullRow>& since = columns[pull_since];
    //: Column: the day the strips were hung
    since.header = tr("Since");
    since.align = Qt::AlignRight;
    since.text = [ways](const PullRow& row) { return YardWords::day(row.line.placed_on, *ways); };

    Column<PullRow>& day = columns[pull_day];
    //: Column: 1 on the day the strips were hung
    day.header = tr("Day");
    day.align = Qt::AlignRight;
    day.text = [](const PullRow& row) { return QString::number(row.line.day_number); };

    Column<PullRow>& window = columns[pull_window];
    //: Column: the first and last day to pull
    window.header = tr("Pull window");
    window.text = [ways](const PullRow& row) { return YardWords::days(row.line.pull_from, row.line.pull_by, *ways); };

    Column<PullRow>& state = columns[pull_state];
    //: Column: how the strips hang
    state.header = tr("State");
    state.state = [](const PullRow& row) { return std::optional<State>(YardWords::state(row.line.state)); };
    state.text = [](const PullRow& row) {
        const QString word = YardWords::word(row.line.state);
        //: %1 how the strips of a dead hive hang
        return row.line.hive_dead ? tr("hive dead, %1").arg(word) : word;
    };

    Column<PullRow>& pulled = columns[pull_pulled];
    //: Column: strips taken out
    pulled.header = tr("Pulled");
    pulled.align = Qt::AlignRight;
    pulled.type = CellType::strong;
    pulled.text = [](const PullRow& row) {
        //: In place of a number: these strips stay in the hive
        return row.stays() ? tr("stay in") : row.pulled.shown(row.line.strips);
    };
    pulled.marked = [](const PullRow& row) { return row.strips_pulled() != row.line.strips; };
    pulled.write = [changed](PullRow& row, const QString& text) {
        //: In place of a number: these strips stay in the hive
        row.pulled.type(text == tr("stay in") ? QString() : text);
        changed();
        return true;
    };

    Column<PullRow>& missing = columns[pull_missing];
    //: Column: strips that were not found any more
    missing.header = tr("Missing");
    missing.align = Qt::AlignRight;
    missing.text = [](const PullRow& row) {
        const auto strips = row.strips_missing();
        return row.missing.is_wrong() ? row.missing.unread : strips == 0 ? QString() : cell_text(strips);
    };
    missing.marked = [](const PullRow& row) { return row.missing.is_wrong() || row.strips_missing().value_or(0) > 0; };
    missing.can_write = [](const PullRow& row) { return !row.stays(); };
    missing.write = [changed](PullRow& row, const QString& text) {
        row.missing.type(text);
        changed();
        return true;
    };

    Column<PullRow>& note = columns[pull_note];
    //: Column
    note.header = tr("Note");
    note.type = CellType::soft;
    note.text = [](const PullRow& row) { return row.note; };
    note.write = [changed](PullRow& row, const QString& text) {
        row.note = text.trimmed();
        changed();
        return true;
    };
    return columns;
}

} // namespace soakbook::ui
