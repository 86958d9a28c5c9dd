// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/icon_button.h"

#include "ui/parts/icons.h"
#include "ui/parts/theme.h"

#include <QEvent>

namespace soakbook::ui {

IconButton::IconButton(const QString& icon_name, const QString& spoken, QWidget* parent) : QToolButton(parent) {
    setIcon(ui::icon(icon_name));
    setToolTip(spoken);
    setAccessibleName(spoken);
    set_kind(this, "icon");
    settle();
}

void IconButton::settle() {
    if (iconSize() != QSize(icon_size(), icon_size())) {
        setIconSize({icon_size(), icon_size()});
    }
}

void IconButton::changeEvent(QEvent* event) {
    QToolButton::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle();
    }
}

} // namespace soakbook::ui
