// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/yards_page.h"

#include "core/work/yards_view.h"
#include "ui/papers/pull_sheet.h"
#include "ui/papers/run_sheet.h"
#include "ui/parts/cards.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/side_list.h"
#include "ui/yards/count_page.h"
#include "ui/yards/hive_form.h"
#include "ui/yards/pull_page.h"
#include "ui/yards/rounds_page.h"
#include "ui/yards/visit_page.h"
#include "ui/yards/yard_form.h"
#include "ui/yards/yard_list.h"
#include "ui/yards/yard_page.h"
#include "ui/yards/yard_rounds.h"
#include "ui/yards/yards_place.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

Place* make_yards_place(Desk& desk) {
    return new YardsPage(desk);
}

YardsPage::YardsPage(Desk& desk) : m_desk(desk), m_whole(new QStackedWidget(this)) {
    setObjectName(QStringLiteral("yards_place"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_whole);
    make_pages();
    connect_pages();
    refresh();
}

void YardsPage::make_pages() {
    m_empty = new EmptyPage(QStringLiteral("yards"),
                            //: An empty page: its heading
                            tr("No yard yet"),
                            //: An empty page: what will stand here
                            tr("Your yards will stand here, with their hives and what hangs in them: since when, until when, from which bags. "
                               "Start with the place where the first hives stand."),
                            //: The button of an empty page
                            tr("New yard"));
    m_empty->button()->setObjectName(QStringLiteral("yards_first"));
    //: Read aloud: the list at the left
    m_list = new SideList(tr("Yards and rounds"));
    m_list->setObjectName(QStringLiteral("yards_list"));
    m_right = new QStackedWidget;
    m_yard_page = new YardPage(m_desk);
    m_rounds_page = new RoundsPage(m_desk);
    m_right->addWidget(m_yard_page);
    m_right->addWidget(m_rounds_page);
    //: Over the list at the left, and the button beside it
    auto* split = new SplitPage(tr("Yards"), tr("New yard"), m_list, m_right);
    split->button()->setObjectName(QStringLiteral("yards_new"));
    // The page at the right has the one filled button.
    split->button()->setProperty("kind", QString());
    connect(split->button(), &QPushButton::clicked, this, &YardsPage::new_yard);
    m_split = split;
    m_visit = new VisitPage(m_desk);
    m_pull = new PullPage(m_desk);
    m_count = new CountPage(m_desk);
    for (QWidget* page : {static_cast<QWidget*>(m_empty), m_split, static_cast<QWidget*>(m_visit), static_cast<QWidget*>(m_pull), static_cast<QWidget*>(m_count)}) {
        m_whole->addWidget(page);
    }
}

void YardsPage::connect_pages() {
    connect(m_empty, &EmptyPage::started, this, &YardsPage::new_yard);
    connect(m_list, &SideList::chosen, this, &YardsPage::show_entry);
    connect(m_list, &SideList::entered_page, this, [this](qint64 entry) {
        show_entry(entry);
        take_focus();
    });
    connect(m_yard_page, &YardPage::wants_strips_in, this, [this] { open_strips_in(m_yard_page->yard(), {}); });
    connect(m_yard_page, &YardPage::wants_strips_out, this, [this] { open_strips_out(m_yard_page->yard()); });
    connect(m_yard_page, &YardPage::wants_count, this, [this] { open_count(m_yard_page->yard()); });
    connect(m_yard_page, &YardPage::wants_run_sheet, this, [this] { print_run_sheet(m_yard_page->yard(), {}); });
    connect(m_yard_page, &YardPage::wants_pull_list, this, [this] { offer_pull_list(m_desk, m_yard_page->yard(), window()); });
    connect(m_rounds_page, &RoundsPage::wants_strips_in, this, [this](qint64 round, qint64 yard) { open_strips_in(work::YardId{yard}, work::RoundId{round}); });
    connect(m_rounds_page, &RoundsPage::wants_run_sheet, this, [this](qint64 round, qint64 yard) { print_run_sheet(work::YardId{yard}, work::RoundId{round}); });
    connect(m_rounds_page, &RoundsPage::wants_load_out, this, [this](qint64 round) { offer_load_out(m_desk, work::RoundId{round}, window()); });
    connect(m_visit, &VisitPage::wants_run_sheet, this, [this](qint64 round, qint64 yard) { print_run_sheet(work::YardId{yard}, work::RoundId{round}); });
    connect(m_pull, &PullPage::wants_pull_list, this, [this](qint64 yard) { offer_pull_list(m_desk, work::YardId{yard}, window()); });
    for (GridPage* page : {static_cast<GridPage*>(m_visit), static_cast<GridPage*>(m_pull), static_cast<GridPage*>(m_count)}) {
        connect(page, &GridPage::left, this, &YardsPage::leave_grid);
        connect(page, &GridPage::title_changed, this, &Place::title_changed);
        connect(page, &GridPage::entered, this, [this](const QString& news) {
            leave_grid();
            m_yard_page->tell(news);
        });
    }
}

QString YardsPage::name() const {
    //: A place of the house, in the navigation
    return tr("Yards");
}

GridPage* YardsPage::grid() const {
    return qobject_cast<GridPage*>(m_whole->currentWidget());
}

QString YardsPage::title() const {
    if (const GridPage* page = grid()) {
        return page->title();
    }
    if (!any_yard()) {
        return name();
    }
    const qint64 entry = m_list->current_id();
    if (entry == rounds_entry) {
        //: Title of a page
        return tr("Rounds");
    }
    for (const work::YardLine& yard : work::yard_lines(m_desk.workbook(), m_desk.today())) {
        if (yard.id.value == entry) {
            return yard.name;
        }
    }
    //: Title of a page
    return tr("All yards");
}

bool YardsPage::any_yard() const {
    return m_list->size() > fixed_entries;
}

void YardsPage::open(const Intent& intent) {
    const qint64 first = intent.ids.empty() ? 0 : intent.ids.front();
    const work::YardId yard = first != 0 ? work::YardId{first} : m_yard_page->yard();
    const QString& task = intent.task;
    if (task == QLatin1String("new_yard")) {
        new_yard();
    } else if (task == QLatin1String("edit_yard")) {
        leave_grid();
        edit_yard(yard);
    } else if (task == QLatin1String("move_hives")) {
        move_hives(intent.ids);
    } else if (task == QLatin1String("hive")) {
        show_hive(work::HiveId{first});
    } else if (task == QLatin1String("round")) {
        leave_grid();
        show_entry(rounds_entry);
        m_rounds_page->show_round(work::RoundId{first});
    } else if (task == QLatin1String("plan_round")) {
        leave_grid();
        show_entry(rounds_entry);
        std::vector<work::YardId> yards;
        for (const qint64 id : intent.ids) {
            yards.push_back(work::YardId{id});
        }
        m_rounds_page->plan(yards);
    } else {
        leave_grid();
        if (first != 0) {
            show_entry(first);
        }
        if (task == QLatin1String("strips_in")) {
            open_strips_in(yard, work::RoundId{intent.ids.size() > 1 ? intent.ids[1] : 0});
        } else if (task == QLatin1String("strips_out")) {
            const bool all = !intent.ids.empty() && first == 0;
            open_strips_out(all ? work::YardId{} : yard);
        } else if (task == QLatin1String("pull_list")) {
            offer_pull_list(m_desk, yard, window());
        } else if (task == QLatin1String("count")) {
            open_count(yard);
        }
    }
}

void YardsPage::refresh() {
    m_list->set_items(yard_items(m_desk));
    if (!any_yard()) {
        m_whole->setCurrentWidget(m_empty);
        Q_EMIT title_changed();
        return;
    }
    if (m_whole->currentWidget() == m_empty) {
        m_whole->setCurrentWidget(m_split);
    }
    if (m_list->current_id() == 0) {
        show_entry(first_entry(m_desk));
    }
    if (GridPage* page = grid()) {
        page->refresh();
    } else if (m_right->currentWidget() == m_rounds_page) {
        m_rounds_page->refresh();
    } else {
        m_yard_page->refresh();
    }
    Q_EMIT title_changed();
}

void YardsPage::take_focus() {
    if (GridPage* page = grid()) {
        page->take_focus();
    } else if (m_whole->currentWidget() == m_empty) {
        m_empty->button()->setFocus();
    } else if (m_right->currentWidget() == m_rounds_page) {
        m_rounds_page->take_focus();
    } else {
        m_yard_page->take_focus();
    }
}

void YardsPage::show_entry(qint64 entry) {
    m_list->choose(entry);
    if (entry == rounds_entry) {
        m_right->setCurrentWidget(m_rounds_page);
        m_rounds_page->refresh();
    } else {
        m_right->setCurrentWidget(m_yard_page);
        m_yard_page->tell({});
        m_yard_page->show_yard(entry == all_entry ? work::YardId{} : work::YardId{entry});
    }
    Q_EMIT title_changed();
}

void YardsPage::show_hive(work::HiveId id) {
    const auto hive = work::hive(m_desk.workbook(), id);
    if (!hive) {
        return;
    }
    leave_grid();
    show_entry(hive->yard.value);
    m_yard_page->show_hive(id);
}

void YardsPage::show_grid(GridPage* page) {
    m_whole->setCurrentWidget(page);
    page->take_focus();
    Q_EMIT title_changed();
}

void YardsPage::leave_grid() {
    if (grid() != nullptr) {
        m_whole->setCurrentWidget(m_split);
        refresh();
        take_focus();
    }
}

void YardsPage::plan_first(work::YardId yard, std::function<void(work::RoundId)> then) {
    // No round waits here: planning one is the way in.
    m_rounds_page->plan({yard}, std::move(then));
}

void YardsPage::open_strips_in(work::YardId yard, work::RoundId round) {
    if (!yard) {
        return;
    }
    if (!round) {
        const auto waiting = open_rounds(m_desk.workbook(), yard);
        if (waiting.empty() || is_visited(waiting.front(), yard)) {
            plan_first(yard, [this, yard](work::RoundId planned) { open_strips_in(yard, planned); });
            return;
        }
        round = waiting.front().id;
    }
    m_visit->open(round, yard);
    show_grid(m_visit);
}

void YardsPage::open_strips_out(work::YardId yard) {
    m_pull->open(yard);
    show_grid(m_pull);
}

void YardsPage::open_count(work::YardId yard) {
    if (yard) {
        m_count->open(yard);
        show_grid(m_count);
    }
}

void YardsPage::print_run_sheet(work::YardId yard, work::RoundId round) {
    if (!round) {
        const auto waiting = open_rounds(m_desk.workbook(), yard);
        if (waiting.empty()) {
            plan_first(yard, [this, yard](work::RoundId planned) { print_run_sheet(yard, planned); });
            return;
        }
        round = waiting.front().id;
    }
    offer_run_sheet(m_desk, round, yard, window());
}

void YardsPage::edit_yard(work::YardId yard) {
    const auto all = work::yards(m_desk.workbook(), true);
    const auto found = std::find_if(all.begin(), all.end(), [yard](const work::YardEntry& entry) { return entry.id == yard; });
    if (found != all.end()) {
        show_entry(yard.value);
        open_yard_form(window(), m_desk, *found);
    }
}

void YardsPage::move_hives(const std::vector<qint64>& ids) {
    std::vector<work::HiveId> hives;
    for (const qint64 id : ids) {
        if (work::hive(m_desk.workbook(), work::HiveId{id})) {
            hives.push_back(work::HiveId{id});
        }
    }
    if (!hives.empty()) {
        show_hive(hives.front());
        open_move_form(window(), m_desk, hives);
    }
}

void YardsPage::new_yard() {
    open_yard_form(window(), m_desk, {}, [this](work::YardId yard) {
        leave_grid();
        refresh();
        show_entry(yard.value);
        take_focus();
    });
}

} // namespace soakbook::ui
