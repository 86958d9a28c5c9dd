// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/run_sheet.h"

#include "core/work/papers.h"
#include "core/work/round.h"
#include "core/work/store_view.h"
#include "core/work/visit.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/yard_paper_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace soakbook::ui {

namespace {

struct RunPaper {
    Q_DECLARE_TR_FUNCTIONS(RunPaper)
};

BagToTake bag_to_take(const Desk& desk, const work::BagUse& use, maths::Day on) {
    BagToTake bag;
    bag.code = use.code;
    bag.strips = QString::number(use.left_before);
    bag.use_by = desk.day(use.use_by);
    bag.place = use.stands;
    QStringList notes;
    if (use.opened) {
        //: A bag that was opened before
        notes += RunPaper::tr("opened");
    }
    if (use.rest_until && *use.rest_until > on) {
        //: A bag whose strips still rest; %1 a day
        notes += RunPaper::tr("still resting until %1").arg(desk.day(*use.rest_until));
    }
    bag.note = notes.join(QStringLiteral(", "));
    return bag;
}

/// The round's own day, or today where that has gone by.
maths::Day day_of(const Desk& desk, const work::RoundEntry& round) {
    return std::max(round.planned_on.value_or(desk.today()), desk.today());
}

std::optional<work::VisitPlan> visit_of(const Desk& desk, work::RoundId round, work::YardId yard) {
    const auto plan = work::plan_visit(desk.workbook(), round, yard, day_of(desk, work::round_entry(desk.workbook(), round)));
    return plan ? std::optional<work::VisitPlan>(*plan) : std::nullopt;
}

RunLine run_line(const work::VisitLine& line, bool by_boxes) {
    RunLine run;
    run.hive = paper_hive(line.name, line.hives);
    const auto figure = by_boxes ? line.brood_boxes : line.frames_of_bees;
    run.bees = figure ? QString::number(*figure) : QString();
    run.strips = line.planned ? QString::number(*line.planned) : QString();
    QStringList notes;
    if (line.untreated) {
        //: A hive that gets no strips, to compare with
        notes += RunPaper::tr("untreated on purpose");
    }
    if (line.hanging > 0) {
        //: Strips from an earlier visit
        notes += RunPaper::tr("%n strips hang already", nullptr, line.hanging);
    }
    if (line.supers_on.value_or(false)) {
        //: Honey supers are on the hive
        notes += RunPaper::tr("supers on");
    }
    if (!line.note.isEmpty()) {
        notes += line.note;
    }
    run.note = notes.join(QStringLiteral("; "));
    return run;
}

/// The bags for several yards together. Each yard is planned from a full store, so the choice of bags is asked once for the
/// strips of them all, as if one hive got them; where the store cannot give so many, all bags any yard would take are named.
std::vector<work::BagUse> bags_for_all(const Desk& desk, const std::vector<work::VisitPlan>& plans, int strips) {
    std::map<qint64, work::BagUse> named;
    for (const work::VisitPlan& plan : plans) {
        for (const work::BagUse& use : plan.bags) {
            named.try_emplace(use.bag.value, use);
        }
    }
    if (plans.size() > 1 && !plans.front().lines.empty()) {
        work::VisitEntry together;
        together.round = plans.front().round;
        together.yard = plans.front().yard;
        together.rows.push_back({plans.front().lines.front().hive, strips, std::nullopt, std::nullopt, {}});
        const auto shared = work::share_out(desk.workbook(), together, desk.today());
        for (const work::FromBag& from : shared ? shared->front() : std::vector<work::FromBag>{}) {
            if (const auto bag = work::bag(desk.workbook(), from.bag, desk.today()); bag && bag->use_by) {
                named.try_emplace(from.bag.value, work::BagUse{from.bag, from.code, bag->left, from.strips, *bag->use_by, bag->rest_until,
                                                               bag->opened_on.has_value(), bag->stands});
            }
        }
    }
    std::vector<work::BagUse> bags;
    for (const auto& [id, use] : named) {
        bags.push_back(use);
    }
    std::stable_sort(bags.begin(), bags.end(), [](const work::BagUse& a, const work::BagUse& b) { return a.use_by < b.use_by; });
    return bags;
}

} // namespace

