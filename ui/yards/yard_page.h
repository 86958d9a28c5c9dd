// SPDX-License-Identifier: GPL-3.0-or-later
// One yard, or all of them: its figures as a sentence, what can be done, its hives, and the story of the chosen one.
#pragma once

#include "ui/papers/history_dialog.h"
#include "ui/parts/desk.h"
#include "ui/yards/hive_rows.h"

#include <QWidget>

class QBoxLayout;
class QLabel;
class QMenu;
class QPushButton;

namespace soakbook::ui {

class Card;
class FlowLayout;
class HiveStory;
class LowTable;
class NoticeBar;
class Sentence;

class YardPage : public QWidget {
    Q_OBJECT

public:
    explicit YardPage(Desk& desk, QWidget* parent = nullptr);
    /// Shows the hives of that yard; 0 shows those of all.
    void show_yard(work::YardId yard);
    work::YardId yard() const { return m_yard; }
    /// Shows the story of that hive, which stands in the yard shown.
    void show_hive(work::HiveId hive);
    void refresh();
    void take_focus();
    /// One line of news over the page, until it is put away or another comes.
    void tell(const QString& news);

Q_SIGNALS:
    void wants_strips_in();
    void wants_strips_out();
    void wants_count();
    void wants_run_sheet();
    void wants_pull_list();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void make_buttons();
    QPushButton* button(const QString& words, const char* name);
    void make_table();
    void fill_more();
    HistoryOf history() const;
    void show_sentence(const std::vector<work::HiveLine>& lines);
    void settle_buttons(const std::vector<work::HiveLine>& lines);
    void settle_story();
    bool save(const work::HiveEntry& hive);
    std::vector<work::HiveId> chosen_hives() const;

    Desk& m_desk;
    work::YardId m_yard;
    work::YardEntry m_entry;
    NoticeBar* m_news;
    Sentence* m_sentence;
    Card* m_card;
    FlowLayout* m_buttons;
    QLabel* m_complaint;
    LowTable* m_table;
    RowsModel<HiveLineRow>* m_rows;
    QBoxLayout* m_halves;
    HiveStory* m_story;
    QPushButton* m_in;
    QPushButton* m_out;
    QPushButton* m_count;
    QPushButton* m_run_sheet;
    QPushButton* m_pull_list;
    QPushButton* m_add;
    QPushButton* m_times;
    QPushButton* m_more;
    QMenu* m_menu;
};

} // namespace soakbook::ui
