// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of the rounds and of a round's yards.
#include "ui/yards/rounds_page.h"

#include "ui/yards/yard_words.h"

#include <QDate>

#include <algorithm>

namespace soakbook::ui {

std::optional<State> RoundsPage::state(const work::RoundLine& round) const {
    if (round.closed) {
        return State::gone;
    }
    if (const auto worst = m_worst.find(round.name); worst != m_worst.end() && round.strips_hanging > 0) {
        return YardWords::state(worst->second);
    }
    return round.strips_in == 0 ? State::resting : State::ready;
}

QString RoundsPage::word(const work::RoundLine& round) const {
    if (round.closed) {
        //: The state of a round
        return tr("closed");
    }
    if (const auto worst = m_worst.find(round.name); worst != m_worst.end() && round.strips_hanging > 0) {
        return YardWords::word(worst->second);
    }
    //: The state of a round: no strip hangs yet
    return round.strips_in == 0 ? tr("planned")
                                //: The state of a round: every strip came out again
                                : tr("all out");
}

std::vector<int> RoundsPage::round_widths() {
    return {150, 112, 130, 110, 70, 84, 88, 128, 116};
}

std::vector<Column<work::RoundLine>> RoundsPage::round_columns() const {
    using Row = work::RoundLine;
    std::vector<Column<Row>> columns(9);
    //: Column: the name of a round
    columns[0].header = tr("Round");
    columns[0].type = CellType::strong;
    columns[0].text = [](const Row& round) { return round.name; };
    //: Column
    columns[1].header = tr("Day");
    columns[1].align = Qt::AlignRight;
    columns[1].text = [this](const Row& round) { return YardWords::day(round.planned_on, m_desk); };
    columns[1].sort_key = [](const Row& round) { return QVariant(to_qdate(round.planned_on)); };
    //: Column: the kind of strips
    columns[2].header = tr("Strips");
    columns[2].text = [](const Row& round) { return round.strip_kind_name; };
    //: Column
    columns[3].header = tr("Yards");
    columns[3].text = [](const Row& round) {
        const auto done = std::count_if(round.yards.begin(), round.yards.end(), [](const auto& yard) { return yard.second; });
        //: How many yards of a round have their strips
        return tr("%1 of %2 done").arg(done).arg(round.yards.size());
    };
    columns[3].tip = [](const Row& round) { return round.yard_names.join(QStringLiteral(", ")); };
    const auto number = [&columns](std::size_t at, const QString& header, int Row::*figure) {
        columns[at].header = header;
        columns[at].align = Qt::AlignRight;
        columns[at].text = [figure](const Row& round) { return QString::number(round.*figure); };
        columns[at].sort_key = [figure](const Row& round) { return QVariant(round.*figure); };
    };
    //: Column
    number(4, tr("Hives"), &Row::hives_planned);
    //: Column: strips by the rule
    number(5, tr("Planned"), &Row::strips_planned);
    //: Column: strips that hang
    number(6, tr("Hanging"), &Row::strips_hanging);
    columns[6].type = CellType::strong;
    //: Column: the first and last day to pull
    columns[7].header = tr("Pull window");
    columns[7].text = [this](const Row& round) { return YardWords::days(round.pull_from, round.pull_by, m_desk); };
    columns[7].sort_key = [](const Row& round) { return round.pull_by ? QVariant(to_qdate(*round.pull_by)) : QVariant(); };
    //: Column
    columns[8].header = tr("State");
    columns[8].text = [this](const Row& round) { return word(round); };
    columns[8].state = [this](const Row& round) { return state(round); };
    return columns;
}

std::vector<Column<RoundsPage::YardOfRound>> RoundsPage::yard_columns() const {
    std::vector<Column<YardOfRound>> columns(5);
    //: Column
    columns[0].header = tr("Yard");
    columns[0].text = [](const YardOfRound& row) { return row.yard.name; };
    //: Column
    columns[1].header = tr("Hives");
    columns[1].align = Qt::AlignRight;
    columns[1].text = [](const YardOfRound& row) { return QString::number(row.yard.hives); };
    //: Column: strips that hang in a yard
    columns[2].header = tr("Hanging");
    columns[2].align = Qt::AlignRight;
    columns[2].type = CellType::strong;
    columns[2].text = [](const YardOfRound& row) { return row.yard.strips_hanging == 0 ? QString() : QString::number(row.yard.strips_hanging); };
    //: Column: the first and last day to pull
    columns[3].header = tr("Pull window");
    columns[3].text = [this](const YardOfRound& row) { return YardWords::days(row.yard.pull_from, row.yard.pull_by, m_desk); };
    //: Column: whether the strips of a round are in
    columns[4].header = tr("This round");
    columns[4].state = [](const YardOfRound& row) { return std::optional<State>(row.visited ? State::ready : State::resting); };
    columns[4].text = [](const YardOfRound& row) {
        //: The strips of a round are in at this yard
        return row.visited ? tr("strips in")
                           //: The strips of a round are still to go in
                           : tr("to be visited");
    };
    return columns;
}

} // namespace soakbook::ui
