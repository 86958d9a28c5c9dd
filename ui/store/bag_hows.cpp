// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_hows.h"

#include "core/work/how_keeping.h"
#include "core/work/how_strips.h"
#include "core/work/label_hazard.h"
#include "ui/parts/count_words.h"
#include "ui/parts/refusal_words.h"
#include "ui/print/label_words.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct BagHowsWords {
    Q_DECLARE_TR_FUNCTIONS(BagHows)
};

bool is_filled(const work::BagLine& bag) {
    return bag.state != work::BagState::reserved && bag.state != work::BagState::made_void;
}

/// Statements go by their numbers all over the world.
QString number_of(maths::HazardStatement statement) {
    switch (statement) {
    case maths::HazardStatement::h302:
        return QStringLiteral("H302");
    case maths::HazardStatement::h312:
        return QStringLiteral("H312");
    case maths::HazardStatement::h318:
        return QStringLiteral("H318");
    case maths::HazardStatement::h319:
        return QStringLiteral("H319");
    }
    return {};
}

} // namespace

BagCount bag_count(const Desk& desk, const work::BagLine& bag) {
    if (!is_filled(bag) || !bag.net)
        return std::nullopt;
    return work::count_check(desk.workbook(), bag.id);
}

QString bag_count_words(const Desk& desk, const BagCount& count) {
    if (!count)
        return {};
    return *count ? count_words(desk, **count) : refusal_words(count->error(), desk);
}

QString bag_hazard_words(const work::BagLine& bag) {
    if (!is_filled(bag))
        return {};
    // The numbers of the statements are the same in both editions.
    const maths::Hazard hazard = work::label_hazard(bag.strength).from_rev_9;
    QStringList numbers;
    for (const maths::HazardStatement statement : hazard.hazards)
        numbers << number_of(statement);
    if (numbers.isEmpty()) {
        //: The hazard of a liquid so weak that its label states none
        return BagHowsWords::tr("none by its strength");
    }
    //: The hazard that a label states; %1 "DANGER", %2 numbers of hazard statements: "H302, H318"
    return BagHowsWords::tr("%1: %2").arg(signal_word(hazard.word), numbers.join(QStringLiteral(", ")));
}

std::vector<work::How> bag_hows(const Desk& desk, const work::BagLine& bag, const BagCount& count) {
    std::vector<work::How> hows;
    if (!is_filled(bag))
        return hows;
    for (const auto& how : {work::how_acid_in_strip(desk.workbook(), bag.id), work::how_rest(desk.workbook(), bag.id),
                            work::how_use_by(desk.workbook(), bag.id)}) {
        if (how)
            hows.push_back(*how);
    }
    if (count && *count)
        hows.push_back(work::how_count_by_weight(**count));
    if (bag.strength)
        hows.push_back(work::how_hazard_class(*bag.strength));
    return hows;
}

} // namespace soakbook::ui
