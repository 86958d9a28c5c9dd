// SPDX-License-Identifier: GPL-3.0-or-later
// Strips of one bin on the scale, together or one by one; the verdict follows while it is typed.
// Field names: weigh_soak, weigh_strips, weigh_total, weigh_single_1 ... , weigh_drip, weigh_when; buttons weigh_one_by_one
// and end_soak.
#pragma once

#include "core/work/shed_view.h"
#include "core/work/weigh.h"
#include "ui/parts/desk.h"
#include "ui/parts/form.h"

class QPushButton;

namespace soakbook::ui {

class ChoiceField;
class CountField;
class MassField;
class MassRows;
class WhenField;

class WeighForm : public FormFrame {
    Q_OBJECT

public:
    explicit WeighForm(Desk& desk, QWidget* parent = nullptr);
    void show_batch(const work::BatchView& batch);
    void choose_soak(work::SoakId soak);
    work::SoakId soak() const;
    void set_one_by_one(bool one_by_one);
    void turn_to(bool one_by_one);
    /// Takes the strips of the chosen bin out, now or when the form says.
    QPushButton* end() const { return m_end; }
    /// Puts the keyboard on the scale's figure, or on the button that takes the strips out once they are on target.
    void begin();

Q_SIGNALS:
    /// The strips of a bin were taken out.
    void soak_ended();

private:
    void fill_sample(const work::BatchView& batch);
    void name_end();
    void end_soak();
    void reckon();
    void show_sureness(const work::WeighFigures& figures);
    work::WeighEntry entry() const;

    Desk& m_desk;
    work::BatchView m_batch;
    bool m_one_by_one = false;
    ChoiceField* m_soak;
    CountField* m_strips;
    MassField* m_total;
    MassRows* m_singles;
    QPushButton* m_way;
    CountField* m_drip;
    WhenField* m_when;
    QPushButton* m_end;
};

/// Shape and word of a weighing's verdict, and what to do now.
struct VerdictWords {
    State state{};
    QString word;
    QString what_now;
};
VerdictWords verdict_words(const Habits& habits, const work::WeighFigures& figures);

} // namespace soakbook::ui
