// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/store/room.h"

#include "ui/parts/field.h"
#include "ui/store/store_place.h"

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <algorithm>
#include <stdexcept>

namespace soakbook::tests {

StoreRoom::StoreRoom(Bench& bench, int n) : m_now(moment(n, 12)) {
    m_desk = std::make_unique<ui::Desk>(bench.book(), [this] { return m_now; });
    m_desk->set_who(QStringLiteral("Ada"));
    m_place = ui::make_store_place(*m_desk);
    m_window = std::make_unique<QWidget>();
    auto* column = new QVBoxLayout(m_window.get());
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_place);
    // As the frame does.
    QObject::connect(m_desk.get(), &ui::Desk::work_done, m_place, [this] { m_place->refresh(); });
    QObject::connect(m_place, &ui::Place::wishes, m_place,
                     [this](const ui::Intent& intent) { m_wished.push_back(intent); });
    m_window->resize(1292, 810);
    m_window->show();
    QApplication::setActiveWindow(m_window.get());
    m_place->refresh();
    m_place->take_focus();
    settle();
}

StoreRoom::~StoreRoom() = default;

void StoreRoom::wish(const char* task, std::vector<qint64> ids, const QVariantMap& prefill) {
    m_place->open({ui::PlaceName::store, QLatin1String(task), std::move(ids), prefill});
    settle();
}

void StoreRoom::settle() const {
    for (int i = 0; i < 4; ++i) {
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    QWidget* above = dialog();
    QApplication::setActiveWindow(above != nullptr ? above : m_window.get());
    QApplication::processEvents();
}

void StoreRoom::type(const QString& text) {
    ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
    const bool has_keys = std::all_of(text.begin(), text.end(), [](QChar c) { return c.unicode() < 0x80; });
    if (has_keys && text.size() < 100) {
        QTest::keyClicks(QApplication::focusWidget(), text);
    } else {
        QApplication::clipboard()->setText(text);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_V, Qt::ControlModifier);
    }
    settle();
}

void StoreRoom::key(Qt::Key which, Qt::KeyboardModifiers with) {
    ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
    QTest::keyClick(QApplication::focusWidget(), which, with);
    settle();
}

void StoreRoom::press(const char* button) {
    auto* found = find<QPushButton>(button);
    found->setFocus(Qt::TabFocusReason);
    QTest::keyClick(found, Qt::Key_Space);
    settle();
}

QLineEdit* StoreRoom::line(const char* field) const {
    return qobject_cast<QLineEdit*>(find<ui::Field>(field)->editor());
}

void StoreRoom::type_into(const char* field, const QString& text) {
    find<ui::Field>(field)->take_focus();
    line(field)->selectAll();
    type(text);
}

QString StoreRoom::beneath(const char* field) const {
    return find<ui::Field>(field)->line_text();
}

QWidget* StoreRoom::seen(const char* name) const {
    for (QWidget* top : QApplication::topLevelWidgets()) {
        if (top->isVisible() && top->objectName() == QLatin1String(name))
            return top;
        for (QWidget* found : top->findChildren<QWidget*>(QLatin1String(name))) {
            if (found->isVisible())
                return found;
        }
    }
    return nullptr;
}

void StoreRoom::missing(const char* name) {
    ADD_FAILURE() << "not to be seen: " << name;
    throw std::runtime_error(name);
}

QString StoreRoom::words(const char* name) const {
    QStringList all;
    const QWidget* under = find<QWidget>(name);
    for (const QLabel* label : under->findChildren<QLabel*>()) {
        if (label->isVisible() && !label->text().isEmpty())
            all << label->text();
    }
    return all.join(QLatin1Char('\n'));
}

QDialog* StoreRoom::dialog() const {
    for (QDialog* found : m_window->findChildren<QDialog*>()) {
        if (found->isVisible())
            return found;
    }
    return nullptr;
}

QStringList StoreRoom::codes(const char* table) const {
    const QAbstractItemModel* model = find<QTableView>(table)->model();
    QStringList codes;
    for (int row = 0; row < model->rowCount(); ++row)
        codes << model->index(row, 0).data().toString();
    return codes;
}

QString StoreRoom::cell(const char* table, const QString& code, const QString& header) const {
    const QAbstractItemModel* model = find<QTableView>(table)->model();
    const qsizetype row = codes(table).indexOf(code);
    for (int column = 0; column < model->columnCount(); ++column) {
        if (model->headerData(column, Qt::Horizontal).toString() == header)
            return row < 0 ? QString() : model->index(static_cast<int>(row), column).data().toString();
    }
    ADD_FAILURE() << "no column " << header.toStdString();
    return {};
}

void StoreRoom::choose(const char* table, const QString& code) {
    auto* view = find<QTableView>(table);
    const qsizetype row = codes(table).indexOf(code);
    ASSERT_GE(row, 0) << "no row " << code.toStdString();
    view->setFocus();
    // One step away and back, so that this row alone is chosen.
    QTest::keyClick(view, Qt::Key_Down);
    for (int i = view->currentIndex().row(); i > row; --i)
        QTest::keyClick(view, Qt::Key_Up);
    for (int i = view->currentIndex().row(); i < row; ++i)
        QTest::keyClick(view, Qt::Key_Down);
    settle();
}

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
        if (button->isVisibleTo(top) && !button->text().isEmpty() &&
            button->width() < button->minimumSizeHint().width())
            clipped << button->text();
    }
    return clipped;
}

} // namespace soakbook::tests
