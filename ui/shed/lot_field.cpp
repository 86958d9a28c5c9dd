// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/lot_field.h"

#include "core/work/materials.h"
#include "ui/parts/lot_form.h"
#include "ui/parts/theme.h"
#include "ui/shed/shed_words.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace soakbook::ui {

LotField::LotField(Desk& desk, work::MaterialKind material, QWidget* parent)
    : ChoiceField(parent), m_desk(desk), m_material(material),
      //: Button beside a field for a delivery: enters a new one
      m_new(new QPushButton(tr("New delivery"), this)) {
    m_new->setAutoDefault(false);
    m_new->setObjectName(QStringLiteral("new_delivery"));
    row()->setSpacing(scaled(8));
    row()->addWidget(m_new);
    connect(m_new, &QPushButton::clicked, this, &LotField::enter_delivery);
    refresh();
}

void LotField::refresh() {
    std::vector<Choice> choices;
    for (const work::LotLine& lot : work::lots(m_desk.workbook(), m_desk.today(), true)) {
        const bool of_kind = !m_kind || !lot.entry.strip_kind || *lot.entry.strip_kind == *m_kind;
        if (lot.entry.material == m_material && of_kind)
            choices.push_back({QVariant::fromValue<qlonglong>(lot.entry.id.value), lot_words(m_desk, lot)});
    }
    const bool none = choices.empty();
    set_choices(choices);
    //: Stands in a field for a delivery while the store has none
    set_placeholder(none ? tr("none in the store")
                         //: Stands in a field for a delivery while none is chosen
                         : tr("choose a delivery"));
}

std::optional<work::LotId> LotField::lot() const {
    return is_empty() || id() == 0 ? std::nullopt : std::optional<work::LotId>(work::LotId{id()});
}

void LotField::set_lot(std::optional<work::LotId> lot) {
    set_value(lot ? QVariant::fromValue<qlonglong>(lot->value) : QVariant());
}

void LotField::choose_newest() {
    if (lot())
        return;
    for (const work::LotLine& line : work::lots(m_desk.workbook(), m_desk.today(), true)) {
        if (line.entry.material == m_material && (!m_kind || !line.entry.strip_kind || *line.entry.strip_kind == *m_kind)) {
            set_lot(line.entry.id);
            return;
        }
    }
}

void LotField::set_strip_kind(std::optional<work::StripKindId> kind) {
    m_kind = kind;
    refresh();
}

void LotField::enter_delivery() {
    auto* form = new LotForm(m_desk, m_material, window());
    connect(form, &LotForm::saved, this, [this](qint64 lot) {
        refresh();
        set_lot(work::LotId{lot});
        note_edit();
        take_focus();
    });
    form->open();
}

} // namespace soakbook::ui
