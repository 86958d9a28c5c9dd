// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/habits.h"

#include <QSettings>

#include <algorithm>

namespace soakbook::ui {

namespace {

template <class Unit> Unit stored_unit(const QSettings& settings, const QString& key, Unit usual, int last) {
    const int kept = settings.value(key, static_cast<int>(usual)).toInt();
    return static_cast<Unit>(std::clamp(kept, 0, last));
}

} // namespace

Preferences stored_preferences() {
    QSettings settings;
    settings.beginGroup(QStringLiteral("preferences"));
    Preferences p;
    p.large_mass = stored_unit(settings, QStringLiteral("large_mass"), p.large_mass, 3);
    p.small_mass = stored_unit(settings, QStringLiteral("small_mass"), p.small_mass, 3);
    p.temperature = stored_unit(settings, QStringLiteral("temperature"), p.temperature, 1);
    p.language = settings.value(QStringLiteral("language")).toString();
    p.text_percent = std::clamp(settings.value(QStringLiteral("text_percent"), 100).toInt(), 100, 200);
    p.look = settings.value(QStringLiteral("look")).toString();
    p.paper = settings.value(QStringLiteral("paper")).toString();
    return p;
}

void store_preferences(const Preferences& p) {
    QSettings settings;
    settings.beginGroup(QStringLiteral("preferences"));
    settings.setValue(QStringLiteral("large_mass"), static_cast<int>(p.large_mass));
    settings.setValue(QStringLiteral("small_mass"), static_cast<int>(p.small_mass));
    settings.setValue(QStringLiteral("temperature"), static_cast<int>(p.temperature));
    settings.setValue(QStringLiteral("language"), p.language);
    settings.setValue(QStringLiteral("text_percent"), p.text_percent);
    settings.setValue(QStringLiteral("look"), p.look);
    settings.setValue(QStringLiteral("paper"), p.paper);
}

} // namespace soakbook::ui
