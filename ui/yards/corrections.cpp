// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/corrections.h"

#include "core/work/how_strips.h"
#include "core/work/pull.h"
#include "core/work/visit.h"
#include "core/work/weigh.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/form_dialog.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/reason_field.h"
#include "ui/parts/result_card.h"
#include "ui/parts/text_field.h"
#include "ui/yards/named_field.h"
#include "ui/yards/yard_draft.h"
#include "ui/yards/yard_words.h"

namespace soakbook::ui {

namespace {

using Kind = work::HiveEvent::Kind;

class Corrections {
    Q_DECLARE_TR_FUNCTIONS(Corrections)

public:
    static DraftPlace draft(const QString& form, const work::HiveEvent& event, const QString& press);
    static void open(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);
    static void open_void(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);
    static void open_weighing(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive);
};

DraftPlace Corrections::draft(const QString& form, const work::HiveEvent& event, const QString& press) {
    DraftPlace place = yard_draft(form, QStringLiteral("hive"), {event.hive.value}, press);
    place.record = event.placement.value;
    place.intent.prefill.insert(QStringLiteral("row_of"), QStringLiteral("story_table"));
    place.intent.prefill.insert(QStringLiteral("row"), event_number(event));
    return place;
}

void Corrections::open(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    const bool out = event.kind == Kind::strips_out;
    //: Title of a form; %1 a hive
    auto* dialog = new FormDialog(desk, out ? tr("Correct the strips out of %1").arg(hive)
                                            //: Title of a form; %1 a hive
                                            : tr("Correct the strips in %1").arg(hive), parent);
    dialog->setObjectName(QStringLiteral("correction_form"));
    FormFrame* form = dialog->form();
    //: Under the title of a form
    form->set_intro(tr("What stood there before stays in the history, and the register shows that it was corrected."));
    //: Field: strips taken out, or put in
    auto* strips = named(form->add(out ? tr("Pulled") : tr("Strips in"), new CountField(desk, tr("strips"), form),
                                   out ? QStringLiteral("pulled") : QStringLiteral("strips")),
                         "correction_strips");
    strips->set_value(event.strips);
    CountField* missing = nullptr;
    if (out) {
        //: Field: strips that were not found any more
        missing = named(form->add(tr("Missing"), new CountField(desk, tr("strips"), form), QStringLiteral("missing")), "correction_missing");
        missing->set_value(event.missing);
    }
    //: Field
    auto* on = named(form->add(tr("Day"), new DayField(desk, form), QStringLiteral("on")), "correction_on");
    on->set_value(event.on);
    auto* why = named(add_reason(*form, correction_help(), strips_picks()), "correction_why");
    //: Filled button of a form
    form->set_primary(tr("Save the correction"));
    form->set_commit([=, &desk](const work::Confirmed&) -> std::optional<work::Refusal> {
        if (why->is_empty()) {
            return work::Refusal{work::Why::reason_missing, QStringLiteral("reason"), {}, false};
        }
        const book::Doing doing = desk.doing(why->value());
        return out ? refusal_of(work::correct_pull(desk.workbook(), event.placement, as_int(strips->value()), as_int(missing->value()), on->value(), doing))
                   : refusal_of(work::correct_placement(desk.workbook(), event.placement, as_int(strips->value()), on->value(), doing));
    });
    form->set_draft(draft(out ? QStringLiteral("correct_strips_out") : QStringLiteral("correct_strips_in"), event, QStringLiteral("story_correct")));
    dialog->open();
}

void Corrections::open_void(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    const bool count = event.kind == Kind::count;
    //: Title of a form; %1 a hive
    const QString title = count ? tr("Make the count of %1 void").arg(hive)
                                //: Title of a form; %1 a hive
                                : tr("Make the strips in %1 void").arg(hive);
    //: Under the title of a form
    const QString what = count ? tr("The count stays in the story, struck through, and no figure uses it any more.")
                               //: Under the title of a form
                               : tr("The strips go back into the bag's count, and its pulling goes with them. The register still shows the line, struck through.");
    //: Filled button of a form
    ask_reason(desk, parent, title, what, tr("Make it void"), [&desk, count, event](const QString& reason) {
        return count ? refusal_of(work::void_count(desk.workbook(), event.count, desk.doing(reason)))
                     : refusal_of(work::void_placement(desk.workbook(), event.placement, desk.doing(reason)));
    }, strips_picks());
}

void Corrections::open_weighing(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    //: Title of a form; %1 a hive
    auto* dialog = new FormDialog(desk, tr("Weigh strips pulled from %1").arg(hive), parent);
    dialog->setObjectName(QStringLiteral("pulled_weighing_form"));
    FormFrame* form = dialog->form();
    form->add_caution(YardWords::gloves_caution());
    //: Under the title of a form
    form->set_intro(tr("What is left on strips shows how much of the liquid the bees carried off."));
    //: Field; the word at its right is "strips"
    auto* strips = named(form->add(tr("Strips on the scale"), new CountField(desk, tr("strips"), form), QStringLiteral("strips")), "pulled_strips");
    strips->set_value(event.strips);
    //: Field: what the strips weigh together
    auto* total = named(form->add(tr("Weight of all together"), new MassField(desk, MassSize::small, form), QStringLiteral("total")), "pulled_total");
    const auto entry = [=] {
        work::WeighEntry weighing;
        weighing.placement = event.placement;
        weighing.strips = as_int(strips->value());
        weighing.total = total->value();
        return weighing;
    };
    QObject::connect(form, &FormFrame::edited, form, [=, &desk] {
        const auto figures = total->value() ? work::reckon_weighing(desk.workbook(), entry()) : tl::make_unexpected(work::Refusal{});
        //: What follows from a form; rich text; %1 the mean weight of a strip, %2 what it still holds
        form->result()->set_text(figures ? tr("<b>%1</b> a strip, of which %2 is left of the liquid.").arg(desk.small(figures->mean, 2), desk.small(figures->uptake, 2))
                                         : QString());
        form->result()->set_how(figures ? std::vector<work::How>{work::how_taken_up(*figures)} : std::vector<work::How>(), desk);
    });
    //: Filled button of a form
    form->set_primary(tr("Enter the weight"));
    form->set_commit([entry, &desk](const work::Confirmed& confirmed) {
        return refusal_of(work::log_weighing(desk.workbook(), entry(), desk.doing(), confirmed));
    });
    form->set_draft(draft(QStringLiteral("weigh_pulled"), event, QStringLiteral("story_weigh")));
    dialog->open();
}

} // namespace

void open_correction(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    Corrections::open(parent, desk, event, hive);
}

void open_void(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    Corrections::open_void(parent, desk, event, hive);
}

void open_pulled_weighing(QWidget* parent, Desk& desk, const work::HiveEvent& event, const QString& hive) {
    Corrections::open_weighing(parent, desk, event, hive);
}

qint64 event_number(const work::HiveEvent& event) {
    constexpr qint64 kinds = 8;
    const qint64 record = event.kind == Kind::count ? event.count.value : event.placement.value;
    return record == 0 ? 0 : record * kinds + static_cast<qint64>(event.kind);
}

bool can_be_corrected(const work::HiveEvent& event) {
    return !event.made_void && (event.kind == Kind::strips_in || event.kind == Kind::strips_out);
}

bool can_be_made_void(const work::HiveEvent& event) {
    return !event.made_void && (event.kind == Kind::strips_in || event.kind == Kind::count);
}

} // namespace soakbook::ui
