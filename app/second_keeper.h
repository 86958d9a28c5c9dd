// SPDX-License-Identifier: GPL-3.0-or-later
// Brings safe copies to the second place, when there is one, and knows how it stands.
#pragma once

#include "app/clock.h"
#include "app/second_trip.h"

#include <QObject>
#include <QTimer>

#include <memory>
#include <optional>
#include <vector>

namespace soakbook::app {

class SecondKeeper : public QObject {
    Q_OBJECT

public:
    /// `mark` tells the workbook's copies, `live` is its file.
    SecondKeeper(QString mark, QString live, Clock clock, QObject* parent = nullptr);

    /// Brings the newest copy there if it is not there yet: at once, or when the last try was some time ago. Once a day it
    /// only looks whether the place answers.
    void look(const std::optional<book::SafeCopy>& newest, bool at_once);
    /// Another place was chosen, or none.
    void begin_anew(const std::optional<book::SafeCopy>& newest);
    /// Brings the newest copy there and waits for that, as long as the place answers.
    void finish(const std::optional<book::SafeCopy>& newest);

    bool is_at_it() const { return m_trip != nullptr; }
    int percent() const { return m_trip ? m_trip->percent() : 0; }
    /// Why the last try brought nothing there, in words.
    const QString& failure() const { return m_failure; }
    /// What lay there when it answered last.
    const std::vector<work::CopyLine>& copies() const { return m_copies; }

Q_SIGNALS:
    void news();

private:
    void take(const TripEnd& end);

    QString m_mark;
    QString m_live;
    Clock m_clock;
    QTimer m_watch;
    std::unique_ptr<SecondTrip> m_trip;
    std::optional<book::SafeCopy> m_carried; ///< what the trip carries
    std::optional<maths::Instant> m_begun;   ///< when the last trip did
    QString m_failure;
    std::vector<work::CopyLine> m_copies;
};

/// Whether so long has gone by since; a clock that was set back counts as that, and never, too.
inline bool is_past(const std::optional<maths::Instant>& since, qint64 ms, const maths::Instant& now) {
    return !since || now.utc_ms - since->utc_ms >= ms || now.utc_ms < since->utc_ms;
}

} // namespace soakbook::app
