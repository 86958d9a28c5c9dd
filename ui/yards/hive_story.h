// SPDX-License-Identifier: GPL-3.0-or-later
// One hive's story: strips in and out, counts, moves, newest first; each can be put right with a reason.
#pragma once

#include "core/work/yards_view.h"
#include "ui/parts/cards.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"

class QPushButton;

namespace soakbook::ui {

class HowButton;
class RecordTable;

class HiveStory : public Card {
    Q_OBJECT

public:
    explicit HiveStory(Desk& desk, QWidget* parent = nullptr);
    /// Shows that hive; 0 shows none.
    void show_hive(work::HiveId hive);
    work::HiveId hive() const { return m_hive; }
    void refresh();

Q_SIGNALS:
    void closed();

private:
    struct Line {
        qint64 id = 0;
        work::HiveEvent event;
    };
    std::vector<Column<Line>> columns() const;
    QString what(const work::HiveEvent& event) const;
    void make_buttons();
    void settle_buttons();
    void show_how();
    bool is_hanging(const work::HiveEvent& strips_in) const;
    const work::HiveEvent* chosen() const;

    Desk& m_desk;
    work::HiveId m_hive;
    QString m_name;
    Sentence* m_sentence;
    HowButton* m_how;
    RecordTable* m_table;
    RowsModel<Line>* m_rows;
    QPushButton* m_correct;
    QPushButton* m_void;
    QPushButton* m_weigh;
    QPushButton* m_place;
};

} // namespace soakbook::ui
