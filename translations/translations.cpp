// SPDX-License-Identifier: GPL-3.0-or-later
#include "translations/translations.h"

#include <QDir>
#include <QFile>

namespace soakbook::translations {

QStringList languages() {
    QStringList found;
    const QStringList files = QDir(QStringLiteral(":/i18n")).entryList({QStringLiteral("soakbook_*.qm")}, QDir::Files, QDir::Name);
    for (const QString& file : files) {
        const QString language = file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
        if (language == QLatin1String("en")) {
            found.prepend(language);
        } else {
            found.append(language);
        }
    }
    return found;
}

QString file_of(const QString& language) {
    const QString path = QStringLiteral(":/i18n/soakbook_") + language + QStringLiteral(".qm");
    return QFile::exists(path) ? path : QString();
}

} // namespace soakbook::translations
