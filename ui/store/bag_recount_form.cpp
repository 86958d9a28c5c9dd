// SPDX-License-Identifier: GPL-3.0-or-later
// A bag opened, sealed again, counted anew.
#include "core/work/stock.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/store/bag_forms.h"
#include "ui/store/day_form.h"
#include "ui/parts/reason_field.h"
#include "ui/store/store_draft.h"
#include "ui/store/store_words.h"

#include <QCoreApplication>

#include <limits>

namespace soakbook::ui {

namespace {

struct BagRecountFormWords {
    Q_DECLARE_TR_FUNCTIONS(RecountForm)
};

} // namespace

void open_recount_form(Desk& desk, const work::BagLine& bag, QWidget* parent) {
    //: Title of a form; %1 the code of a bag
    auto* dialog = new FormDialog(desk, BagRecountFormWords::tr("Count bag %1 anew").arg(bag.code), parent);
    dialog->setObjectName(QStringLiteral("recount_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form; %n strips are left by what was entered
    form->set_intro(BagRecountFormWords::tr("By what was entered, %n strip(s) are left in it.", nullptr, bag.left));
    form->set_columns(1);
    //: A field's label: strips counted in a bag; and the unit behind the number
    auto* left = form->add(BagRecountFormWords::tr("Strips counted"),
                           new CountField(desk, BagRecountFormWords::tr("strips")), QStringLiteral("left"));
    left->setObjectName(QStringLiteral("recount_left"));
    const QStringList picks{
        //: A usual reason why a count is put right
        BagRecountFormWords::tr("counted by hand"),
        //: A usual reason why a count is put right
        BagRecountFormWords::tr("miscounted when packed"),
        //: A usual reason why a count is put right
        BagRecountFormWords::tr("hung without an entry"),
    };
    //: Help under the reason why a count is put right
    auto* reason =
        add_reason(*form, BagRecountFormWords::tr("It stands in the bag's story, with the difference."), picks);
    QObject::connect(form, &FormFrame::edited, left, [&desk, form, left, was = bag.left] {
        const auto counted = left->value();
        if (!counted || *counted == was || *counted > std::numeric_limits<int>::max()) {
            form->result()->clear();
            return;
        }
        //: What follows from a count; %1 a number with its sign
        form->result()->set_text(BagRecountFormWords::tr("The difference of <b>%1</b> is written down.")
                                     .arg(with_sign(desk, static_cast<int>(*counted) - was)));
    });
    //: Filled button of a form
    form->set_primary(BagRecountFormWords::tr("Set the count"));
    form->set_commit([&desk, id = bag.id, left, reason](const work::Confirmed&) {
        return refusal_of(
            work::recount_bag(desk.workbook(), id, as_strips(left->value()), reason->value(), desk.doing()));
    });
    form->set_draft(store_draft(QStringLiteral("recount_bag"), QStringLiteral("bag"), {bag.id.value}, QStringLiteral("bag_recount")));
    dialog->open();
}

void open_bag_opened_form(Desk& desk, const work::BagLine& bag, QWidget* parent) {
    const DayForm form{
        QStringLiteral("opened_form"),
        //: Title of a form; %1 the code of a bag
        BagRecountFormWords::tr("Bag %1 was opened").arg(bag.code),
        //: Under the title of a form
        BagRecountFormWords::tr(
            "Strips draw water from the air once a bag is open. Its days run from the first opening, also when it "
            "is sealed again."),
        //: A field's label: the day a bag was opened
        BagRecountFormWords::tr("Opened on"),
        //: Filled button of a form
        BagRecountFormWords::tr("Enter it")};
    open_day_form(desk, form, parent, [&desk, id = bag.id](std::optional<maths::Day> on) {
        return refusal_of(work::open_bag(desk.workbook(), id, on, desk.doing()));
    });
}

void open_bag_resealed_form(Desk& desk, const work::BagLine& bag, QWidget* parent) {
    const DayForm form{QStringLiteral("resealed_form"),
                       //: Title of a form; %1 the code of a bag
                       BagRecountFormWords::tr("Bag %1 was sealed again").arg(bag.code),
                       //: Under the title of a form
                       BagRecountFormWords::tr("Wipe the mouth clean first: a greasy seal does not hold."),
                       //: A field's label: the day a bag was sealed again
                       BagRecountFormWords::tr("Resealed on"),
                       //: Filled button of a form
                       BagRecountFormWords::tr("Enter it")};
    open_day_form(desk, form, parent, [&desk, id = bag.id](std::optional<maths::Day> on) {
        return refusal_of(work::reseal_bag(desk.workbook(), id, on, desk.doing()));
    });
}

} // namespace soakbook::ui
