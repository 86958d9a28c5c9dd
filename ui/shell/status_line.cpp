// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/status_line.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>

namespace soakbook::ui {

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout(this)), m_workbook(make_soft_label({}, Type::small, this, false)),
      m_copy(make_soft_label({}, Type::small, this, false)), m_copy_mark(new StateMark(State::near, {}, this)),
      m_who(new QPushButton(this)), m_menu(new QMenu(m_who)), m_entries(make_soft_label({}, Type::small, this, false)) {
    setAttribute(Qt::WA_StyledBackground);
    set_kind(this, "status_line");
    set_kind(m_who, "status");
    m_who->setMenu(m_menu);
    m_who->setObjectName(QStringLiteral("who"));
    m_row->addWidget(m_workbook);
    m_row->addWidget(m_copy);
    m_row->addWidget(m_copy_mark);
    m_row->addWidget(m_who);
    m_row->addStretch(1);
    m_row->addWidget(m_entries);
    m_copy_mark->hide();
    m_who->hide();
    settle();
}

void StatusLine::set_facts(const StatusFacts& facts, const QString& entry_number) {
    m_workbook->setText(facts.workbook);
    m_copy->setText(facts.safe_copy);
    m_copy->setVisible(!facts.copy_state && !facts.safe_copy.isEmpty());
    m_copy_mark->setVisible(facts.copy_state.has_value() && !facts.safe_copy.isEmpty());
    if (facts.copy_state) {
        m_copy_mark->set_state(*facts.copy_state, facts.safe_copy);
    }
    m_entries->setText(entry_number);
}

void StatusLine::set_people(const QString& who, const QStringList& people) {
    m_who->setVisible(!people.isEmpty() || !who.isEmpty());
    //: In the status line; %1 a person's name
    m_who->setText(who.isEmpty() ? tr("Entries by: nobody chosen") : tr("Entries by: %1").arg(who));
    m_who->setAccessibleName(m_who->text());
    m_menu->clear();
    for (const QString& person : people) {
        QAction* action = m_menu->addAction(person);
        action->setCheckable(true);
        action->setChecked(person == who);
        connect(action, &QAction::triggered, this, [this, person] { Q_EMIT who_chosen(person); });
    }
}

void StatusLine::settle() {
    m_row->setContentsMargins(scaled(20), scaled(2), page_margin, scaled(2));
    m_row->setSpacing(scaled(20));
    setMinimumHeight(scaled(30));
}

void StatusLine::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle();
    }
}

} // namespace soakbook::ui
