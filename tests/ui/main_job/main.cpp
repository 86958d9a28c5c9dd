// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/program.h"

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // The story is told one hour east of Greenwich, in English.
    qputenv("TZ", "Etc/GMT-1");
    qputenv("LC_ALL", "en_GB.UTF-8");
    testing::InitGoogleTest(&argc, argv);
    // A computer on which the program was never opened, and the settings of whoever runs the tests stay as they are.
    QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    soakbook::app::name_program();
    QApplication application(argc, argv);
    soakbook::app::dress(application);
    return RUN_ALL_TESTS();
}
