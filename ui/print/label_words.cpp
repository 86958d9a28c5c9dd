// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/label_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct LabelTexts {
    Q_DECLARE_TR_FUNCTIONS(Label)
};

} // namespace

QString label_piece_name(LabelPiece piece) {
    switch (piece) {
    case LabelPiece::handling:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("precautions for handling and keeping");
    case LabelPiece::protection:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("gloves and eye protection");
    case LabelPiece::first_aid_skin:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("first aid for the skin");
    case LabelPiece::first_aid_swallowed:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("first aid when swallowed");
    case LabelPiece::first_aid_eyes:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("first aid for the eyes");
    case LabelPiece::maker:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("who made it");
    case LabelPiece::bag_number:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("which bag of how many");
    case LabelPiece::rest_until:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("rest until");
    case LabelPiece::batch:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("batch");
    case LabelPiece::strength:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("strength");
    case LabelPiece::sealed:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("sealed");
    case LabelPiece::own_use:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("the line on own use");
    case LabelPiece::acid_per_strip:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("acid per strip");
    case LabelPiece::amount:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("how much is in it");
    case LabelPiece::square:
        //: piece of a label, within a list of what was left out
        return LabelTexts::tr("the square to scan");
    }
    return {};
}

QString left_out_words(const std::vector<LabelPiece>& left_out) {
    if (left_out.empty()) {
        return {};
    }
    QStringList names;
    for (const LabelPiece piece : left_out) {
        names.append(label_piece_name(piece));
    }
    //: %1 is a list such as "precautions, first aid for the skin"
    return LabelTexts::tr("Left out for want of room: %1.").arg(names.join(QStringLiteral(", ")));
}

QString strength_words(const LabelContent& content) {
    if (content.strength.isEmpty()) {
        return {};
    }
    //: on a label; %1 is a strength with its per cent sign; of the dihydrate, by mass
    return LabelTexts::tr("Oxalic acid %1 in glycerine.").arg(content.strength);
}

QString amount_words(const LabelContent& content) {
    if (content.kind == LabelKind::pail) {
        if (content.mass.isEmpty() || content.reserved) {
            //: on a pail's label: the liquid that strips are soaked in
            return LabelTexts::tr("Soak liquid");
        }
        //: on a pail's label; %1 is a mass with its unit
        return LabelTexts::tr("Soak liquid, %1").arg(content.mass);
    }
    if (!content.strips || content.reserved) {
        //: on a bag's label when the count is still to be written in
        return LabelTexts::tr("Oxalic acid strips");
    }
    //: on a bag's label
    return LabelTexts::tr("%n oxalic acid strips", nullptr, *content.strips);
}

QString acid_words(const LabelContent& content) {
    if (content.acid_per_strip.isEmpty()) {
        return {};
    }
    //: on a bag's label, after the number of strips; %1 is a mass with its unit, of oxalic acid dihydrate in one strip
    return LabelTexts::tr("%1 acid each").arg(content.acid_per_strip);
}

QString batch_words(const LabelContent& content) {
    if (content.batch_code.isEmpty()) {
        return {};
    }
    //: on a label; %1 is a batch's code
    return LabelTexts::tr("batch %1").arg(content.batch_code);
}

QString number_words(const LabelContent& content) {
    if (content.number < 1) {
        return {};
    }
    if (content.kind == LabelKind::pail) {
        //: on a pail's label
        return LabelTexts::tr("pail %1 of %2").arg(content.number).arg(content.of);
    }
    //: on a bag's label
    return LabelTexts::tr("bag %1 of %2").arg(content.number).arg(content.of);
}

QString own_use_words() {
    //: on every label
    return LabelTexts::tr("Home-made for own use, not for sale.");
}

QString maker_words(const LabelContent& content) {
    if (content.maker.isEmpty()) {
        return {};
    }
    constexpr qsizetype short_enough = 24;
    QStringList lines = content.maker;
    for (QString& line : lines) {
        if (line.size() <= short_enough) {
            line.replace(QLatin1Char(' '), QChar::Nbsp); // a telephone number stays in one piece
        }
    }
    //: on a label; %1 is the maker's name, place and telephone
    return LabelTexts::tr("Made by %1").arg(lines.join(QStringLiteral(" · ")));
}

} // namespace soakbook::ui
