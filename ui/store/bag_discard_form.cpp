// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/stock.h"
#include "ui/parts/day_field.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/store/bag_forms.h"
#include "ui/parts/reason_field.h"
#include "ui/store/store_cautions.h"
#include "ui/store/store_draft.h"
#include "ui/store/store_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct BagDiscardFormWords {
    Q_DECLARE_TR_FUNCTIONS(DiscardForm)
};

QStringList picks() {
    return {
        //: A usual reason why strips are thrown away
        BagDiscardFormWords::tr("past their limit"),
        //: A usual reason why strips are thrown away
        BagDiscardFormWords::tr("mouldy"),
        //: A usual reason why strips are thrown away
        BagDiscardFormWords::tr("torn or dropped"),
        //: A usual reason why strips are thrown away: the bag let air in
        BagDiscardFormWords::tr("bag not tight"),
    };
}

int strips_in(const std::vector<work::BagLine>& bags) {
    int strips = 0;
    for (const work::BagLine& bag : bags)
        strips += bag.left;
    return strips;
}

bool all_past(const std::vector<work::BagLine>& bags) {
    return std::all_of(bags.begin(), bags.end(),
                       [](const work::BagLine& bag) { return bag.state == work::BagState::past_limit; });
}

QString intro(const std::vector<work::BagLine>& bags) {
    if (bags.size() == 1) {
        //: Under the title of a form; %n strips are left in a bag
        return BagDiscardFormWords::tr("%n strip(s) are left in it.", nullptr, bags.front().left);
    }
    QStringList codes;
    for (const work::BagLine& bag : bags)
        codes << bag.code;
    //: Under the title of a form; %1 the codes of bags, %n their strips
    return BagDiscardFormWords::tr("All %n strip(s) of %1.", nullptr, strips_in(bags))
        .arg(codes.join(QStringLiteral(", ")));
}

/// What stays in the bag, while the number is typed.
void show_what_stays(FormFrame& form, const CountField& strips, int left) {
    const auto typed = strips.value();
    if (!typed || *typed > left) {
        form.result()->clear();
    } else if (*typed == left) {
        //: What follows from a number of strips thrown away
        form.result()->set_text(BagDiscardFormWords::tr("Nothing stays: the bag is <b>gone</b> from then on."));
    } else {
        //: What follows from a number of strips thrown away; %n strips
        form.result()->set_text(
            BagDiscardFormWords::tr("<b>%n</b> strip(s) stay in the bag.", nullptr, left - static_cast<int>(*typed)));
    }
}

} // namespace

void open_discard_form(Desk& desk, const std::vector<work::BagLine>& bags, QWidget* parent) {
    const bool one = bags.size() == 1;
    //: Title of a form; %1 the code of a bag
    const QString title = one ? BagDiscardFormWords::tr("Discard strips of bag %1").arg(bags.front().code)
                              //: Title of a form; %n bags
                              : BagDiscardFormWords::tr("Discard %n bag(s)", nullptr, static_cast<int>(bags.size()));
    auto* dialog = new FormDialog(desk, title, parent);
    dialog->setObjectName(QStringLiteral("discard_form"));
    FormFrame* form = dialog->form();
    form->set_intro(intro(bags));
    form->add_caution(discard_strips_caution());
    CountField* strips = nullptr;
    if (one) {
        //: A field's label: how many strips are thrown away; and the unit behind the number
        strips = form->add(BagDiscardFormWords::tr("Strips thrown away"),
                           new CountField(desk, BagDiscardFormWords::tr("strips")), QStringLiteral("strips"));
        strips->setObjectName(QStringLiteral("discard_strips"));
        strips->set_value(bags.front().left);
        QObject::connect(form, &FormFrame::edited, strips,
                         [form, strips, left = bags.front().left] { show_what_stays(*form, *strips, left); });
    }
    //: A field's label: the day on which it was done
    auto* day = form->add(BagDiscardFormWords::tr("On"), new DayField(desk), QStringLiteral("on"));
    //: Stands in an empty field for a day
    day->set_placeholder(BagDiscardFormWords::tr("today"));
    day->setObjectName(QStringLiteral("discard_on"));
    //: Help under the reason why strips are thrown away
    auto* reason = add_reason(*form, BagDiscardFormWords::tr("It stands in the bag's story."), picks());
    if (all_past(bags))
        reason->set_value(picks().front());
    //: Filled button of a form
    form->set_primary(BagDiscardFormWords::tr("Discard"));
    std::vector<work::BagId> ids;
    for (const work::BagLine& bag : bags)
        ids.push_back(bag.id);
    std::vector<qint64> numbers;
    for (const work::BagId id : ids)
        numbers.push_back(id.value);
    form->set_draft(store_draft(one ? QStringLiteral("discard_strips") : QStringLiteral("discard_bags"), QStringLiteral("discard"), numbers));
    form->set_commit([&desk, ids, strips, day, reason](const work::Confirmed&) {
        return strips != nullptr
                   ? refusal_of(work::discard_strips(desk.workbook(), ids.front(), as_strips(strips->value()),
                                                     day->value(), reason->value(), desk.doing()))
                   : refusal_of(work::discard_bags(desk.workbook(), ids, day->value(), reason->value(), desk.doing()));
    });
    dialog->open();
    if (strips != nullptr)
        strips->take_focus();
    else
        reason->take_focus();
}

} // namespace soakbook::ui
