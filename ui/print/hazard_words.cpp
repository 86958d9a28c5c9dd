// SPDX-License-Identifier: GPL-3.0-or-later
// Hazard and precaution phrases are those of the UN's globally harmonized system (the open standard), from memory; the
// numbers stand beside them.
#include "ui/print/label_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <initializer_list>

namespace soakbook::ui {

namespace {

using maths::Hazard;
using maths::HazardStatement;
using P = maths::PrecautionaryStatement;

struct HazardTexts {
    Q_DECLARE_TR_FUNCTIONS(Hazard)
};

bool has(const Hazard& hazard, P statement) {
    return std::find(hazard.precautions.begin(), hazard.precautions.end(), statement) != hazard.precautions.end();
}

bool has(const Hazard& hazard, HazardStatement statement) {
    return std::find(hazard.hazards.begin(), hazard.hazards.end(), statement) != hazard.hazards.end();
}

QString all_of(const Hazard& hazard, std::initializer_list<P> wanted) {
    QStringList sentences;
    for (const P statement : wanted) {
        if (has(hazard, statement)) {
            sentences.append(precautionary_statement(statement));
        }
    }
    return sentences.join(QLatin1Char(' '));
}

// Getting help stands in the list once for eyes and skin together: it is said wherever it belongs.
QString eye_words(const Hazard& hazard) {
    QString words = all_of(hazard, {P::p305_p351_p338, P::p305_p354_p338, P::p310, P::p337_p313, P::p337_p317});
    if (has(hazard, P::p305_p354_p338) && has(hazard, P::p317)) {
        words += QLatin1Char(' ') + precautionary_statement(P::p317);
    }
    return words;
}

QString skin_words(const Hazard& hazard) {
    return has(hazard, HazardStatement::h312) ? all_of(hazard, {P::p302_p352, P::p312, P::p317, P::p362_p364})
                                              : all_of(hazard, {P::p302_p352});
}

} // namespace

QString signal_word(maths::SignalWord word) {
    switch (word) {
    case maths::SignalWord::danger:
        //: signal word of the UN GHS, in capitals
        return HazardTexts::tr("DANGER");
    case maths::SignalWord::warning:
        //: signal word of the UN GHS, in capitals
        return HazardTexts::tr("WARNING");
    case maths::SignalWord::none:
        break;
    }
    return {};
}

QString hazard_statement(HazardStatement statement) {
    switch (statement) {
    case HazardStatement::h302:
        //: UN GHS H302
        return HazardTexts::tr("Harmful if swallowed.");
    case HazardStatement::h312:
        //: UN GHS H312
        return HazardTexts::tr("Harmful in contact with skin.");
    case HazardStatement::h318:
        //: UN GHS H318
        return HazardTexts::tr("Causes serious eye damage.");
    case HazardStatement::h319:
        //: UN GHS H319
        return HazardTexts::tr("Causes serious eye irritation.");
    }
    return {};
}

QString precautionary_statement(P statement) {
    switch (statement) {
    case P::p261:
        //: UN GHS P261, for a powder
        return HazardTexts::tr("Avoid breathing dust.");
    case P::p264:
        //: UN GHS P264
        return HazardTexts::tr("Wash hands thoroughly after handling.");
    case P::p270:
        //: UN GHS P270
        return HazardTexts::tr("Do not eat, drink or smoke when using this product.");
    case P::p280:
        //: UN GHS P280, made fit for acid
        return HazardTexts::tr("Wear acid-proof gloves and eye protection.");
    case P::p301_p312:
        //: UN GHS P301 + P312, after "If swallowed:"
        return HazardTexts::tr("Call a poison center or doctor if you feel unwell.");
    case P::p301_p317:
    case P::p317:
        //: UN GHS P317
        return HazardTexts::tr("Get medical help.");
    case P::p330:
        //: UN GHS P330
        return HazardTexts::tr("Rinse mouth.");
    case P::p302_p352:
        //: UN GHS P302 + P352, after "If on skin:"
        return HazardTexts::tr("Wash with plenty of water.");
    case P::p312:
        //: UN GHS P312
        return HazardTexts::tr("Call a poison center or doctor if you feel unwell.");
    case P::p305_p351_p338:
        //: UN GHS P305 + P351 + P338, after "If in eyes:"
        return HazardTexts::tr(
            "Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. "
            "Continue rinsing.");
    case P::p305_p354_p338:
        //: UN GHS P305 + P354 + P338, after "If in eyes:"
        return HazardTexts::tr(
            "Immediately rinse with water for several minutes. Remove contact lenses, if present and easy to do. "
            "Continue rinsing.");
    case P::p310:
        //: UN GHS P310
        return HazardTexts::tr("Immediately call a poison center or doctor.");
    case P::p337_p313:
        //: UN GHS P337 + P313
        return HazardTexts::tr("If eye irritation persists: Get medical advice.");
    case P::p337_p317:
        //: UN GHS P337 + P317
        return HazardTexts::tr("If eye irritation persists: Get medical help.");
    case P::p362_p364:
        //: UN GHS P362 + P364
        return HazardTexts::tr("Take off contaminated clothing and wash it before reuse.");
    case P::p405:
        //: UN GHS P405
        return HazardTexts::tr("Store locked up.");
    case P::p501:
        //: UN GHS P501, made fit for any country
        return HazardTexts::tr("Dispose of contents and container by local rules.");
    }
    return {};
}

QString hazard_statements(const Hazard& hazard) {
    QStringList all;
    for (const HazardStatement statement : hazard.hazards) {
        all.append(hazard_statement(statement));
    }
    return all.join(QLatin1Char(' '));
}

QString protection_words(const Hazard& hazard) {
    return all_of(hazard, {P::p280});
}

QString handling_words(const Hazard& hazard) {
    const QString listed = all_of(hazard, {P::p261, P::p264, P::p270, P::p405, P::p501});
    if (listed.isEmpty()) {
        return {};
    }
    //: on a hazard label, after the standard's precautions: where to keep it
    const QString keeping = HazardTexts::tr("Keep airtight, away from children, food and animals.");
    return listed + QLatin1Char(' ') + keeping;
}

LedText first_aid(LabelPiece piece, const Hazard& hazard) {
    switch (piece) {
    case LabelPiece::first_aid_eyes: {
        //: bold lead on a hazard label, before what to do
        const QString lead = HazardTexts::tr("If in eyes:");
        const QString words = eye_words(hazard);
        return words.isEmpty() ? LedText{} : LedText{lead, words};
    }
    case LabelPiece::first_aid_skin: {
        //: bold lead on a hazard label, before what to do
        const QString lead = HazardTexts::tr("If on skin:");
        const QString words = skin_words(hazard);
        return words.isEmpty() ? LedText{} : LedText{lead, words};
    }
    case LabelPiece::first_aid_swallowed: {
        //: bold lead on a hazard label, before what to do
        const QString lead = HazardTexts::tr("If swallowed:");
        const QString words = all_of(hazard, {P::p330, P::p301_p312, P::p301_p317});
        return words.isEmpty() ? LedText{} : LedText{lead, words};
    }
    default:
        return {};
    }
}

} // namespace soakbook::ui