std::optional<RunSheet> run_sheet(const Desk& desk, work::RoundId round, work::YardId yard) {
    const auto plan = visit_of(desk, round, yard);
    if (!plan) {
        return std::nullopt;
    }
    RunSheet sheet;
    sheet.yard = plan->yard_name;
    sheet.round = plan->round_name;
    sheet.day = desk.day(plan->on);
    QStringList times;
    for (const work::YardTimeEntry& time : plan->meeting) {
        times += paper_time(desk, time);
    }
    sheet.supers = times.join(QStringLiteral("; "));
    sheet.total = QString::number(plan->strips);
    for (const work::BagUse& use : plan->bags) {
        sheet.bags.push_back(bag_to_take(desk, use, plan->on));
    }
    const bool by_boxes = work::round_entry(desk.workbook(), round).dose_rule == work::DoseRule::brood_boxes;
    for (const work::VisitLine& line : plan->lines) {
        sheet.lines.push_back(run_line(line, by_boxes));
    }
    return sheet;
}

std::optional<LoadOut> load_out(const Desk& desk, work::RoundId round) {
    const auto rounds = work::rounds(desk.workbook(), true);
    const auto line = std::find_if(rounds.begin(), rounds.end(), [round](const work::RoundLine& one) { return one.id == round; });
    if (line == rounds.end()) {
        return std::nullopt;
    }
    LoadOut load;
    load.round = line->name;
    const work::RoundEntry entry = work::round_entry(desk.workbook(), round);
    load.day = desk.day(day_of(desk, entry));
    int total = 0;
    std::vector<work::VisitPlan> plans;
    for (const auto& [yard, visited] : line->yards) {
        const auto plan = visited ? std::nullopt : visit_of(desk, round, yard);
        if (!plan) {
            continue;
        }
        plans.push_back(*plan);
        int hives = 0;
        for (const work::VisitLine& one : plan->lines) {
            hives += one.hives;
        }
        QStringList times;
        for (const work::YardTimeEntry& time : plan->meeting) {
            times += paper_time(desk, time);
        }
        load.yards.push_back({plan->yard_name, QString::number(hives), QString::number(plan->strips), desk.day(plan->on), times.join(QStringLiteral("; "))});
        total += plan->strips;
    }
    for (const work::BagUse& use : bags_for_all(desk, plans, total)) {
        load.bags.push_back(bag_to_take(desk, use, day_of(desk, entry)));
    }
    load.total = QString::number(total);
    return load;
}

void offer_run_sheet(Desk& desk, work::RoundId round, work::YardId yard, QWidget* parent) {
    const auto sheet = run_sheet(desk, round, yard);
    if (!sheet) {
        return;
    }
    //: The name of a file; %1 a yard
    offer_sheet(desk, sheet_of(*sheet, paper_head(desk)), RunPaper::tr("run sheet %1").arg(sheet->yard), parent, [&desk] {
        return refusal_of(work::sheet_printed(desk.workbook(), QStringLiteral("run sheet"), {}, {}, {}, desk.doing()));
    });
}

void offer_load_out(Desk& desk, work::RoundId round, QWidget* parent) {
    const auto sheet = load_out(desk, round);
    if (!sheet) {
        return;
    }
    //: The name of a file; %1 a round
    offer_sheet(desk, sheet_of(*sheet, paper_head(desk)), RunPaper::tr("load-out %1").arg(sheet->round), parent, [&desk] {
        return refusal_of(work::sheet_printed(desk.workbook(), QStringLiteral("load-out"), {}, {}, {}, desk.doing()));
    });
}

} // namespace soakbook::ui
