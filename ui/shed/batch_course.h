// SPDX-License-Identifier: GPL-3.0-or-later
// One batch as its course of six steps: what is done is folded to a sentence, what is to be done stands open.
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/intent.h"
#include "ui/shed/step_names.h"

#include <QWidget>

#include <array>
#include <optional>

namespace soakbook::ui {

class MixPlanForm;
class NoticeBar;
class StepBody;
class StepCourse;

class BatchCourse : public QWidget {
    Q_OBJECT

public:
    explicit BatchCourse(Desk& desk, QWidget* parent = nullptr);

    /// A new batch: the plan stands open, the other steps say what they wait for.
    void start_new(const QVariantMap& prefill = {});
    /// Shows that batch with its current step open.
    void show_batch(work::BatchId batch);
    /// Asks the workbook again; what is typed stays, and the step that is open stays open while there is work in it.
    void refresh();
    /// Opens a step; turns its form to what the wish asks for and puts the keyboard there.
    void open_step(StepName step, const Intent& intent = {});

    bool is_new() const { return m_plan != nullptr; }
    work::BatchId batch() const { return m_batch; }
    const std::optional<work::BatchView>& view() const { return m_view; }
    bool has_typed() const;
    /// Puts the keyboard into the first field of the step that is open.
    void take_focus();

Q_SIGNALS:
    void planned(qint64 batch);
    void mixing_sheet_wanted();
    /// This step was opened for work; it should be seen whole.
    void step_opened(QWidget* step);
    void wishes(const soakbook::ui::Intent& intent);

private:
    StepBody* body(StepName step);
    void make_body(StepName step);
    void drop_body(StepName step);
    void show_steps();
    void go_on();
    void open_only(StepName step);
    StepName step_now() const;
    void show_void();

    Desk& m_desk;
    StepCourse* m_course;
    NoticeBar* m_void;
    MixPlanForm* m_plan = nullptr;
    std::array<StepBody*, 6> m_bodies{};
    work::BatchId m_batch;
    std::optional<work::BatchView> m_view;
    std::optional<StepName> m_now;
    bool m_strength_left = false;
};

} // namespace soakbook::ui
