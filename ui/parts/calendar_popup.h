// SPDX-License-Identifier: GPL-3.0-or-later
// A month to pick a day from, opened under a field; arrows move, Enter picks, Esc leaves.
#pragma once

#include <QDate>
#include <QFrame>

class QCalendarWidget;
class QLocale;

namespace soakbook::ui {

class CalendarPopup : public QFrame {
    Q_OBJECT

public:
    CalendarPopup(const QLocale& locale, QDate chosen, QDate today, QWidget* parent);
    /// Shows it under `widget`, or above where the screen ends; it deletes itself when it closes.
    void open_below(QWidget* widget);

Q_SIGNALS:
    void picked(QDate date);

private:
    void pick(QDate date);
    QCalendarWidget* m_calendar;
};

} // namespace soakbook::ui
