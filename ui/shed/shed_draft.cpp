// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shed_draft.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct ShedDraftWords {
    Q_DECLARE_TR_FUNCTIONS(ShedDraft)
};

} // namespace

DraftPlace shed_draft(const QString& form, const QString& task, work::BatchId batch, const QString& code, const QString& words, const QString& press) {
    DraftPlace place{form, batch.value, {}, {PlaceName::shed, task, {batch.value}, {}}};
    //: What Due calls a form that was begun; %1 the code of a batch, %2 what the form is for, as "read the tank"
    place.title = ShedDraftWords::tr("Batch %1: %2").arg(code, words);
    if (!press.isEmpty())
        place.intent.prefill.insert(QStringLiteral("press"), press);
    return place;
}

DraftPlace row_draft(const QString& form, const QString& task, work::BatchId batch, const QString& table, qint64 row) {
    DraftPlace place{form, row, {}, {PlaceName::shed, task, {batch.value}, {}}};
    place.intent.prefill = {{QStringLiteral("row_of"), table}, {QStringLiteral("row"), row}};
    return place;
}

} // namespace soakbook::ui
