// SPDX-License-Identifier: GPL-3.0-or-later
#include "hands.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFileDialog>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include <stdexcept>

#include <gtest/gtest.h>

namespace soakbook::tests {

namespace {

constexpr int most_tabs = 250;
/// A form takes no answer to a question that nobody can have read yet.
constexpr int time_to_read_ms = 350;

QString without_mnemonic(QString text) { return text.remove(QLatin1Char('&')); }

} // namespace

void Hands::lost(const QString& what) const {
    const QString said = what + QStringLiteral("\nThe keyboard is at: ") + here() + QStringLiteral("\nTo be read:\n") + words();
    throw std::runtime_error(said.toStdString());
}

QWidget* Hands::keyboard() const {
    QWidget* at = QApplication::focusWidget();
    if (at == nullptr)
        lost(QStringLiteral("nothing has the keyboard"));
    return at;
}

void Hands::settle() const {
    for (int i = 0; i < 5; ++i) {
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    // A desktop gives the keyboard to the window in front.
    if (QWidget* window = front(); window != nullptr && QApplication::activeWindow() != window) {
        QApplication::setActiveWindow(window);
        QApplication::processEvents();
    }
}

void Hands::type(const QString& text) {
    QTest::keyClicks(keyboard(), text);
    m_keys += static_cast<int>(text.size());
    settle();
}

void Hands::press(Qt::Key key, Qt::KeyboardModifiers with) {
    QTest::keyClick(keyboard(), key, with);
    ++m_keys;
    settle();
}

void Hands::enter() { press(Qt::Key_Return, Qt::ControlModifier); }

void Hands::keep_as_it_is() {
    if (!sees(QStringLiteral("Keep it as it is")))
        lost(QStringLiteral("nothing was asked"));
    QTest::qWait(time_to_read_ms);
    enter();
}

QString Hands::here() const {
    const QWidget* at = QApplication::focusWidget();
    if (at == nullptr)
        return QStringLiteral("nothing");
    const auto* button = qobject_cast<const QAbstractButton*>(at);
    return button != nullptr && at->accessibleName().isEmpty() ? without_mnemonic(button->text()) : at->accessibleName();
}

bool Hands::is_at(const QString& name) const {
    const QString at = here();
    const auto* button = qobject_cast<const QAbstractButton*>(QApplication::focusWidget());
    return at == name || at.startsWith(name + QStringLiteral(": ")) || at.startsWith(name + QStringLiteral(". ")) || (button != nullptr && without_mnemonic(button->text()) == name);
}

void Hands::tab_to(const QString& name) {
    QStringList visited;
    for (int i = 0; i < most_tabs && !is_at(name); ++i) {
        press(Qt::Key_Tab);
        visited << here();
    }
    if (!is_at(name)) {
        visited.removeDuplicates();
        lost(QStringLiteral("Tab does not come to: %1, but to: %2").arg(name, visited.join(QStringLiteral(", "))));
    }
}

void Hands::fill(const QString& field, const QString& text) {
    tab_to(field);
    auto* line = qobject_cast<QLineEdit*>(keyboard());
    auto* note = qobject_cast<QPlainTextEdit*>(keyboard());
    const bool stands = (line != nullptr && !line->text().isEmpty() && line->selectedText() != line->text()) ||
                        (note != nullptr && !note->toPlainText().isEmpty());
    if (stands)
        press(Qt::Key_A, Qt::ControlModifier);
    type(text);
    const QString taken = line != nullptr ? line->text() : note != nullptr ? note->toPlainText() : text;
    if (taken != text)
        lost(QStringLiteral("%1 took \"%2\" for \"%3\"").arg(field, taken, text));
}

void Hands::answer(const QString& question, bool yes) {
    tab_to(question);
    press(yes ? Qt::Key_Y : Qt::Key_N);
}

void Hands::choose(const QString& field, const QString& entry) {
    tab_to(field);
    auto* box = qobject_cast<QComboBox*>(keyboard());
    if (box == nullptr)
        lost(field + QStringLiteral(" is no list"));
    // As many letters as it takes.
    for (int i = 0; i < entry.size() && (i == 0 || !box->currentText().startsWith(entry)); ++i)
        type(entry.mid(i, 1));
    if (!box->currentText().startsWith(entry))
        lost(QStringLiteral("%1 stands at \"%2\", not at \"%3\"").arg(field, box->currentText(), entry));
}

void Hands::walk_list(const QString& list, const QString& entry) {
    tab_to(list);
    auto* view = qobject_cast<QListView*>(keyboard());
    if (view == nullptr)
        lost(list + QStringLiteral(" is no list"));
    int wanted = -1;
    for (int i = 0; i < view->model()->rowCount(); ++i) {
        if (wanted < 0 && view->model()->index(i, 0).data().toString().startsWith(entry))
            wanted = i;
    }
    if (wanted < 0)
        lost(QStringLiteral("no such entry: ") + entry);
    for (int i = 0; i < 60 && view->currentIndex().row() != wanted; ++i)
        press(view->currentIndex().row() < wanted ? Qt::Key_Down : Qt::Key_Up);
}

QTableView* Hands::table(const QString& name) const {
    for (QTableView* found : front()->findChildren<QTableView*>()) {
        if (found->isVisible() && found->accessibleName() == name)
            return found;
    }
    lost(QStringLiteral("no such table: ") + name);
}

int Hands::row_of(const QTableView& table, const QString& text) const {
    for (int row = 0; row < table.model()->rowCount(); ++row) {
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            if (!table.isColumnHidden(column) && table.model()->index(row, column).data().toString() == text)
                return row;
        }
    }
    lost(QStringLiteral("no row with: ") + text);
}

int Hands::column_of(const QTableView& table, const QString& header) const {
    for (int column = 0; column < table.model()->columnCount(); ++column) {
        if (!table.isColumnHidden(column) && table.model()->headerData(column, Qt::Horizontal).toString() == header)
            return column;
    }
    lost(QStringLiteral("no column: ") + header);
}

void Hands::walk_to_cell(const QString& name, const QString& row_text, const QString& header) {
    tab_to(name);
    QTableView* found = table(name);
    const int row = row_of(*found, row_text);
    const int column = column_of(*found, header);
    for (int i = 0; i < 200 && found->currentIndex().row() != row; ++i)
        press(found->currentIndex().row() < row ? Qt::Key_Down : Qt::Key_Up);
    for (int i = 0; i < 60 && found->currentIndex().column() != column; ++i)
        press(found->currentIndex().column() < column ? Qt::Key_Right : Qt::Key_Left);
    if (found->currentIndex().row() != row || found->currentIndex().column() != column)
        lost(QStringLiteral("the arrows do not come to %1, %2").arg(row_text, header));
}

void Hands::type_into_cell(const QString& name, const QString& row, const QString& column, const QString& text) {
    walk_to_cell(name, row, column);
    type(text.left(1));
    // The first letter opened the cell; the rest goes where the keyboard is now.
    if (text.size() > 1)
        type(text.mid(1));
    press(Qt::Key_Return);
}

QString Hands::cell(const QString& name, const QString& row, const QString& column) const {
    const QTableView* found = table(name);
    return found->model()->index(row_of(*found, row), column_of(*found, column)).data().toString();
}

QString Hands::rows(const QString& name) const {
    const QTableView* found = table(name);
    QStringList lines;
    for (int row = 0; row < found->model()->rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < found->model()->columnCount(); ++column) {
            if (!found->isColumnHidden(column))
                cells << found->model()->index(row, column).data().toString();
        }
        lines << cells.join(QStringLiteral(" | "));
    }
    return lines.join(QLatin1Char('\n'));
}

