// SPDX-License-Identifier: GPL-3.0-or-later
// The batch sheet: all that was entered for a batch.
#include "ui/papers/batch_papers.h"

#include "core/work/papers.h"
#include "core/work/shed_view.h"
#include "ui/papers/batch_parts.h"
#include "ui/papers/offer_labels.h"
#include "ui/papers/paper_head.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BatchPaper {
    Q_DECLARE_TR_FUNCTIONS(BatchPaper)
};

QString state_of(const Desk& desk, const work::BatchView& batch) {
    if (batch.line.state == work::BatchState::made_void) {
        //: The state of a batch on its sheet; %1 the reason
        return BatchPaper::tr("void: %1").arg(batch.void_reason);
    }
    if (batch.closed) {
        //: The state of a batch on its sheet; %1 day and time
        return BatchPaper::tr("closed %1").arg(desk.moment(*batch.closed));
    }
    //: The state of a batch on its sheet
    return BatchPaper::tr("open");
}

std::vector<SheetFact> facts_of(const Desk& desk, const work::BatchView& batch) {
    std::vector<SheetFact> facts;
    //: On the batch sheet
    facts.push_back({BatchPaper::tr("Tank"), batch.line.tank});
    //: On the batch sheet
    facts.push_back({BatchPaper::tr("Kind of strip"), batch.line.strip_kind});
    //: On the batch sheet
    facts.push_back({BatchPaper::tr("Strength wanted"), desk.percent(batch.wanted, 2)});
    //: On the batch sheet: not weighed in yet
    facts.push_back({BatchPaper::tr("Strength weighed in"), batch.strength ? desk.percent(*batch.strength, 2) : BatchPaper::tr("not yet")});
    //: On the batch sheet: the whole mass
    facts.push_back({BatchPaper::tr("All together"), desk.large(batch.total, 2)});
    if (batch.mixed) {
        //: On the batch sheet: when it was weighed in
        facts.push_back({BatchPaper::tr("Mixed"), desk.moment(*batch.mixed)});
    }
    //: On the batch sheet: the highest temperature allowed
    facts.push_back({BatchPaper::tr("Tank kept under"), desk.temperature(batch.ceiling)});
    if (batch.clear_at) {
        //: On the batch sheet: when the liquid was clear
        facts.push_back({BatchPaper::tr("Seen clear"), desk.moment(*batch.clear_at)});
    }
    if (!batch.note.isEmpty()) {
        //: On the batch sheet
        facts.push_back({BatchPaper::tr("Note"), batch.note});
    }
    return facts;
}

} // namespace

std::optional<BatchSheet> batch_sheet(const Desk& desk, work::BatchId batch) {
    const auto view = work::batch_view(desk.workbook(), batch, desk.today());
    if (!view)
        return std::nullopt;
    BatchSheet sheet;
    sheet.batch = view->line.code;
    sheet.state = state_of(desk, *view);
    sheet.facts = facts_of(desk, *view);
    sheet.parts = {mix_part(desk, *view),  heat_part(desk, *view), stir_part(desk, *view), soak_part(desk, *view),
                   weigh_part(desk, *view), bag_part(desk, *view),  balance_part(desk, *view)};
    return sheet;
}

void offer_batch_sheet(Desk& desk, work::BatchId batch, QWidget* parent) {
    const auto view = work::batch_view(desk.workbook(), batch, desk.today());
    const auto sheet = batch_sheet(desk, batch);
    if (!view || !sheet)
        return;
    std::vector<work::BagId> bags;
    for (const work::BatchBag& bag : view->bags)
        bags.push_back(bag.id);
    //: The name of a file; %1 the code of a batch
    offer_sheet(desk, sheet_of(*sheet, paper_head(desk)), BatchPaper::tr("batch sheet %1").arg(sheet->batch), parent,
                [&desk, batch, bags] {
                    return refusal_of(work::sheet_printed(desk.workbook(), QStringLiteral("batch sheet"), {batch}, bags, {},
                                                          desk.doing()));
                });
}

} // namespace soakbook::ui
