// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/copy_state.h"

#include "core/work/safe_copies.h"
#include "core/work/watch.h"
#include "ui/parts/desk.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>

#include <optional>

namespace soakbook::ui {

namespace {

/// Entries may stand without a safe copy for so long: common practice, no source.
constexpr qint64 late_after_ms = 24 * 3600 * 1000LL;

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

class CopyWords {
    Q_DECLARE_TR_FUNCTIONS(CopyWords)

public:
    static QString of(const work::SafeCopyState& state, const std::optional<maths::Instant>& made, const Desk& desk) {
        if (!made) {
            //: In the status line
            return tr("No safe copy yet");
        }
        if (state.entries_behind > 0) {
            //: In the status line; %1 a day and time, %n the number of entries since
            return tr("Safe copy of %1, %n entry(ies) since", nullptr, static_cast<int>(state.entries_behind))
                .arg(desk.moment(*made));
        }
        //: In the status line; %1 a day and time
        return tr("Safe copy of %1, holds everything").arg(desk.moment(*made));
    }
};

} // namespace

StatusFacts status_facts(const Desk& desk, const QString& copy_folder) {
    StatusFacts facts;
    facts.workbook = work::workbook_name(desk.workbook());
    facts.entries = work::entry_number(desk.workbook());
    const work::SafeCopyState state = work::safe_copy_state(desk.workbook(), copy_folder);
    const auto made = made_at(state);
    facts.safe_copy = CopyWords::of(state, made, desk);
    if (is_late(state, made, desk)) {
        facts.copy_state = State::near;
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
    const work::SafeCopyState state = work::safe_copy_state(desk.workbook(), copy_folder);
    const auto made = made_at(state);
    if (!is_late(state, made, desk)) {
        return {};
    }
    work::DueRow row;
    row.kind = work::DueKind::safe_copy_late;
    row.group = work::DueGroup::today;
    row.since = made;
    row.count = static_cast<int>(state.entries_behind);
    row.sort_day = made ? made->local_day() : desk.today();
    return {row};
}

} // namespace soakbook::ui
