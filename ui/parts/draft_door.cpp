// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/draft_door.h"

#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/drafts.h"
#include "ui/parts/form.h"
#include "ui/parts/habits.h"
#include "ui/parts/left_draft.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

#include <QAbstractButton>
#include <QAction>
#include <QPointer>
#include <QTimer>

namespace soakbook::ui {

namespace {

void press(QWidget& place, const QString& name) {
    for (QAbstractButton* button : place.findChildren<QAbstractButton*>(name)) {
        if (button->isVisibleTo(&place) && button->isEnabled()) {
            button->click();
            return;
        }
    }
    if (auto* action = place.findChild<QAction*>(name)) {
        action->trigger();
    }
}

void choose_row(QWidget& place, const QString& table_name, qint64 row, bool and_open) {
    for (RecordTable* table : place.findChildren<RecordTable*>(table_name)) {
        if (table->rows_model() != nullptr && table->rows_model()->row_of(row) >= 0) {
            table->choose(row);
            if (and_open) {
                Q_EMIT table->opened(row);
            }
            return;
        }
    }
}

/// The form that holds or offers it, if it is seen.
DraftKeeper* keeper_of(const QWidget& window, qint64 draft) {
    for (DraftKeeper* keeper : window.findChildren<DraftKeeper*>()) {
        const auto* form = qobject_cast<const QWidget*>(keeper->parent());
        if (keeper->has(draft) && form != nullptr && form->isVisible()) {
            return keeper;
        }
    }
    return nullptr;
}

} // namespace

void press_as_wished(QWidget& place, const Intent& intent) {
    const QString table = intent.prefill.value(QStringLiteral("row_of")).toString();
    const QString buttons = intent.prefill.value(QStringLiteral("press")).toString();
    if (!table.isEmpty()) {
        choose_row(place, table, intent.prefill.value(QStringLiteral("row")).toLongLong(), buttons.isEmpty());
    }
    for (const QString& name : buttons.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        press(place, name);
    }
}

void open_draft(QWidget& place, const Habits& desk, const Intent& intent) {
    const qint64 id = intent.prefill.value(draft_key).toLongLong();
    if (keeper_of(*place.window(), id) == nullptr) {
        press_as_wished(place, intent);
    }
    // A place may open its form after it has drawn itself.
    QTimer::singleShot(0, &place, [&place, desk = QPointer<const Habits>(&desk), id] {
        Drafts* drafts = desk.isNull() ? nullptr : Drafts::of(*desk);
        const Draft* draft = drafts == nullptr ? nullptr : drafts->find(id);
        if (draft == nullptr) {
            return;
        }
        const DraftKeeper* keeper = keeper_of(*place.window(), id);
        if (keeper == nullptr) {
            show_left_draft(*desk, *drafts, *draft, place.window());
        } else if (DraftOffer* offer = keeper->offer()) {
            offer->take_focus();
        } else {
            static_cast<FormFrame*>(keeper->parent())->take_focus();
        }
    });
}

} // namespace soakbook::ui
