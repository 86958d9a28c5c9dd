// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/batch_course.h"

#include "ui/parts/cards.h"
#include "ui/parts/course.h"
#include "ui/shed/bag_step.h"
#include "ui/shed/heat_step.h"
#include "ui/shed/leftovers_step.h"
#include "ui/shed/mix_plan_form.h"
#include "ui/shed/mix_step.h"
#include "ui/shed/shed_cautions.h"
#include "ui/shed/soak_step.h"
#include "ui/shed/step_summaries.h"
#include "ui/shed/weigh_step.h"

#include <QApplication>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

int number(StepName step) { return static_cast<int>(step) + 1; }

} // namespace

BatchCourse::BatchCourse(Desk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_course(new StepCourse(this)), m_void(new NoticeBar(QString(), this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(m_void);
    column->addWidget(m_course);
    column->addStretch(1);
    m_void->hide();
    for (const StepName step : all_steps) {
        Step* card = m_course->add_step(step_name(step));
        connect(card, &Step::open_changed, this, [this, step](bool open) {
            if (open && m_view && body(step) != nullptr)
                body(step)->show_batch(*m_view);
        });
    }
}

void BatchCourse::start_new(const QVariantMap& prefill) {
    for (const StepName step : all_steps)
        drop_body(step);
    m_view.reset();
    m_batch = {};
    m_now.reset();
    m_void->hide();
    m_plan = new MixPlanForm(m_desk);
    m_plan->add_caution(powder_caution());
    m_plan->prefill(prefill);
    // Later: the form that makes the entry gives way to the batch.
    connect(m_plan, &MixPlanForm::planned, this, &BatchCourse::planned, Qt::QueuedConnection);
    connect(m_plan, &MixPlanForm::wishes, this, &BatchCourse::wishes);
    connect(m_plan, &FormFrame::cancelled, this, [this] { start_new({}); }, Qt::QueuedConnection);
    m_course->step(number(StepName::mix))->set_body(m_plan);
    for (const StepName step : all_steps) {
        Step* card = m_course->step(number(step));
        card->set_summary(waiting_summary(step));
        card->set_stage(step == StepName::mix ? Step::Stage::going_on : Step::Stage::to_come);
        card->set_open(step == StepName::mix, true);
    }
}

void BatchCourse::show_batch(work::BatchId batch) {
    if (m_plan != nullptr) {
        m_course->step(number(StepName::mix))->set_body(nullptr);
        m_plan = nullptr;
    }
    m_batch = batch;
    m_strength_left = false;
    m_view = work::batch_view(m_desk.workbook(), batch, m_desk.today());
    if (!m_view)
        return;
    show_steps();
    m_now = step_now();
    open_only(*m_now);
}

void BatchCourse::refresh() {
    if (m_plan != nullptr) {
        m_plan->refresh();
        return;
    }
    if (!m_batch)
        return;
    m_view = work::batch_view(m_desk.workbook(), m_batch, m_desk.today());
    if (!m_view)
        return;
    show_steps();
    const StepName now = step_now();
    if (m_now != now) {
        // Undo, or an entry made elsewhere, may have moved the work on or back.
        const bool had_focus = isAncestorOf(QApplication::focusWidget());
        m_now = now;
        open_only(now);
        if (had_focus)
            take_focus();
    }
}

void BatchCourse::go_on() {
    refresh();
    take_focus();
}

StepName BatchCourse::step_now() const {
    const StepName current = current_step(*m_view);
    const bool correct_first = is_open(*m_view) && wants_correction(*m_view) && !m_strength_left && m_view->readings.empty();
    return correct_first ? StepName::mix : current;
}

void BatchCourse::show_steps() {
    for (const StepName step : all_steps) {
        Step* card = m_course->step(number(step));
        if (!can_open(step, *m_view))
            drop_body(step);
        else if (body(step) == nullptr)
            make_body(step);
        card->set_stage(stage_of(step, *m_view));
        card->set_summary(step_summary(m_desk, step, *m_view));
        // A folded step is filled when it opens.
        if (body(step) != nullptr && card->is_open())
            body(step)->show_batch(*m_view);
    }
    show_void();
}

void BatchCourse::show_void() {
    const bool made_void = m_view->line.state == work::BatchState::made_void;
    m_void->setVisible(made_void);
    if (made_void) {
        //: Over a batch that was made void; %1 the reason
        m_void->set_text(tr("This batch is void: %1").arg(m_view->void_reason));
    }
}

StepBody* BatchCourse::body(StepName step) { return m_bodies[static_cast<std::size_t>(step)]; }

void BatchCourse::make_body(StepName step) {
    StepBody* made = nullptr;
    switch (step) {
    case StepName::mix: {
        auto* mix = new MixStep(m_desk);
        connect(mix, &MixStep::mixing_sheet_wanted, this, &BatchCourse::mixing_sheet_wanted);
        connect(mix, &MixStep::left_as_it_is, this, [this] {
            m_strength_left = true;
            go_on();
        });
        made = mix;
        break;
    }
    case StepName::heat:
        made = new HeatStep(m_desk);
        break;
    case StepName::soak:
        made = new SoakStep(m_desk);
        break;
    case StepName::weigh:
        made = new WeighStep(m_desk);
        break;
    case StepName::bag:
        made = new BagStep(m_desk);
        break;
    case StepName::leftovers:
        made = new LeftoversStep(m_desk);
        break;
    }
    connect(made, &StepBody::entry_made, this, &BatchCourse::go_on);
    connect(made, &StepBody::wishes, this, &BatchCourse::wishes);
    m_bodies[static_cast<std::size_t>(step)] = made;
    m_course->step(number(step))->set_body(made);
}

void BatchCourse::drop_body(StepName step) {
    Step* card = m_course->step(number(step));
    if (card->is_open())
        card->set_open(false, true);
    if (body(step) == nullptr)
        return;
    m_bodies[static_cast<std::size_t>(step)] = nullptr;
    card->set_body(nullptr);
}

void BatchCourse::open_only(StepName step) {
    for (const StepName other : all_steps) {
        if (other != step)
            m_course->step(number(other))->set_open(false, true);
    }
    Step* card = m_course->step(number(step));
    card->set_open(true, true);
}

void BatchCourse::open_step(StepName step, const Intent& intent) {
    if (!m_view || body(step) == nullptr) {
        take_focus();
        return;
    }
    open_only(step);
    body(step)->turn_to(intent);
    body(step)->take_focus();
    Q_EMIT step_opened(m_course->step(number(step)));
}

bool BatchCourse::has_typed() const {
    if (m_plan != nullptr)
        return m_plan->is_edited();
    return std::any_of(m_bodies.begin(), m_bodies.end(),
                       [](const StepBody* body) { return body != nullptr && body->has_typed(); });
}

void BatchCourse::take_focus() {
    if (m_plan != nullptr) {
        const Field* amount = m_plan->field(QStringLiteral("from_amount"));
        m_plan->field(amount->isVisibleTo(m_plan) ? QStringLiteral("from_amount") : QStringLiteral("strips"))->take_focus();
        Q_EMIT step_opened(m_course->step(number(StepName::mix)));
        return;
    }
    const auto open = std::find_if(all_steps.begin(), all_steps.end(), [this](StepName step) {
        return body(step) != nullptr && m_course->step(number(step))->is_open();
    });
    if (open == all_steps.end())
        return;
    body(*open)->take_focus();
    Q_EMIT step_opened(m_course->step(number(*open)));
}

} // namespace soakbook::ui
