// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/status_line.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QPixmap>
#include <QPushButton>

namespace soakbook::ui {

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent), m_row(new QHBoxLayout(this)), m_workbook(make_soft_label({}, Type::small, this, false)),
      m_copy(make_soft_label({}, Type::small, this, false)), m_copy_mark(new QLabel(this)),
      m_who(new QPushButton(this)), m_menu(new QMenu(m_who)), m_entries(make_soft_label({}, Type::small, this, false)) {
    setAttribute(Qt::WA_StyledBackground);
    set_kind(this, "status_line");
    set_kind(m_who, "status");
    m_who->setMenu(m_menu);
    m_who->setObjectName(QStringLiteral("who"));
    m_row->addWidget(m_workbook);
    auto* copy = new QHBoxLayout;
    copy->setSpacing(6);
    copy->addWidget(m_copy_mark);
    copy->addWidget(m_copy);
    m_row->addLayout(copy);
    m_row->addWidget(m_who);
    m_row->addStretch(1);
    m_row->addWidget(m_entries);
    m_copy_mark->hide();
    m_who->hide();
    settle();
}

void StatusLine::set_facts(const StatusFacts& facts, const QString& entry_number) {
    m_workbook->setText(facts.workbook);
    const QString& news = facts.checking.isEmpty() ? facts.safe_copy : facts.checking;
    m_copy->setText(news);
    m_copy->setVisible(!news.isEmpty());
    m_copy_state = facts.checking.isEmpty() ? facts.copy_state : std::optional<State>();
    paint_mark();
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

void StatusLine::paint_mark() {
    m_copy_mark->setVisible(m_copy_state.has_value());
    if (!m_copy_state) {
        return;
    }
    const int side = scaled(10);
    QPixmap mark(QSize(side, side) * devicePixelRatioF());
    mark.setDevicePixelRatio(devicePixelRatioF());
    mark.fill(Qt::transparent);
    QPainter painter(&mark);
    paint_state(painter, QRectF(0, 0, side, side), *m_copy_state);
    painter.end();
    m_copy_mark->setPixmap(mark);
}

void StatusLine::settle() {
    paint_mark();
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
