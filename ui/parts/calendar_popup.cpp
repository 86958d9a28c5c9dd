// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/calendar_popup.h"

#include "ui/parts/icons.h"
#include "ui/parts/theme.h"

#include <QCalendarWidget>
#include <QLocale>
#include <QPushButton>
#include <QScreen>
#include <QTextCharFormat>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

CalendarPopup::CalendarPopup(const QLocale& locale, QDate chosen, QDate today, QWidget* parent)
    : QFrame(parent, Qt::Popup), m_calendar(new QCalendarWidget(this)) {
    setAttribute(Qt::WA_DeleteOnClose);
    set_kind(this, "popup");
    m_calendar->setLocale(locale);
    m_calendar->setFirstDayOfWeek(locale.firstDayOfWeek());
    m_calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    m_calendar->setHorizontalHeaderFormat(QCalendarWidget::ShortDayNames);
    m_calendar->setSelectedDate(chosen);
    //: Name of the month sheet, read aloud
    m_calendar->setAccessibleName(tr("Calendar"));
    QTextCharFormat plain;
    plain.setForeground(colours().ink);
    m_calendar->setWeekdayTextFormat(Qt::Saturday, plain);
    m_calendar->setWeekdayTextFormat(Qt::Sunday, plain);
    QTextCharFormat head;
    head.setForeground(colours().soft_ink);
    head.setBackground(colours().card);
    m_calendar->setHeaderTextFormat(head);
    QTextCharFormat marked;
    marked.setForeground(colours().accent);
    marked.setFontWeight(QFont::Bold);
    m_calendar->setDateTextFormat(today, marked);
    m_calendar->setMinimumSize(scaled(300), scaled(260));
    const auto arrow = [this](const char* name, const QString& icon_name) {
        if (auto* button = m_calendar->findChild<QToolButton*>(QLatin1String(name))) {
            button->setIcon(icon(icon_name, Tone::ink));
        }
    };
    arrow("qt_calendar_prevmonth", QStringLiteral("chevron_left"));
    arrow("qt_calendar_nextmonth", QStringLiteral("chevron_right"));

    //: Button under a calendar
    auto* today_button = new QPushButton(tr("Today"), this);
    set_kind(today_button, "link");
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(scaled(8), scaled(8), scaled(8), scaled(8));
    column->addWidget(m_calendar);
    column->addWidget(today_button, 0, Qt::AlignLeft);
    connect(m_calendar, &QCalendarWidget::clicked, this, &CalendarPopup::pick);
    connect(m_calendar, &QCalendarWidget::activated, this, &CalendarPopup::pick);
    connect(today_button, &QPushButton::clicked, this, [this, today] { pick(today); });
    m_calendar->setFocus();
}

void CalendarPopup::open_below(QWidget* widget) {
    adjustSize();
    const QRect screen = widget->screen()->availableGeometry();
    QPoint at = widget->mapToGlobal(QPoint(0, widget->height() + 2));
    if (at.y() + height() > screen.bottom()) {
        at.setY(std::max(screen.top(), widget->mapToGlobal(QPoint(0, 0)).y() - height() - 2));
    }
    at.setX(std::clamp(at.x(), screen.left(), std::max(screen.left(), screen.right() - width())));
    move(at);
    show();
    m_calendar->setFocus();
}

void CalendarPopup::pick(QDate date) {
    // Both clicked and activated may come for one day; the popup is gone after the first.
    if (isVisible()) {
        close();
        Q_EMIT picked(date);
    }
}

} // namespace soakbook::ui
