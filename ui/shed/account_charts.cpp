// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/account_charts.h"

#include "ui/shed/loss_form.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct AccountWords {
    Q_DECLARE_TR_FUNCTIONS(AccountWords)
};

QString loss_words(const work::LossLine& loss) {
    return loss.note.isEmpty()
               //: A part of a batch's liquid: a named loss; %1 what it was
               ? AccountWords::tr("Lost: %1").arg(loss_name(loss.kind))
               //: A part of a batch's liquid: a named loss; %1 what it was, %2 a note
               : AccountWords::tr("Lost: %1, %2").arg(loss_name(loss.kind), loss.note);
}

} // namespace

bool too_early_to_explain(const work::BatchView& batch) { return !batch.closed && batch.pails.empty(); }

MassFlow mass_flow(const Desk& desk, const work::BatchView& batch) {
    MassFlow flow;
    flow.unit = desk.preferences().large_mass;
    flow.locale = desk.locale();
    if (!batch.balance)
        return flow;
    const work::Balance& balance = *batch.balance;
    const auto add = [&flow](const QString& name, maths::Mass mass, FlowKind kind = FlowKind::went_out) {
        if (mass.count != 0 || kind != FlowKind::went_out)
            flow.parts.push_back({name, mass, kind, false});
    };
    //: A part of a batch's liquid: all that was weighed into the tank
    add(AccountWords::tr("Went in"), balance.in, FlowKind::went_in);
    //: A part of a batch's liquid
    add(AccountWords::tr("Taken up by bagged strips"), balance.in_strips);
    //: A part of a batch's liquid: liquid that lies free in bags
    add(AccountWords::tr("Free in the bags"), balance.free_in_bags);
    //: A part of a batch's liquid
    add(AccountWords::tr("In pails"), balance.in_pails);
    for (const work::LossLine& loss : batch.losses)
        add(loss_words(loss), loss.mass);
    const bool early = too_early_to_explain(batch);
    add(early
            //: A part of a batch's liquid, of a batch whose leftovers are not poured yet
            ? AccountWords::tr("Not accounted for yet")
            //: A part of a batch's liquid: what nothing accounts for
            : AccountWords::tr("Unexplained"),
        balance.unexplained, early ? FlowKind::still_here : FlowKind::unexplained);
    flow.parts.back().beyond_limit = balance.beyond_limit && !early;
    return flow;
}

BatchSeries batch_series(const Desk& desk, const work::BatchChart& chart, work::BatchId looked_at) {
    BatchSeries series;
    series.figure_name = chart.measure == work::BatchMeasure::acid_per_strip
                             //: The figure of a chart of batches
                             ? AccountWords::tr("acid in a strip")
                             //: The figure of a chart of batches
                             : AccountWords::tr("taken up by a strip");
    series.unit = desk.preferences().small_mass;
    series.locale = desk.locale();
    for (const work::BatchPoint& point : chart.points) {
        const auto stands_out = [&point](work::BatchSignal signal) {
            return std::find(point.stands_out.begin(), point.stands_out.end(), signal) != point.stands_out.end();
        };
        series.batches.push_back({point.code, desk.day_short(point.day), maths::Mass{point.value}, point.batch == looked_at,
                                  stands_out(work::BatchSignal::outside), stands_out(work::BatchSignal::run_of_eight)});
    }
    if (chart.limits) {
        series.mean = maths::Mass{chart.limits->mean};
        series.lower = maths::Mass{chart.limits->lower};
        series.upper = maths::Mass{chart.limits->upper};
    }
    return series;
}

} // namespace soakbook::ui
