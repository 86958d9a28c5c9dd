// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shed_words.h"

#include "core/exchange/date_text.h"

#include <QCoreApplication>

#include <cmath>
#include <cstdlib>

namespace soakbook::ui {

namespace {

struct ShedWords {
    Q_DECLARE_TR_FUNCTIONS(ShedWords)
};

constexpr int scale_decimals = 2;

enum class Round { down, near, up };

/// To whole ten minutes: nobody weighs by the minute.
maths::Instant ten_minutes(maths::Instant at, Round round) {
    constexpr qint64 step = 600'000;
    const qint64 shift = round == Round::down ? 0 : round == Round::near ? step / 2 : step - 1;
    at.utc_ms = (at.utc_ms + shift) / step * step;
    return at;
}

QString rounded_money(const Habits& habits, maths::Money money, qint64 step) {
    const qint64 half = money.count < 0 ? -step / 2 : step / 2;
    return exchange::write_money(maths::Money{(money.count + half) / step * step}, habits.locale());
}

} // namespace

State batch_state(const work::BatchLine& batch) {
    switch (batch.state) {
    case work::BatchState::planned:
    case work::BatchState::warming:
    case work::BatchState::soaking:
        return State::resting;
    case work::BatchState::clear:
    case work::BatchState::bagging:
        return State::ready;
    case work::BatchState::to_close:
        return State::near;
    case work::BatchState::closed:
        return batch.resting > 0 ? State::resting : State::gone;
    case work::BatchState::made_void:
        return State::gone;
    }
    return State::gone;
}

QString batch_state_word(const work::BatchLine& batch) {
    switch (batch.state) {
    case work::BatchState::planned:
        //: State of a batch: its amounts are planned and not weighed in
        return ShedWords::tr("Planned");
    case work::BatchState::warming:
        //: State of a batch: the tank is warming, the liquid is not clear yet
        return ShedWords::tr("Warming");
    case work::BatchState::clear:
        //: State of a batch: the liquid was seen clear
        return ShedWords::tr("Clear");
    case work::BatchState::soaking:
        //: State of a batch: strips stand in the liquid
        return ShedWords::tr("Soaking");
    case work::BatchState::bagging:
        //: State of a batch: strips wait to be bagged
        return ShedWords::tr("To bag");
    case work::BatchState::to_close:
        //: State of a batch: all is bagged, leftovers are open
        return ShedWords::tr("To close");
    case work::BatchState::closed:
        //: State of a closed batch of which bags still rest
        return batch.resting > 0 ? ShedWords::tr("Resting")
                                 //: State of a batch: closed
                                 : ShedWords::tr("Closed");
    case work::BatchState::made_void:
        //: State of a batch that was made void
        return ShedWords::tr("Void");
    }
    return {};
}

QString in_containers(const Habits& habits, const work::InContainers& amount, bool acid) {
    if (!amount.container || amount.container->count <= 0)
        return {};
    const QString rest = large(habits, amount.rest);
    if (amount.whole == 0) {
        //: Less than one container; %1 a mass to weigh out
        return ShedWords::tr("%1 weighed out").arg(rest);
    }
    const QString size = large(habits, *amount.container);
    const int n = static_cast<int>(amount.whole);
    const QString whole = acid
                              //: Whole containers of acid; %1 what one holds
                              ? ShedWords::tr("%n sacks of %1", nullptr, n).arg(size)
                              //: Whole containers of glycerine; %1 what one holds
                              : ShedWords::tr("%n cans of %1", nullptr, n).arg(size);
    if (amount.rest.count == 0)
        return whole;
    //: %1 whole containers ("1 can of 25 kg"), %2 the mass still to weigh
    return ShedWords::tr("%1 and %2").arg(whole, rest);
}

work::InContainers planned_containers(const work::InputLine& input) {
    if (!input.container || input.container->count <= 0)
        return {input.planned, std::nullopt, 0, input.planned};
    const qint64 whole = input.planned.count / input.container->count;
    return {input.planned, input.container, whole, input.planned - whole * *input.container};
}

QString in_containers(const Habits& habits, const work::InputLine& input) {
    return input.pail ? QString() : in_containers(habits, planned_containers(input), input.is_acid);
}

QString lot_words(const Habits& habits, const work::LotLine& lot) {
    const bool by_mass = lot.entry.material == work::MaterialKind::acid ||
                         lot.entry.material == work::MaterialKind::glycerine;
    const QString left = by_mass ? large(habits, maths::Mass{lot.left}) : habits.count(lot.left);
    //: A delivery in a list; %1 its name, %2 what is left of it
    return ShedWords::tr("%1 · %2 left").arg(lot.entry.name, left);
}

QString large(const Habits& habits, maths::Mass mass) { return habits.large(mass, scale_decimals); }

QString large_signed(const Habits& habits, maths::Mass mass) {
    const QString size = large(habits, maths::Mass{std::abs(mass.count)});
    if (mass.count == 0)
        return size;
    const QString sign = mass.count < 0 ? QStringLiteral("\u2212") : QStringLiteral("+");
    return sign + size;
}

QString small(const Habits& habits, maths::Mass mass) { return habits.small(mass, scale_decimals); }

QString large_number(const Habits& habits, maths::Mass mass) {
    return exchange::write_mass_number(mass, habits.preferences().large_mass, habits.locale(), scale_decimals);
}

QString small_number(const Habits& habits, maths::Mass mass) {
    return exchange::write_mass_number(mass, habits.preferences().small_mass, habits.locale(), scale_decimals);
}

QString temperature_number(const Habits& habits, maths::Temperature temperature) {
    return exchange::write_temperature_number(temperature, habits.preferences().temperature, habits.locale(), 1);
}

QString large_header(const Habits& habits, const QString& words) {
    //: The header of a column; %1 what it shows, %2 the sign of the unit
    return ShedWords::tr("%1, %2").arg(words, exchange::sign(habits.preferences().large_mass));
}

QString small_header(const Habits& habits, const QString& words) {
    //: The header of a column; %1 what it shows, %2 the sign of the unit
    return ShedWords::tr("%1, %2").arg(words, exchange::sign(habits.preferences().small_mass));
}

QString temperature_header(const Habits& habits, const QString& words) {
    //: The header of a column; %1 what it shows, %2 the sign of the unit
    return ShedWords::tr("%1, %2").arg(words, exchange::sign(habits.preferences().temperature));
}

QString degrees_apart(const Habits& habits, maths::Temperature difference) {
    const bool fahrenheit = habits.preferences().temperature == exchange::TemperatureUnit::fahrenheit;
    // A step of a degree Celsius is 1.8 of Fahrenheit; the two zeros do not matter in a difference.
    const double degrees = maths::in_celsius(difference) * (fahrenheit ? 1.8 : 1.0);
    const QString sign = degrees < 0 ? QStringLiteral("\u2212") : QString();
    return QStringLiteral("%1%2\u202f%3").arg(sign, habits.locale().toString(std::abs(degrees), 'f', 1),
                                            exchange::sign(habits.preferences().temperature));
}

QString volume(const Habits& habits, maths::Volume volume) {
    const bool gallons = habits.preferences().large_mass == exchange::MassUnit::pound;
    return exchange::write_volume(volume, gallons ? exchange::VolumeUnit::us_gallon : exchange::VolumeUnit::litre,
                                  habits.locale(), scale_decimals);
}

QString money(const Habits& habits, maths::Money money) { return rounded_money(habits, money, 100); }

QString small_money(const Habits& habits, maths::Money money) { return rounded_money(habits, money, 10); }

QString hour_words(const Habits& habits, const maths::Instant& at) {
    const maths::Instant shown = ten_minutes(at, Round::near);
    const QString time = exchange::write_time(shown);
    const auto days = maths::days_between(habits.today(), shown.local_day());
    if (days == 0) {
        //: An hour of this day; %1 a time of day
        return ShedWords::tr("%1 today").arg(time);
    }
    if (days == 1) {
        //: An hour of the next day; %1 a time of day
        return ShedWords::tr("%1 tomorrow").arg(time);
    }
    //: An hour of another day; %1 a time of day, %2 the day
    return ShedWords::tr("%1 on %2").arg(time, habits.day_short(shown.local_day()));
}

QString between_hours(const Habits& habits, const maths::Instant& from, const maths::Instant& to, const maths::Instant& beside) {
    const maths::Instant low = ten_minutes(from, Round::down);
    const maths::Instant high = ten_minutes(to, Round::up);
    const maths::Day day = ten_minutes(beside, Round::near).local_day();
    const auto words = [&habits, day](const maths::Instant& at) {
        return at.local_day() == day ? exchange::write_time(at) : hour_words(habits, at);
    };
    //: In which time something happens; %1 and %2 hours, such as "13:00" or "02:00 tomorrow"
    return ShedWords::tr("between %1 and %2").arg(words(low), words(high));
}

QString how_long(double hours) {
    const auto minutes = std::llround(hours * 60);
    if (minutes < 60) {
        //: A time span; %1 minutes
        return ShedWords::tr("%1 min").arg(minutes);
    }
    if (minutes < 48 * 60) {
        return minutes % 60 == 0
                   //: A time span; %1 hours
                   ? ShedWords::tr("%1 h").arg(minutes / 60)
                   //: A time span; %1 hours, %2 minutes
                   : ShedWords::tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
    }
    const auto whole_hours = std::llround(hours);
    //: A time span; %1 days, %2 hours
    return ShedWords::tr("%1 d %2 h").arg(whole_hours / 24).arg(whole_hours % 24);
}

std::optional<maths::Instant> corrected_moment(std::optional<maths::Instant> typed, const maths::Instant& before) {
    constexpr qint64 minute_ms = 60'000;
    const bool same = typed && std::abs(typed->utc_ms - before.utc_ms) < minute_ms;
    return same ? std::optional(before) : typed;
}

QString joined(const QStringList& parts) {
    QStringList filled;
    for (const QString& part : parts) {
        if (!part.isEmpty())
            filled.push_back(part);
    }
    return filled.join(QStringLiteral(" · "));
}

} // namespace soakbook::ui
