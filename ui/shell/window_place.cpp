// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/window_place.h"

#include <QGuiApplication>
#include <QScreen>
#include <QSettings>
#include <QWidget>

#include <algorithm>

namespace soakbook::ui {

namespace {

const QString place_key = QStringLiteral("window/place");
const QString large_key = QStringLiteral("window/large");
constexpr int usual_width = 1280;
constexpr int usual_height = 800;

qint64 shared_area(const QRect& a, const QRect& b) {
    const QRect both = a.intersected(b);
    return both.isEmpty() ? 0 : qint64{both.width()} * both.height();
}

} // namespace

QRect within_screens(const QRect& wanted, const QList<QRect>& screens) {
    if (screens.isEmpty()) {
        return wanted;
    }
    const QRect screen = *std::max_element(screens.begin(), screens.end(), [&wanted](const QRect& a, const QRect& b) {
        return shared_area(wanted, a) < shared_area(wanted, b);
    });
    QRect placed(QPoint(0, 0), wanted.size().boundedTo(screen.size()));
    placed.moveLeft(std::clamp(wanted.left(), screen.left(), screen.right() + 1 - placed.width()));
    placed.moveTop(std::clamp(wanted.top(), screen.top(), screen.bottom() + 1 - placed.height()));
    return placed;
}

void restore_window(QWidget& window) {
    QList<QRect> screens;
    for (const QScreen* screen : QGuiApplication::screens()) {
        screens << screen->availableGeometry();
    }
    const QSettings settings;
    QRect place = settings.value(place_key).toRect();
    if (!place.isValid()) {
        place = QRect(QPoint(0, 0), QSize(usual_width, usual_height));
        place.moveCenter(window.screen()->availableGeometry().center());
    }
    window.setGeometry(within_screens(place, screens));
    if (settings.value(large_key).toBool()) {
        window.setWindowState(Qt::WindowMaximized);
    }
}

void remember_window(const QWidget& window) {
    QSettings settings;
    settings.setValue(place_key, window.isMaximized() ? window.normalGeometry() : window.geometry());
    settings.setValue(large_key, window.isMaximized());
}

} // namespace soakbook::ui
