// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/head.h"

#include "ui/parts/icons.h"
#include "ui/parts/theme.h"
#include "ui/shell/find_box.h"
#include "ui/shell/title_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>

namespace soakbook::ui {

namespace {

constexpr int widest_find = 420;
constexpr int narrowest_find = 150;
constexpr int widest_undo = 240;

} // namespace

Head::Head(QWidget* parent)
    : QWidget(parent), m_title(new TitleLine(this)), m_find(new FindBox(this)), m_undo(new QPushButton(this)),
      m_redo(new QPushButton(this)), m_row(new QHBoxLayout(this)) {
    setAttribute(Qt::WA_StyledBackground);
    set_kind(this, "head");
    m_row->setSpacing(12);
    m_row->addWidget(m_title, 1);
    m_row->addWidget(m_find, 0);
    m_row->addWidget(m_undo);
    m_row->addWidget(m_redo);
    m_undo->setObjectName(QStringLiteral("undo"));
    m_redo->setObjectName(QStringLiteral("redo"));
    m_undo->setIcon(icon(QStringLiteral("undo")));
    m_redo->setIcon(icon(QStringLiteral("redo")));
    connect(m_undo, &QPushButton::clicked, this, &Head::undo_wanted);
    connect(m_redo, &QPushButton::clicked, this, &Head::redo_wanted);
    set_undo({}, {});
    settle();
}

void Head::set_title(const QString& title) {
    m_title->set_text(title);
    make_room();
}

QPushButton* Head::add_action(QAction* action) {
    auto* button = new QPushButton(this);
    const auto follow = [button, action] {
        button->setText(action->text());
        button->setIcon(action->icon());
        button->setToolTip(action->toolTip() == action->text() ? QString() : action->toolTip());
        button->setEnabled(action->isEnabled());
        button->setVisible(action->isVisible());
    };
    follow();
    connect(action, &QAction::changed, button, follow);
    connect(action, &QObject::destroyed, button, &QObject::deleteLater);
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    m_row->addWidget(button);
    return button;
}

void Head::set_actions(const QList<QAction*>& actions) {
    for (QPushButton* old : std::exchange(m_actions, {})) {
        old->hide();
        old->deleteLater();
    }
    for (QAction* action : actions) {
        m_actions << add_action(action);
    }
    make_room();
}

void Head::set_undo(const QString& undo_name, const QString& redo_name) {
    m_undo_name = undo_name;
    m_redo_name = redo_name;
    m_undo->setVisible(!undo_name.isEmpty());
    m_redo->setVisible(!redo_name.isEmpty());
    //: Button; %1 a piece of work, as "3 bags moved"
    const QString undo = tr("Undo: %1").arg(undo_name);
    //: Button; %1 a piece of work, as "3 bags moved"
    const QString redo = tr("Redo: %1").arg(redo_name);
    m_undo->setAccessibleName(undo);
    m_redo->setAccessibleName(redo);
    //: Tool tip; %1 "Undo: 3 bags moved"
    m_undo->setToolTip(tr("%1 (Ctrl+Z)").arg(undo));
    //: Tool tip; %1 "Redo: 3 bags moved"
    m_redo->setToolTip(tr("%1 (Ctrl+Shift+Z)").arg(redo));
    make_room();
}

void Head::make_room() {
    // First undo and redo keep only their icons, then Find gets narrow; the title is shortened last.
    const auto width_with = [this](bool words) {
        const auto fitted = [](const QString& name) {
            return QFontMetrics(type_font(Type::body)).elidedText(name, Qt::ElideRight, scaled(widest_undo));
        };
        m_undo->setText(words ? fitted(m_undo->accessibleName()) : QString());
        m_redo->setText(words && m_undo_name.isEmpty() ? fitted(m_redo->accessibleName()) : QString());
        int needed = m_row->contentsMargins().left() + m_row->contentsMargins().right() + m_title->sizeHint().width() +
                     scaled(widest_find * 2 / 3);
        for (const QPushButton* button : QList<QPushButton*>{m_undo, m_redo} + m_actions) {
            needed += button->isHidden() ? 0 : button->sizeHint().width() + m_row->spacing();
        }
        return needed;
    };
    if (width_with(true) > width()) {
        width_with(false);
    }
}

void Head::settle() {
    m_row->setContentsMargins(page_margin, scaled(12), page_margin, scaled(12));
    m_find->setMinimumWidth(scaled(narrowest_find));
    m_find->setMaximumWidth(scaled(widest_find));
    m_find->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_row->setStretchFactor(m_title, 1);
    m_row->setStretchFactor(m_find, 3);
    for (QPushButton* button : {m_undo, m_redo}) {
        button->setIconSize({icon_size() * 4 / 5, icon_size() * 4 / 5});
    }
    make_room();
}

void Head::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    make_room();
}

void Head::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle();
    }
}

} // namespace soakbook::ui
