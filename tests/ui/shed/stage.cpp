// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/shed/stage.h"

#include "ui/parts/field.h"
#include "ui/parts/state.h"
#include "ui/parts/theme.h"
#include "ui/shed/shed_place.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QVBoxLayout>

namespace soakbook::tests {

Stage::Stage(Bench& bench, int n, int hour) : m_bench(bench), m_now(moment(n, hour)) {
    m_desk = std::make_unique<ui::Desk>(bench.book(), [this] { return m_now; });
    m_desk->set_who(QStringLiteral("Ada"));
    m_place = ui::make_shed_place(*m_desk);
    m_window = std::make_unique<QWidget>();
    auto* column = new QVBoxLayout(m_window.get());
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_place);
    // As the frame does.
    QObject::connect(m_desk.get(), &ui::Desk::work_done, m_place, [this] { m_place->refresh(); });
    m_window->resize(1290, 840);
    m_window->show();
    QApplication::setActiveWindow(m_window.get());
    settle();
}

Stage::~Stage() = default;

void Stage::set_clock(int n, int hour, int minute) { m_now = moment(n, hour, minute); }

void Stage::settle() const {
    for (int i = 0; i < 4; ++i) {
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

void Stage::type(const QString& text) {
    ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
    QTest::keyClicks(QApplication::focusWidget(), text);
    m_keys += static_cast<int>(text.size());
    settle();
}

void Stage::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    ++m_keys;
    settle();
}

void Stage::enter() { press(Qt::Key_Return, Qt::ControlModifier); }

QString Stage::here() const {
    for (const QWidget* at = QApplication::focusWidget(); at != nullptr; at = at->parentWidget()) {
        if (!at->objectName().isEmpty() && !at->objectName().startsWith(QLatin1String("qt_")))
            return at->objectName();
    }
    return {};
}

QWidget* Stage::widget(const QString& name) const {
    for (QWidget* top : QApplication::topLevelWidgets()) {
        for (QWidget* found : top->findChildren<QWidget*>(name)) {
            if (found->isVisible())
                return found;
        }
    }
    ADD_FAILURE() << "not to be seen: " << name.toStdString();
    return nullptr;
}

void Stage::go_to(const QString& name) {
    QWidget* found = widget(name);
    if (auto* field = qobject_cast<ui::Field*>(found))
        field->take_focus();
    else if (found != nullptr)
        found->setFocus(Qt::TabFocusReason);
    settle();
}

QString Stage::text_of(const QString& name) const {
    QWidget* found = widget(name);
    if (auto* field = qobject_cast<ui::Field*>(found))
        found = field->editor();
    if (auto* line = qobject_cast<QLineEdit*>(found))
        return line->text();
    if (auto* box = qobject_cast<QComboBox*>(found))
        return box->currentText();
    return {};
}

QString Stage::words(const QWidget* under) const {
    QStringList all;
    const QWidget* top = under != nullptr ? under : m_window.get();
    for (const QLabel* label : top->findChildren<QLabel*>()) {
        if (label->isVisible() && !label->text().isEmpty())
            all << label->text();
    }
    for (const ui::StateMark* mark : top->findChildren<ui::StateMark*>()) {
        if (mark->isVisible())
            all << mark->word();
    }
    for (const QPushButton* button : top->findChildren<QPushButton*>()) {
        if (button->isVisible() && !button->text().isEmpty())
            all << button->text();
    }
    return all.join(QLatin1Char('\n'));
}

QDialog* Stage::dialog(const QString& name) const { return qobject_cast<QDialog*>(find<QWidget>(name)->window()); }

QStringList clipped_texts(const QWidget* top) {
    QStringList clipped;
    for (const QLabel* label : top->findChildren<QLabel*>()) {
        if (!label->isVisibleTo(top) || label->text().isEmpty())
            continue;
        const int needed = label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        const bool too_wide = !label->wordWrap() && label->sizeHint().width() > label->width();
        if (needed > label->height() || too_wide)
            clipped << label->text();
    }
    for (const QPushButton* button : top->findChildren<QPushButton*>()) {
        if (button->isVisibleTo(top) && !button->text().isEmpty() && button->width() < button->minimumSizeHint().width())
            clipped << button->text();
    }
    for (const QTableView* table : top->findChildren<QTableView*>()) {
        if (!table->isVisibleTo(top) || table->model() == nullptr)
            continue;
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            const int room = table->columnWidth(column);
            const QString head = table->model()->headerData(column, Qt::Horizontal).toString();
            if (QFontMetrics(ui::type_font(ui::Type::small)).horizontalAdvance(head) + 16 > room)
                clipped << head;
            for (int row = 0; row < table->model()->rowCount(); ++row) {
                const QString text = table->model()->index(row, column).data().toString();
                if (QFontMetrics(ui::type_font(ui::Type::body)).horizontalAdvance(text) + 16 > room)
                    clipped << text;
            }
        }
    }
    return clipped;
}

} // namespace soakbook::tests
