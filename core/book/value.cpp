// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/value.h"

namespace soakbook::book {

QString day_text(maths::Day day) {
    const std::chrono::year_month_day ymd{day};
    return QDate(static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
                 static_cast<int>(static_cast<unsigned>(ymd.day())))
        .toString(Qt::ISODate);
}

maths::Day day_from(const QString& iso) {
    const QDate date = QDate::fromString(iso, Qt::ISODate);
    if (!date.isValid())
        throw std::runtime_error("a day in the store cannot be read: " + iso.toStdString());
    return maths::day(date.year(), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

} // namespace soakbook::book
