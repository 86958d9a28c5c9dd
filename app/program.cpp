// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/program.h"

#include "resources/resources.h"
#include "translations/translations.h"
#include "ui/parts/habits.h"
#include "ui/parts/theme.h"

#include <QApplication>
#include <QIcon>
#include <QLibraryInfo>
#include <QTranslator>

namespace soakbook::app {

void name_program() {
    QCoreApplication::setOrganizationName(QStringLiteral("Soakbook"));
    QCoreApplication::setApplicationName(QStringLiteral("Soakbook"));
    QCoreApplication::setApplicationVersion(QStringLiteral(SOAKBOOK_VERSION));
}

void load_words(QCoreApplication& application) {
    const ui::Preferences preferences = ui::stored_preferences();
    const QString language = preferences.language.isEmpty() ? QLocale::system().name().left(2) : preferences.language;
    // English has a file too: its plurals.
    for (const QString& name : {QStringLiteral("en"), language}) {
        auto* words = new QTranslator(&application);
        if (words->load(translations::file_of(name)))
            QCoreApplication::installTranslator(words);
    }
    auto* qt_words = new QTranslator(&application);
    if (language != QStringLiteral("en") && qt_words->load(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(qt_words);
}

void dress(QApplication& application) {
    open_resources();
    load_words(application);
    const ui::Preferences preferences = ui::stored_preferences();
    ui::apply_theme(application, ui::look_for(preferences.look), preferences.text_percent);
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/soakbook/icons/soakbook.svg")));
}

bool no_display() {
    return qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

QString no_display_words() {
    //: Said on the command line where no window can be shown; --tour stays as it is.
    return QCoreApplication::translate("Program", "There is no display to show a window on. \"soakbook --tour FOLDER\" saves pictures of it instead.");
}

} // namespace soakbook::app
