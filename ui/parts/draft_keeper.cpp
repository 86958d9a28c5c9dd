// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/draft_keeper.h"

#include "ui/parts/draft_offer.h"
#include "ui/parts/draft_parts.h"
#include "ui/parts/drafts.h"
#include "ui/parts/form.h"
#include "ui/parts/habits.h"
#include "ui/parts/record_table.h"

#include <QApplication>
#include <QBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QTimer>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int write_after_ms = 500;
/// A disk that did not take a draft is tried again.
constexpr int write_again_after_ms = 10'000;
constexpr int most_left_shown = 400;

} // namespace

DraftKeeper::DraftKeeper(FormFrame& form, const Habits& habits, QWidget& fields)
    : QObject(&form), m_form(form), m_habits(&habits), m_fields(fields), m_read(new QTimer(this)), m_write(new QTimer(this)) {
    m_read->setSingleShot(true);
    m_read->setInterval(0);
    connect(m_read, &QTimer::timeout, this, &DraftKeeper::read_form);
    m_write->setSingleShot(true);
    connect(m_write, &QTimer::timeout, this, &DraftKeeper::keep_now);
}

DraftKeeper::~DraftKeeper() {
    // The fields may be gone already; what they held was read when it was typed.
    keep_now();
    if (m_draft && drafts() != nullptr) {
        drafts()->let_go(m_draft->id());
    }
}

Drafts* DraftKeeper::drafts() const {
    return m_habits.isNull() ? nullptr : Drafts::of(*m_habits);
}

void DraftKeeper::set_place(const DraftPlace& place) {
    const bool same = m_place && m_place->form == place.form && m_place->record == place.record;
    if (!same) {
        begin_anew();
    }
    m_place = place;
    if (m_place->title.isEmpty()) {
        m_place->title = m_form.accessibleName();
    }
    if (!m_cells_watched && m_form.findChild<RecordTable*>() != nullptr) {
        m_cells_watched = true;
        connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { watch_open_cell(now); });
    }
    offer_next();
}

void DraftKeeper::watch_open_cell(QWidget* editor) {
    auto* line = qobject_cast<QLineEdit*>(editor);
    if (line == nullptr || !m_form.isAncestorOf(line)) {
        return;
    }
    for (const QWidget* above = line->parentWidget(); above != &m_form && above != nullptr; above = above->parentWidget()) {
        if (qobject_cast<const RecordTable*>(above) != nullptr) {
            connect(line, &QLineEdit::textEdited, this, [this] { note(nullptr); });
            return;
        }
    }
}

void DraftKeeper::note(const QWidget* field) {
    if (!m_place || drafts() == nullptr) {
        return;
    }
    if (field != nullptr && std::find(m_typed.begin(), m_typed.end(), field) == m_typed.end()) {
        m_typed.emplace_back(field);
    }
    m_read->start();
}

void DraftKeeper::read_form() {
    if (!m_place || drafts() == nullptr) {
        return;
    }
    std::vector<const QWidget*> fields;
    for (const QPointer<const QWidget>& field : m_typed) {
        if (!field.isNull()) {
            fields.push_back(field);
        }
    }
    std::vector<DraftPart> parts = read_parts(m_form, fields);
    const bool says_nothing = std::all_of(parts.begin(), parts.end(), [](const DraftPart& part) { return part.kind == DraftPart::Kind::text && part.says.isEmpty(); });
    if (says_nothing) {
        // Typed and taken away again.
        drop();
        return;
    }
    if (!m_draft) {
        m_draft = Draft{*m_place, drafts()->free_number(m_place->form, m_place->record), {}, {}};
        drafts()->hold(m_draft->id(), this);
    }
    m_draft->place = *m_place;
    m_draft->typed = m_habits->now();
    m_draft->parts = std::move(parts);
    m_unwritten = true;
    m_write->start(write_after_ms);
}

void DraftKeeper::finish() {
    if (m_read->isActive()) {
        m_read->stop();
        read_form();
    }
    keep_now();
}

void DraftKeeper::keep_now() {
    m_write->stop();
    if (!m_unwritten || !m_draft || drafts() == nullptr) {
        return;
    }
    m_unwritten = !drafts()->keep(*m_draft);
    if (m_unwritten) {
        m_write->start(write_again_after_ms);
    }
}

void DraftKeeper::drop() {
    m_read->stop();
    m_write->stop();
    m_unwritten = false;
    m_typed.clear();
    if (m_draft && drafts() != nullptr) {
        drafts()->let_go(m_draft->id());
        drafts()->remove(m_draft->id());
    }
    m_draft.reset();
}

void DraftKeeper::begin_anew() {
    if (m_taking_up) {
        return;
    }
    m_read->stop();
    keep_now();
    m_write->stop();
    m_unwritten = false;
    m_typed.clear();
    if (m_draft && drafts() != nullptr) {
        drafts()->let_go(m_draft->id());
    }
    m_draft.reset();
    offer_next();
}

void DraftKeeper::offer_next() {
    m_offered.reset();
    if (m_place && drafts() != nullptr) {
        const std::vector<Draft> waiting = drafts()->waiting(m_place->form, m_place->record);
        if (!waiting.empty()) {
            m_offered = waiting.front();
        }
    }
    if (!m_offered) {
        if (m_offer && m_offer->is_offering()) {
            m_offer->hide();
        }
        return;
    }
    if (!m_offer) {
        auto* column = qobject_cast<QBoxLayout*>(m_fields.parentWidget()->layout());
        m_offer = new DraftOffer(m_fields.parentWidget());
        column->insertWidget(column->indexOf(&m_fields), m_offer);
        connect(m_offer, &DraftOffer::taken_up, this, &DraftKeeper::take_up);
        connect(m_offer, &DraftOffer::thrown_away, this, &DraftKeeper::throw_away);
    }
    m_offer->offer(*m_offered, *m_habits);
}

void DraftKeeper::take_up() {
    if (!m_offered || drafts() == nullptr) {
        return;
    }
    const Draft taken = *m_offered;
    // What was typed meanwhile waits in its turn.
    begin_anew();
    m_draft = taken;
    drafts()->hold(taken.id(), this);
    std::vector<DraftPart> left;
    {
        const QScopedValueRollback<bool> taking_up(m_taking_up, true);
        left = put_parts(m_form, taken.parts);
        Q_EMIT m_form.edited();
    }
    offer_next();
    if (!left.empty()) {
        if (!m_offered) {
            Draft rest;
            rest.parts = left;
            m_offer->tell_left(typed_words(rest, most_left_shown));
        }
    }
    m_form.take_focus();
}

void DraftKeeper::throw_away() {
    if (m_offered && drafts() != nullptr) {
        drafts()->remove(m_offered->id());
    }
    offer_next();
    m_form.take_focus();
}

bool DraftKeeper::has(qint64 id) const {
    return (m_draft && m_draft->id() == id) || (m_offered && m_offered->id() == id);
}

DraftOffer* DraftKeeper::offer() const {
    return m_offer && m_offer->is_offering() ? m_offer.data() : nullptr;
}

} // namespace soakbook::ui
