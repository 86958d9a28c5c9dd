// SPDX-License-Identifier: GPL-3.0-or-later
// How a place answers the key for a record's history.
#include "ui/papers/history_dialog.h"
#include "ui/parts/place.h"
#include "ui/parts/record_table.h"
#include "ui/parts/theme.h"

#include <QAction>
#include <QApplication>
#include <QCoreApplication>
#include <QPushButton>
#include <QShortcut>

namespace soakbook::ui {

namespace {

struct HistoryKeyWords {
    Q_DECLARE_TR_FUNCTIONS(History)
};

QKeySequence history_key() {
    return {int{Qt::CTRL} | int{Qt::Key_H}};
}

/// Hangs on a widget and knows whose history is asked for there.
class HistorySource : public QObject {
    Q_OBJECT

public:
    HistorySource(Desk& desk, QWidget* scope, WhoseHistory whose) : QObject(scope), m_desk(desk), m_whose(std::move(whose)) {}
    bool open(QWidget* over) const {
        const HistoryOf of = m_whose();
        if (of.records.empty()) {
            return false;
        }
        open_history(m_desk, of, over);
        return true;
    }

private:
    Desk& m_desk;
    WhoseHistory m_whose;
};

HistorySource* source_of(const QWidget* widget) {
    return widget->findChild<HistorySource*>(QString(), Qt::FindDirectChildrenOnly);
}

} // namespace

bool open_history_around(QWidget* from, const QWidget* outermost) {
    for (QWidget* around = from; around != nullptr; around = around->parentWidget()) {
        if (const HistorySource* source = source_of(around); source != nullptr && source->open(around->window())) {
            return true;
        }
        if (around == outermost) {
            break;
        }
    }
    return false;
}

void give_history(Desk& desk, QWidget* scope, WhoseHistory whose) {
    auto* source = new HistorySource(desk, scope, std::move(whose));
    auto* table = qobject_cast<RecordTable*>(scope);
    if (table == nullptr) {
        return;
    }
    //: In the menu of a row: what it said before, who changed it, when and why
    auto* action = new QAction(HistoryKeyWords::tr("History"), table);
    action->setObjectName(QStringLiteral("row_history"));
    // The key is shown here; the place listens for it.
    const QString words = action->text() + QLatin1Char('\t') + history_key().toString(QKeySequence::NativeText);
    action->setText(words);
    QObject::connect(action, &QAction::triggered, source, [source, table] { source->open(table->window()); });
    table->addAction(action);
    table->setContextMenuPolicy(Qt::ActionsContextMenu);
}

QPushButton* make_history_button(Desk& desk, QWidget* scope, WhoseHistory whose, const QString& object_name) {
    auto* source = new HistorySource(desk, scope, std::move(whose));
    //: Quiet button: what a record said before, who changed it, when and why
    auto* button = new QPushButton(HistoryKeyWords::tr("History"));
    button->setObjectName(object_name);
    button->setAutoDefault(false);
    //: Tool tip of the button "History"; Ctrl+H is a key
    button->setToolTip(HistoryKeyWords::tr("What it said before, who changed it, when and why (Ctrl+H)"));
    set_kind(button, "row");
    QObject::connect(button, &QPushButton::clicked, source, [source, button] { source->open(button->window()); });
    return button;
}

void listen_for_history_key(Place& place) {
    auto* shortcut = new QShortcut(history_key(), &place);
    shortcut->setContext(Qt::WidgetWithChildrenShortcut);
    shortcut->setAutoRepeat(false);
    QObject::connect(shortcut, &QShortcut::activated, &place, [&place] {
        QWidget* focus = QApplication::focusWidget();
        open_history_around(focus != nullptr && place.isAncestorOf(focus) ? focus : &place, &place);
    });
}

} // namespace soakbook::ui

#include "history_key.moc"
