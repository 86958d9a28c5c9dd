// SPDX-License-Identifier: GPL-3.0-or-later
// One way to the second place and back, on a thread of its own: a network folder that does not answer holds up nobody.
#pragma once

#include "core/book/safe_copy.h"
#include "core/work/safe_copies.h"

#include <QString>

#include <chrono>
#include <memory>
#include <optional>
#include <vector>

namespace soakbook::app {

struct TripOrder {
    std::optional<book::SafeCopy> copy; ///< to be carried there; empty: only look whether the place answers
    QString folder;
    QString mark;
    QString live;
};

struct TripEnd {
    std::optional<book::NotCopied> failed;
    std::vector<work::CopyLine> there; ///< what lies there now
};

class SecondTrip {
public:
    explicit SecondTrip(TripOrder order);
    /// Lets go of it: it ends at the next piece of the file, and nobody waits for that.
    ~SecondTrip();
    SecondTrip(const SecondTrip&) = delete;
    SecondTrip& operator=(const SecondTrip&) = delete;

    int percent() const;
    /// How it ended, once it has.
    std::optional<TripEnd> end() const;
    /// Waits for its end as long as it gets on: no longer than `patience` without a sign.
    std::optional<TripEnd> wait(std::chrono::milliseconds patience) const;

private:
    struct Shared;
    std::shared_ptr<Shared> m_shared;
};

} // namespace soakbook::app
