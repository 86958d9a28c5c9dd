// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/how_key.h"

#include "ui/parts/how_button.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QWidget>

namespace soakbook::ui {

void HowKey::listen() {
    if (QCoreApplication::instance()->findChild<HowKey*>(QString(), Qt::FindDirectChildrenOnly) == nullptr) {
        new HowKey(QCoreApplication::instance());
    }
}

HowKey::HowKey(QObject* parent) : QObject(parent) {
    QCoreApplication::instance()->installEventFilter(this);
}

bool HowKey::eventFilter(QObject* watched, QEvent* event) {
    const bool is_press = event->type() == QEvent::KeyPress;
    // A page's own Esc would go before a key press that is not claimed first.
    const bool is_claim = event->type() == QEvent::ShortcutOverride;
    if ((!is_press && !is_claim) || !watched->isWidgetType()) {
        return QObject::eventFilter(watched, event);
    }
    auto* key = static_cast<QKeyEvent*>(event);
    auto* from = static_cast<QWidget*>(watched);
    const bool is_plain = (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    const bool asks = key->key() == Qt::Key_F3 && is_plain;
    const bool closes = key->key() == Qt::Key_Escape && is_plain && m_just_opened;
    if (is_claim) {
        if (closes) {
            event->accept();
        }
        return closes || QObject::eventFilter(watched, event);
    }
    if (asks) {
        if (!key->isAutoRepeat()) {
            m_just_opened = HowButton::toggle_nearest(from) == HowButton::Toggled::opened;
        }
        return true;
    }
    if (closes) {
        m_just_opened = false;
        return HowButton::close_nearest(from) || QObject::eventFilter(watched, event);
    }
    m_just_opened = false;
    return QObject::eventFilter(watched, event);
}

} // namespace soakbook::ui
