// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/form_dialog.h"

#include "ui/parts/cards.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/draft_offer.h"
#include "ui/parts/reason_field.h"
#include "ui/parts/text_field.h"
#include "ui/parts/theme.h"

#include <QCloseEvent>
#include <QCoreApplication>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

FormDialog::FormDialog(const Habits& habits, const QString& title, QWidget* parent)
    : QDialog(parent), m_form(new FormFrame(habits, title, this)), m_scroll(new QScrollArea(this)) {
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(title);
    setWindowModality(Qt::WindowModal);
    set_kind(this, "plain_card");

    // The form's body scrolls and its foot does not; the form stays the parent of both, for its keys.
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_form);
    QLayout* inside = m_form->layout();
    inside->setSpacing(0);
    inside->removeWidget(m_form->body());
    inside->removeWidget(m_form->foot());
    delete inside->takeAt(0);
    m_scroll->setParent(m_form);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setWidget(m_form->body());
    m_scroll->viewport()->setAutoFillBackground(false);
    m_form->body()->setAutoFillBackground(false);
    inside->addWidget(m_scroll);
    inside->addWidget(make_rule(m_form));
    inside->addWidget(m_form->foot());
    m_form->body()->layout()->setContentsMargins(page_margin, page_margin, page_margin, page_margin);
    m_form->foot()->layout()->setContentsMargins(page_margin, 16, page_margin, 16);
    m_form->set_cancel_shown(true);

    connect(m_form, &FormFrame::committed, this, &QDialog::accept);
    // A second button may have made the entry.
    connect(this, &QDialog::accepted, m_form, [this] { m_form->drafts().drop(); });
    connect(m_form, &FormFrame::cancelled, this, [this] { QDialog::reject(); });
}

void FormDialog::reject() {
    m_form->cancel();
}

void FormDialog::closeEvent(QCloseEvent* event) {
    // QDialog's own answer would call reject() and take a form that stays for one that went.
    if (isVisible()) {
        event->ignore();
        m_form->cancel();
    }
}

void FormDialog::showEvent(QShowEvent* event) {
    if (!event->spontaneous()) {
        fit();
    }
    QDialog::showEvent(event);
    if (!event->spontaneous()) {
        m_form->take_focus();
        // What the lines of text take is known for certain once they stand: then nothing scrolls that has room.
        QTimer::singleShot(0, this, [this] {
            // Whoever opened the form may have put the keyboard into a field.
            if (DraftOffer* offer = m_form->drafts().offer()) {
                offer->take_focus();
            }
            const int missing = m_scroll->verticalScrollBar()->maximum();
            const int room = screen()->availableGeometry().height() - 48 - height();
            if (missing > 0 && room > 0) {
                const int more = std::min(missing, room);
                setGeometry(geometry().adjusted(0, -more / 2, 0, more - more / 2));
            }
        });
    }
}

void FormDialog::fit() {
    const QRect room = screen()->availableGeometry().adjusted(16, 16, -16, -32);
    const int width = std::min(scaled(m_wanted_width), room.width());
    const QWidget* body = m_form->body();
    const int body_height = body->layout()->hasHeightForWidth() ? body->layout()->totalHeightForWidth(width)
                                                                : body->sizeHint().height();
    const int height = body_height + m_form->foot()->sizeHint().height() + 4;
    resize(width, std::min(height, room.height()));
    QRect placed(QPoint(0, 0), size());
    placed.moveCenter(parentWidget() != nullptr ? parentWidget()->window()->geometry().center() : room.center());
    placed.moveLeft(std::clamp(placed.left(), room.left(), std::max(room.left(), room.right() - width)));
    placed.moveTop(std::clamp(placed.top(), room.top(), std::max(room.top(), room.bottom() - placed.height())));
    move(placed.topLeft());
}

FormDialog* ask_reason(const Habits& habits, QWidget* parent, const QString& title, const QString& what_happens,
                       const QString& button, std::function<std::optional<work::Refusal>(const QString& reason)> with, const QStringList& picks) {
    auto* dialog = new FormDialog(habits, title, parent);
    FormFrame* form = dialog->form();
    form->set_intro(what_happens);
    auto* reason = form->add_wide(
        //: Label of a field
        QCoreApplication::translate("Reason", "Reason"), new NoteField(form), QStringLiteral("reason"),
        //: Help beneath a field for a reason
        QCoreApplication::translate("Reason", "It is kept beside what stood there before, and the register shows it."));
    add_picks(*form, picks, [reason](const QString& pick) {
        reason->set_value(pick);
        reason->take_focus();
        Q_EMIT reason->edited();
    });
    form->set_primary(button);
    form->set_commit([reason, with = std::move(with)](const work::Confirmed&) -> std::optional<work::Refusal> {
        if (reason->is_empty()) {
            return work::Refusal{work::Why::reason_missing, QStringLiteral("reason"), {}, false};
        }
        return with(reason->value());
    });
    dialog->open();
    return dialog;
}

} // namespace soakbook::ui
