// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/strip_kind_fields.h"

#include "core/work/facts.h"
#include "ui/parts/bees_per_strip_field.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/form.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class StripKindFieldsWords {
    Q_DECLARE_TR_FUNCTIONS(StripKindFields)
};
std::optional<int> as_int(const CountField* field) {
    const auto value = field ? field->value() : std::nullopt;
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}
} // namespace

StripKindFields::StripKindFields(FormFrame& form, const Habits& habits, const QString& prefix, bool with_dose)
    : m_form(form), m_prefix(prefix) {
    const auto key = [&](const char* name) { return QString(prefix + QLatin1String(name)); };
    //: A field's label: what the strips are called; and its sentence of help.
    m_name = form.add(StripKindFieldsWords::tr("Kind of strip"), new TextField, key("name"),
                      StripKindFieldsWords::tr("What you call it: material and length."));
    m_name->setObjectName(QStringLiteral("kind_name"));
    //: A field's label; and its sentence of help.
    m_dry = form.add(
        StripKindFieldsWords::tr("One dry strip weighs"), new MassField(habits, MassSize::small), key("dry"),
        StripKindFieldsWords::tr("Weigh fifty and divide. Card takes up damp: weigh them in the room they lie in."));
    m_dry->setObjectName(QStringLiteral("kind_dry"));
    //: A field's label; and its sentence of help.
    m_target =
        form.add(StripKindFieldsWords::tr("One soaked strip should weigh"), new MassField(habits, MassSize::small),
                 key("target"), StripKindFieldsWords::tr("The weight at which a strip holds as much as you want."));
    m_target->setObjectName(QStringLiteral("kind_target"));
    //: A field's label; and its sentence of help.
    m_tolerance = form.add(StripKindFieldsWords::tr("May be off by"), new MassField(habits, MassSize::small),
                           key("tolerance"), StripKindFieldsWords::tr("Either side of that weight, and still right."));
    m_tolerance->setObjectName(QStringLiteral("kind_tolerance"));
    //: A field's label; and the unit behind the number.
    m_per_bag = form.add(StripKindFieldsWords::tr("Strips in a bag"),
                         new CountField(habits, StripKindFieldsWords::tr("strips")), key("strips_per_bag"));
    m_per_bag->setObjectName(QStringLiteral("kind_per_bag"));
    if (!with_dose)
        return;
    //: A section of a form; and its sentence of help.
    form.add_section(StripKindFieldsWords::tr("Strips for a hive"),
                     StripKindFieldsWords::tr("Your rule, by the label, your vet and local law. A round copies it when "
                                              "it is planned, and every hive can be typed over."));
    //: A field's label.
    m_rule = form.add(StripKindFieldsWords::tr("Reckoned by"), new ChoiceField, key("dose_rule"));
    //: A choice: no rule is said.
    m_rule->set_none_text(StripKindFieldsWords::tr("not said"));
    //: A way to reckon strips for a hive.
    m_rule->add(StripKindFieldsWords::tr("frames of bees"), static_cast<int>(work::DoseRule::frames_of_bees));
    //: A way to reckon strips for a hive.
    m_rule->add(StripKindFieldsWords::tr("brood boxes"), static_cast<int>(work::DoseRule::brood_boxes));
    //: A way to reckon strips for a hive.
    m_rule->add(StripKindFieldsWords::tr("the same for every hive"), static_cast<int>(work::DoseRule::fixed));
    m_rule->setObjectName(QStringLiteral("kind_rule"));
    //: A field's label: strips for each hive or box.
    m_strips = form.add(StripKindFieldsWords::tr("Strips for each"),
                        new CountField(habits, StripKindFieldsWords::tr("strips")), key("dose_strips"));
    //: A field's label; and its sentence of help.
    m_frames = form.add(StripKindFieldsWords::tr("One strip for so many frames of bees"), new BeesPerStripField(habits),
                        key("dose_frames_tenths"),
                        StripKindFieldsWords::tr("A part of a strip is rounded up to a whole one."));
    m_frames->setObjectName(QStringLiteral("kind_frames"));
    //: A field's label: least strips in a hive.
    m_least = form.add(StripKindFieldsWords::tr("At least"), new CountField(habits, StripKindFieldsWords::tr("strips")),
                       key("dose_least"));
    //: A field's label: most strips in a hive.
    m_most = form.add(StripKindFieldsWords::tr("At most"), new CountField(habits, StripKindFieldsWords::tr("strips")),
                      key("dose_most"));
    QObject::connect(m_rule, &Field::edited, &form, [this] { show_rule(); });
    show_rule();
}

void StripKindFields::show_rule() {
    if (!m_rule)
        return;
    const bool any = m_rule->value().isValid();
    const bool frames = any && m_rule->id() == static_cast<int>(work::DoseRule::frames_of_bees);
    m_form.set_shown(m_prefix + QStringLiteral("dose_strips"), any && !frames);
    m_form.set_shown(m_prefix + QStringLiteral("dose_frames_tenths"), frames);
    m_form.set_shown(m_prefix + QStringLiteral("dose_least"), any);
    m_form.set_shown(m_prefix + QStringLiteral("dose_most"), any);
}

void StripKindFields::set(const work::StripKindEntry& kind) {
    m_name->set_value(kind.name);
    m_dry->set_value(kind.dry);
    m_target->set_value(kind.target);
    m_tolerance->set_value(kind.tolerance);
    m_per_bag->set_value(kind.strips_per_bag);
    if (!m_rule)
        return;
    m_rule->set_value(kind.dose_rule ? QVariant(static_cast<int>(*kind.dose_rule)) : QVariant());
    m_strips->set_value(kind.dose_strips);
    m_frames->set_tenths(kind.dose_frames_tenths);
    m_least->set_value(kind.dose_least);
    m_most->set_value(kind.dose_most);
    show_rule();
}

work::StripKindEntry StripKindFields::entry() const {
    work::StripKindEntry kind;
    kind.name = m_name->value();
    kind.dry = m_dry->value();
    kind.target = m_target->value();
    kind.tolerance = m_tolerance->value();
    kind.strips_per_bag = as_int(m_per_bag);
    if (m_rule && m_rule->value().isValid()) {
        kind.dose_rule = static_cast<work::DoseRule>(m_rule->id());
        kind.dose_strips = as_int(m_strips);
        kind.dose_frames_tenths = m_frames->tenths();
        kind.dose_least = as_int(m_least);
        kind.dose_most = as_int(m_most);
    }
    return kind;
}

QString StripKindFields::uptake_words(const Habits& habits) const {
    const auto dry = m_dry->value();
    const auto target = m_target->value();
    if (!dry || !target || *target <= *dry)
        return {};
    //: What one strip takes up; %1 is a weight.
    return StripKindFieldsWords::tr("One strip takes up %1 of liquid.").arg(habits.small(*target - *dry));
}

std::vector<work::How> StripKindFields::uptake_hows() const {
    const auto dry = m_dry->value();
    const auto target = m_target->value();
    if (!dry || !target || *target <= *dry)
        return {};
    return {{work::HowKind::taken_up, {work::fact(*target), work::fact(*dry), work::fact(*target - *dry), QString()}}};
}

} // namespace soakbook::ui
