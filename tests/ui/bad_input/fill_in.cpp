// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/bad_input/form_case.h"

#include "ui/parts/choice_field.h"
#include "ui/parts/record_table.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>

#include <stdexcept>

namespace soakbook::tests {

namespace {

/// The field of that key; "@name" is the widget of that name.
QWidget* part_of(const ui::FormFrame& form, const QString& key) {
    QWidget* found = key.startsWith(QLatin1Char('@')) ? form.findChild<QWidget*>(key.mid(1)) : form.field(key);
    if (found == nullptr)
        throw std::runtime_error("no field " + key.toStdString());
    return found;
}

void choose(QWidget* field, int nth) {
    auto* box = qobject_cast<QComboBox*>(qobject_cast<ui::Field*>(field)->editor());
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Home);
    for (int i = 1; i < nth; ++i)
        QTest::keyClick(box, Qt::Key_Down);
    if (box->currentIndex() != nth - 1) {
        box->setCurrentIndex(nth - 1);
        Q_EMIT box->activated(nth - 1);
    }
}

void type_cell(ui::FormFrame& form, int column, const QString& text) {
    auto* table = form.window()->findChild<ui::RecordTable*>();
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, column));
    QTest::keyClicks(table, text.left(1));
    QTest::keyClicks(QApplication::focusWidget(), text.mid(1));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
}

void answer(QWidget* field, bool yes) {
    const auto buttons = field->findChildren<QPushButton*>();
    buttons.at(yes ? 0 : 1)->click();
}

} // namespace

ui::FormFrame* open_form(const Room& room) {
    const QWidget* ground = room.dialog();
    if (ground == nullptr)
        ground = const_cast<Room&>(room).window().findChild<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
    if (auto* itself = qobject_cast<ui::FormFrame*>(const_cast<QWidget*>(ground)))
        return itself;
    for (ui::FormFrame* form : ground->findChildren<ui::FormFrame*>()) {
        if (form->isVisible())
            return form;
    }
    throw std::runtime_error("no form is open");
}

void fill_in(Room& room, const FormCase& form_case) {
    ui::FormFrame& form = *open_form(room);
    for (const FormCase::Typed& typed : form_case.right) {
        const QString text = QString::fromUtf8(typed.text);
        if (qstrncmp(typed.key, "cell ", 5) == 0) {
            type_cell(form, QString::fromLatin1(typed.key).mid(5).toInt(), text);
            room.settle();
            continue;
        }
        QWidget* part = part_of(form, QLatin1String(typed.key));
        auto* field = qobject_cast<ui::Field*>(part);
        if (text.startsWith(QLatin1Char('#'))) {
            choose(part, text.mid(1).toInt());
        } else if (text == QLatin1String("yes") || text == QLatin1String("no")) {
            if (auto* box = qobject_cast<QCheckBox*>(part))
                box->click();
            else
                answer(part, text == QLatin1String("yes"));
        } else {
            QWidget* editor = field != nullptr ? field->editor() : part;
            editor->setFocus();
            QTest::keyClick(editor, Qt::Key_A, Qt::ControlModifier);
            QTest::keyClicks(editor, text);
        }
        room.settle();
    }
}

} // namespace soakbook::tests
