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
};
} // namespace

QString column_words(const QString& column) {
    for (const Pair& pair : pairs)
        if (column == QLatin1String(pair.column))
            return QCoreApplication::translate("ColumnWords", pair.words);
    return column;
}

} // namespace soakbook::ui
