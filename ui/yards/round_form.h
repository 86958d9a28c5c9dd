// SPDX-License-Identifier: GPL-3.0-or-later
// A round planned: which yards, which strips, which rule, when; and at once how many strips that is and whether the store
// has them.
#pragma once

#include "core/work/round.h"
#include "ui/parts/form_dialog.h"
#include "ui/yards/yard_checklist.h"

#include <functional>

namespace soakbook::ui {

class BeesPerStripField;
class ChoiceField;
class CountField;
class DayField;
class Desk;
class NoteField;
class TextField;

class RoundForm : public FormDialog {
    Q_OBJECT

public:
    /// A round with an id is changed; one without is planned, with what `entry` already says. `done` gets its id.
    RoundForm(Desk& desk, const work::RoundEntry& entry, std::function<void(work::RoundId)> done, QWidget* parent);

private:
    void make_fields();
    std::vector<YardChecklist::Yard> yards() const;
    void add_first_yard();
    void make_rule_fields();
    void make_window_fields();
    void fill(const work::RoundEntry& entry);
    /// Puts in what the strip kind says of the dose.
    void take_kind();
    void show_rule();
    void show_result();
    void say_refused(const work::Refusal& refusal);
    void say_figures(const work::RoundFigures& figures);
    work::RoundEntry entry() const;

    Desk& m_desk;
    work::RoundId m_id;
    TextField* m_name;
    ChoiceField* m_kind;
    DayField* m_on;
    YardChecklist* m_yards;
    ChoiceField* m_rule;
    CountField* m_strips;
    BeesPerStripField* m_frames;
    CountField* m_least;
    CountField* m_most;
    CountField* m_from;
    CountField* m_by;
    CountField* m_withdrawal;
    NoteField* m_note;
};

} // namespace soakbook::ui
