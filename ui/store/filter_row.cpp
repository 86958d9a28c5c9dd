// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/filter_row.h"

#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"

#include <QButtonGroup>
#include <QPushButton>

namespace soakbook::ui {

FilterRow::FilterRow(const QString& name, const QString& spoken_name, QWidget* parent)
    : QWidget(parent), m_group(new QButtonGroup(this)), m_flow(new FlowLayout(6, 6, this)) {
    setObjectName(name);
    setAccessibleName(spoken_name);
    m_group->setExclusive(true);
    connect(m_group, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (on)
            Q_EMIT changed(id);
    });
}

void FilterRow::add(int id, const QString& key, const QString& words) {
    auto* button = new QPushButton(words, this);
    button->setObjectName(objectName() + QLatin1Char('_') + key);
    button->setProperty("words", words);
    button->setCheckable(true);
    button->setAutoDefault(false);
    set_kind(button, "row");
    m_group->addButton(button, id);
    m_flow->addWidget(button);
}

void FilterRow::set_count(int id, const QString& count) {
    QAbstractButton* button = m_group->button(id);
    const QString words = button->property("words").toString();
    button->setText(count.isEmpty() ? words : QString(words + QStringLiteral("\u2002") + count));
}

int FilterRow::chosen() const {
    return m_group->checkedId();
}

void FilterRow::choose(int id) {
    const QSignalBlocker silent(m_group);
    if (QAbstractButton* button = m_group->button(id))
        button->setChecked(true);
}

} // namespace soakbook::ui
