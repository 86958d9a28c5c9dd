// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/lot_forms.h"

#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/text_field.h"
#include "ui/parts/reason_field.h"
#include "ui/store/store_draft.h"
#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct LotFormsWords {
    Q_DECLARE_TR_FUNCTIONS(LotForms)
};

QStringList picks() {
    return {
        //: A usual reason why what is left of a delivery is put right
        LotFormsWords::tr("weighed again"),
        //: A usual reason why what is left of a delivery is put right
        LotFormsWords::tr("counted again"),
        //: A usual reason why what is left of a delivery is put right
        LotFormsWords::tr("spilt"),
        //: A usual reason why what is left of a delivery is put right
        LotFormsWords::tr("used for something else"),
    };
}

} // namespace

void open_recount_lot_form(Desk& desk, const work::LotLine& lot, QWidget* parent) {
    const bool by_mass = is_by_mass(lot.entry.material);
    //: Title of a form; %1 the name of a delivery
    auto* dialog = new FormDialog(desk,
                                  by_mass ? LotFormsWords::tr("Weigh %1 anew").arg(lot.entry.name)
                                          //: Title of a form; %1 the name of a delivery
                                          : LotFormsWords::tr("Count %1 anew").arg(lot.entry.name),
                                  parent);
    dialog->setObjectName(QStringLiteral("recount_lot_form"));
    FormFrame* form = dialog->form();
    form->set_columns(1);
    //: Under the title of a form; %1 an amount
    form->set_intro(
        LotFormsWords::tr("By what was entered, %1 are left.").arg(lot_amount(desk, lot.entry.material, lot.left)));
    //: A field's label: what is left of a delivery
    const QString label = LotFormsWords::tr("Left now");
    MassField* mass =
        by_mass ? form->add(label, new MassField(desk, MassSize::large), QStringLiteral("left")) : nullptr;
    CountField* pieces = by_mass ? nullptr : form->add(label, new CountField(desk), QStringLiteral("left"));
    form->field(QStringLiteral("left"))->setObjectName(QStringLiteral("recount_lot_left"));
    //: Help under the reason why what is left of a delivery is put right
    auto* reason = add_reason(*form, LotFormsWords::tr("It stands beside the difference."), picks());
    //: Filled button of a form
    form->set_primary(LotFormsWords::tr("Set what is left"));
    form->set_commit(
        [&desk, id = lot.entry.id, mass, pieces, reason](const work::Confirmed&) -> std::optional<work::Refusal> {
            std::optional<qint64> left;
            if (mass == nullptr)
                left = pieces->value();
            else if (const auto weighed = mass->value())
                left = weighed->count;
            if (!left)
                return work::Refusal{work::Why::missing, QStringLiteral("left"), {}, false};
            return refusal_of(work::recount_lot(desk.workbook(), id, *left, reason->value(), desk.doing()));
        });
    form->set_draft(store_draft(QStringLiteral("recount_lot"), QStringLiteral("lot"), {lot.entry.id.value}, QStringLiteral("lot_recount")));
    dialog->open();
}

void open_finish_lot_form(Desk& desk, const work::LotLine& lot, QWidget* parent) {
    //: Title of a form; %1 the name of a delivery
    auto* dialog = new FormDialog(desk, LotFormsWords::tr("%1 is finished").arg(lot.entry.name), parent);
    dialog->setObjectName(QStringLiteral("finish_lot_form"));
    dialog->set_wanted_width(520);
    //: Under the title of a form; %1 an amount
    dialog->form()->set_intro(
        LotFormsWords::tr(
            "It is offered for no batch any more and stays in the list. By what was entered, %1 are left; nothing is "
            "written about them.")
            .arg(lot_amount(desk, lot.entry.material, lot.left)));
    //: Filled button of a form
    dialog->form()->set_primary(LotFormsWords::tr("It is finished"));
    dialog->form()->set_commit([&desk, id = lot.entry.id](const work::Confirmed&) {
        return refusal_of(work::finish_lot(desk.workbook(), id, desk.doing()));
    });
    dialog->open();
    dialog->form()->primary()->setFocus(Qt::TabFocusReason);
}

HistoryOf lot_history(const Desk& desk, const work::LotLine& lot) {
    HistoryOf of = history_of(desk, lot.entry.name, QStringLiteral("material_lot"), lot.entry.id.value);
    of.reword = [&desk, material = lot.entry.material](work::CorrectionLine& line) {
        if (line.column != QLatin1String("amount") && line.column != QLatin1String("container_amount"))
            return;
        for (QString* value : {&line.before, &line.after}) {
            if (!value->isEmpty())
                *value = lot_amount(desk, material, value->toLongLong());
        }
    };
    return of;
}

} // namespace soakbook::ui
