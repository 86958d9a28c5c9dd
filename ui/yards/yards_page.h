// SPDX-License-Identifier: GPL-3.0-or-later
// The place itself: the yards at the left, a yard or the rounds at the right, and over both a grid while one is entered.
#pragma once

#include "core/work/hives.h"
#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <functional>

class QStackedWidget;

namespace soakbook::ui {

class CountPage;
class EmptyPage;
class GridPage;
class PullPage;
class RoundsPage;
class SideList;
class VisitPage;
class YardPage;

class YardsPage : public Place {
    Q_OBJECT

public:
    explicit YardsPage(Desk& desk);
    PlaceName place() const override { return PlaceName::yards; }
    QString name() const override;
    QString title() const override;
    void open(const Intent& intent) override;
    void refresh() override;
    void take_focus() override;

private:
    void make_pages();
    void connect_pages();
    void open_task(const QString& task, const std::vector<qint64>& ids);
    void fill_list();
    void show_entry(qint64 entry);
    void show_hive(work::HiveId hive);
    void show_grid(GridPage* page);
    void leave_grid();
    void open_strips_in(work::YardId yard, work::RoundId round);
    void open_strips_out(work::YardId yard);
    void open_count(work::YardId yard);
    void print_run_sheet(work::YardId yard, work::RoundId round);
    void plan_first(work::YardId yard, std::function<void(work::RoundId)> then);
    void new_yard();
    void edit_yard(work::YardId yard);
    void move_hives(const std::vector<qint64>& ids);
    GridPage* grid() const;
    bool any_yard() const;

    Desk& m_desk;
    QStackedWidget* m_whole; ///< nothing yet; list and page; a grid
    EmptyPage* m_empty;
    QWidget* m_split;
    SideList* m_list;
    QStackedWidget* m_right;
    YardPage* m_yard_page;
    RoundsPage* m_rounds_page;
    VisitPage* m_visit;
    PullPage* m_pull;
    CountPage* m_count;
    bool m_chosen_once = false;
};

} // namespace soakbook::ui
