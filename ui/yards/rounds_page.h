// SPDX-License-Identifier: GPL-3.0-or-later
// The rounds: what each wants, what of it hangs, and the yards of the chosen one.
#pragma once

#include "core/work/round.h"
#include "core/work/yards_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"

#include <QWidget>

#include <map>

class QLabel;
class QPushButton;

namespace soakbook::ui {

class Card;
class EmptyPage;
class HowButton;
class NoticeBar;
class RecordTable;
class Sentence;

class RoundsPage : public QWidget {
    Q_OBJECT

public:
    explicit RoundsPage(Desk& desk, QWidget* parent = nullptr);
    void refresh();
    void show_round(work::RoundId round);
    void take_focus();
    /// Opens the form of a new round, with these yards ticked.
    void plan(const std::vector<work::YardId>& yards, std::function<void(work::RoundId)> done = {});

Q_SIGNALS:
    void wants_strips_in(qint64 round, qint64 yard);
    void wants_run_sheet(qint64 round, qint64 yard);
    void wants_load_out(qint64 round);

private:
    struct YardOfRound {
        work::RoundId round;
        work::YardLine yard;
        bool visited = false;
    };
    std::vector<Column<work::RoundLine>> round_columns() const;
    static std::vector<int> round_widths();
    std::vector<Column<YardOfRound>> yard_columns() const;
    std::optional<State> state(const work::RoundLine& round) const;
    QString word(const work::RoundLine& round) const;
    void make_rounds();
    void make_yards();
    void show_chosen();
    void show_mites(const work::RoundLine& round);
    void close_chosen();
    const work::RoundLine* chosen() const;

    Desk& m_desk;
    std::map<QString, work::PullState> m_worst; ///< how the strips of a round hang, by its name
    QWidget* m_filled;
    EmptyPage* m_empty;
    Sentence* m_sentence;
    RecordTable* m_table;
    RowsModel<work::RoundLine>* m_rows;
    Card* m_yards_card;
    RecordTable* m_yards_table;
    RowsModel<YardOfRound>* m_yard_rows;
    QWidget* m_mites_row;
    QLabel* m_mites; ///< what the round did to the mites
    HowButton* m_how;
    QLabel* m_complaint;
    QPushButton* m_in;
    QPushButton* m_sheet;
    QPushButton* m_load;
    QPushButton* m_change;
    QPushButton* m_close;
};

} // namespace soakbook::ui
