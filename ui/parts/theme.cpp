// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/theme.h"

#include "ui/parts/style_sheet.h"

#include <QApplication>
#include <QLabel>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace soakbook::ui {

namespace {

const Colours light_colours{QColor(0xF6F4EF), QColor(0xFFFFFF), QColor(0xDCD7CC), QColor(0x1E2423), QColor(0x5C6663),
                            QColor(0x155E63), QColor(0xFFFFFF), QColor(0xDCEBEA), QColor(0x3D6A9E), QColor(0x2E7A4F),
                            QColor(0x9A6700), QColor(0xA8321F), QColor(0x7A7F7D)};
const Colours dark_colours{QColor(0x151918), QColor(0x1E2423), QColor(0x37403D), QColor(0xECEAE4), QColor(0xA7B0AC),
                           QColor(0x6FC3C0), QColor(0x151918), QColor(0x1F3B3B), QColor(0x8DB4E2), QColor(0x7CC79B),
                           QColor(0xE3B04B), QColor(0xF08A72), QColor(0x98A09C)};

struct Worn {
    Look look = Look::light;
    int percent = 100;
    bool system_known = false;
    Look system = Look::light;
};

Worn& worn() {
    static Worn state;
    return state;
}

QPalette palette_of(const Colours& c) {
    QPalette p;
    p.setColor(QPalette::Window, c.paper);
    p.setColor(QPalette::WindowText, c.ink);
    p.setColor(QPalette::Base, c.card);
    p.setColor(QPalette::AlternateBase, c.paper);
    p.setColor(QPalette::Text, c.ink);
    p.setColor(QPalette::PlaceholderText, c.soft_ink);
    p.setColor(QPalette::Button, c.card);
    p.setColor(QPalette::ButtonText, c.ink);
    p.setColor(QPalette::BrightText, c.past);
    p.setColor(QPalette::Highlight, c.accent);
    p.setColor(QPalette::HighlightedText, c.accent_ink);
    p.setColor(QPalette::Link, c.accent);
    p.setColor(QPalette::LinkVisited, c.accent);
    p.setColor(QPalette::ToolTipBase, c.card);
    p.setColor(QPalette::ToolTipText, c.ink);
    p.setColor(QPalette::Light, c.card);
    p.setColor(QPalette::Midlight, c.line);
    p.setColor(QPalette::Mid, c.line);
    p.setColor(QPalette::Dark, c.line);
    p.setColor(QPalette::Shadow, c.line);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText}) {
        p.setColor(QPalette::Disabled, role, c.soft_ink);
    }
    p.setColor(QPalette::Disabled, QPalette::Highlight, c.line);
    return p;
}

QLabel* labelled(const QString& text, Type type, QWidget* parent, bool wrap, bool soft) {
    auto* label = new QLabel(text, parent);
    label->setProperty("type", type_name(type));
    label->setProperty("soft", soft);
    label->setWordWrap(wrap);
    label->setTextFormat(Qt::AutoText);
    return label;
}

void restyle(QWidget* widget) {
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

double luminance(const QColor& colour) {
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    const double red = linear(static_cast<double>(colour.redF()));
    const double green = linear(static_cast<double>(colour.greenF()));
    const double blue = linear(static_cast<double>(colour.blueF()));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

} // namespace

const Colours& colours(Look look) {
    return look == Look::dark ? dark_colours : light_colours;
}

const Colours& colours() {
    return colours(worn().look);
}

Look look() {
    return worn().look;
}

int text_percent() {
    return worn().percent;
}

Look look_for(const QString& wish) {
    // Asked for the first time before our own palette is set, the application still wears the system's.
    if (!worn().system_known) {
        const QPalette system = QGuiApplication::palette();
        worn().system = system.color(QPalette::Window).lightness() < system.color(QPalette::WindowText).lightness()
                            ? Look::dark
                            : Look::light;
        worn().system_known = true;
    }
    if (wish == QLatin1String("dark")) {
        return Look::dark;
    }
    return wish == QLatin1String("light") ? Look::light : worn().system;
}

void apply_theme(QApplication& application, Look wanted, int percent) {
    look_for({});
    worn().look = wanted;
    worn().percent = std::clamp(percent, 100, 200);
    if (application.style()->name() != QLatin1String("fusion")) {
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    }
    const QPalette palette = palette_of(colours());
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
    QApplication::setFont(type_font(Type::body));
    application.setStyleSheet(style_sheet());
}

int scaled(int length) {
    return (length * worn().percent + 50) / 100;
}

QFont type_font(Type type) {
    const bool is_code = type == Type::code || type == Type::code_strong;
    QFont made(is_code ? QStringLiteral("DejaVu Sans Mono") : QStringLiteral("Noto Sans"));
    made.setStyleHint(is_code ? QFont::Monospace : QFont::SansSerif);
    made.setPointSizeF(type_points(type) * worn().percent / 100.0);
    made.setWeight(type_is_strong(type) ? QFont::DemiBold : QFont::Normal);
    return made;
}

QLabel* make_label(const QString& text, Type type, QWidget* parent, bool wrap) {
    return labelled(text, type, parent, wrap, false);
}

QLabel* make_soft_label(const QString& text, Type type, QWidget* parent, bool wrap) {
    return labelled(text, type, parent, wrap, true);
}

void set_kind(QWidget* widget, const char* kind) {
    widget->setProperty("kind", QLatin1String(kind));
    restyle(widget);
}

void set_flag(QWidget* widget, const char* name, bool value) {
    if (widget->property(name).toBool() == value && widget->property(name).isValid()) {
        return;
    }
    widget->setProperty(name, value);
    restyle(widget);
}

int fold_time(const QWidget* widget) {
    return widget->style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, widget) > 0 ? 120 : 0;
}

QColor mixed(const QColor& from, const QColor& to, double part) {
    const auto between = [part](int a, int b) { return static_cast<int>(std::lround(a + (b - a) * part)); };
    return {between(from.red(), to.red()), between(from.green(), to.green()), between(from.blue(), to.blue())};
}

double contrast(const QColor& a, const QColor& b) {
    const double one = luminance(a) + 0.05;
    const double other = luminance(b) + 0.05;
    return std::max(one, other) / std::min(one, other);
}

} // namespace soakbook::ui
