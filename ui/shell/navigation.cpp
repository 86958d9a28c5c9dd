// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/navigation.h"

#include "ui/parts/icons.h"
#include "ui/parts/theme.h"

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QShortcut>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int narrowest = 148;

} // namespace

QString icon_name(PlaceName place) {
    switch (place) {
    case PlaceName::due:
        return QStringLiteral("due");
    case PlaceName::shed:
        return QStringLiteral("shed");
    case PlaceName::store:
        return QStringLiteral("store");
    case PlaceName::yards:
        return QStringLiteral("yards");
    case PlaceName::register_:
        return QStringLiteral("register");
    case PlaceName::setup:
        return QStringLiteral("setup");
    }
    return {};
}

Navigation::Navigation(QWidget* parent)
    : QWidget(parent), m_group(new QButtonGroup(this)), m_column(new QVBoxLayout(this)) {
    setAttribute(Qt::WA_StyledBackground);
    set_kind(this, "navigation");
    //: Read aloud: the column of places at the left
    setAccessibleName(tr("Places"));
    m_column->setContentsMargins(0, 0, 1, 0);
    m_column->setSpacing(0);
    auto* name = make_label(QStringLiteral("Soakbook"), Type::heading, this);
    name->setProperty("accent", true);
    m_head = new QHBoxLayout;
    m_head->addWidget(name);
    m_column->addLayout(m_head);
    m_column->addStretch(1);
    connect(m_group, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT went_to(static_cast<PlaceName>(id)); });
    settle();
}

void Navigation::add(PlaceName place, const QString& name) {
    const int number = static_cast<int>(m_group->buttons().size()) + 1;
    auto* button = new QToolButton(this);
    button->setText(name);
    button->setIcon(icon(icon_name(place)));
    button->setCheckable(true);
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setFocusPolicy(Qt::TabFocus);
    button->setAccessibleName(name);
    //: Tool tip of a place; %1 its name, %2 a number: the keys that go there
    button->setToolTip(tr("%1 (Ctrl+%2)").arg(name).arg(number));
    set_kind(button, "nav");
    m_group->addButton(button, static_cast<int>(place));
    m_column->insertWidget(m_column->count() - 1, button);
    auto* shortcut = new QShortcut(QKeySequence(int{Qt::CTRL} | (int{Qt::Key_0} + number)), this);
    shortcut->setContext(Qt::WindowShortcut);
    connect(shortcut, &QShortcut::activated, button, &QToolButton::click);
    settle();
}

void Navigation::mark(PlaceName place) {
    if (QAbstractButton* button = m_group->button(static_cast<int>(place))) {
        button->setChecked(true);
    }
}

void Navigation::settle() {
    int width = scaled(narrowest);
    for (QAbstractButton* button : m_group->buttons()) {
        // Wider than the drawing, which leaves air between it and the name.
        button->setIconSize({icon_size() + scaled(16), icon_size()});
        const int words = QFontMetrics(type_font(Type::strong)).horizontalAdvance(button->text());
        width = std::max(width, words + icon_size() + scaled(68));
    }
    m_head->setContentsMargins(scaled(20), scaled(16), scaled(12), scaled(14));
    setFixedWidth(width);
}

void Navigation::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle();
    }
}

} // namespace soakbook::ui
