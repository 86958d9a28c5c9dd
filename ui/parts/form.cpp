// SPDX-License-Identifier: GPL-3.0-or-later
// What a form is made of. How an entry is made stands in form_entry.cpp.
#include "ui/parts/form.h"

#include "ui/parts/cards.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/field_grid.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/form_notice.h"
#include "ui/parts/habits.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/primary_button.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QShortcut>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

FormFrame::FormFrame(const Habits& habits, const QString& title, QWidget* parent)
    : QWidget(parent), m_habits(habits), m_title(make_label({}, Type::heading, this, true)),
      m_intro(make_soft_label({}, Type::body, this)), m_body(new QWidget(this)), m_foot(new QWidget(this)),
      m_cautions(new QVBoxLayout), m_grid(new FieldGrid(m_body)), m_result(new ResultCard(m_body)),
      m_drafts(new DraftKeeper(*this, habits, *m_grid)), m_notice(new FormNotice(m_foot)), m_primary(new PrimaryButton({}, m_foot)), m_buttons(new FlowLayout(8, 8)),
      m_cancel(new QPushButton(m_foot)), m_again(new QTimer(this)), m_settle(new QTimer(this)) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(16);
    whole->addWidget(m_body);
    whole->addWidget(m_foot);
    // Beside a taller neighbour the fields stay together.
    whole->addStretch(1);

    auto* body = new QVBoxLayout(m_body);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(16);
    body->addWidget(m_title);
    body->addWidget(m_intro);
    m_cautions->setSpacing(8);
    body->addLayout(m_cautions);
    body->addWidget(m_grid);
    body->addWidget(m_result);
    m_intro->hide();
    set_title(title);

    auto* foot = new QVBoxLayout(m_foot);
    foot->setContentsMargins(0, 0, 0, 0);
    foot->setSpacing(12);
    foot->addWidget(m_notice);
    m_buttons->addWidget(m_primary);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addLayout(m_buttons, 1);
    row->addWidget(m_cancel, 0, Qt::AlignTop);
    foot->addLayout(row);
    //: Button that leaves a form without an entry
    m_cancel->setText(tr("Cancel"));
    m_cancel->setAutoDefault(false);
    m_cancel->hide();
    //: The filled button of a form that has no better word
    m_primary->setText(tr("Enter it"));
    if (const QString why = habits.no_entries_why(); !why.isEmpty()) {
        m_primary->setEnabled(false);
        m_primary->setToolTip(why);
    }

    connect(m_primary, &QPushButton::clicked, this, &FormFrame::commit);
    connect(m_cancel, &QPushButton::clicked, this, &FormFrame::cancel);
    connect(m_notice, &FormNotice::answered, this, [this] {
        if (m_leaving) {
            cancel();
        } else {
            keep_as_it_is();
        }
    });
    m_primary->installEventFilter(this);
    for (const int key : {int{Qt::Key_Return}, int{Qt::Key_Enter}}) {
        auto* shortcut = new QShortcut(QKeySequence(int{Qt::CTRL} | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        shortcut->setAutoRepeat(false);
        connect(shortcut, &QShortcut::activated, this, [this] {
            if (m_asked) {
                keep_as_it_is();
            } else {
                commit();
            }
        });
    }
    m_settle->setSingleShot(true);
    m_settle->setInterval(0);
    connect(m_settle, &QTimer::timeout, this, &FormFrame::edited);
    m_again->setInterval(250);
    connect(m_again, &QTimer::timeout, this, &FormFrame::run);
}

FormFrame::~FormFrame() {
    // What was typed a moment ago is still in the fields.
    m_drafts->finish();
}

void FormFrame::set_title(const QString& title) {
    m_title->setText(title);
    m_title->setVisible(!title.isEmpty());
    setAccessibleName(title);
}

void FormFrame::set_intro(const QString& text) {
    m_intro->setText(text);
    m_intro->setVisible(!text.isEmpty());
}

void FormFrame::add_caution(const QString& text) {
    m_cautions->addWidget(new Caution(text, m_body));
}

void FormFrame::add_field(const QString& label, Field* field, const QString& key, const QString& help, bool wide) {
    if (field->objectName().isEmpty()) {
        field->setObjectName(key);
    }
    field->set_name(label);
    field->set_help(help);
    m_grid->add(label, field, wide);
    m_fields.insert(key, field);
    m_order.push_back(field);
    connect(field, &Field::edited, this, [this, key] { note_edit(key); });
    watch_keys(field);
}

void FormFrame::watch_keys(QWidget* part) {
    QList<QWidget*> parts = part->findChildren<QWidget*>();
    parts.prepend(part);
    for (QWidget* child : parts) {
        // A list that opens by itself is a window and keeps its own Enter.
        if (child->focusPolicy() != Qt::NoFocus && child->focusProxy() == nullptr && child->window() == part->window()) {
            child->installEventFilter(this);
            m_stops.push_back(child);
        }
    }
}

void FormFrame::add_section(const QString& title, const QString& help) {
    auto* head = new QWidget(m_grid);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(4);
    column->addWidget(make_label(title, Type::strong, head, true));
    if (!help.isEmpty()) {
        column->addWidget(make_soft_label(help, Type::small, head));
    }
    m_grid->add_wide(head);
}

void FormFrame::add_widget(QWidget* widget, const QString& key, Refused refused) {
    m_grid->add_wide(widget);
    if (widget->focusPolicy() != Qt::NoFocus) {
        m_stops.push_back(widget);
    }
    if (refused) {
        m_refused.insert(key, std::move(refused));
    }
}

void FormFrame::set_shown(const QString& key, bool shown) {
    if (Field* wanted = field(key)) {
        m_grid->set_shown(wanted, shown);
    }
}

Field* FormFrame::field(const QString& key) const {
    return m_fields.value(key, nullptr);
}

void FormFrame::set_columns(int most) {
    m_grid->set_columns(most);
}

void FormFrame::set_primary(const QString& words) {
    m_primary->setText(words);
    m_primary->setAccessibleName(words);
}

QPushButton* FormFrame::primary() const {
    return m_primary;
}

QPushButton* FormFrame::add_secondary(const QString& words) {
    auto* button = new QPushButton(words, m_foot);
    button->setAutoDefault(false);
    m_buttons->addWidget(button);
    return button;
}

void FormFrame::set_cancel_shown(bool shown) {
    m_cancel->setVisible(shown);
}

void FormFrame::set_commit(Commit commit) {
    m_commit = std::move(commit);
}

void FormFrame::set_draft(const DraftPlace& place) {
    m_drafts->set_place(place);
    if (isVisible()) {
        order_tabs();
    }
}

void FormFrame::take_focus() {
    if (DraftOffer* offer = m_drafts->offer(); offer != nullptr && offer->isVisibleTo(this)) {
        offer->take_focus();
        return;
    }
    for (Field* candidate : m_order) {
        if (candidate->isVisibleTo(this) && candidate->isEnabled() && candidate->is_empty()) {
            candidate->take_focus();
            return;
        }
    }
    for (QWidget* stop : m_stops) {
        if (stop->isVisibleTo(this) && stop->isEnabled()) {
            stop->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
}

bool FormFrame::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool is_enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    const auto modifiers = key->modifiers() & ~Qt::KeypadModifier;
    if (!is_enter || modifiers.testFlag(Qt::ControlModifier)) {
        return QWidget::eventFilter(watched, event);
    }
    if (watched == m_primary) {
        if (!key->isAutoRepeat()) {
            commit();
        }
        return true;
    }
    const bool new_line = modifiers.testFlag(Qt::ShiftModifier) && qobject_cast<QPlainTextEdit*>(watched) != nullptr;
    if (new_line) {
        return QWidget::eventFilter(watched, event);
    }
    // Held down, Enter would run through the whole form and into the button.
    if (!key->isAutoRepeat()) {
        go_on_from(qobject_cast<QWidget*>(watched), modifiers.testFlag(Qt::ShiftModifier));
    }
    return true;
}

void FormFrame::go_on_from(QWidget* editor, bool back) {
    const auto here = std::find(m_stops.begin(), m_stops.end(), editor);
    if (here == m_stops.end()) {
        return;
    }
    const auto takes_keys = [this](const QWidget* stop) {
        // Tab goes to a button beside a field; Enter goes on to the next field.
        return !stop->property("beside").toBool() && stop->isVisibleTo(this) && stop->isEnabled() && (stop->focusPolicy() & Qt::TabFocus) != 0;
    };
    QWidget* next = nullptr;
    if (back) {
        const auto found = std::find_if(std::make_reverse_iterator(here), m_stops.rend(), takes_keys);
        next = found == m_stops.rend() ? nullptr : *found;
    } else {
        const auto found = std::find_if(here + 1, m_stops.end(), takes_keys);
        next = found == m_stops.end() ? m_primary : *found;
    }
    if (next != nullptr) {
        next->setFocus(back ? Qt::BacktabFocusReason : Qt::TabFocusReason);
        // With its label and its help, not only the line that is typed in.
        QWidget* whole = next;
        for (QWidget* above = next; above != this; above = above->parentWidget()) {
            if (qobject_cast<Field*>(above) != nullptr) {
                whole = above;
            }
        }
        bring_into_view(whole);
    }
}

void FormFrame::order_tabs() {
    // The fields came after the foot; the Tab key goes from top to bottom all the same.
    QList<QWidget*> order;
    if (const DraftOffer* offer = m_drafts->offer()) {
        order << offer->take_up() << offer->throw_away();
    }
    order << QList<QWidget*>(m_stops.begin(), m_stops.end());
    for (QWidget* below : {static_cast<QWidget*>(m_result), static_cast<QWidget*>(m_notice)}) {
        for (QPushButton* button : below->findChildren<QPushButton*>()) {
            order << button;
        }
    }
    for (int i = 0; i < m_buttons->count(); ++i) {
        if (QWidget* button = m_buttons->itemAt(i)->widget()) {
            order << button;
        }
    }
    order << m_cancel;
    for (qsizetype i = 1; i < order.size(); ++i) {
        QWidget::setTabOrder(order[i - 1], order[i]);
    }
}

void FormFrame::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!event->spontaneous()) {
        order_tabs();
        m_settle->start();
    }
}

void FormFrame::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && !event->isAutoRepeat()) {
        cancel();
        return;
    }
    QWidget::keyPressEvent(event);
}

} // namespace soakbook::ui
