// SPDX-License-Identifier: GPL-3.0-or-later
// The names of the store's columns for people.
#include "ui/papers/record_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {
class ColumnTexts {
    Q_DECLARE_TR_FUNCTIONS(ColumnWords)
};
struct Pair {
    const char* column;
    const char* words;
};
// Translated where they are used; each is a column of a correction, in lower case.
constexpr Pair pairs[] = {
    //: What was corrected: number of strips.
    {"strips", QT_TRANSLATE_NOOP("ColumnWords", "strips")},
    //: What was corrected: strips put into a bag.
    {"packed", QT_TRANSLATE_NOOP("ColumnWords", "strips packed")},
    //: What was corrected: day strips were hung.
    {"placed_on", QT_TRANSLATE_NOOP("ColumnWords", "day hung")},
    //: What was corrected: day strips came out.
    {"pulled_on", QT_TRANSLATE_NOOP("ColumnWords", "day pulled")},
    //: What was corrected: strips that came out.
    {"pulled", QT_TRANSLATE_NOOP("ColumnWords", "strips pulled")},
    //: What was corrected: strips not found.
    {"missing", QT_TRANSLATE_NOOP("ColumnWords", "strips missing")},
    //: What was corrected: weight of all strips on the scale.
    {"total_mg", QT_TRANSLATE_NOOP("ColumnWords", "weight together")},
    //: What was corrected: mean weight of a strip.
    {"mean_mg", QT_TRANSLATE_NOOP("ColumnWords", "weight of one strip")},
    //: What was corrected: weight of a bag's content.
    {"net_mg", QT_TRANSLATE_NOOP("ColumnWords", "net weight")},
    //: What was corrected: a mass.
    {"mass_mg", QT_TRANSLATE_NOOP("ColumnWords", "mass")},
    //: What was corrected: acid in a mix.
    {"acid_mg", QT_TRANSLATE_NOOP("ColumnWords", "acid in it")},
    //: What was corrected: day a bag was sealed.
    {"sealed_on", QT_TRANSLATE_NOOP("ColumnWords", "day sealed")},
    //: What was corrected.
    {"rest_until", QT_TRANSLATE_NOOP("ColumnWords", "rest until")},
    //: What was corrected.
    {"use_by", QT_TRANSLATE_NOOP("ColumnWords", "use by")},
    //: What was corrected: first day of the pull window.
    {"pull_from", QT_TRANSLATE_NOOP("ColumnWords", "pull from")},
    //: What was corrected: last day of the pull window.
    {"pull_by", QT_TRANSLATE_NOOP("ColumnWords", "pull by")},
    //: What was corrected.
    {"acid_per_strip_mg", QT_TRANSLATE_NOOP("ColumnWords", "acid a strip")},
    //: What was corrected.
    {"strength_ppm", QT_TRANSLATE_NOOP("ColumnWords", "strength")},
    //: What was corrected: probe in the tank.
    {"probe_cc", QT_TRANSLATE_NOOP("ColumnWords", "probe")},
    //: What was corrected: thermostat dial.
    {"dial_cc", QT_TRANSLATE_NOOP("ColumnWords", "dial")},
    //: What was corrected.
    {"room_cc", QT_TRANSLATE_NOOP("ColumnWords", "room")},
    //: What was corrected: number of mites.
    {"mites", QT_TRANSLATE_NOOP("ColumnWords", "mites")},
    //: What was corrected: number of bees.
    {"bees", QT_TRANSLATE_NOOP("ColumnWords", "bees")},
    //: What was corrected: hour at which it was done.
    {"at_ms", QT_TRANSLATE_NOOP("ColumnWords", "hour")},
    //: What was corrected: hour at which a soak began.
    {"started_ms", QT_TRANSLATE_NOOP("ColumnWords", "start")},
    //: What was corrected: hour at which a soak ended.
    {"ended_ms", QT_TRANSLATE_NOOP("ColumnWords", "end")},
    //: What was corrected: hour at which a batch was closed.
    {"closed_ms", QT_TRANSLATE_NOOP("ColumnWords", "closed")},
    //: What was corrected: unexplained loss of a batch.
    {"unexplained_mg", QT_TRANSLATE_NOOP("ColumnWords", "unexplained")},
    //: What was corrected: where a bag stands.
    {"stands", QT_TRANSLATE_NOOP("ColumnWords", "where it stands")},
    //: What was corrected.
    {"opened_on", QT_TRANSLATE_NOOP("ColumnWords", "opened")},
    //: What was corrected.
    {"resealed_on", QT_TRANSLATE_NOOP("ColumnWords", "resealed")},
    //: What was corrected: state of a label (printed or not).
    {"label", QT_TRANSLATE_NOOP("ColumnWords", "label")},
    //: What was corrected.
    {"note", QT_TRANSLATE_NOOP("ColumnWords", "note")},
    //: What was corrected: name of a record.
    {"name", QT_TRANSLATE_NOOP("ColumnWords", "name")},
    //: What was corrected: amount of a delivery.
    {"amount", QT_TRANSLATE_NOOP("ColumnWords", "amount")},
    //: What was corrected: purity of acid.
    {"assay_ppm", QT_TRANSLATE_NOOP("ColumnWords", "assay")},
    //: What was corrected.
    {"void_reason", QT_TRANSLATE_NOOP("ColumnWords", "made void")},
    //: What was corrected: what bagged strips took up.
    {"taken_mg", QT_TRANSLATE_NOOP("ColumnWords", "taken up by strips")},
    //: What was corrected: how long strips dripped before they were weighed.
    {"drip_minutes", QT_TRANSLATE_NOOP("ColumnWords", "minutes of dripping")},
    //: What was corrected.
    {"planned_mg", QT_TRANSLATE_NOOP("ColumnWords", "mass planned")},
    //: What was corrected: which delivery something came from.
    {"lot_id", QT_TRANSLATE_NOOP("ColumnWords", "delivery")},
    //: What was corrected.
    {"bag_lot_id", QT_TRANSLATE_NOOP("ColumnWords", "delivery of bags")},
    //: What was corrected.
    {"pail_id", QT_TRANSLATE_NOOP("ColumnWords", "pail")},
    //: What was corrected.
    {"bin_id", QT_TRANSLATE_NOOP("ColumnWords", "bin")},
    //: What was corrected.
    {"tank_id", QT_TRANSLATE_NOOP("ColumnWords", "tank")},
    //: What was corrected.
    {"strip_kind_id", QT_TRANSLATE_NOOP("ColumnWords", "kind of strip")},
    //: What was corrected.
    {"soak_id", QT_TRANSLATE_NOOP("ColumnWords", "soak")},
    //: What was corrected.
    {"batch_id", QT_TRANSLATE_NOOP("ColumnWords", "batch")},
    //: What was corrected.
    {"bag_id", QT_TRANSLATE_NOOP("ColumnWords", "bag")},
    //: What was corrected.
    {"hive_id", QT_TRANSLATE_NOOP("ColumnWords", "hive")},
    //: What was corrected.
    {"yard_id", QT_TRANSLATE_NOOP("ColumnWords", "yard")},
    //: What was corrected.
    {"round_id", QT_TRANSLATE_NOOP("ColumnWords", "round")},
    //: What was corrected.
    {"pour_id", QT_TRANSLATE_NOOP("ColumnWords", "pour")},
    //: What was corrected.
    {"dry_mg", QT_TRANSLATE_NOOP("ColumnWords", "weight of a dry strip")},
    //: What was corrected.
    {"target_mg", QT_TRANSLATE_NOOP("ColumnWords", "target weight")},
    //: What was corrected: how far a strip's weight may be off its target.
    {"tolerance_mg", QT_TRANSLATE_NOOP("ColumnWords", "may be off by")},
    //: What was corrected: liquid let into a bin.
    {"flood_mg", QT_TRANSLATE_NOOP("ColumnWords", "liquid let in")},
    //: What was corrected.
    {"strip_mg", QT_TRANSLATE_NOOP("ColumnWords", "weight of one strip")},
    //: What was corrected.
    {"rest_days", QT_TRANSLATE_NOOP("ColumnWords", "days of rest")},
    //: What was corrected.
    {"use_months", QT_TRANSLATE_NOOP("ColumnWords", "months to use by")},
    //: What was corrected.
    {"planned_on", QT_TRANSLATE_NOOP("ColumnWords", "day planned")},
    //: What was corrected.
    {"mixed_ms", QT_TRANSLATE_NOOP("ColumnWords", "hour mixed")},
    //: What was corrected.
    {"ceiling_cc", QT_TRANSLATE_NOOP("ColumnWords", "ceiling of the tank")},
    //: What was corrected.
    {"unexplained_limit_ppm", QT_TRANSLATE_NOOP("ColumnWords", "loss that is usual")},
    //: What was corrected.
    {"material", QT_TRANSLATE_NOOP("ColumnWords", "material")},
    //: What was corrected.
    {"supplier", QT_TRANSLATE_NOOP("ColumnWords", "from whom")},
    //: What was corrected.
    {"received_on", QT_TRANSLATE_NOOP("ColumnWords", "day received")},
    //: What was corrected.
    {"container_amount", QT_TRANSLATE_NOOP("ColumnWords", "one container holds")},
    //: What was corrected.
    {"acid_form", QT_TRANSLATE_NOOP("ColumnWords", "how the content is counted")},
    //: What was corrected.
    {"best_before", QT_TRANSLATE_NOOP("ColumnWords", "best before")},
    //: What was corrected.
    {"cost", QT_TRANSLATE_NOOP("ColumnWords", "cost")},
    //: What was corrected.
    {"finished_on", QT_TRANSLATE_NOOP("ColumnWords", "day finished")},
    //: What was corrected.
    {"minutes", QT_TRANSLATE_NOOP("ColumnWords", "minutes of stirring")},
    //: What was corrected: whether the liquid was clear.
    {"clear", QT_TRANSLATE_NOOP("ColumnWords", "clear")},
    //: What was corrected.
    {"outlet_poured_back", QT_TRANSLATE_NOOP("ColumnWords", "outlet poured back")},
    //: What was corrected.
    {"jacket_seen", QT_TRANSLATE_NOOP("ColumnWords", "water in the jacket seen")},
    //: What was corrected.
    {"oldest_on", QT_TRANSLATE_NOOP("ColumnWords", "oldest liquid of")},
    //: What was corrected.
    {"times_warmed", QT_TRANSLATE_NOOP("ColumnWords", "times warmed")},
    //: What was corrected.
    {"used_in_part_on", QT_TRANSLATE_NOOP("ColumnWords", "day used in part")},
    //: What was corrected.
    {"discarded_on", QT_TRANSLATE_NOOP("ColumnWords", "day discarded")},
    //: What was corrected.
    {"discard_reason", QT_TRANSLATE_NOOP("ColumnWords", "why discarded")},
    //: What was corrected.
    {"warm_and_clear", QT_TRANSLATE_NOOP("ColumnWords", "poured warm and clear")},
    //: What was corrected.
    {"scraped", QT_TRANSLATE_NOOP("ColumnWords", "bin scraped")},
    //: What was corrected.
    {"kind", QT_TRANSLATE_NOOP("ColumnWords", "kind")},
    //: What was corrected.
    {"reserved_on", QT_TRANSLATE_NOOP("ColumnWords", "day its label was set aside")},
    //: What was corrected.
    {"supers_on", QT_TRANSLATE_NOOP("ColumnWords", "supers on")},
    //: What was corrected.
    {"past_limit_reason", QT_TRANSLATE_NOOP("ColumnWords", "why past the limit")},
    //: What was corrected.
    {"withdrawal_days", QT_TRANSLATE_NOOP("ColumnWords", "days without harvest")},
    //: What was corrected.
    {"placed_by", QT_TRANSLATE_NOOP("ColumnWords", "hung by")},
    //: What was corrected.
    {"pulled_by", QT_TRANSLATE_NOOP("ColumnWords", "pulled by")},
    //: What was corrected.
    {"where_it_is", QT_TRANSLATE_NOOP("ColumnWords", "where it is")},
    //: What was corrected.
    {"hives", QT_TRANSLATE_NOOP("ColumnWords", "hives")},
    //: What was corrected.
    {"brood_boxes", QT_TRANSLATE_NOOP("ColumnWords", "brood boxes")},
    //: What was corrected.
    {"frames_of_bees", QT_TRANSLATE_NOOP("ColumnWords", "frames of bees")},
    //: What was corrected.
    {"state", QT_TRANSLATE_NOOP("ColumnWords", "state")},
    //: What was corrected.
    {"state_on", QT_TRANSLATE_NOOP("ColumnWords", "day of the state")},
    //: What was corrected.
    {"untreated", QT_TRANSLATE_NOOP("ColumnWords", "left untreated")},
    //: What was corrected.
    {"on_day", QT_TRANSLATE_NOOP("ColumnWords", "day")},
    //: What was corrected.
    {"days", QT_TRANSLATE_NOOP("ColumnWords", "days")},
    //: What was corrected.
    {"counted_by", QT_TRANSLATE_NOOP("ColumnWords", "counted by")},
    //: What was corrected.
    {"reason", QT_TRANSLATE_NOOP("ColumnWords", "reason")},
    //: What was corrected.
    {"closed_on", QT_TRANSLATE_NOOP("ColumnWords", "day closed")},
    //: What was corrected.
    {"visited_on", QT_TRANSLATE_NOOP("ColumnWords", "day visited")},
    //: What was corrected.
    {"capacity_mg", QT_TRANSLATE_NOOP("ColumnWords", "holds")},
    //: What was corrected.
    {"strips_held", QT_TRANSLATE_NOOP("ColumnWords", "holds strips")},
    //: What was corrected.
    {"maker", QT_TRANSLATE_NOOP("ColumnWords", "made by")},
    //: What was corrected.
    {"registration", QT_TRANSLATE_NOOP("ColumnWords", "registration number")},
};
} // namespace

QString column_words(const QString& column) {
    for (const Pair& pair : pairs)
        if (column == QLatin1String(pair.column))
            return QCoreApplication::translate("ColumnWords", pair.words);
    return column;
}

} // namespace soakbook::ui
