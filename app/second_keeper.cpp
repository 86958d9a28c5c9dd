// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/second_keeper.h"

#include "app/copy_words.h"
#include "ui/setup/second_place.h"

#include <chrono>

namespace soakbook::app {

namespace {
constexpr int watch_ms = 200;
constexpr qint64 try_again_ms = 10 * 60'000LL;
constexpr qint64 answers_daily_ms = 24 * 3600 * 1000LL;
/// At the end a place that gives no sign for so long is left for the next time.
constexpr std::chrono::seconds patience{3};
} // namespace

SecondKeeper::SecondKeeper(QString mark, QString live, Clock clock, QObject* parent)
    : QObject(parent), m_mark(std::move(mark)), m_live(std::move(live)), m_clock(std::move(clock)) {
    connect(&m_watch, &QTimer::timeout, this, [this] {
        if (const auto end = m_trip ? m_trip->end() : std::nullopt)
            take(*end);
    });
}

void SecondKeeper::look(const std::optional<book::SafeCopy>& newest, bool at_once) {
    const ui::SecondPlace place = ui::second_place();
    if (m_trip || place.choice != ui::SecondPlace::Choice::folder)
        return;
    const ui::SecondPlaceNews before = ui::second_place_news(m_mark);
    const bool is_behind = newest && (before.newest_entry != newest->last_seq || !before.answered);
    if (!at_once && !is_past(m_begun, is_behind ? try_again_ms : answers_daily_ms, m_clock()))
        return;
    m_begun = m_clock();
    m_carried = is_behind ? newest : std::nullopt;
    m_trip = std::make_unique<SecondTrip>(TripOrder{m_carried, place.folder, m_mark, m_live});
    m_watch.start(watch_ms);
    Q_EMIT news();
}

void SecondKeeper::begin_anew(const std::optional<book::SafeCopy>& newest) {
    m_trip.reset();
    m_copies.clear();
    m_failure.clear();
    look(newest, true);
    Q_EMIT news();
}

void SecondKeeper::finish(const std::optional<book::SafeCopy>& newest) {
    if (newest && newest->last_seq != ui::second_place_news(m_mark).newest_entry)
        look(newest, true);
    if (m_trip)
        if (const auto end = m_trip->wait(patience))
            take(*end);
}

void SecondKeeper::take(const TripEnd& end) {
    m_trip.reset();
    m_watch.stop();
    const ui::SecondPlace place = ui::second_place();
    m_failure = end.failed && place.choice == ui::SecondPlace::Choice::folder ? second_place_words(*end.failed, place.folder) : QString();
    m_copies = end.there;
    if (!end.failed) {
        ui::SecondPlaceNews news_now = ui::second_place_news(m_mark);
        if (m_carried)
            news_now.newest_entry = m_carried->last_seq;
        news_now.answered = m_clock();
        ui::note_second_place(m_mark, news_now);
    }
    Q_EMIT news();
}

} // namespace soakbook::app
