// SPDX-License-Identifier: GPL-3.0-or-later
// The page behind make_shed_place().
#pragma once

#include "core/work/shed_view.h"
#include "ui/papers/history_dialog.h"
#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <vector>

class QAction;
class QStackedWidget;

namespace soakbook::ui {

class BatchCourse;
class EmptyPage;
class PageScroll;
class SideList;
class SplitPage;

class ShedPage : public Place {
    Q_OBJECT

public:
    explicit ShedPage(Desk& desk, QWidget* parent = nullptr);
    PlaceName place() const override { return PlaceName::shed; }
    QString name() const override;
    QString title() const override;
    QList<QAction*> head_actions() override;
    void open(const Intent& intent) override;
    void refresh() override;
    void take_focus() override;

private:
    /// A course with the ground it scrolls on.
    struct Ground {
        PageScroll* scroll = nullptr;
        BatchCourse* course = nullptr;
    };
    Ground make_ground();
    /// Puts the course of that batch (0: the new one) in front. What is typed in the one before is kept.
    void turn_to(work::BatchId batch);
    void start_new(const QVariantMap& prefill);
    void show_batch(work::BatchId batch);
    void show_list();
    void show_actions();
    HistoryOf history() const;
    void print_mixing_sheet();
    void print_batch_sheet();

    Desk& m_desk;
    SideList* m_list;
    QStackedWidget* m_stack;
    SplitPage* m_split;
    EmptyPage* m_empty;
    Ground m_now;
    std::vector<Ground> m_kept;
    QAction* m_mixing_sheet;
    QAction* m_batch_sheet;
    QAction* m_history;
};

} // namespace soakbook::ui
