// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/waiting_due.h"

#include "core/work/record_history.h"
#include "core/work/watch.h"
#include "ui/parts/desk.h"
#include "ui/parts/drafts.h"
#include "ui/parts/looked_at.h"

#include <QFileInfo>

namespace soakbook::ui {

void keep_drafts(Desk& desk, const QString& copy_folder) {
    if (!copy_folder.isEmpty() && Drafts::of(desk) == nullptr) {
        const QString folder = QFileInfo(copy_folder).absolutePath() + QStringLiteral("/drafts");
        new Drafts(folder, work::workbook_uid(desk.workbook()), &desk);
    }
}

std::vector<work::DueRow> waiting_drafts(const Desk& desk) {
    std::vector<work::DueRow> rows;
    const Drafts* drafts = Drafts::of(desk);
    for (const Draft& draft : drafts == nullptr ? std::vector<Draft>() : drafts->all()) {
        work::DueRow row;
        row.kind = work::DueKind::draft_waits;
        row.group = work::DueGroup::today;
        row.subject = draft.place.title;
        row.since = draft.typed;
        row.sort_day = draft.typed.local_day();
        row.ids = {draft.id()};
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<work::DueRow> changes_to_look_at(const Desk& desk) {
    const work::OutsideNews news = work::outside_news(desk.workbook(), outside_looked_at(work::workbook_uid(desk.workbook())));
    if (news.count == 0) {
        return {};
    }
    work::DueRow row;
    row.kind = work::DueKind::changed_outside;
    row.group = work::DueGroup::now;
    row.count = news.count;
    row.since = news.newest;
    row.sort_day = news.newest.local_day();
    return {row};
}

} // namespace soakbook::ui
