// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/second_trip.h"

#include "core/book/safe_copy_place.h"

#include <QFileInfo>

#include <atomic>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace soakbook::app {

struct SecondTrip::Shared {
    TripOrder order;
    std::atomic<bool> wanted{true};
    mutable std::mutex lock;
    mutable std::condition_variable moved;
    int percent = 0;
    int signs = 0;
    std::optional<TripEnd> end;

    bool go_on(int how_far) {
        const std::lock_guard guard(lock);
        percent = how_far;
        ++signs;
        moved.notify_all();
        return wanted;
    }
    void finish(TripEnd result) {
        const std::lock_guard guard(lock);
        end = std::move(result);
        moved.notify_all();
    }
};

namespace {

TripEnd travel(const TripOrder& order, const std::function<bool(int)>& go_on) {
    TripEnd end;
    try {
        if (!QFileInfo(order.folder).isDir())
            end.failed = book::NotCopied::folder;
        else if (order.copy)
            if (const auto carried = book::carry_copy(*order.copy, order.folder, order.mark, order.live, go_on); !carried)
                end.failed = carried.error();
        end.there = work::copies_in(order.folder, order.mark, order.live);
        for (work::CopyLine& line : end.there)
            line.elsewhere = true;
    } catch (const std::exception&) {
        end.failed = book::NotCopied::folder;
    }
    return end;
}

} // namespace

SecondTrip::SecondTrip(TripOrder order) : m_shared(std::make_shared<Shared>()) {
    m_shared->order = std::move(order);
    std::thread([shared = m_shared] {
        shared->finish(travel(shared->order, [&shared](int percent) { return shared->go_on(percent); }));
    }).detach();
}

SecondTrip::~SecondTrip() { m_shared->wanted = false; }

int SecondTrip::percent() const {
    const std::lock_guard guard(m_shared->lock);
    return m_shared->percent;
}

std::optional<TripEnd> SecondTrip::end() const {
    const std::lock_guard guard(m_shared->lock);
    return m_shared->end;
}

std::optional<TripEnd> SecondTrip::wait(std::chrono::milliseconds patience) const {
    std::unique_lock guard(m_shared->lock);
    int seen = -1;
    while (!m_shared->end && m_shared->signs != seen) {
        seen = m_shared->signs;
        m_shared->moved.wait_for(guard, patience, [&] { return m_shared->end || m_shared->signs != seen; });
    }
    return m_shared->end;
}

} // namespace soakbook::app
