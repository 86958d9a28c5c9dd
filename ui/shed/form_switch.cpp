// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/form_switch.h"

#include "ui/parts/form.h"
#include "ui/parts/theme.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

FormSwitch::FormSwitch(QWidget* parent)
    : QWidget(parent), m_group(new QButtonGroup(this)), m_bar(new QWidget(this)), m_buttons(new QHBoxLayout(m_bar)),
      m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(scaled(16));
    m_buttons->setContentsMargins(0, 0, 0, 0);
    m_buttons->setSpacing(0);
    m_buttons->addStretch(1);
    m_column->addWidget(m_bar);
    connect(m_group, &QButtonGroup::idClicked, this, [this](int way) {
        show_way(way);
        m_ways.at(static_cast<std::size_t>(way)).form->take_focus();
        Q_EMIT turned(way);
    });
}

int FormSwitch::add(const QString& name, FormFrame* form, const QString& object_name) {
    const int way = static_cast<int>(m_ways.size());
    auto* button = new QPushButton(name, m_bar);
    button->setObjectName(object_name);
    button->setCheckable(true);
    button->setAutoDefault(false);
    set_kind(button, "segment");
    m_group->addButton(button, way);
    m_buttons->insertWidget(way, button);
    m_column->addWidget(form);
    m_ways.push_back({form, true});
    if (m_way < 0)
        m_way = way;
    settle();
    return way;
}

void FormSwitch::put(int way, FormFrame* form) {
    FormFrame*& place = m_ways.at(static_cast<std::size_t>(way)).form;
    m_column->replaceWidget(place, form);
    place->hide();
    place->deleteLater();
    place = form;
    settle();
}

void FormSwitch::set_reachable(int way, bool reachable) {
    Way& changed = m_ways.at(static_cast<std::size_t>(way));
    if (changed.reachable == reachable)
        return;
    changed.reachable = reachable;
    if (!reachable && way == m_way) {
        const auto other = std::find_if(m_ways.begin(), m_ways.end(), [](const Way& w) { return w.reachable; });
        if (other != m_ways.end())
            m_way = static_cast<int>(other - m_ways.begin());
    }
    settle();
}

bool FormSwitch::is_reachable(int way) const { return m_ways.at(static_cast<std::size_t>(way)).reachable; }

void FormSwitch::show_way(int way) {
    if (!is_reachable(way))
        return;
    m_way = way;
    settle();
}

FormFrame* FormSwitch::form() const {
    return m_way < 0 ? nullptr : m_ways.at(static_cast<std::size_t>(m_way)).form;
}

void FormSwitch::rename(int way, const QString& name) { m_group->button(way)->setText(name); }

void FormSwitch::settle() {
    int reachable = 0;
    int last = -1;
    for (std::size_t i = 0; i < m_ways.size(); ++i) {
        const int way = static_cast<int>(i);
        QAbstractButton* button = m_group->button(way);
        button->setVisible(m_ways[i].reachable);
        button->setChecked(way == m_way);
        button->setProperty("place", QString());
        if (m_ways[i].reachable) {
            if (reachable == 0)
                button->setProperty("place", QStringLiteral("first"));
            ++reachable;
            last = way;
        }
        m_ways[i].form->setVisible(way == m_way && m_ways[i].reachable);
    }
    if (reachable > 1)
        m_group->button(last)->setProperty("place", QStringLiteral("last"));
    for (QAbstractButton* button : m_group->buttons())
        set_kind(button, "segment");
    m_bar->setVisible(reachable > 1);
}

} // namespace soakbook::ui
