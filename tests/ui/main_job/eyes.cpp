// SPDX-License-Identifier: GPL-3.0-or-later
// What can be read on the window in front.
#include "hands.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QTableView>
#include <QTextDocumentFragment>

namespace soakbook::tests {

namespace {

QString plain(const QString& text) { return Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text; }

QString text_in(const QWidget* widget) {
    if (const auto* line = qobject_cast<const QLineEdit*>(widget))
        return line->text();
    if (const auto* box = qobject_cast<const QComboBox*>(widget))
        return box->currentText();
    if (const auto* note = qobject_cast<const QPlainTextEdit*>(widget))
        return note->toPlainText();
    return {};
}

QString words_of(const QWidget* widget) {
    if (const auto* label = qobject_cast<const QLabel*>(widget))
        return plain(label->text());
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
        return button->text().isEmpty() ? button->accessibleName() : QString(button->text()).remove(QLatin1Char('&'));
    if (const auto* view = qobject_cast<const QAbstractItemView*>(widget); view != nullptr && view->model() != nullptr) {
        QStringList lines;
        for (int row = 0; row < view->model()->rowCount(); ++row) {
            QStringList cells;
            for (int column = 0; column < view->model()->columnCount(); ++column)
                cells << view->model()->index(row, column).data().toString();
            lines << cells.join(QStringLiteral(" | "));
        }
        return lines.join(QLatin1Char('\n'));
    }
    const QString typed = text_in(widget);
    return typed.isEmpty() ? widget->accessibleName() : QString(widget->accessibleName() + QStringLiteral(" = ") + typed);
}

} // namespace

QWidget* Hands::front() const {
    if (QWidget* modal = QApplication::activeModalWidget())
        return modal;
    QWidget* in_front = nullptr;
    for (QWidget* window : QApplication::topLevelWidgets()) {
        const bool is_window = window->isVisible() && window->windowType() != Qt::ToolTip && window->windowType() != Qt::Popup;
        if (is_window && (in_front == nullptr || qobject_cast<QDialog*>(window) != nullptr))
            in_front = window;
    }
    return in_front;
}

QString Hands::words() const {
    QStringList said;
    const QWidget* window = front();
    if (window == nullptr)
        return {};
    for (const QWidget* widget : window->findChildren<QWidget*>()) {
        const QString words = widget->isVisible() ? words_of(widget) : QString();
        if (!words.isEmpty())
            said << words;
    }
    // Spaces that do not break read as spaces.
    return said.join(QLatin1Char('\n')).replace(QChar(0x00a0), QLatin1Char(' ')).replace(QChar(0x202f), QLatin1Char(' '));
}

bool Hands::sees(const QString& text) const { return words().contains(text); }

QString Hands::text_of(const QString& field) const {
    for (const QWidget* widget : front()->findChildren<QWidget*>()) {
        if (widget->isVisible() && widget->accessibleName() == field && !text_in(widget).isEmpty())
            return text_in(widget);
    }
    return {};
}

} // namespace soakbook::tests
