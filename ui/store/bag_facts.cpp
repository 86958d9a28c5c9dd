// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_facts.h"

#include "ui/store/store_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BagFactsWords {
    Q_DECLARE_TR_FUNCTIONS(BagFacts)
};

constexpr int strip_decimals = 2;
constexpr std::size_t most_codes = 12;

/// "36 hung, 3 thrown away, counted anew −2".
QString gone_words(const Desk& desk, const work::BagLine& bag) {
    QStringList parts;
    if (bag.placed > 0) {
        //: Strips of a bag that went into hives
        parts << BagFactsWords::tr("%n hung", nullptr, bag.placed);
    }
    if (bag.discarded > 0) {
        //: Strips of a bag that were thrown away
        parts << BagFactsWords::tr("%n thrown away", nullptr, bag.discarded);
    }
    if (bag.recounted != 0) {
        //: The count of a bag was put right; %1 a number with its sign
        parts << BagFactsWords::tr("counted anew %1").arg(with_sign(desk, bag.recounted));
    }
    return parts.join(QStringLiteral(", "));
}

QString day_words(const Desk& desk, const std::optional<maths::Day>& day) {
    return day ? desk.day(*day) : QString();
}

} // namespace

std::vector<CardFact> bag_facts(const Desk& desk, const work::BagLine& bag, const BagCount& count) {
    std::vector<CardFact> facts;
    //: Name of a fact of a bag
    facts.push_back({BagFactsWords::tr("Batch"), bag.batch_code, {}, true});
    //: Name of a fact of a bag: what strips are in it
    facts.push_back({BagFactsWords::tr("Kind"), bag.strip_kind_name});
    //: Name of a fact of a bag: strips that are left, of those that were packed
    facts.push_back({BagFactsWords::tr("Strips left"), strips_words(desk, bag)});
    //: Name of a fact of a bag: where the strips went that are not in it any more
    facts.push_back({BagFactsWords::tr("Taken out"), gone_words(desk, bag)});
    //: Name of a fact of a bag
    facts.push_back({BagFactsWords::tr("Acid a strip"),
                     bag.acid_per_strip ? desk.small(*bag.acid_per_strip, strip_decimals) : QString()});
    //: Name of a fact of a bag: the strength of the liquid
    facts.push_back({BagFactsWords::tr("Strength"), bag.strength ? desk.percent(*bag.strength) : QString()});
    //: Name of a fact of a bag: weight of what is in it, when it was sealed
    facts.push_back({BagFactsWords::tr("Packed weight"), bag.net ? desk.large(*bag.net, strip_decimals) : QString()});
    //: Name of a fact of a bag: how many strips its weight speaks for
    facts.push_back({BagFactsWords::tr("By weight"), bag_count_words(desk, count)});
    //: Name of a fact of a bag: the hazard that its label states
    facts.push_back({BagFactsWords::tr("Hazard"), bag_hazard_words(bag)});
    //: Name of a fact of a bag: the day it was sealed
    facts.push_back({BagFactsWords::tr("Sealed"), day_words(desk, bag.sealed_on)});
    //: Name of a fact of a bag: the day its rest ends
    facts.push_back({BagFactsWords::tr("Rests until"), day_words(desk, bag.rest_until)});
    const QString limit = day_words(desk, bag.use_by);
    const QString days = days_left_words(bag);
    //: Name of a fact of a bag: the last day it may be used
    facts.push_back(
        {BagFactsWords::tr("Use by"), days.isEmpty() ? limit : QString(limit + QStringLiteral(", ") + days)});
    //: Name of a fact of a bag: the day it was opened
    facts.push_back({BagFactsWords::tr("Opened"), day_words(desk, bag.opened_on),
                     bag.opened_too_long ? std::optional(State::near) : std::nullopt});
    //: Name of a fact of a bag: the day it was sealed again after it was opened
    facts.push_back({BagFactsWords::tr("Resealed"), day_words(desk, bag.resealed_on)});
    //: Name of a fact of a bag: where it stands
    facts.push_back({BagFactsWords::tr("Stands"), bag.stands});
    if (bag.state != work::BagState::made_void) {
        //: Name of a fact of a bag or pail: whether its label was printed
        facts.push_back({BagFactsWords::tr("Label"), label_word(bag.label), label_shape(bag.label)});
    }
    //: Name of a fact of a bag: why it does not count any more
    facts.push_back({BagFactsWords::tr("Void because"), bag.void_reason});
    //: Name of a fact of a bag
    facts.push_back({BagFactsWords::tr("Note"), bag.note});
    return facts;
}

std::vector<CardFact> facts_of_several(const Desk& desk, const std::vector<work::BagLine>& bags) {
    int strips = 0;
    QStringList codes;
    for (const work::BagLine& bag : bags) {
        strips += bag.left;
        if (codes.size() < static_cast<qsizetype>(most_codes))
            codes << bag.code;
    }
    if (bags.size() > most_codes) {
        //: At the end of a list of codes; %n more of them
        codes << BagFactsWords::tr("and %n more", nullptr, static_cast<int>(bags.size() - most_codes));
    }
    return {
        //: Name of a fact of several bags: their strips together
        {BagFactsWords::tr("Strips left"), desk.count(strips)},
        //: Name of a fact of several bags: their codes
        {BagFactsWords::tr("Bags"), codes.join(QStringLiteral("  ")), {}, true},
    };
}

} // namespace soakbook::ui
