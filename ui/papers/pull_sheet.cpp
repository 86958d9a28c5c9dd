// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/pull_sheet.h"

#include "core/work/papers.h"
#include "core/work/pull.h"
#include "core/work/yards_view.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/yard_paper_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct PullPaper {
    Q_DECLARE_TR_FUNCTIONS(PullPaper)
};

QString state_words(work::PullState state) {
    switch (state) {
    case work::PullState::waiting:
        //: Strips that are not to be pulled yet
        return PullPaper::tr("not yet");
    case work::PullState::open:
        //: Strips that may be pulled
        return PullPaper::tr("to pull");
    case work::PullState::closing_soon:
        //: Strips whose last day is near
        return PullPaper::tr("pull soon");
    case work::PullState::past:
        //: Strips that hang longer than their last day
        return PullPaper::tr("overdue");
    }
    return {};
}

} // namespace

PullList pull_list(const Desk& desk, work::YardId yard) {
    PullList list;
    list.day = desk.day(desk.today());
    //: In place of a yard's name
    list.yard = PullPaper::tr("All yards");
    for (const work::YardLine& line : work::yard_lines(desk.workbook(), desk.today())) {
        list.yard = line.id == yard ? line.name : list.yard;
    }
    int strips = 0;
    for (const work::PullLine& line : work::hanging(desk.workbook(), yard, desk.today())) {
        PullLine paper;
        const QString hive = paper_hive(line.hive_name, line.hives);
        //: A hive and, where several yards are on one sheet, its yard
        paper.hive = yard ? hive : PullPaper::tr("%1, %2").arg(line.yard_name, hive);
        paper.strips = QString::number(line.strips);
        paper.bag = line.bag_code;
        paper.since = desk.day_short(line.placed_on);
        paper.window = paper_days(desk, line.pull_from, line.pull_by);
        paper.state = state_words(line.state);
        QStringList notes;
        if (line.hive_dead) {
            //: The strips hang in a dead hive
            notes += PullPaper::tr("hive dead");
        }
        if (!line.placed_in.isEmpty()) {
            //: %1 the yard where a hive stood when its strips were hung
            notes += PullPaper::tr("hung in %1").arg(line.placed_in);
        }
        paper.note = notes.join(QStringLiteral("; "));
        list.lines.push_back(paper);
        strips += line.strips;
    }
    list.total = QString::number(strips);
    return list;
}

void offer_pull_list(Desk& desk, work::YardId yard, QWidget* parent) {
    const PullList list = pull_list(desk, yard);
    std::vector<work::PlacementId> placements;
    for (const work::PullLine& line : work::hanging(desk.workbook(), yard, desk.today())) {
        placements.push_back(line.placement);
    }
    //: The name of a file; %1 a yard
    offer_sheet(desk, sheet_of(list, paper_head(desk)), PullPaper::tr("pull list %1").arg(list.yard), parent, [&desk, placements] {
        return refusal_of(work::sheet_printed(desk.workbook(), QStringLiteral("pull list"), {}, {}, placements, desk.doing()));
    });
}

} // namespace soakbook::ui
