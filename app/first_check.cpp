// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/first_check.h"

#include "app/keeper.h"
#include "core/book/statement.h"
#include "core/book/workbook.h"

#include <algorithm>

namespace soakbook::app {

FirstCheck::FirstCheck(book::Workbook& workbook, Keeper& keeper, book::VerifiedBefore memory, QString place, Clock clock, QObject* parent)
    : QObject(parent), m_workbook(workbook), m_keeper(keeper), m_memory(std::move(memory)), m_place(std::move(place)), m_clock(std::move(clock)),
      m_uid(workbook.uid()) {
    m_workbook.hold_entries(true);
    connect(&keeper, &Keeper::copied, this, &FirstCheck::take_verdict);
    connect(&keeper, &Keeper::found_damaged, this, [this](const book::Verdict& verdict) {
        m_memory.forget_verified(m_uid, m_place);
        set_state(State::damaged);
        Q_EMIT found_damaged(verdict);
    });
    connect(&keeper, &Keeper::progress, this, [this](int percent) {
        m_percent = percent;
        if (m_state == State::looking_through)
            Q_EMIT changed();
    });
    connect(&keeper, &Keeper::failed, this, [this](const QString& why) {
        if (m_state != State::looking_through)
            return;
        // A place for safe copies that is full or gone must not keep anybody from writing down what was done.
        m_not_checked = why;
        set_state(State::free);
    });
}

FirstCheck::~FirstCheck() = default;

void FirstCheck::set_state(State state) {
    m_state = state;
    m_workbook.hold_entries(state != State::free);
    Q_EMIT changed();
}

void FirstCheck::begin() {
    try {
        if (look_for_missing())
            return;
        const auto here = m_memory.at(m_uid, m_place);
        if (here && here->verified) {
            const auto since = book::verify_since(m_workbook, {m_uid, here->verified->seal});
            if (since && since->sound()) {
                m_keeper.take_for_verified(since->until);
                note_seen();
                return set_state(State::free);
            }
        }
    } catch (const book::StoreError&) {
        // What cannot be read now is looked at again on the copy.
    }
    look_through();
}

bool FirstCheck::look_for_missing() {
    const auto places = m_memory.of(m_uid);
    const auto here = std::find_if(places.begin(), places.end(), [this](const book::Remembered& r) { return r.place == m_place; });
    const auto known = here != places.end() ? here : places.begin();
    if (known == places.end() || book::stands_in(m_workbook, known->seen.seal))
        return false;
    MissingEntries missing;
    missing.newest_then = known->seen.seal.last_seq;
    missing.entries = std::max<qint64>(0, missing.newest_then - m_workbook.last_seq());
    missing.seen = known->seen.at;
    if (here == places.end())
        missing.place = known->place;
    m_missing = missing;
    set_state(State::missing);
    Q_EMIT entries_missing();
    return true;
}

void FirstCheck::look_through() {
    m_percent = 0;
    set_state(State::looking_through);
    m_keeper.copy_now(std::nullopt);
}

void FirstCheck::go_on_with_this() {
    m_missing.reset();
    m_memory.forget_verified(m_uid, m_place);
    note_seen();
    look_through();
}

void FirstCheck::note_seen() {
    // While somebody is asked what this file is, what stood there before stays remembered.
    if (m_state == State::missing && m_missing)
        return;
    try {
        m_memory.note_seen(m_uid, book::newest_seal_of(m_workbook), m_place, m_clock());
    } catch (const book::StoreError&) {
        // What is not remembered is looked through when it is opened again.
    }
}

void FirstCheck::take_verdict(const book::Verdict& verdict) {
    if (m_state == State::missing || m_state == State::damaged)
        return;
    m_memory.note_verified(verdict.until, m_place, m_clock());
    if (m_state == State::looking_through) {
        m_not_checked.clear();
        set_state(State::free);
    } else if (!m_not_checked.isEmpty()) {
        m_not_checked.clear();
        Q_EMIT changed();
    }
}

} // namespace soakbook::app
