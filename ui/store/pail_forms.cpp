// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/pail_forms.h"

#include "core/work/leftovers.h"
#include "ui/parts/day_field.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"
#include "ui/store/day_form.h"
#include "ui/parts/reason_field.h"
#include "ui/store/store_cautions.h"
#include "ui/store/store_draft.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct PailFormsWords {
    Q_DECLARE_TR_FUNCTIONS(PailForms)
};

} // namespace

void open_used_in_part_form(Desk& desk, const work::PailLine& pail, QWidget* parent) {
    const DayForm form{
        QStringLiteral("used_in_part_form"),
        //: Title of a form; %1 the code of a pail
        PailFormsWords::tr("Pail %1 was used in part").arg(pail.code),
        //: Under the title of a form
        PailFormsWords::tr(
            "In a pail that stands, acid settles: what is poured off the top may be almost pure glycerine, and "
            "what stays is "
            "stronger. So the strength of the rest is unknown from then on, and it goes into no mix."),
        //: A field's label: the day a part of a pail was used
        PailFormsWords::tr("Used on"),
        //: Filled button of a form
        PailFormsWords::tr("Its strength is unknown now")};
    open_day_form(desk, form, parent, [&desk, id = pail.id](std::optional<maths::Day> on) {
        return refusal_of(work::pail_used_in_part(desk.workbook(), id, on, desk.doing()));
    });
}

void open_discard_pail_form(Desk& desk, const work::PailLine& pail, QWidget* parent) {
    //: Title of a form; %1 the code of a pail
    auto* dialog = new FormDialog(desk, PailFormsWords::tr("Discard pail %1").arg(pail.code), parent);
    dialog->setObjectName(QStringLiteral("discard_pail_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form; %1 a mass
    form->set_intro(PailFormsWords::tr("All of it, %1.").arg(desk.large(pail.mass)));
    form->add_caution(discard_pail_caution());
    //: A field's label: the day on which it was done
    auto* day = form->add(PailFormsWords::tr("On"), new DayField(desk), QStringLiteral("on"));
    day->setObjectName(QStringLiteral("discard_on"));
    //: Stands in an empty field for a day
    day->set_placeholder(PailFormsWords::tr("today"));
    const QStringList picks{
        //: A usual reason why the liquid in a pail is thrown away
        PailFormsWords::tr("strength unknown"),
        //: A usual reason why the liquid in a pail is thrown away
        PailFormsWords::tr("brown or dirty"),
        //: A usual reason why the liquid in a pail is thrown away
        PailFormsWords::tr("pail was not tight"),
        //: A usual reason why the liquid in a pail is thrown away
        PailFormsWords::tr("spilt"),
    };
    //: Help under the reason why the liquid in a pail is thrown away
    auto* reason = add_reason(*form, PailFormsWords::tr("It stands in the pail's history."), picks);
    //: Filled button of a form
    form->set_primary(PailFormsWords::tr("Discard"));
    form->set_commit([&desk, id = pail.id, day, reason](const work::Confirmed&) {
        return refusal_of(work::discard_pail(desk.workbook(), id, day->value(), reason->value(), desk.doing()));
    });
    form->set_draft(store_draft(QStringLiteral("discard_pail"), QStringLiteral("pail"), {pail.id.value}, QStringLiteral("pail_discard")));
    dialog->open();
    reason->take_focus();
}

void open_correct_pail_form(Desk& desk, const work::PailLine& pail, QWidget* parent) {
    //: Title of a form; %1 the code of a pail
    auto* dialog = new FormDialog(desk, PailFormsWords::tr("Correct the mass of pail %1").arg(pail.code), parent);
    dialog->setObjectName(QStringLiteral("correct_pail_form"));
    FormFrame* form = dialog->form();
    form->set_columns(1);
    //: Under the title of a form; %1 a mass
    form->set_intro(PailFormsWords::tr(
                        "%1 stand on it: the net mass when it was filled. A label that was printed is printed again.")
                        .arg(desk.large(pail.mass)));
    //: A field's label: the mass in a pail
    auto* mass =
        form->add(PailFormsWords::tr("Net mass"), new MassField(desk, MassSize::large), QStringLiteral("mass"));
    mass->setObjectName(QStringLiteral("correct_mass"));
    mass->set_value(pail.mass);
    auto* reason = add_reason(*form, correction_help(), correction_picks());
    //: Filled button of a form that puts an entry right
    form->set_primary(PailFormsWords::tr("Correct it"));
    form->set_commit([&desk, id = pail.id, mass, reason](const work::Confirmed&) -> std::optional<work::Refusal> {
        if (!mass->value())
            return work::Refusal{work::Why::missing, QStringLiteral("mass"), {}, false};
        return refusal_of(work::correct_pail(desk.workbook(), id, *mass->value(), desk.doing(reason->value())));
    });
    form->set_draft(store_draft(QStringLiteral("correct_pail"), QStringLiteral("pail"), {pail.id.value}, QStringLiteral("pail_correct")));
    dialog->open();
    mass->take_focus();
}

} // namespace soakbook::ui
