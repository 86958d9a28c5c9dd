// SPDX-License-Identifier: GPL-3.0-or-later
// The words on labels, in the user's language.
#pragma once

#include "ui/print/label_content.h"

#include <QLocale>

namespace soakbook::ui {

/// A thing that a label may have to do without, in the order in which it goes: the first is the first to go.
enum class LabelPiece {
    handling,   ///< precautions: eating, washing, where to keep it
    protection, ///< precautions: gloves and eye protection
    first_aid_skin,
    first_aid_swallowed,
    first_aid_eyes,
    maker,
    bag_number,
    rest_until,
    batch,
    strength,
    sealed,
    own_use,
    acid_per_strip,
    amount, ///< how many strips, how much liquid
    square, ///< the code to scan
};
constexpr int label_piece_count = static_cast<int>(LabelPiece::square) + 1;

/// The name of a piece in a sentence, as "precautions".
QString label_piece_name(LabelPiece piece);
/// "Left out for want of room: precautions, first aid for the skin." Empty when nothing is.
QString left_out_words(const std::vector<LabelPiece>& left_out);

/// A bold lead ("In eyes:") and what follows it.
struct LedText {
    QString lead;
    QString text;
};

QString signal_word(maths::SignalWord word);
/// The statement as the standard words it: "Harmful if swallowed."
QString hazard_statement(maths::HazardStatement statement);
/// The precaution as the standard words it, without its lead ("If in eyes").
QString precautionary_statement(maths::PrecautionaryStatement statement);
/// All hazard statements, one after the other.
QString hazard_statements(const maths::Hazard& hazard);
/// Gloves and eye protection.
QString protection_words(const maths::Hazard& hazard);
/// The other precautions: eating, washing, where to keep it.
QString handling_words(const maths::Hazard& hazard);
/// What to do, for one of the three first-aid pieces; empty when the hazard asks for none.
LedText first_aid(LabelPiece piece, const maths::Hazard& hazard);
/// "Oxalic acid 42 % in glycerine."
QString strength_words(const LabelContent& content);
/// "60 strips", "Soak liquid, 11.4 kg", or with a reserved label "Oxalic acid strips".
QString amount_words(const LabelContent& content);
QString acid_words(const LabelContent& content);
QString batch_words(const LabelContent& content);
QString number_words(const LabelContent& content);
QString own_use_words();
QString maker_words(const LabelContent& content);

} // namespace soakbook::ui
