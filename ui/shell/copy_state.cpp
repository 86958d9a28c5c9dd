// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/copy_state.h"

#include "core/work/safe_copies.h"
#include "core/work/watch.h"
#include "ui/parts/desk.h"
#include "ui/setup/copy_ages.h"
#include "ui/setup/copy_keeper.h"
#include "ui/setup/second_place.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>

#include <optional>

namespace soakbook::ui {

namespace {

/// Entries may stand without a safe copy for so long: common practice, no source.
constexpr qint64 late_after_ms = 24 * 3600 * 1000LL;
/// From here on a second place is asked for: within the first week.
constexpr qint64 ask_after_ms = 3 * late_after_ms;
/// A stick or another computer may be away for so long.
constexpr qint64 away_after_ms = 7 * late_after_ms;

std::optional<maths::Instant> made_at(const work::SafeCopyState& state) {
    const QFileInfo file(state.path);
    if (state.path.isEmpty() || !file.exists()) {
        return std::nullopt;
    }
    const QDateTime at = file.lastModified();
    return maths::Instant{at.toMSecsSinceEpoch(), at.offsetFromUtc() / 60};
}

/// Entries are without a copy since the last one was made, or since the workbook was.
bool is_late(const work::SafeCopyState& state, const std::optional<maths::Instant>& made, const Desk& desk) {
    const QDateTime begun = QFileInfo(work::workbook_path(desk.workbook())).birthTime();
    const qint64 since = made ? made->utc_ms : begun.isValid() ? begun.toMSecsSinceEpoch() : desk.now().utc_ms;
    return state.entries_behind > 0 && desk.now().utc_ms - since > late_after_ms;
}

std::vector<work::DueRow> second_place_rows(const Desk& desk) {
    const SecondPlace place = second_place();
    if (place.choice == SecondPlace::Choice::none) {
        return {};
    }
    work::DueRow row;
    row.kind = work::DueKind::second_place;
    const qint64 now = desk.now().utc_ms;
    if (place.choice == SecondPlace::Choice::unsaid) {
        const maths::Instant made = work::workbook_made(desk.workbook());
        if (now - made.utc_ms < ask_after_ms) {
            return {};
        }
        row.group = work::DueGroup::this_week;
        row.sort_day = made.local_day();
        return {row};
    }
    const auto answered = second_place_news(work::mark_of_copies(desk.workbook())).answered;
    const std::optional<maths::Instant> since = answered ? answered : place.chosen;
    if (!since || now - since->utc_ms < away_after_ms) {
        return {};
    }
    row.group = work::DueGroup::today;
    row.subject = place.folder;
    row.since = since;
    row.sort_day = since->local_day();
    return {row};
}

class CopyWords {
    Q_DECLARE_TR_FUNCTIONS(CopyWords)

public:
    static QString of(const work::SafeCopyState& state, const std::optional<maths::Instant>& made, const Desk& desk) {
        if (!made) {
            //: In the status line
            return tr("No safe copy yet");
        }
        const QString ago = age_words(desk, *made);
        if (state.entries_behind > 0) {
            //: In the status line; %1 such as "14 min ago", %n the number of entries since
            return tr("Safe copy %1, %n entry(ies) since", nullptr, static_cast<int>(state.entries_behind)).arg(ago);
        }
        //: In the status line; %1 such as "14 min ago". Checked: the copy was read back in full, and is good.
        return tr("Safe copy %1, checked").arg(ago);
    }
    static QString failed() {
        //: In the status line; Set-up says why
        return tr("No safe copy could be made");
    }
};

} // namespace

StatusFacts status_facts(const Desk& desk, const QString& copy_folder, const CopyKeeper* keeper) {
    StatusFacts facts;
    facts.workbook = work::workbook_name(desk.workbook());
    facts.entries = work::entry_number(desk.workbook());
    const work::SafeCopyState state = work::safe_copy_state(desk.workbook(), copy_folder);
    const auto made = made_at(state);
    facts.safe_copy = CopyWords::of(state, made, desk);
    if (is_late(state, made, desk)) {
        facts.copy_state = State::near;
    }
    if (keeper != nullptr && !keeper->failure().isEmpty()) {
        facts.safe_copy = CopyWords::failed();
        facts.copy_state = State::past;
    }
    return facts;
}

StatusFacts example_facts(const Desk& desk) {
    StatusFacts facts;
    //: In the status line, in place of a workbook's name
    facts.workbook = CopyWords::tr("Worked example");
    //: In the status line while the worked example is open
    facts.safe_copy = CopyWords::tr("nothing you enter here is kept");
    facts.entries = work::entry_number(desk.workbook());
    return facts;
}

std::vector<work::DueRow> late_copy(const Desk& desk, const QString& copy_folder) {
    if (copy_folder.isEmpty() || desk.looking()) {
        return {};
    }
    std::vector<work::DueRow> rows = second_place_rows(desk);
    const work::SafeCopyState state = work::safe_copy_state(desk.workbook(), copy_folder);
    const auto made = made_at(state);
    if (is_late(state, made, desk)) {
        work::DueRow row;
        row.kind = work::DueKind::safe_copy_late;
        row.group = work::DueGroup::today;
        row.since = made;
        row.count = static_cast<int>(state.entries_behind);
        row.sort_day = made ? made->local_day() : desk.today();
        rows.push_back(row);
    }
    return rows;
}

} // namespace soakbook::ui
