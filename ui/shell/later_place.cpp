// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/later_place.h"

#include <QVBoxLayout>

namespace soakbook::ui {

LaterPlace::LaterPlace(PlaceName place, const QString& name, Make make, QWidget* parent)
    : Place(parent), m_place(place), m_name(name), m_make(std::move(make)) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
}

// What is just built has asked the workbook already.
void LaterPlace::refresh() {
    if (m_inner != nullptr) {
        m_inner->refresh();
    } else {
        built();
    }
}

Place& LaterPlace::built() {
    if (m_inner == nullptr) {
        m_inner = m_make();
        layout()->addWidget(m_inner);
        setFocusProxy(m_inner);
        connect(m_inner, &Place::title_changed, this, &Place::title_changed);
        connect(m_inner, &Place::wishes, this, &Place::wishes);
        m_inner->show();
    }
    return *m_inner;
}

} // namespace soakbook::ui
