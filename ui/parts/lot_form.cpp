// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/lot_form.h"

#include "core/work/setup.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/reason_field.h"
#include "ui/parts/text_field.h"

namespace soakbook::ui {

namespace {

constexpr bool is_by_mass(work::MaterialKind material) {
    return material == work::MaterialKind::acid || material == work::MaterialKind::glycerine;
}

} // namespace

LotForm::LotForm(Desk& desk, std::optional<work::MaterialKind> material, QWidget* parent)
    //: Title of a form
    : FormDialog(desk, tr("New delivery"), parent), m_desk(desk) {
    build();
    m_material->set_value(material ? QVariant(static_cast<int>(*material)) : QVariant());
    fill_from_last();
    show_material();
    QVariantMap prefill;
    if (material)
        prefill.insert(QStringLiteral("material"), static_cast<int>(*material));
    form()->set_draft({QStringLiteral("delivery"), 0, {}, {PlaceName::store, QStringLiteral("new_lot"), {}, prefill}});
}

LotForm::LotForm(Desk& desk, const work::LotLine& lot, QWidget* parent)
    //: Title of a form that puts a delivery right
    : FormDialog(desk, tr("Correct a delivery"), parent), m_desk(desk), m_id(lot.entry.id) {
    build();
    //: Help under the reason of a correction
    m_why = add_reason(*form(), tr("It stands beside the delivery for good, with what it said before."), correction_picks());
    fill(lot.entry);
    show_material();
    //: Button that puts an entry right
    form()->set_primary(tr("Correct it"));
    form()->set_draft({QStringLiteral("correct_delivery"), m_id.value, {}, {PlaceName::store, QStringLiteral("lot"), {m_id.value}, {{QStringLiteral("press"), QStringLiteral("lot_correct")}}}});
}

void LotForm::build() {
    FormFrame* f = form();
    setObjectName(QStringLiteral("lot_form"));
    set_wanted_width(720);
    m_material = new ChoiceField;
    //: Label of a field
    m_material->add(tr("Oxalic acid"), static_cast<int>(work::MaterialKind::acid));
    //: Label of a field
    m_material->add(tr("Glycerine"), static_cast<int>(work::MaterialKind::glycerine));
    //: Label of a field
    m_material->add(tr("Dry strips"), static_cast<int>(work::MaterialKind::strips));
    //: Label of a field
    m_material->add(tr("Bags"), static_cast<int>(work::MaterialKind::bags));
    m_material->setObjectName(QStringLiteral("lot_material"));
    //: Label of a field
    f->add(tr("Material"), m_material, QStringLiteral("material"));
    //: Label of a field
    m_name = f->add(tr("Lot number or name"), new TextField, QStringLiteral("name"), tr("As it stands on the container."));
    m_name->setObjectName(QStringLiteral("lot_name"));
    //: Label of a field
    m_mass = f->add(tr("Amount that came"), new MassField(m_desk, MassSize::large), QStringLiteral("amount"));
    m_mass->setObjectName(QStringLiteral("lot_amount"));
    //: Label of a field
    m_container_mass = f->add(tr("One container holds"), new MassField(m_desk, MassSize::large),
                              QStringLiteral("container_amount"),
                              //: Help under a field
                              tr("Then amounts are also said in whole containers. May stay empty."));
    m_container_mass->setObjectName(QStringLiteral("lot_container"));
    //: Label of a field
    m_pieces = f->add(tr("Pieces that came"), new CountField(m_desk), QStringLiteral("amount_pieces"));
    m_pieces->setObjectName(QStringLiteral("lot_pieces"));
    //: Label of a field
    m_container_pieces = f->add(tr("One pack holds"), new CountField(m_desk), QStringLiteral("container_pieces"),
                                //: Help under a field
                                tr("May stay empty."));
    m_container_pieces->setObjectName(QStringLiteral("lot_container_pieces"));
    //: Label of a field
    m_assay = f->add(tr("Content, as the label says"), new PercentField(m_desk), QStringLiteral("assay"),
                     //: Help under a field
                     tr("By mass, such as 99.6 %."));
    m_assay->setObjectName(QStringLiteral("lot_assay"));
    m_acid_form = new ChoiceField;
    //: How the acid's content is counted on its label
    m_acid_form->add(tr("as dihydrate"), static_cast<int>(work::FormOfAcid::dihydrate));
    //: How the acid's content is counted on its label
    m_acid_form->add(tr("as anhydrous acid"), static_cast<int>(work::FormOfAcid::anhydrous));
    m_acid_form->setObjectName(QStringLiteral("lot_acid_form"));
    f->add(tr("Content is counted"), m_acid_form, QStringLiteral("acid_form"), tr("The label or the data sheet says it."));
    m_strip_kind = new ChoiceField;
    for (const work::StripKindEntry& kind : work::strip_kinds(m_desk.workbook()))
        m_strip_kind->add(kind.name, QVariant::fromValue<qlonglong>(kind.id.value));
    m_strip_kind->setObjectName(QStringLiteral("lot_strip_kind"));
    //: Label of a field
    f->add(tr("Kind of strip"), m_strip_kind, QStringLiteral("strip_kind"));
    //: Label of a field
    m_dry = f->add(tr("One dry strip weighs"), new MassField(m_desk, MassSize::small), QStringLiteral("dry"),
                   //: Help under a field
                   tr("Weighed in its own room; empty takes the weight of the kind."));
    m_dry->setObjectName(QStringLiteral("lot_dry"));
    //: Label of a field
    m_received = f->add(tr("Received on"), new DayField(m_desk), QStringLiteral("received_on"));
    //: Stands in an empty field
    m_received->set_placeholder(tr("today"));
    m_received->setObjectName(QStringLiteral("lot_received"));
    //: Label of a field
    m_supplier = f->add(tr("From"), new TextField, QStringLiteral("supplier"), tr("Who sold it. May stay empty."));
    m_supplier->setObjectName(QStringLiteral("lot_supplier"));
    //: Label of a field
    m_best_before = f->add(tr("Best before"), new DayField(m_desk), QStringLiteral("best_before"), tr("May stay empty."));
    m_best_before->setObjectName(QStringLiteral("lot_best_before"));
    //: Label of a field
    m_cost = f->add(tr("Cost of it all"), new MoneyField(m_desk), QStringLiteral("cost"), tr("May stay empty."));
    m_cost->setObjectName(QStringLiteral("lot_cost"));
    //: Label of a field
    m_note = f->add_wide(tr("Note"), new NoteField, QStringLiteral("note"));
    m_note->setObjectName(QStringLiteral("lot_note"));
    //: Button that enters a delivery
    f->set_primary(tr("Put it in the store"));
    f->set_commit([this](const work::Confirmed& confirmed) { return commit(confirmed); });
    connect(m_material, &Field::edited, this, [this] {
        fill_from_last();
        show_material();
    });
}

work::MaterialKind LotForm::material() const {
    return m_material->is_empty() ? work::MaterialKind::acid
                                  : static_cast<work::MaterialKind>(m_material->value().toInt());
}

bool LotForm::by_mass() const { return is_by_mass(material()); }

void LotForm::show_material() {
    const bool acid = material() == work::MaterialKind::acid;
    const bool strips = material() == work::MaterialKind::strips;
    for (const char* key : {"amount", "container_amount"})
        form()->set_shown(QLatin1String(key), by_mass());
    for (const char* key : {"amount_pieces", "container_pieces"})
        form()->set_shown(QLatin1String(key), !by_mass());
    for (const char* key : {"assay", "acid_form"})
        form()->set_shown(QLatin1String(key), acid);
    for (const char* key : {"strip_kind", "dry"})
        form()->set_shown(QLatin1String(key), strips);
}

void LotForm::fill_from_last() {
    if (m_id || m_material->is_empty())
        return;
    for (const work::LotLine& lot : work::lots(m_desk.workbook(), m_desk.today())) {
        if (lot.entry.material != material())
            continue;
        work::LotEntry last = lot.entry;
        last.name.clear();
        last.amount.reset();
        last.received_on.reset();
        last.best_before.reset();
        last.cost.reset();
        last.note.clear();
        last.dry.reset();
        fill(last);
        return;
    }
    if (material() == work::MaterialKind::strips && m_strip_kind->size() == 1) {
        for (const work::StripKindEntry& kind : work::strip_kinds(m_desk.workbook()))
            m_strip_kind->set_value(QVariant::fromValue<qlonglong>(kind.id.value));
    }
}

void LotForm::fill(const work::LotEntry& lot) {
    m_material->set_value(static_cast<int>(lot.material));
    m_name->set_value(lot.name);
    m_supplier->set_value(lot.supplier);
    m_received->set_value(lot.received_on);
    if (is_by_mass(lot.material)) {
        m_mass->set_value(lot.amount ? std::optional(maths::Mass{*lot.amount}) : std::nullopt);
        m_container_mass->set_value(lot.container_amount ? std::optional(maths::Mass{*lot.container_amount}) : std::nullopt);
    } else {
        m_pieces->set_value(lot.amount);
        m_container_pieces->set_value(lot.container_amount);
    }
    m_acid_form->set_value(lot.acid_form ? QVariant(static_cast<int>(*lot.acid_form)) : QVariant());
    m_assay->set_value(lot.assay);
    m_strip_kind->set_value(lot.strip_kind ? QVariant::fromValue<qlonglong>(lot.strip_kind->value) : QVariant());
    m_dry->set_value(lot.dry);
    m_best_before->set_value(lot.best_before);
    m_cost->set_value(lot.cost);
    m_note->set_value(lot.note);
}

work::LotEntry LotForm::entry() const {
    work::LotEntry lot;
    lot.id = m_id;
    lot.material = material();
    lot.name = m_name->value();
    lot.supplier = m_supplier->value();
    lot.received_on = m_received->is_empty() ? std::optional(m_desk.today()) : m_received->value();
    if (by_mass()) {
        if (const auto mass = m_mass->value())
            lot.amount = mass->count;
        if (const auto mass = m_container_mass->value())
            lot.container_amount = mass->count;
    } else {
        lot.amount = m_pieces->value();
        lot.container_amount = m_container_pieces->value();
    }
    if (lot.material == work::MaterialKind::acid) {
        lot.assay = m_assay->value();
        if (!m_acid_form->is_empty())
            lot.acid_form = static_cast<work::FormOfAcid>(m_acid_form->value().toInt());
    }
    if (lot.material == work::MaterialKind::strips) {
        if (!m_strip_kind->is_empty())
            lot.strip_kind = work::StripKindId{m_strip_kind->id()};
        lot.dry = m_dry->value();
    }
    lot.best_before = m_best_before->value();
    lot.cost = m_cost->value();
    lot.note = m_note->value();
    return lot;
}

std::optional<work::Refusal> LotForm::commit(const work::Confirmed& confirmed) {
    if (m_material->is_empty())
        return work::Refusal{work::Why::missing, QStringLiteral("material"), {}, false};
    const auto saved_lot = work::save_lot(m_desk.workbook(), entry(), m_desk.doing(m_why ? m_why->value() : QString()), confirmed);
    if (!saved_lot) {
        work::Refusal refusal = saved_lot.error();
        if (!by_mass() && refusal.field == QLatin1String("amount"))
            refusal.field = QStringLiteral("amount_pieces");
        if (!by_mass() && refusal.field == QLatin1String("container_amount"))
            refusal.field = QStringLiteral("container_pieces");
        return refusal;
    }
    Q_EMIT saved(saved_lot->value);
    return std::nullopt;
}

} // namespace soakbook::ui
