// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/day_field.h"

#include "core/exchange/date_text.h"
#include "ui/parts/calendar_popup.h"
#include "ui/parts/icon_button.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QToolButton>

namespace soakbook::ui {

DayField::DayField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent), m_button(new IconButton(QStringLiteral("calendar"), {}, this)) {
    m_button->setFocusPolicy(Qt::NoFocus);
    //: Tool tip of the button beside a day; F4 is a key
    m_button->setToolTip(tr("Calendar (F4)"));
    //: Name of the button that opens a calendar, read aloud
    m_button->setAccessibleName(tr("Calendar"));
    row()->addWidget(m_button);
    connect(m_button, &QToolButton::clicked, this, &DayField::open_calendar);
    refresh_aside();
}

void DayField::set_name(const QString& name) {
    QuantityField::set_name(name);
    //: Read aloud; %1 is the name of a field for a day
    m_button->setAccessibleName(tr("Calendar for %1").arg(name));
}

std::optional<maths::Day> DayField::value() const {
    const auto read = exchange::read_day(text(), habits().today(), habits().locale());
    return read ? std::optional<maths::Day>(*read) : std::nullopt;
}

void DayField::set_value(std::optional<maths::Day> value) {
    set_text(value ? habits().day(*value) : QString());
}

exchange::Read<QString> DayField::understand(const QString& text) const {
    const auto read = exchange::read_day(text, habits().today(), habits().locale());
    if (!read) {
        return tl::unexpected<exchange::Unreadable>(read.error());
    }
    const QString written = habits().day(*read);
    const QString weekday = habits().locale().dayName(to_qdate(*read).dayOfWeek(), QLocale::ShortFormat);
    const std::int64_t away = maths::days_between(habits().today(), *read);
    if (away == 0) {
        //: What stands beside a day that was typed; %1 is the day, as 3 Oct 2026
        return text.trimmed() == written ? tr("today") : tr("today, %1").arg(written);
    }
    if (away == -1) {
        //: What stands beside a day that was typed; %1 is the day, as 3 Oct 2026
        return text.trimmed() == written ? tr("yesterday") : tr("yesterday, %1").arg(written);
    }
    const QString words = weekday + QLatin1Char(' ') + written;
    return text.trimmed() == written ? weekday : words;
}

void DayField::open_calendar() {
    auto* popup = new CalendarPopup(habits().locale(), to_qdate(value().value_or(habits().today())),
                                    to_qdate(habits().today()), this);
    connect(popup, &CalendarPopup::picked, this, [this](QDate date) {
        set_value(from_qdate(date));
        take_focus();
        note_edit();
    });
    popup->open_below(line());
}

bool DayField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == editor() && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_F4 || (key->key() == Qt::Key_Down && key->modifiers() != Qt::ControlModifier)) {
            open_calendar();
            return true;
        }
    }
    return QuantityField::eventFilter(watched, event);
}

TimeField::TimeField(const Habits& habits, QWidget* parent) : QuantityField(habits, parent) {
    refresh_aside();
}

std::optional<int> TimeField::value() const {
    const auto read = exchange::read_time(text());
    return read ? std::optional<int>(*read) : std::nullopt;
}

void TimeField::set_value(std::optional<int> minutes) {
    set_text(minutes ? QTime::fromMSecsSinceStartOfDay(*minutes * 60000).toString(QStringLiteral("HH:mm")) : QString());
}

exchange::Read<QString> TimeField::understand(const QString& text) const {
    const auto read = exchange::read_time(text);
    if (!read) {
        return tl::unexpected<exchange::Unreadable>(read.error());
    }
    return QTime::fromMSecsSinceStartOfDay(*read * 60000).toString(QStringLiteral("HH:mm"));
}

} // namespace soakbook::ui
