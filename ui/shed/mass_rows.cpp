// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/mass_rows.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int fields_across = 2;

} // namespace

MassRows::MassRows(const Habits& habits, MassSize size, const QString& object_name, QWidget* parent)
    : Field(parent), m_habits(habits), m_size(size), m_object_name(object_name), m_grid(new QGridLayout) {
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(scaled(8));
    m_grid->setVerticalSpacing(scaled(8));
    row()->addLayout(m_grid, 1);
    add_line();
}

MassField* MassRows::add_line() {
    const int n = static_cast<int>(m_lines.size());
    auto* line = new MassField(m_habits, m_size, this);
    line->editor()->setObjectName(QStringLiteral("%1_%2").arg(m_object_name).arg(n + 1));
    m_grid->addWidget(line, n / fields_across, n % fields_across, Qt::AlignTop);
    line->editor()->installEventFilter(this);
    if (!m_lines.empty())
        setTabOrder(m_lines.back()->editor(), line->editor());
    m_lines.push_back(line);
    if (!m_name.isEmpty())
        set_name(m_name);
    connect(line, &Field::edited, this, [this] {
        grow();
        note_edit();
    });
    return line;
}

void MassRows::grow() {
    if (!m_lines.back()->is_empty())
        add_line();
}

bool MassRows::is_empty() const {
    return std::all_of(m_lines.begin(), m_lines.end(), [](const MassField* line) { return line->is_empty(); });
}

QString MassRows::problem() const {
    for (const MassField* line : m_lines) {
        if (!line->problem().isEmpty())
            return line->problem();
    }
    return {};
}

QWidget* MassRows::editor() const {
    const auto first = std::find_if(m_lines.begin(), m_lines.end(), [](const MassField* line) { return line->is_empty(); });
    return (first == m_lines.end() ? m_lines.front() : *first)->editor();
}

void MassRows::clear() {
    m_pointed = nullptr;
    while (m_lines.size() > 1) {
        delete m_lines.back();
        m_lines.pop_back();
    }
    m_lines.front()->clear();
    set_complaint({});
}

void MassRows::set_name(const QString& name) {
    m_name = name;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const QString spoken = QStringLiteral("%1 %2").arg(name).arg(i + 1);
        m_lines[i]->set_name(spoken);
    }
}

std::vector<maths::Mass> MassRows::values() const {
    std::vector<maths::Mass> masses;
    for (const MassField* line : m_lines) {
        if (const auto mass = line->value())
            masses.push_back(*mass);
    }
    return masses;
}

void MassRows::point_at(int n) {
    for (MassField* line : m_lines) {
        if (line->value() && n-- == 0) {
            m_pointed = line;
            return;
        }
    }
}

void MassRows::take_focus() {
    if (m_pointed != nullptr)
        m_pointed->take_focus();
    else
        Field::take_focus();
}

bool MassRows::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return Field::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool is_enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (!is_enter || (key->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier)
        return Field::eventFilter(watched, event);
    const auto at = std::find_if(m_lines.begin(), m_lines.end(),
                                 [watched](const MassField* line) { return line->editor() == watched; });
    if (at == m_lines.end())
        return Field::eventFilter(watched, event);
    if (!(*at)->is_empty() && std::next(at) != m_lines.end())
        (*std::next(at))->take_focus();
    else
        leave();
    return true;
}

void MassRows::leave() {
    m_lines.back()->editor()->setFocus(Qt::TabFocusReason);
    focusNextChild();
}

void MassRows::showEvent(QShowEvent* event) {
    Field::showEvent(event);
    // A form also watches the first line for Enter; the line that grows comes before it.
    for (MassField* line : m_lines) {
        line->editor()->removeEventFilter(this);
        line->editor()->installEventFilter(this);
    }
}

void MassRows::mark_wrong(bool wrong) {
    if (m_pointed != nullptr)
        set_flag(m_pointed->editor(), "wrong", wrong);
    if (!wrong)
        m_pointed = nullptr;
}

} // namespace soakbook::ui
