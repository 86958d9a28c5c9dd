// SPDX-License-Identifier: GPL-3.0-or-later
// A bag put right or made void.
#include "core/work/bag.h"
#include "ui/parts/day_field.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"
#include "ui/store/bag_forms.h"
#include "ui/parts/reason_field.h"
#include "ui/store/store_draft.h"
#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BagCorrectFormWords {
    Q_DECLARE_TR_FUNCTIONS(CorrectBagForm)
};

/// What differs from what stands there; the rest is left as it is.
work::BagCorrection correction(const work::BagLine& bag, const CountField& packed, const MassField& net,
                               const DayField& sealed) {
    work::BagCorrection entry;
    entry.bag = bag.id;
    if (const auto n = packed.value(); n && *n != bag.packed.value_or(0))
        entry.packed = as_strips(n);
    if (net.value() != bag.net)
        entry.net = net.value();
    if (sealed.value() != bag.sealed_on)
        entry.sealed_on = sealed.value();
    return entry;
}

work::Refusal missing(const char* field) {
    return {work::Why::missing, QLatin1String(field), {}, false};
}

} // namespace

void open_correct_bag_form(Desk& desk, const work::BagLine& bag, QWidget* parent) {
    //: Title of a form; %1 the code of a bag
    auto* dialog = new FormDialog(desk, BagCorrectFormWords::tr("Correct bag %1").arg(bag.code), parent);
    dialog->setObjectName(QStringLiteral("correct_bag_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form
    form->set_intro(BagCorrectFormWords::tr(
        "What was wrong when the bag was filled. A label that was printed is wrong then and is printed again; rest and "
        "limit follow the day it was sealed."));
    //: A field's label: strips that were put into a bag; and the unit behind the number
    auto* packed = form->add(BagCorrectFormWords::tr("Strips packed"),
                             new CountField(desk, BagCorrectFormWords::tr("strips")), QStringLiteral("packed"));
    //: A field's label: the weight of what is in a bag
    auto* net = form->add(BagCorrectFormWords::tr("Contents weighed"), new MassField(desk, MassSize::large),
                          QStringLiteral("net"));
    //: A field's label: the day a bag was sealed
    auto* sealed = form->add(BagCorrectFormWords::tr("Sealed on"), new DayField(desk), QStringLiteral("sealed_on"));
    packed->setObjectName(QStringLiteral("correct_packed"));
    net->setObjectName(QStringLiteral("correct_net"));
    sealed->setObjectName(QStringLiteral("correct_sealed"));
    packed->set_value(bag.packed.value_or(0));
    net->set_value(bag.net);
    sealed->set_value(bag.sealed_on);
    auto* reason = add_reason(*form, correction_help(), correction_picks());
    //: Filled button of a form that puts an entry right
    form->set_primary(BagCorrectFormWords::tr("Correct it"));
    form->set_commit([&desk, bag, packed, net, sealed, reason](const work::Confirmed&) -> std::optional<work::Refusal> {
        if (packed->is_empty())
            return missing("packed");
        if (sealed->is_empty())
            return missing("sealed_on");
        const work::BagCorrection entry = correction(bag, *packed, *net, *sealed);
        return refusal_of(work::correct_bag(desk.workbook(), entry, desk.doing(reason->value())));
    });
    form->set_draft(store_draft(QStringLiteral("correct_bag"), QStringLiteral("bag"), {bag.id.value}, QStringLiteral("bag_correct")));
    dialog->open();
    packed->take_focus();
}

void open_void_bag_form(Desk& desk, const work::BagLine& bag, QWidget* parent) {
    //: Title of a form; %1 the code of a bag
    FormDialog* dialog = ask_reason(
        desk, parent, BagCorrectFormWords::tr("Make bag %1 void").arg(bag.code),
        bag.packed
            //: Under the title of a form
            ? BagCorrectFormWords::tr(
                  "For a burst bag, or one that was entered by mistake. It stays in the list of all bags, counts "
                  "nowhere any more, and its code is never given out again.")
            //: Under the title of a form
            : BagCorrectFormWords::tr("For a spoilt label. Its code is never given out again."),
        //: Filled button of a form
        BagCorrectFormWords::tr("Make it void"), [&desk, id = bag.id](const QString& reason) {
            return refusal_of(work::void_bag(desk.workbook(), id, desk.doing(reason)));
        },
        bag.packed ? QStringList{
                         //: A usual reason why a bag is made void
                         BagCorrectFormWords::tr("burst"),
                         //: A usual reason why a bag is made void
                         BagCorrectFormWords::tr("entered by mistake"),
                     }
                   : QStringList{
                         //: A usual reason why a label is made void
                         BagCorrectFormWords::tr("label spoilt"),
                     });
    dialog->setObjectName(QStringLiteral("void_form"));
}

} // namespace soakbook::ui
