// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shed_page.h"

#include "ui/papers/batch_papers.h"
#include "ui/parts/cards.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/side_list.h"
#include "ui/shed/batch_course.h"
#include "ui/shed/batch_items.h"
#include "ui/shed/shed_place.h"

#include <QAction>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTimer>

#include <algorithm>
#include <map>

namespace soakbook::ui {

namespace {

constexpr int above_step = 12;

StepName step_of(const QString& task) {
    static const std::map<QString, StepName> steps{
        {QStringLiteral("weigh_mix"), StepName::mix},        {QStringLiteral("reading"), StepName::heat},
        {QStringLiteral("stir"), StepName::heat},            {QStringLiteral("soak"), StepName::soak},
        {QStringLiteral("weigh"), StepName::weigh},          {QStringLiteral("bag"), StepName::bag},
        {QStringLiteral("fill_reserved"), StepName::bag},    {QStringLiteral("leftovers"), StepName::leftovers},
    };
    return steps.at(task);
}

bool is_step_task(const QString& task) {
    return !task.isEmpty() && task != QLatin1String("show") && task != QLatin1String("new_batch");
}

} // namespace

Place* make_shed_place(Desk& desk) { return new ShedPage(desk); }

ShedPage::ShedPage(Desk& desk, QWidget* parent)
    : Place(parent), m_desk(desk),
      //: Read aloud: the name of a list
      m_list(new SideList(tr("Batches"))), m_stack(new QStackedWidget),
      //: Title of a list
      m_split(new SplitPage(tr("Batches"),
                            //: Button that opens the form for a new batch
                            tr("New batch"), m_list, m_stack, this)),
      //: Title of an empty page
      m_empty(new EmptyPage(QStringLiteral("shed"), tr("No batch yet"),
                            tr("Each batch will stand here as its course: mixed, warmed until it is clear, soaked, weighed, bagged, "
                               "and what was left poured into pails. The amounts are worked out for you, and every step can be "
                               "entered later with its true time."),
                            //: Button that opens the form for a new batch
                            tr("Start the first batch"))),
      //: Button in the head of the page: prints the planned amounts with room to write
      m_mixing_sheet(new QAction(tr("Mixing sheet"), this)),
      //: Button in the head of the page: prints all that was entered for a batch
      m_batch_sheet(new QAction(tr("Batch sheet"), this)),
      //: Button in the head of the page: what was entered for a batch and changed since, by whom and why
      m_history(new QAction(tr("History"), this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_split);
    m_stack->addWidget(m_empty);
    m_list->setObjectName(QStringLiteral("batch_list"));
    m_split->button()->setObjectName(QStringLiteral("new_batch"));
    m_split->button()->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_N));
    m_empty->button()->setObjectName(QStringLiteral("first_batch"));
    connect(m_split->button(), &QPushButton::clicked, this, [this] { open({PlaceName::shed, QStringLiteral("new_batch"), {}, {}}); });
    connect(m_empty, &EmptyPage::started, this, [this] { open({PlaceName::shed, QStringLiteral("new_batch"), {}, {}}); });
    connect(m_list, &SideList::chosen, this, [this](qint64 id) { show_batch(work::BatchId{id}); });
    connect(m_list, &SideList::entered_page, this, [this](qint64 id) {
        show_batch(work::BatchId{id});
        m_now.course->take_focus();
    });
    connect(m_mixing_sheet, &QAction::triggered, this, &ShedPage::print_mixing_sheet);
    connect(m_batch_sheet, &QAction::triggered, this, &ShedPage::print_batch_sheet);
    m_history->setObjectName(QStringLiteral("batch_history"));
    connect(m_history, &QAction::triggered, this, [this] { open_history(m_desk, history(), window()); });
    give_history(desk, this, [this] { return history(); });
    connect(&desk, &Habits::preferences_changed, this, [this] {
        // Units stand in the headers of tables: what is not being typed into is made anew.
        const work::BatchId batch = m_now.course == nullptr ? work::BatchId{} : m_now.course->batch();
        if (batch && !m_now.course->has_typed()) {
            m_stack->removeWidget(m_now.scroll);
            m_now.scroll->deleteLater();
            m_now = {};
            show_batch(batch);
        }
    });
    refresh();
}

QString ShedPage::name() const {
    //: A place of the house: where batches are made
    return tr("Shed");
}

QString ShedPage::title() const {
    if (m_now.course == nullptr || m_stack->currentWidget() == m_empty)
        return name();
    if (m_now.course->is_new()) {
        //: Title of the page while a batch is planned
        return tr("New batch");
    }
    //: Title of the page; %1 the code of a batch
    return m_now.course->view() ? tr("Batch %1").arg(m_now.course->view()->line.code) : name();
}

QList<QAction*> ShedPage::head_actions() { return {m_mixing_sheet, m_batch_sheet, m_history}; }

