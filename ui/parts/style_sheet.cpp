// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/style_sheet.h"

#include "resources/resources.h"

#include <array>
#include <utility>

namespace soakbook::ui {

namespace {

struct TypeFace {
    Type type;
    const char* name;
    double points;
    bool strong;
    bool code;
};

constexpr std::array<TypeFace, 8> faces{{
    {Type::body, "body", 10.5, false, false},
    {Type::strong, "strong", 10.5, true, false},
    {Type::small, "small", 9.5, false, false},
    {Type::small_strong, "small_strong", 9.5, true, false},
    {Type::heading, "heading", 12.0, true, false},
    {Type::title, "title", 18.0, true, false},
    {Type::code, "code", 10.5, false, true},
    {Type::code_strong, "code_strong", 10.5, true, true},
}};

const TypeFace& face(Type type) {
    return faces.at(static_cast<std::size_t>(type));
}

// Names in @...@ are colours, numbers in ~...~ are lengths for 100 % text.
const char* const sheet = R"(
QToolTip { background: @card@; color: @ink@; border: 1px solid @line@; padding: ~4~px; }
QLabel { background: transparent; }
QLabel[soft="true"] { color: @soft@; }
QLabel[accent="true"] { color: @accent@; }
QLabel[kind="complaint"] { color: @past@; }

QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QAbstractSpinBox, QDateTimeEdit {
    background: @field@; border: 1px solid @line@; border-radius: ~6~px; padding: 1px ~11~px;
    selection-background-color: @accent@; selection-color: @accent_ink@; }
QLineEdit[code="true"] { font-family: "DejaVu Sans Mono"; }
QLineEdit, QComboBox, QAbstractSpinBox { min-height: ~32~px; }
QLineEdit { padding: 1px ~9~px; }
QPlainTextEdit, QTextEdit { padding: ~6~px ~7~px; }
QLineEdit:focus, QComboBox:focus, QComboBox:on, QAbstractSpinBox:focus {
    border: 2px solid @accent@; padding: 0px ~10~px; background: @card@; }
QLineEdit:focus { padding: 0px ~8~px; }
QPlainTextEdit:focus, QTextEdit:focus { border: 2px solid @accent@; padding: ~5~px ~6~px; background: @card@; }
QLineEdit[wrong="true"] { border: 2px solid @past@; padding: 0px ~8~px; }
QComboBox[wrong="true"] { border: 2px solid @past@; padding: 0px ~10~px; }
QPlainTextEdit[wrong="true"] { border: 2px solid @past@; padding: ~5~px ~6~px; }
QLineEdit:disabled, QComboBox:disabled, QPlainTextEdit:disabled, QLineEdit:read-only { background: @card@; color: @soft@; }
QComboBox::drop-down { border: none; width: ~30~px; }
QComboBox::down-arrow { image: none; }
QComboBox QAbstractItemView { background: @card@; color: @ink@; border: 1px solid @line@; outline: none; padding: ~4~px;
    selection-background-color: @wash@; selection-color: @ink@; }
QComboBox QAbstractItemView::item { min-height: ~32~px; padding: 0 ~8~px; }

QPushButton, QToolButton[kind="quiet"] { background: @card@; color: @ink@; border: 1px solid @line@; border-radius: ~6~px;
    padding: 1px ~14~px; min-height: ~32~px; }
QPushButton:hover, QToolButton[kind="quiet"]:hover { background: @paper@; border-color: @soft@; }
QPushButton:pressed, QToolButton[kind="quiet"]:pressed { background: @wash@; }
QPushButton:focus, QToolButton[kind="quiet"]:focus { border: 2px solid @accent@; padding: 0px ~13~px; }
QPushButton:disabled, QToolButton[kind="quiet"]:disabled { color: @soft@; background: @paper@; border-color: @line@; }
QPushButton:checked { background: @wash@; border-color: @accent@; color: @accent@; }
QPushButton[kind="link"]::menu-indicator { image: none; width: 0; }
QCheckBox, QRadioButton { spacing: ~10~px; min-height: ~28~px; border: 2px solid transparent; border-radius: ~6~px; padding-right: ~4~px; }
QCheckBox:focus, QRadioButton:focus { border: 2px solid @accent@; }
QCheckBox:disabled, QRadioButton:disabled { color: @soft@; }
QCheckBox::indicator, QRadioButton::indicator { width: ~18~px; height: ~18~px; border: 1px solid @soft@; background: @field@; }
QCheckBox::indicator { border-radius: ~4~px; }
QRadioButton::indicator { border-radius: ~10~px; }
QCheckBox::indicator:checked { background: @accent@; border: 1px solid @accent@; image: url(:/soakbook/icons/@tick@.svg); }
QRadioButton::indicator:checked { background: @card@; border: ~5~px solid @accent@; width: ~10~px; height: ~10~px; }
QCheckBox::indicator:disabled, QRadioButton::indicator:disabled { border-color: @line@; background: @card@; }
QPushButton[kind="primary"] { background: @accent@; color: @accent_ink@; border: 1px solid @accent@; font-weight: 600; }
QPushButton[kind="primary"]:hover { background: @accent_hover@; border-color: @accent_hover@; }
QPushButton[kind="primary"]:pressed { background: @accent_down@; }
QPushButton[kind="primary"]:focus { border: 2px solid @ink@; padding: 0px ~13~px; }
QPushButton[kind="primary"]:disabled { background: @line@; color: @soft@; border-color: @line@; }
QPushButton[kind="row"] { min-height: ~26~px; padding: 1px ~12~px; }
QPushButton[kind="row"]:focus { padding: 0px ~11~px; }
QPushButton[kind="link"] { background: transparent; border: 2px solid transparent; color: @accent@; padding: 0;
    min-height: ~24~px; text-align: left; text-decoration: underline; }
QPushButton[kind="link"]:focus { border: 2px solid @accent@; }
QPushButton[kind="segment"] { border-radius: 0; margin-left: -1px; min-width: ~48~px; }
QPushButton[kind="segment"][place="first"] { border-top-left-radius: ~6~px; border-bottom-left-radius: ~6~px; margin-left: 0; }
QPushButton[kind="segment"][place="last"] { border-top-right-radius: ~6~px; border-bottom-right-radius: ~6~px; }
QPushButton[kind="step"] { background: transparent; border: 2px solid transparent; border-radius: ~8~px; text-align: left; padding: 0; }
QPushButton[kind="step"]:hover { background: @paper@; }
QPushButton[kind="step"]:focus { border: 2px solid @accent@; }
QPushButton[kind="status"] { background: transparent; border: 2px solid transparent; padding: 0 ~6~px; min-height: ~24~px;
    color: @soft@; font-size: &small&pt; }
QPushButton[kind="status"]:hover { color: @ink@; background: @paper@; }
QPushButton[kind="status"]:focus { border: 2px solid @accent@; }
QPushButton[kind="status"]::menu-indicator { image: none; width: 0; }
QToolButton[kind="icon"] { background: transparent; border: 2px solid transparent; border-radius: ~6~px; padding: ~2~px; }
QToolButton[kind="icon"]:hover { background: @wash@; }
QToolButton[kind="icon"]:focus { border: 2px solid @accent@; }

QToolButton[kind="nav"] { background: transparent; border: 2px solid transparent; border-left: ~4~px solid transparent; color: @soft@;
    padding: 0 ~8~px 0 ~8~px; min-height: ~36~px; text-align: left; }
QToolButton[kind="nav"]:hover { color: @ink@; background: @paper@; }
QToolButton[kind="nav"]:checked { color: @accent@; background: @wash@; border-left: ~4~px solid @accent@; font-weight: 600; }
QToolButton[kind="nav"]:focus { border: 2px solid @accent@; border-left: ~4~px solid @accent@; }

QFrame[kind="card"] { background: @card@; border: 1px solid @line@; border-radius: ~8~px; }
QFrame[kind="result"] { background: @paper@; border: none; border-radius: ~6~px; }
QFrame[kind="caution"] { background: transparent; border: none; border-left: 3px solid @past@; }
QFrame[kind="notice"] { background: @wash@; border: none; border-radius: ~6~px; }
QFrame[kind="refused"] { background: @card@; border: 1px solid @past@; border-radius: ~6~px; }
QFrame[kind="asked"] { background: @card@; border: 1px solid @near@; border-radius: ~6~px; }
QFrame[kind="rule"] { background: @line@; border: none; max-height: 1px; min-height: 1px; }
QWidget[kind="plain_card"] { background: @card@; }
QWidget[kind="navigation"] { background: @card@; border-right: 1px solid @line@; }
QWidget[kind="head"] { background: @card@; border-bottom: 1px solid @line@; }
QWidget[kind="status_line"] { background: @card@; border-top: 1px solid @line@; }
QWidget[kind="side"] { background: @card@; border-right: 1px solid @line@; }
QWidget[kind="bar"] { background: @wash@; border-bottom: 1px solid @line@; }
QFrame[kind="popup"] { background: @card@; border: 1px solid @line@; }

QAbstractItemView { background: @card@; alternate-background-color: @paper@; border: none; outline: none; gridline-color: @line@;
    selection-background-color: @wash@; selection-color: @ink@; }
QHeaderView { background: @card@; border: none; }
QHeaderView::section { background: @card@; color: @soft@; border: none; border-bottom: 1px solid @line@; padding: 0 ~12~px;
    font-size: &small&pt; }
QHeaderView::section:hover { color: @ink@; }
QTableView QTableCornerButton::section { background: @card@; border: none; }
QTableView QLineEdit { border-radius: 0; padding: 0 ~8~px; min-height: 0; background: @card@; }

QScrollArea { background: transparent; border: none; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QScrollArea > QWidget > QWidget[kind="page"] { background: transparent; }
QScrollBar:vertical { background: transparent; width: ~12~px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: ~12~px; margin: 0; }
QScrollBar::handle { background: @handle@; border-radius: ~4~px; margin: ~2~px; }
QScrollBar::handle:vertical { min-height: ~32~px; }
QScrollBar::handle:horizontal { min-width: ~32~px; }
QScrollBar::handle:hover { background: @soft@; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QMenu { background: @card@; color: @ink@; border: 1px solid @line@; padding: ~4~px; }
QMenu::item { padding: ~6~px ~24~px ~6~px ~12~px; border-radius: ~4~px; }
QMenu::item:selected { background: @wash@; }
QMenu::item:disabled { color: @soft@; }
QMenu::separator { height: 1px; background: @line@; margin: ~4~px ~8~px; }
QProgressBar { background: @paper@; border: 1px solid @line@; border-radius: ~4~px; text-align: center; color: @ink@; min-height: ~16~px; }
QProgressBar::chunk { background: @wash@; border-radius: ~4~px; }
QTabWidget::pane { border: none; border-top: 1px solid @line@; }
QTabBar { background: transparent; }
QTabBar::tab { background: transparent; color: @soft@; border: none; border-bottom: 3px solid transparent;
    padding: ~8~px ~14~px; }
QTabBar::tab:hover { color: @ink@; }
QTabBar::tab:selected { color: @accent@; border-bottom: 3px solid @accent@; }
QTabBar::tab:focus { background: @wash@; }
QSplitter::handle { background: @line@; }
QCalendarWidget QWidget#qt_calendar_navigationbar { background: @card@; }
QCalendarWidget QToolButton { background: transparent; color: @ink@; border: 2px solid transparent; border-radius: ~6~px;
    padding: ~4~px ~8~px; font-weight: 600; }
QCalendarWidget QToolButton:hover { background: @wash@; }
QCalendarWidget QToolButton:focus { border: 2px solid @accent@; }
QCalendarWidget QToolButton::menu-indicator { image: none; }
QCalendarWidget QAbstractItemView { selection-background-color: @accent@; selection-color: @accent_ink@; }
)";

QString with_colours(QString text) {
    const Colours& c = colours();
    const std::array<std::pair<const char*, QString>, 16> names{{
        {"@paper@", c.paper.name()},
        {"@card@", c.card.name()},
        {"@field@", c.paper.name()},
        {"@line@", c.line.name()},
        {"@ink@", c.ink.name()},
        {"@soft@", c.soft_ink.name()},
        {"@accent@", c.accent.name()},
        {"@accent_ink@", c.accent_ink.name()},
        {"@wash@", c.accent_wash.name()},
        {"@near@", c.near_limit.name()},
        {"@past@", c.past.name()},
        {"@tick@", look() == Look::dark ? QStringLiteral("tick_dark") : QStringLiteral("tick_light")},
        {"@accent_hover@", mixed(c.accent, c.ink, 0.15).name()},
        {"@accent_down@", mixed(c.accent, c.ink, 0.3).name()},
        {"@handle@", mixed(c.line, c.soft_ink, 0.35).name()},
        {"&small&", QString::number(type_points(Type::small) * text_percent() / 100.0)},
    }};
    for (const auto& [name, value] : names) {
        text.replace(QLatin1String(name), value);
    }
    return text;
}

QString with_lengths(const QString& text) {
    QString done;
    const QStringList parts = text.split(QLatin1Char('~'));
    for (qsizetype i = 0; i < parts.size(); ++i) {
        const QString& part = parts[i];
        done += i % 2 == 1 ? QString::number(scaled(part.toInt())) : part;
    }
    return done;
}

} // namespace

QString type_name(Type type) {
    return QLatin1String(face(type).name);
}

double type_points(Type type) {
    return face(type).points;
}

bool type_is_strong(Type type) {
    return face(type).strong;
}

QString style_sheet() {
    // The ticks it names lie in the program.
    open_resources();
    QString text = with_lengths(with_colours(QLatin1String(sheet)));
    for (const TypeFace& f : faces) {
        text += QStringLiteral("QLabel[type=\"%1\"] { font-family: \"%2\"; font-size: %3pt; font-weight: %4; }\n")
                    .arg(QLatin1String(f.name), f.code ? QStringLiteral("DejaVu Sans Mono") : QStringLiteral("Noto Sans"))
                    .arg(f.points * text_percent() / 100.0)
                    .arg(f.strong ? 600 : 400);
    }
    return text;
}

} // namespace soakbook::ui
