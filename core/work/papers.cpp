// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/papers.h"

#include "core/book/record_io.h"
#include "core/book/records/bag.h"
#include "core/book/records/pail.h"
#include "core/book/shown.h"
#include "core/work/perform.h"

namespace soakbook::work {

namespace {

template <class Record> std::vector<qint64> keys(const std::vector<book::Id<Record>>& ids) {
    std::vector<qint64> values;
    for (const auto& id : ids)
        values.push_back(id.value);
    return values;
}

template <class Record> void mark_printed(book::Writing& writing, const std::vector<book::Id<Record>>& ids) {
    for (const auto& id : ids) {
        auto record = book::fetch(writing.workbook(), id);
        if (record && record->label != book::LabelState::printed) {
            record->label = book::LabelState::printed;
            book::update(writing, *record);
        }
    }
}

} // namespace

Outcome<int> labels_printed(book::Workbook& workbook, const std::vector<BagId>& bags, const std::vector<PailId>& pails, const book::Doing& doing) {
    const int count = static_cast<int>(bags.size() + pails.size());
    if (workbook.is_for_looking())
        return count;
    return perform(workbook, {QStringLiteral("printed"), count, QStringLiteral("label")}, doing, [&](book::Writing& writing) -> Outcome<int> {
        writing.keep_from_undo();
        book::note_shown(writing, QStringLiteral("bag"), keys(bags), QStringLiteral("label"));
        book::note_shown(writing, QStringLiteral("pail"), keys(pails), QStringLiteral("label"));
        mark_printed(writing, bags);
        mark_printed(writing, pails);
        return count;
    });
}

Outcome<int> sheet_printed(book::Workbook& workbook, const QString& paper, const std::vector<BatchId>& batches, const std::vector<BagId>& bags,
                           const std::vector<PlacementId>& placements, const book::Doing& doing) {
    const int count = static_cast<int>(batches.size() + bags.size() + placements.size());
    if (workbook.is_for_looking())
        return count;
    return perform(workbook, {QStringLiteral("printed"), count, paper}, doing, [&](book::Writing& writing) -> Outcome<int> {
        writing.keep_from_undo();
        book::note_shown(writing, QStringLiteral("batch"), keys(batches), paper);
        book::note_shown(writing, QStringLiteral("bag"), keys(bags), paper);
        book::note_shown(writing, QStringLiteral("placement"), keys(placements), paper);
        return count;
    });
}

} // namespace soakbook::work
