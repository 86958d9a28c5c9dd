// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/desk.h"

#include "core/exchange/date_text.h"
#include "core/work/watch.h"

#include <QMetaObject>
#include <QSettings>

#include <utility>

namespace soakbook::ui {

namespace {

const QString name_key = QStringLiteral("who/name");
const QString day_key = QStringLiteral("who/day");

} // namespace

Desk::Desk(book::Workbook& workbook, Clock clock, QObject* parent)
    : Habits(std::move(clock), parent), m_workbook(workbook), m_who(QSettings().value(name_key).toString()),
      m_unsubscribe(work::watch(workbook, [this] { note_work(); })) {}

Desk::~Desk() {
    if (m_unsubscribe) {
        m_unsubscribe();
    }
}

book::Doing Desk::doing(const QString& why) const {
    return {now(), m_who, why, false};
}

bool Desk::looking() const {
    return work::is_for_looking(m_workbook);
}

QString Desk::no_entries_why() const {
    if (!looking() || !m_looking_why.isEmpty()) {
        return m_looking_why;
    }
    //: Hint on the button of a form that cannot be used
    return tr("The workbook is open only to be looked at.");
}

void Desk::set_who(const QString& who) {
    QSettings settings;
    settings.setValue(name_key, who);
    settings.setValue(day_key, exchange::write_day_iso(today()));
    if (who != m_who) {
        m_who = who;
        Q_EMIT who_changed();
    }
}

bool Desk::who_said_today() const {
    return !m_who.isEmpty() && QSettings().value(day_key).toString() == exchange::write_day_iso(today());
}

void Desk::note_work() {
    // Work may be done on another thread, and several changes may be told at once: the rooms hear of them once, from here.
    QMetaObject::invokeMethod(
        this,
        [this] {
            if (std::exchange(m_telling, true)) {
                return;
            }
            QMetaObject::invokeMethod(
                this,
                [this] {
                    m_telling = false;
                    Q_EMIT work_done();
                },
                Qt::QueuedConnection);
        },
        Qt::AutoConnection);
}

} // namespace soakbook::ui
