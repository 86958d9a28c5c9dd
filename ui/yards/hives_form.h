// SPDX-License-Identifier: GPL-3.0-or-later
// Hives that come to a yard: a row of numbered ones, or a group of unnumbered ones.
#pragma once

#include "core/work/hives.h"
#include "ui/parts/form_dialog.h"

namespace soakbook::ui {

class ChoiceField;
class CountField;
class Desk;
class TextField;

class HivesForm : public FormDialog {
    Q_OBJECT

public:
    HivesForm(Desk& desk, work::YardId yard, const QString& yard_name, QWidget* parent);

private:
    enum class Manner { numbered, group };
    void make_fields();
    void suggest_numbers();
    Manner manner() const;
    void show_manner();
    void show_result();
    work::HiveRow numbered() const;
    work::HiveEntry group() const;
    std::optional<work::Refusal> enter();

    Desk& m_desk;
    work::YardId m_yard;
    ChoiceField* m_manner;
    TextField* m_prefix;
    TextField* m_first;
    CountField* m_count;
    CountField* m_hives;
    TextField* m_name;
    CountField* m_boxes;
    CountField* m_frames;
    bool m_name_typed = false;
};

} // namespace soakbook::ui
