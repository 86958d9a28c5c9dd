// SPDX-License-Identifier: GPL-3.0-or-later
// A bench with bags on the shelf and hives to hang them in: "Mill lane" with hives A1 to A20 of 8 frames of bees, and
// the group "long row" of 6 hives with 60 frames together. By the rule of a strip for 2.5 frames: 4 strips a hive, 24
// for the row.
#pragma once

#include "bench.h"
#include "core/work/figures.h"
#include "core/work/hives.h"
#include "core/work/pull.h"
#include "core/work/round.h"
#include "core/work/store_view.h"
#include "core/work/visit.h"

namespace soakbook::tests {

class YardsBench : public Bench {
public:
    YardsBench();

    work::YardId yard;
    work::HiveId row; ///< the group
    std::vector<work::HiveId> hives;

    void say(work::Figure figure, qint64 value);
    /// A round over the yard, planned on day n.
    work::RoundId round(int n, const QString& name = QStringLiteral("Late summer"),
                        std::vector<work::YardId> yards = {});
    /// The visit as planned, supers off, nothing typed over.
    work::VisitEntry as_planned(work::RoundId round, work::YardId yard, int n);
    /// As planned and entered on the day.
    work::VisitDone visit(work::RoundId round, int n, const work::Confirmed& yes = {});
    /// All of it out on day n.
    work::PullDone pull(work::YardId yard, int n, const work::Confirmed& yes = {});
    work::HiveId hive(const QString& name);
    work::PlacementId placement(work::HiveId hive);
    int left(work::BagId bag);
};

maths::Day day_n(int n);

} // namespace soakbook::tests
