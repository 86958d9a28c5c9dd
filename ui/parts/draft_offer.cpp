// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/draft_offer.h"

#include "ui/parts/draft.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/habits.h"
#include "ui/parts/theme.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int most_shown = 160;

} // namespace

DraftOffer::DraftOffer(QWidget* parent)
    : QFrame(parent), m_words(make_label({}, Type::strong, this, true)), m_typed(make_soft_label({}, Type::small, this)),
      m_take_up(new QPushButton(this)), m_throw_away(new QPushButton(this)) {
    setObjectName(QStringLiteral("draft_offer"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 12);
    column->setSpacing(8);
    column->addWidget(m_words);
    column->addWidget(m_typed);
    auto* row = new QWidget(this);
    auto* flow = new FlowLayout(8, 8, row);
    flow->addWidget(m_take_up);
    flow->addWidget(m_throw_away);
    column->addWidget(row);
    m_typed->setTextFormat(Qt::PlainText);
    m_words->setTextFormat(Qt::PlainText);
    m_take_up->setObjectName(QStringLiteral("draft_take_up"));
    m_throw_away->setObjectName(QStringLiteral("draft_throw_away"));
    //: Button: what was typed before goes back into the fields of the form
    m_take_up->setText(tr("Put it back in"));
    set_kind(m_take_up, "primary");
    for (QPushButton* button : {m_take_up, m_throw_away}) {
        button->setAutoDefault(false);
        button->installEventFilter(this);
    }
    set_kind(this, "notice");
    connect(m_take_up, &QPushButton::clicked, this, &DraftOffer::taken_up);
    connect(m_throw_away, &QPushButton::clicked, this, [this] {
        if (m_offering) {
            Q_EMIT thrown_away();
        } else {
            hide();
        }
    });
    hide();
}

void DraftOffer::offer(const Draft& draft, const Habits& habits) {
    m_offering = true;
    //: Over a form; %1 is a day and a time, as 3 Oct 14:20
    m_words->setText(tr("Typed on %1 and not entered.").arg(habits.moment(draft.typed)));
    m_typed->setText(typed_words(draft, most_shown));
    m_typed->setVisible(!m_typed->text().isEmpty());
    m_take_up->show();
    //: Button: what was typed before and not entered is given up
    m_throw_away->setText(tr("Throw it away"));
    setAccessibleName(m_words->text());
    m_take_up->setAccessibleDescription(m_words->text());
    show();
}

void DraftOffer::tell_left(const QString& words) {
    m_offering = false;
    //: Over a form into which something typed before was put back, all but what follows below
    m_words->setText(tr("The rest is back in the form. There is no field any more for this:"));
    m_typed->setText(words);
    m_typed->show();
    m_take_up->hide();
    //: Button that puts a note away
    m_throw_away->setText(tr("Seen"));
    setAccessibleName(m_words->text());
    show();
}

bool DraftOffer::is_offering() const {
    return m_offering && !isHidden();
}

void DraftOffer::take_focus() {
    m_take_up->setFocus(Qt::TabFocusReason);
}

bool DraftOffer::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool is_enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (is_enter && (key->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier) {
            if (!key->isAutoRepeat()) {
                static_cast<QPushButton*>(watched)->click();
            }
            return true;
        }
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace soakbook::ui
