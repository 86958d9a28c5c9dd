// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/looked_at.h"

#include <QSettings>

namespace soakbook::ui {

namespace {

QString looked_at_key(const QString& workbook) {
    return QStringLiteral("outside_looked_at/") + workbook;
}

} // namespace

qint64 outside_looked_at(const QString& workbook) {
    return QSettings().value(looked_at_key(workbook)).toLongLong();
}

void set_outside_looked_at(const QString& workbook, qint64 seq) {
    QSettings().setValue(looked_at_key(workbook), seq);
}

} // namespace soakbook::ui
