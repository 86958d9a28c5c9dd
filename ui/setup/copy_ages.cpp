// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/copy_ages.h"

#include "ui/parts/habits.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class CopyAges {
    Q_DECLARE_TR_FUNCTIONS(CopyAges)
};
} // namespace

QString age_words(const Habits& habits, const maths::Instant& then) {
    const auto minutes = (habits.now().utc_ms - then.utc_ms) / 60'000;
    if (minutes < 0 || minutes >= 24 * 60)
        return habits.moment(then);
    if (minutes == 0)
        //: How long ago a copy was made: within the last minute
        return CopyAges::tr("just now");
    if (minutes < 60)
        //: How long ago a copy was made, in minutes
        return CopyAges::tr("%n min ago", nullptr, static_cast<int>(minutes));
    //: How long ago a copy was made, in hours
    return CopyAges::tr("%n h ago", nullptr, static_cast<int>(minutes / 60));
}

} // namespace soakbook::ui
