// SPDX-License-Identifier: GPL-3.0-or-later
// The mixing sheet.
#include "ui/papers/batch_papers.h"

#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct MixingPaper {
    Q_DECLARE_TR_FUNCTIONS(MixingPaper)
};

constexpr int decimals = 2;

/// "1 can of 25 kg and 12.5 kg", as far as the container is known.
QString containers(const Desk& desk, const work::InputLine& input) {
    if (input.pail || !input.container || input.container->count <= 0)
        return {};
    const int whole = static_cast<int>(input.planned.count / input.container->count);
    const maths::Mass rest = input.planned - whole * *input.container;
    //: Whole containers and a last part to weigh; %n containers, %1 what one holds
    const QString full = whole > 0 ? MixingPaper::tr("%n of %1", nullptr, whole).arg(desk.large(*input.container, decimals)) : QString();
    if (rest.count == 0)
        return full;
    //: A last part to weigh; %1 a mass
    const QString part = MixingPaper::tr("%1 weighed out").arg(desk.large(rest, decimals));
    return full.isEmpty() ? part : QStringLiteral("%1 + %2").arg(full, part);
}

} // namespace

std::optional<MixingSheet> mixing_sheet(const Desk& desk, work::BatchId batch) {
    const auto view = work::batch_view(desk.workbook(), batch, desk.today());
    if (!view)
        return std::nullopt;
    MixingSheet sheet;
    sheet.batch = view->line.code;
    sheet.day = desk.day(view->line.day);
    sheet.vessel = view->line.tank;
    //: The strength of a mix on its sheet; %1 per cent
    sheet.strength = MixingPaper::tr("%1 by mass, as dihydrate").arg(desk.percent(view->wanted));
    sheet.total = desk.large(view->planned_total, decimals);
    sheet.ceiling = desk.temperature(view->ceiling);
    if (view->tank_capacity && *view->tank_capacity > view->planned_total)
        sheet.room_left = desk.large(*view->tank_capacity - view->planned_total, decimals);
    for (const work::InputLine& input : view->inputs) {
        MixingLine line;
        if (input.pail) {
            //: A line of the mixing sheet; %1 the code of a pail
            line.what = MixingPaper::tr("Pail %1, whole, scraped").arg(input.name);
        } else {
            //: A line of the mixing sheet
            line.what = input.is_acid ? MixingPaper::tr("Oxalic acid")
                                      //: A line of the mixing sheet
                                      : MixingPaper::tr("Glycerine");
            line.lot = input.name;
        }
        line.planned = desk.large(input.planned, decimals);
        line.containers = containers(desk, input);
        sheet.lines.push_back(line);
    }
    return sheet;
}

void offer_mixing_sheet(Desk& desk, work::BatchId batch, QWidget* parent) {
    const auto sheet = mixing_sheet(desk, batch);
    if (!sheet)
        return;
    //: The name of a file; %1 the code of a batch
    offer_sheet(desk, sheet_of(*sheet, paper_head(desk)), MixingPaper::tr("mixing sheet %1").arg(sheet->batch), parent,
                [&desk, batch] {
                    return refusal_of(work::sheet_printed(desk.workbook(), QStringLiteral("mixing sheet"), {batch}, {}, {},
                                                          desk.doing()));
                });
}

} // namespace soakbook::ui
