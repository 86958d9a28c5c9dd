// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/day_field.h"

#include "ui/parts/theme.h"

#include <QHBoxLayout>

namespace soakbook::ui {

WhenField::WhenField(const Habits& habits, QWidget* parent)
    : Field(parent), m_habits(habits), m_day(new DayField(habits, this)), m_time(new TimeField(habits, this)) {
    row()->addWidget(m_day, 3);
    row()->addWidget(m_time, 2);
    //: Stands in the empty field for a day
    m_day->set_placeholder(tr("today"));
    //: Stands in the empty field for a time of day: the present moment
    m_time->set_placeholder(tr("now"));
    for (Field* part : {static_cast<Field*>(m_day), static_cast<Field*>(m_time)}) {
        connect(part, &Field::edited, this, &WhenField::note_edit);
        part->editor()->installEventFilter(this);
    }
}

bool WhenField::is_empty() const {
    return m_day->is_empty() && m_time->is_empty();
}

QString WhenField::problem() const {
    if (!m_day->problem().isEmpty()) {
        return m_day->problem();
    }
    if (!m_time->problem().isEmpty()) {
        return m_time->problem();
    }
    if (m_time->is_empty() && m_day->value().value_or(m_habits.today()) != m_habits.today()) {
        //: Beside a field for a moment
        return tr("Say the time too: the day is not today.");
    }
    return {};
}

QWidget* WhenField::editor() const {
    return m_day->editor();
}

void WhenField::clear() {
    set_value(std::nullopt);
}

void WhenField::set_name(const QString& name) {
    //: Read aloud; %1 is the name of a field for a moment
    m_day->set_name(tr("%1: day").arg(name));
    //: Read aloud; %1 is the name of a field for a moment
    m_time->set_name(tr("%1: time").arg(name));
}

std::optional<maths::Instant> WhenField::value() const {
    if (is_empty() || (m_time->is_empty() && problem().isEmpty())) {
        return m_habits.now();
    }
    if (!problem().isEmpty()) {
        return std::nullopt;
    }
    return wall_instant(m_day->value().value_or(m_habits.today()), *m_time->value());
}

void WhenField::set_value(std::optional<maths::Instant> value) {
    m_day->set_value(value ? std::optional<maths::Day>(value->local_day()) : std::nullopt);
    m_time->set_value(value ? std::optional<int>(wall_minutes(*value)) : std::nullopt);
    set_complaint({});
}

QString WhenField::understood_beneath() const {
    return {};
}

void WhenField::mark_wrong(bool wrong) {
    const bool in_time = wrong && m_day->problem().isEmpty() && !problem().isEmpty();
    set_flag(m_day->editor(), "wrong", wrong && !in_time);
    set_flag(m_time->editor(), "wrong", wrong && in_time);
}

} // namespace soakbook::ui