ShedPage::Ground ShedPage::make_ground() {
    Ground ground{new PageScroll, new BatchCourse(m_desk)};
    ground.scroll->column()->addWidget(ground.course);
    m_stack->addWidget(ground.scroll);
    connect(ground.course, &BatchCourse::planned, this, [this](qint64 id) {
        m_now.course->show_batch(work::BatchId{id});
        refresh();
        m_now.course->take_focus();
    });
    connect(ground.course, &BatchCourse::step_opened, this, [scroll = ground.scroll](const QWidget* step) {
        // After the new heights are known: a step that is not seen whole begins at the top.
        QTimer::singleShot(0, step, [scroll, step] {
            const int top = step->mapTo(scroll->widget(), QPoint()).y();
            QScrollBar* bar = scroll->verticalScrollBar();
            const bool whole = top >= bar->value() && top + step->height() <= bar->value() + scroll->viewport()->height();
            if (!whole)
                bar->setValue(top - above_step);
        });
    });
    connect(ground.course, &BatchCourse::mixing_sheet_wanted, this, &ShedPage::print_mixing_sheet);
    connect(ground.course, &BatchCourse::wishes, this, &Place::wishes);
    return ground;
}

void ShedPage::turn_to(work::BatchId batch) {
    const auto is_for = [batch](const Ground& ground) {
        return ground.course != nullptr && (batch ? ground.course->batch() == batch && !ground.course->is_new()
                                                  : ground.course->is_new());
    };
    if (!is_for(m_now)) {
        if (m_now.course != nullptr && m_now.course->has_typed())
            m_kept.push_back(std::exchange(m_now, {}));
        const auto kept = std::find_if(m_kept.begin(), m_kept.end(), is_for);
        if (kept != m_kept.end()) {
            if (m_now.scroll != nullptr)
                m_now.scroll->deleteLater();
            m_now = *kept;
            m_kept.erase(kept);
        } else if (m_now.course == nullptr) {
            m_now = make_ground();
        }
    }
    m_stack->setCurrentWidget(m_now.scroll);
}

void ShedPage::start_new(const QVariantMap& prefill) {
    turn_to({});
    if (!m_now.course->is_new() || !m_now.course->has_typed())
        m_now.course->start_new(prefill);
    m_list->choose(0);
    show_actions();
    m_now.course->take_focus();
}

void ShedPage::show_batch(work::BatchId batch) {
    turn_to(batch);
    if (m_now.course->batch() != batch || m_now.course->is_new())
        m_now.course->show_batch(batch);
    m_list->choose(batch.value);
    show_actions();
}

void ShedPage::open(const Intent& intent) {
    if (intent.task == QLatin1String("new_batch")) {
        start_new(intent.prefill);
        return;
    }
    if (intent.ids.empty())
        return;
    const work::BatchId batch{intent.ids.front()};
    if (!work::batch_view(m_desk.workbook(), batch, m_desk.today()))
        return;
    show_batch(batch);
    m_now.course->refresh();
    if (is_step_task(intent.task))
        m_now.course->open_step(step_of(intent.task), intent);
    else
        m_now.course->take_focus();
}

void ShedPage::refresh() {
    show_list();
    for (const Ground& ground : m_kept)
        ground.course->refresh();
    if (m_now.course != nullptr) {
        m_now.course->refresh();
        if (!m_now.course->is_new() && !m_now.course->view()) {
            // Undone: the batch is not there any more.
            m_stack->removeWidget(m_now.scroll);
            m_now.scroll->deleteLater();
            m_now = {};
        }
    }
    if (m_now.course == nullptr) {
        const auto all = work::batches(m_desk.workbook(), m_desk.today(), true);
        if (all.empty())
            m_stack->setCurrentWidget(m_empty);
        else
            show_batch(all.front().id);
    }
    show_actions();
}

void ShedPage::show_list() {
    std::vector<SideItem> items;
    for (const work::BatchLine& batch : work::batches(m_desk.workbook(), m_desk.today(), true))
        items.push_back(batch_item(m_desk, batch));
    m_list->set_items(std::move(items));
    if (m_now.course != nullptr)
        m_list->choose(m_now.course->is_new() ? 0 : m_now.course->batch().value);
}

void ShedPage::show_actions() {
    const bool shown = m_now.course != nullptr && !m_now.course->is_new() && m_now.course->view();
    m_mixing_sheet->setVisible(shown && !m_now.course->view()->mixed && is_open(*m_now.course->view()));
    m_batch_sheet->setVisible(shown && m_now.course->view()->mixed);
    m_history->setVisible(shown);
    Q_EMIT title_changed();
}

void ShedPage::take_focus() {
    if (m_stack->currentWidget() == m_empty)
        m_empty->button()->setFocus(Qt::OtherFocusReason);
    else
        m_now.course->take_focus();
}

HistoryOf ShedPage::history() const {
    return m_now.course != nullptr && !m_now.course->is_new() && m_now.course->view()
               ? history_of(m_desk, title(), QStringLiteral("batch"), m_now.course->batch().value)
               : HistoryOf{};
}

void ShedPage::print_mixing_sheet() {
    if (m_now.course != nullptr && m_now.course->view())
        offer_mixing_sheet(m_desk, m_now.course->batch(), window());
}

void ShedPage::print_batch_sheet() {
    if (m_now.course != nullptr && m_now.course->view())
        offer_batch_sheet(m_desk, m_now.course->batch(), window());
}

} // namespace soakbook::ui
