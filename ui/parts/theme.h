// SPDX-License-Identifier: GPL-3.0-or-later
// Paper and ink: the colours, type sizes and spaces of the whole house, for light and dark, at 100 to 200 % text. Widgets
// ask here and set no colour of their own.
#pragma once

#include <QColor>
#include <QFont>
#include <QString>

class QApplication;
class QLabel;
class QWidget;

namespace soakbook::ui {

enum class Look { light, dark };

/// The colours of one look.
struct Colours {
    QColor paper;       ///< behind everything
    QColor card;        ///< what stands on the paper
    QColor line;        ///< the thin lines
    QColor ink;         ///< text
    QColor soft_ink;    ///< text that explains
    QColor accent;      ///< the one thing to do, what is chosen, what was measured
    QColor accent_ink;  ///< text on the accent
    QColor accent_wash; ///< behind what is chosen
    QColor resting;
    QColor ready;
    QColor near_limit;
    QColor past;
    QColor gone;
};

/// What a text is, and so how large and heavy it is.
enum class Type { body, strong, small, small_strong, heading, title, code, code_strong };

// Space goes in steps of four. These are for 100 % text; scaled() makes them fit the user's text size.
constexpr int row_height = 40;
constexpr int control_height = 36;
constexpr int page_margin = 24;
constexpr int card_padding = 16;
constexpr int card_radius = 8;
constexpr int control_radius = 6;
constexpr int widest_text = 1000;

/// The colours of a look, exactly as the design says.
const Colours& colours(Look look);
/// The colours the program wears now.
const Colours& colours();
Look look();
int text_percent();

/// The look that `wish` asks for: "light", "dark", or anything else for what the system had when the program started.
Look look_for(const QString& wish);
/// Dresses the whole program: style, palette, fonts and style sheet. `percent` is kept within 100 to 200.
void apply_theme(QApplication& application, Look look, int percent);

/// A length for 100 % text, as long as the user's text size wants it.
int scaled(int length);
QFont type_font(Type type);
/// A label of that type; it follows later changes of look and text size. Long text wraps when `wrap` is true.
QLabel* make_label(const QString& text, Type type, QWidget* parent = nullptr, bool wrap = false);
/// The same in soft ink.
QLabel* make_soft_label(const QString& text, Type type, QWidget* parent = nullptr, bool wrap = true);
/// Gives a widget one of the kinds that the style sheet knows ("card", "primary", "link", ...) and restyles it.
void set_kind(QWidget* widget, const char* kind);
/// Sets a property that the style sheet looks at, and restyles the widget if it changed.
void set_flag(QWidget* widget, const char* name, bool value);
/// How long a fold takes in milliseconds: 120, or 0 where the system wishes no motion.
int fold_time(const QWidget* widget);

/// The colour that lies `part` of the way from one to the other.
QColor mixed(const QColor& from, const QColor& to, double part);

/// The contrast ratio of two colours, 1 to 21, by WCAG 2.1 (relative luminance of sRGB).
double contrast(const QColor& a, const QColor& b);

} // namespace soakbook::ui
