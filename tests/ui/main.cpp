// SPDX-License-Identifier: GPL-3.0-or-later
// The one main() of the rooms' tests: no display, one time zone, one locale, settings of its own.
#include "ui/parts/theme.h"

#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // The bench's story is told two hours east of Greenwich.
    qputenv("TZ", "Etc/GMT-2");
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("soakbook-tests"));
    QCoreApplication::setApplicationName(QStringLiteral(SOAKBOOK_ROOM));
    // The settings of whoever runs the tests stay as they are.
    QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    soakbook::ui::apply_theme(application, soakbook::ui::Look::light, 100);
    return RUN_ALL_TESTS();
}
