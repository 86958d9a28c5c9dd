// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/store_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <limits>

namespace soakbook::ui {

namespace {

struct StoreTexts {
    Q_DECLARE_TR_FUNCTIONS(StoreWords)
};

constexpr int scale_decimals = 2;

} // namespace

std::optional<State> bag_shape(work::BagState state) {
    switch (state) {
    case work::BagState::reserved:
        return std::nullopt;
    case work::BagState::resting:
        return State::resting;
    case work::BagState::ready:
        return State::ready;
    case work::BagState::near_limit:
        return State::near;
    case work::BagState::past_limit:
        return State::past;
    case work::BagState::gone:
    case work::BagState::made_void:
        break;
    }
    return State::gone;
}

QString bag_state_word(work::BagState state) {
    switch (state) {
    case work::BagState::reserved:
        //: State of a label that was printed before its bag was filled
        return StoreTexts::tr("no bag yet");
    case work::BagState::gone:
        //: State of a bag without strips
        return StoreTexts::tr("gone");
    case work::BagState::made_void:
        //: State of a bag that does not count any more
        return StoreTexts::tr("void");
    default:
        return state_word(*bag_shape(state));
    }
}

State pail_shape(work::PailState state) {
    switch (state) {
    case work::PailState::ready:
    case work::PailState::only_with_its_set:
        return State::ready;
    case work::PailState::strength_unknown:
        return State::near;
    case work::PailState::planned:
        return State::resting;
    case work::PailState::used:
    case work::PailState::discarded:
    case work::PailState::made_void:
        break;
    }
    return State::gone;
}

QString pail_state_word(const work::PailLine& pail) {
    switch (pail.state) {
    case work::PailState::ready:
        //: State of a pail: it can go into a mix
        return StoreTexts::tr("ready");
    case work::PailState::only_with_its_set:
        //: State of a pail that goes into a mix only together with others
        return StoreTexts::tr("with its set");
    case work::PailState::strength_unknown:
        //: State of a pail whose strength is not known
        return StoreTexts::tr("goes in no mix");
    case work::PailState::planned:
        //: State of a pail; %1 the code of the batch it is planned for
        return StoreTexts::tr("planned for %1").arg(pail.used_in);
    case work::PailState::used:
        //: State of a pail; %1 the code of the batch it went into
        return StoreTexts::tr("went into %1").arg(pail.used_in);
    case work::PailState::discarded:
        //: State of a pail whose contents were thrown away
        return StoreTexts::tr("thrown away");
    case work::PailState::made_void:
        break;
    }
    //: State of a pail that does not count any more
    return StoreTexts::tr("void");
}

QString label_word(const QString& label) {
    if (label == QLatin1String("printed")) {
        //: The label of a bag or pail was printed
        return StoreTexts::tr("printed");
    }
    if (label == QLatin1String("stale")) {
        //: The label of a bag or pail says what is not true any more
        return StoreTexts::tr("print again");
    }
    //: The label of a bag or pail
    return StoreTexts::tr("not printed");
}

std::optional<State> label_shape(const QString& label) {
    if (label == QLatin1String("printed"))
        return State::ready;
    return label == QLatin1String("stale") ? std::optional(State::near) : std::nullopt;
}

QString strength_or_unknown(const Habits& habits, const std::optional<maths::Fraction>& strength) {
    //: The strength of a liquid is not known
    return strength ? habits.percent(*strength) : StoreTexts::tr("unknown");
}

QString material_word(work::MaterialKind material) {
    switch (material) {
    case work::MaterialKind::acid:
        //: A material
        return StoreTexts::tr("Oxalic acid");
    case work::MaterialKind::glycerine:
        //: A material
        return StoreTexts::tr("Glycerine");
    case work::MaterialKind::strips:
        //: A material
        return StoreTexts::tr("Dry strips");
    case work::MaterialKind::bags:
        break;
    }
    //: A material
    return StoreTexts::tr("Bags");
}

bool is_by_mass(work::MaterialKind material) {
    return material == work::MaterialKind::acid || material == work::MaterialKind::glycerine;
}

QString lot_amount(const Habits& habits, work::MaterialKind material, qint64 amount) {
    return is_by_mass(material) ? habits.large(maths::Mass{amount}, scale_decimals) : habits.count(amount);
}

QString strips_words(const Habits& habits, const work::BagLine& bag) {
    if (!bag.packed)
        return {};
    //: Strips in a bag; %1 those that are left, %2 those that were packed
    return StoreTexts::tr("%1 of %2").arg(habits.count(bag.left), habits.count(*bag.packed));
}

QString days_left_words(const work::BagLine& bag) {
    if (!bag.days_left || bag.left <= 0)
        return {};
    if (*bag.days_left < 0) {
        //: A bag's limit lies behind; %n days
        return StoreTexts::tr("%n day(s) past", nullptr, -*bag.days_left);
    }
    if (*bag.days_left == 0) {
        //: A bag's limit
        return StoreTexts::tr("today is the last day");
    }
    //: A bag's limit; %n days
    return StoreTexts::tr("%n day(s) left", nullptr, *bag.days_left);
}

std::optional<int> as_strips(std::optional<qint64> n) {
    constexpr qint64 most = std::numeric_limits<int>::max();
    return n ? std::optional(static_cast<int>(std::min(*n, most))) : std::nullopt;
}

QString with_sign(const Habits& habits, int n) {
    if (n == 0)
        return habits.count(0);
    const QString sign = n < 0 ? QStringLiteral("\u2212") : QStringLiteral("+");
    return sign + habits.count(n < 0 ? -static_cast<qint64>(n) : n);
}

} // namespace soakbook::ui
