// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/vessel_fields.h"

#include "ui/parts/form.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class VesselFieldsWords {
    Q_DECLARE_TR_FUNCTIONS(VesselFields)
};
} // namespace

VesselFields::VesselFields(FormFrame& form, const Habits& habits, const QString& prefix, bool is_tank)
    : m_is_tank(is_tank) {
    const auto key = [&](const char* name) { return QString(prefix + QLatin1String(name)); };
    if (is_tank) {
        //: A field's label: what a tank is called.
        m_name = form.add(VesselFieldsWords::tr("Tank"), new TextField, key("name"),
                          VesselFieldsWords::tr("What you call it."));
        m_name->setObjectName(QStringLiteral("tank_name"));
        //: A field's label: most liquid a tank is filled with; and its sentence of help.
        m_capacity =
            form.add(VesselFieldsWords::tr("Filled with at most"), new MassField(habits, MassSize::large),
                     key("capacity"), VesselFieldsWords::tr("The liquid it takes with room to stir, by weight."));
        m_capacity->setObjectName(QStringLiteral("tank_capacity"));
    } else {
        //: A field's label: what a bin is called.
        m_name = form.add(VesselFieldsWords::tr("Bin"), new TextField, key("name"),
                          VesselFieldsWords::tr("What you call it."));
        m_name->setObjectName(QStringLiteral("bin_name"));
        //: A field's label; and the unit behind the number.
        m_strips = form.add(VesselFieldsWords::tr("Holds dry strips"),
                            new CountField(habits, VesselFieldsWords::tr("strips")), key("strips_held"));
        m_strips->setObjectName(QStringLiteral("bin_strips"));
        //: A field's label: liquid that floods a packed bin; and its sentence of help.
        m_flood = form.add(VesselFieldsWords::tr("Liquid that floods it"), new MassField(habits, MassSize::large),
                           key("flood"), VesselFieldsWords::tr("If you have measured it; leave it empty otherwise."));
        m_flood->setObjectName(QStringLiteral("bin_flood"));
    }
}

void VesselFields::set(const work::VesselEntry& vessel) {
    m_name->set_value(vessel.name);
    if (m_is_tank) {
        m_capacity->set_value(vessel.capacity);
        return;
    }
    m_strips->set_value(vessel.strips_held);
    m_flood->set_value(vessel.flood);
}

work::VesselEntry VesselFields::entry() const {
    work::VesselEntry vessel;
    vessel.is_tank = m_is_tank;
    vessel.name = m_name->value();
    if (m_is_tank) {
        vessel.capacity = m_capacity->value();
        return vessel;
    }
    const auto strips = m_strips->value();
    vessel.strips_held = strips ? std::optional(static_cast<int>(*strips)) : std::nullopt;
    vessel.flood = m_flood->value();
    return vessel;
}

} // namespace soakbook::ui
