// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of Due that the window adds: forms that were begun, and changes by other programs.
#include "ui/due/due_yard_words.h"
#include "ui/parts/draft_door.h"
#include "ui/parts/drafts.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

class DueWindowTexts {
    Q_DECLARE_TR_FUNCTIONS(Due)
};

DueWords draft_waits(const work::DueRow& row, const Habits& habits) {
    Intent leads_to;
    const Drafts* drafts = Drafts::of(habits);
    if (const Draft* draft = drafts == nullptr || row.ids.empty() ? nullptr : drafts->find(row.ids.front())) {
        leads_to = draft->place.intent;
        leads_to.prefill.insert(draft_key, row.ids.front());
    }
    //: Why a form that was begun stands among the things to do; %1 is a day and a time
    const QString when = row.since ? DueWindowTexts::tr("typed %1, not entered").arg(habits.moment(*row.since)) : QString();
    //: A verb that begins a row: go on with a form that was begun. And its button.
    return {DueWindowTexts::tr("Go on"), row.subject, when, State::near, DueWindowTexts::tr("Open the form"), leads_to};
}

DueWords changed_outside(const work::DueRow& row, const Habits& habits) {
    return {//: A verb that begins a row: look at changes that another program made.
            DueWindowTexts::tr("Look at"),
            //: %n changes that another program made in the workbook.
            DueWindowTexts::tr("%n change(s) made outside Soakbook", nullptr, row.count),
            //: %1 is a day and a time: that of the newest change another program made.
            row.since ? DueWindowTexts::tr("the newest of %1").arg(habits.moment(*row.since)) : QString(),
            State::past,
            //: A button: shows the changes another program made.
            DueWindowTexts::tr("Show them"),
            {PlaceName::register_, QStringLiteral("outside"), {}, {}}};
}

} // namespace

std::optional<DueWords> due_window_words(const work::DueRow& row, const Habits& habits) {
    switch (row.kind) {
    case work::DueKind::draft_waits:
        return draft_waits(row, habits);
    case work::DueKind::changed_outside:
        return changed_outside(row, habits);
    default:
        return std::nullopt;
    }
}

} // namespace soakbook::ui
