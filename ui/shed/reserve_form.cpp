// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/reserve_form.h"

#include "core/work/bag.h"
#include "ui/parts/quantity_field.h"
#include "ui/shed/bag_form.h"
#include "ui/shed/shed_draft.h"

#include <algorithm>

namespace soakbook::ui {

ReserveForm::ReserveForm(Desk& desk, QWidget* parent)
    : FormFrame(desk, QString(), parent), m_desk(desk),
      //: A unit behind a number
      m_labels(add(tr("Labels"), new CountField(desk, tr("labels")), QStringLiteral("labels"))) {
    set_columns(1);
    set_intro(tr("A wet bag takes no label: print them first and stick them on dry bags. Strips, weight and dates are entered "
                 "when the bags are filled; the label has lines to write them on."));
    m_labels->setObjectName(QStringLiteral("reserve_count"));
    //: Button that gives out codes for bags to be filled later
    set_primary(tr("Give out the codes"));
    set_commit([this](const work::Confirmed&) {
        std::optional<int> labels;
        if (const auto n = m_labels->value())
            labels = static_cast<int>(*n);
        const auto made = work::reserve_labels(m_desk.workbook(), m_batch, labels, m_desk.doing());
        if (made)
            Q_EMIT reserved(made->bags);
        return refusal_of(made);
    });
}

void ReserveForm::show_batch(const work::BatchView& batch) {
    const bool same = m_batch == batch.line.id && is_edited();
    m_batch = batch.line.id;
    if (same)
        return;
    m_labels->clear();
    const auto each = strips_per_bag(m_desk.workbook(), batch.strip_kind);
    const int left = std::max(0, batch.strips_soaked - batch.strips_bagged);
    if (each && *each > 0 && left > 0)
        m_labels->set_value(std::max(0, (left + *each - 1) / *each - batch.labels_reserved));
    start_again();
    //: What a form is for, after the code of a batch
    set_draft(shed_draft(QStringLiteral("reserve"), QStringLiteral("bag"), batch.line.id, batch.line.code, tr("labels first"), QStringLiteral("bag_reserve")));
}

} // namespace soakbook::ui
