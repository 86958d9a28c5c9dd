// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/bad_input/sweep.h"

#include "ui/parts/day_field.h"
#include "ui/parts/form_notice.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/text_field.h"

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QPointer>
#include <QRegularExpression>
#include <QTest>

namespace soakbook::tests {

namespace {

constexpr int until_seen_ms = 350;

QWidget* ground_of(const Room& room) {
    if (QDialog* dialog = room.dialog())
        return dialog;
    return const_cast<Room&>(room).window().findChild<QWidget*>(QString(), Qt::FindDirectChildrenOnly);
}

std::vector<QWidget*> editors(const Room& room) {
    std::vector<QWidget*> found;
    for (QWidget* widget : ground_of(room)->findChildren<QWidget*>()) {
        const auto* line = qobject_cast<QLineEdit*>(widget);
        const auto* note = qobject_cast<QPlainTextEdit*>(widget);
        const bool writable = (line != nullptr && !line->isReadOnly()) || (note != nullptr && !note->isReadOnly());
        if (writable && widget->isVisible() && widget->isEnabled())
            found.push_back(widget);
    }
    return found;
}

ui::RecordTable* grid(const Room& room) {
    for (ui::RecordTable* table : ground_of(room)->findChildren<ui::RecordTable*>()) {
        if (table->isVisible() && table->model() != nullptr && table->model()->rowCount() > 0)
            return table;
    }
    return nullptr;
}

QString text_in(const QWidget* editor) {
    if (const auto* line = qobject_cast<const QLineEdit*>(editor))
        return line->text();
    const auto* note = qobject_cast<const QPlainTextEdit*>(editor);
    return note != nullptr ? note->toPlainText() : QString();
}

QStringList all_texts(const Room& room) {
    QStringList texts;
    for (const QWidget* editor : editors(room))
        texts << text_in(editor);
    if (const ui::RecordTable* table = grid(room)) {
        for (int column = 0; column < table->model()->columnCount(); ++column)
            texts << table->model()->index(0, column).data(Qt::EditRole).toString();
    }
    return texts;
}

ui::Field* field_around(QWidget* editor) {
    for (QWidget* above = editor; above != nullptr; above = above->parentWidget()) {
        if (auto* field = qobject_cast<ui::Field*>(above))
            return field;
    }
    return nullptr;
}

/// What stands beside an editor or a part of it, where that is a complaint.
QString complaint_at(QWidget* editor) {
    for (QWidget* above = editor; above != nullptr && !above->isWindow(); above = above->parentWidget()) {
        if (qobject_cast<ui::Field*>(above) == nullptr)
            continue;
        for (const QLabel* label : above->findChildren<QLabel*>(QString(), Qt::FindDirectChildrenOnly)) {
            if (label->isVisible() && label->property("kind").toString() == QLatin1String("complaint"))
                return label->text();
        }
    }
    return {};
}

QStringList complaints(const Room& room) {
    QStringList words;
    for (const QLabel* label : ground_of(room)->findChildren<QLabel*>()) {
        if (label->isVisible() && !label->text().isEmpty() && label->property("kind").toString() == QLatin1String("complaint"))
            words << label->text();
    }
    return words;
}

ui::FormNotice* notice(const Room& room) {
    ui::FormNotice* found = open_form(room)->findChild<ui::FormNotice*>();
    return found != nullptr && !found->isHidden() ? found : nullptr;
}

bool is_asking(const Room& room) {
    const ui::FormNotice* said = notice(room);
    return said != nullptr && said->property("kind").toString() == QLatin1String("asked");
}

QString shortened(const QString& text) {
    return text.size() > 60 ? QString(text.left(60) + QStringLiteral("...")) : text;
}

bool is_clear(const QString& sentence) {
    const QString end = sentence.trimmed().right(1);
    return sentence.contains(QLatin1Char(' ')) && QStringLiteral(".?!").contains(end) && !end.isEmpty() &&
           !sentence.contains(QRegularExpression(QStringLiteral("%[0-9n]"))) && sentence.size() < 400;
}

void paste(const QString& text) {
    QWidget* here = QApplication::focusWidget();
    QTest::keyClick(here, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(here, Qt::Key_Delete);
    if (text.isEmpty())
        return;
    QApplication::clipboard()->setText(text);
    QTest::keyClick(here, Qt::Key_V, Qt::ControlModifier);
}

/// Puts the keyboard into the spot; nothing where it cannot be typed into.
QWidget* go_to(const Room& room, const Spot& spot) {
    if (spot.column < 0) {
        QWidget* editor = editors(room).at(static_cast<std::size_t>(spot.at));
        editor->setFocus(Qt::TabFocusReason);
        return editor;
    }
    ui::RecordTable* table = grid(room);
    table->setFocus(Qt::TabFocusReason);
    table->setCurrentIndex(table->model()->index(0, spot.column));
    QTest::keyClick(table, Qt::Key_F2);
    room.settle();
    return qobject_cast<QLineEdit*>(QApplication::focusWidget());
}

bool is_a_plain_quantity(const ui::Field* field) {
    return qobject_cast<const ui::QuantityField*>(field) != nullptr && qobject_cast<const ui::DayField*>(field) == nullptr &&
           qobject_cast<const ui::TimeField*>(field) == nullptr;
}

/// 12,5 and 12.5 mean twelve and a half wherever halves make sense.
bool reads_as_twelve_and_a_half(const ui::Field* field) {
    if (const auto* mass = qobject_cast<const ui::MassField*>(field)) {
        const auto value = mass->value();
        return value && (*value == maths::kilograms(12.5) || *value == maths::grams(12.5));
    }
    if (const auto* temperature = qobject_cast<const ui::TemperatureField*>(field))
        return temperature->value() == maths::celsius(12.5);
    if (const auto* percent = qobject_cast<const ui::PercentField*>(field))
        return percent->value() == maths::percent(12.5);
    if (const auto* count = qobject_cast<const ui::CountField*>(field))
        return !count->value();
    return true;
}

QString kept_form(const ui::Field* field, const QString& typed) {
    if (const auto* text = qobject_cast<const ui::TextField*>(field))
        return text->value();
    const auto* note = qobject_cast<const ui::NoteField*>(field);
    return note != nullptr ? note->value() : typed.trimmed();
}

struct Judge {
    Room& room;
    const Spot& spot;
    Outcome outcome;
    void fault(const QString& words) { outcome.faults << words; }
};

void judge_refusal(Judge& judge, QWidget* editor, const BadText& bad, const QString& own_problem) {
    const QStringList words = complaints(judge.room);
    const ui::FormNotice* said = notice(judge.room);
    const QString at_field = editor != nullptr ? complaint_at(editor) : QString();
    judge.outcome.beside = !at_field.isEmpty() || (editor == nullptr && !words.isEmpty());
    if (judge.outcome.kind == Outcome::Kind::asked) {
        if (words.isEmpty() && said->words().isEmpty())
            judge.fault(QStringLiteral("asks, and says nothing"));
        return;
    }
    // What is emptied may leave nothing to be entered; that is about the form, not the field.
    const bool nothing_left = bad.text.isEmpty() && said != nullptr && is_clear(said->words());
    if (words.isEmpty() && !nothing_left)
        judge.fault(said == nullptr ? QStringLiteral("refused without a word")
                                    : QString(QStringLiteral("says at the foot only: ") + said->words()));
    for (const QString& sentence : words) {
        if (!is_clear(sentence))
            judge.fault(QStringLiteral("not a clear sentence: ") + shortened(sentence));
    }
    if (!own_problem.isEmpty() && at_field.isEmpty())
        judge.fault(QStringLiteral("does not read, and nothing stands beside it"));
    // The first number of a row of hives and the path of a file are no texts to be kept.
    const bool is_kept_text = judge.spot.name != QLatin1String("first (1)") && !judge.spot.name.startsWith(QLatin1String("welcome_path"));
    if (bad.text.size() > 5000 && own_problem.isEmpty() && !at_field.isEmpty() && is_kept_text &&
        !at_field.contains(QRegularExpression(QStringLiteral("[0-9]"))))
        judge.fault(QStringLiteral("too long, and the limit is not said: ") + at_field);
}

void judge_saved(Judge& judge, const BadText& bad, bool quantity, bool temperature, bool is_text, const QString& kept) {
    const bool day_or_minus = bad.may_be_a_quantity || bad.text.isEmpty() || (temperature && bad.text.startsWith(QLatin1Char('-')));
    if (quantity && !day_or_minus)
        judge.fault(QStringLiteral("took it for a quantity"));
    if (is_text && !kept.isEmpty() && judge.room.cells_that_say(kept) == 0)
        judge.fault(QStringLiteral("saved, but does not read back the same"));
}

} // namespace

std::vector<Spot> spots(const Room& room) {
    std::vector<Spot> found;
    int at = 0;
    for (QWidget* editor : editors(room)) {
        const ui::Field* field = field_around(editor);
        const QString name = field == nullptr                  ? editor->objectName()
                             : field->objectName().isEmpty() ? QString::fromLatin1(field->metaObject()->className())
                                                             : field->objectName();
        found.push_back({QStringLiteral("%1 (%2)").arg(name).arg(at), at, -1});
        ++at;
    }
    if (const ui::RecordTable* table = grid(room)) {
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            const QModelIndex cell = table->model()->index(0, column);
            if (cell.flags().testFlag(Qt::ItemIsEditable) && !table->isColumnHidden(column))
                found.push_back({table->model()->headerData(column, Qt::Horizontal).toString() + QStringLiteral(" (cell)"), 0, column});
        }
    }
    return found;
}

Outcome try_text(Room& room, const Spot& spot, const BadText& bad) {
    Judge judge{room, spot, {}};
    QPointer<QWidget> editor = go_to(room, spot);
    if (editor.isNull()) {
        judge.outcome.kind = Outcome::Kind::nothing_to_do;
        return judge.outcome;
    }
    const ui::Field* field = spot.column < 0 ? field_around(editor) : nullptr;
    paste(bad.text);
    room.settle();
    const QString typed = text_in(editor);
    const QString kept = kept_form(field, typed);
    const bool quantity = is_a_plain_quantity(field);
    const bool temperature = qobject_cast<const ui::TemperatureField*>(field) != nullptr;
    // Money is kept in 64 bits and may be as much as that.
    const bool holds_it = qobject_cast<const ui::MoneyField*>(field) != nullptr && bad.text == QLatin1String("4294967304") &&
                          qobject_cast<const ui::MoneyField*>(field)->value() == maths::Money{42949673040000};
    const bool is_text = spot.column >= 0 || qobject_cast<const ui::QuantityField*>(field) == nullptr;
    const QString own_problem = field != nullptr && !bad.text.isEmpty() ? field->problem() : QString();
    if (bad.may_be_a_quantity && !reads_as_twelve_and_a_half(field))
        judge.fault(QStringLiteral("does not mean twelve and a half"));
    const QByteArray before = room.digest();
    QStringList texts = all_texts(room);
    QPointer<ui::FormFrame> form = open_form(room);
    bool made = false;
    QObject::connect(form, &ui::FormFrame::committed, form, [&made] { made = true; });
    const bool is_dialog = room.dialog() != nullptr;
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return, Qt::ControlModifier);
    room.settle();
    for (QWidget* top : QApplication::topLevelWidgets()) {
        if (top->isVisible() && (qobject_cast<QMessageBox*>(top) != nullptr || qobject_cast<QFileDialog*>(top) != nullptr))
            judge.fault(QStringLiteral("a dialog of the system stands there"));
    }
    const bool changed = room.digest() != before;
    if (made) {
        judge.outcome.kind = Outcome::Kind::saved;
        if (changed)
            judge_saved(judge, bad, quantity && !holds_it, temperature, is_text, kept);
        return judge.outcome;
    }
    if (form.isNull() || (is_dialog && room.dialog() == nullptr)) {
        judge.fault(QStringLiteral("the form is gone"));
        return judge.outcome;
    }
    judge.outcome.kind = is_asking(room) ? Outcome::Kind::asked : Outcome::Kind::refused;
    // The size of a colony is written down at once, so that the plan follows.
    const bool is_written_at_once = spot.name.startsWith(QLatin1String("Frames of bees (cell"));
    if (changed && !is_written_at_once)
        judge.fault(QStringLiteral("the workbook changed though it was not entered"));
    judge_refusal(judge, spot.column < 0 ? editor.data() : nullptr, bad, own_problem);
    // An open cell closes by the way.
    QStringList after = all_texts(room);
    if (spot.column >= 0 && texts.size() > after.size())
        texts.removeOne(typed);
    if (spot.column < 0 && after != texts)
        judge.fault(QStringLiteral("what was typed is not there any more"));
    return judge.outcome;
}

bool enters(Room& room, QString& words) {
    QPointer<ui::FormFrame> form = open_form(room);
    bool made = false;
    QObject::connect(form, &ui::FormFrame::committed, form, [&made] { made = true; });
    form->take_focus();
    if (!form->isAncestorOf(QApplication::focusWidget()))
        form->primary()->setFocus();
    for (int i = 0; i < 4 && !made; ++i) {
        QTest::keyClick(QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : form.data(), Qt::Key_Return, Qt::ControlModifier);
        room.settle();
        if (made || form.isNull())
            break;
        const ui::FormNotice* said = notice(room);
        words = complaints(room).join(QLatin1Char('|')) + (said != nullptr ? said->words() : QString());
        if (!is_asking(room))
            return false;
        QTest::qWait(until_seen_ms);
    }
    return made;
}

} // namespace soakbook::tests