QAbstractButton* Hands::button(const QString& words) const {
    for (QAbstractButton* found : front()->findChildren<QAbstractButton*>()) {
        const bool named = without_mnemonic(found->text()) == words || found->accessibleName() == words;
        if (named && found->isVisible() && found->isEnabled())
            return found;
    }
    lost(QStringLiteral("no such button: ") + words);
}

void Hands::click(const QString& words) {
    QAbstractButton* found = button(words);
    for (QWidget* above = found->parentWidget(); above != nullptr; above = above->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(above))
            area->ensureWidgetVisible(found);
    }
    settle();
    if (found->visibleRegion().isEmpty())
        lost(words + QStringLiteral(" cannot be brought into view"));
    QTest::mouseClick(found, Qt::LeftButton, Qt::NoModifier, found->visibleRegion().boundingRect().center());
    ++m_clicks;
    settle();
}

void Hands::click_and_pick_file(const QString& words, const QString& path) {
    int tries = 0;
    QTimer waiting;
    waiting.setInterval(40);
    QObject::connect(&waiting, &QTimer::timeout, &waiting, [&] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        auto* line = dialog == nullptr ? nullptr : dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        if (line == nullptr)
            return;
        if (QWidget* list = QApplication::activePopupWidget())
            list->close(); // names that would fit
        if (line->text() != path) {
            line->setFocus();
            QTest::keyClick(line, Qt::Key_A, Qt::ControlModifier);
            QTest::keyClicks(line, path);
        } else if (++tries < 20) {
            QTest::keyClick(line, Qt::Key_Return);
        } else {
            dialog->reject();
        }
    });
    waiting.start();
    click(words);
    waiting.stop();
    // The suggested name would do: Enter alone is counted.
    ++m_keys;
    if (tries == 0 || tries >= 20)
        lost(words + QStringLiteral(" took no file's name"));
}

void Hands::start_count() {
    m_keys = 0;
    m_clicks = 0;
}

} // namespace soakbook::tests
