// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/refusal_words.h"

#include "core/exchange/date_text.h"
#include "ui/parts/figure_words.h"
#include "ui/parts/habits.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

const RefusalText* text_of(work::Why why) {
    for (const auto& room : {form_refusals(), batch_refusals(), soak_refusals(), yard_refusals()}) {
        for (const RefusalText& text : room) {
            if (text.why == why) {
                return &text;
            }
        }
    }
    return nullptr;
}

/// The sizes at which people go from grams to kilograms.
QString mass_words(maths::Mass mass, const Habits& habits) {
    constexpr std::int64_t large_from = 1'000'000;
    return mass.count >= large_from || mass.count <= -large_from ? habits.large(mass) : habits.small(mass);
}

} // namespace

QString fact_words(const QString& fact, const Habits& habits) {
    if (fact.size() < 3 || fact[1] != QLatin1Char(':')) {
        return fact;
    }
    const QString rest = fact.mid(2);
    bool is_number = false;
    const qint64 number = rest.toLongLong(&is_number);
    switch (fact[0].toLatin1()) {
    case 'm':
        return is_number ? mass_words(maths::Mass{number}, habits) : fact;
    case 't':
        return is_number ? habits.temperature(maths::Temperature{number}) : fact;
    case 'f':
        return is_number ? habits.percent(maths::Fraction{number}) : fact;
    case 'n':
        return is_number ? habits.count(number) : fact;
    case 'd': {
        const auto day = exchange::read_day_iso(rest);
        return day ? habits.day(*day) : fact;
    }
    case 's':
        return rest;
    default:
        return fact;
    }
}

QString refusal_words(const work::Refusal& refusal, const Habits& habits) {
    const RefusalText* text = text_of(refusal.why);
    if (text == nullptr) {
        //: At the foot of a form, where no better reason is known
        return QCoreApplication::translate("Refusal", "This cannot be entered as it stands.");
    }
    if (text->with == nullptr || refusal.facts.size() < text->facts) {
        return QCoreApplication::translate("Refusal", text->without);
    }
    const QString sentence = QCoreApplication::translate("Refusal", text->with);
    // In one pass, so that a name that holds a % stays as it is.
    QString words;
    for (qsizetype at = 0; at < sentence.size(); ++at) {
        const int n = sentence[at] == QLatin1Char('%') && at + 1 < sentence.size() ? sentence[at + 1].digitValue() : -1;
        if (n < 1 || n > text->facts) {
            words += sentence[at];
            continue;
        }
        const QString& fact = refusal.facts[n - 1];
        words += refusal.why == work::Why::figure_missing ? figure_name(fact) : fact_words(fact, habits);
        ++at;
    }
    return words;
}

QString unreadable_words(exchange::Unreadable why) {
    using exchange::Unreadable;
    switch (why) {
    case Unreadable::empty:
        //: Beside a field
        return QCoreApplication::translate("Unreadable", "Nothing is written here yet.");
    case Unreadable::not_a_number:
        //: Beside a field for an amount, a day or a time
        return QCoreApplication::translate("Unreadable", "This does not read. Write a figure such as 12.5, or a day such as 3 oct.");
    case Unreadable::unknown_unit:
        //: Beside a field for an amount
        return QCoreApplication::translate("Unreadable", "This unit does not belong here. Leave it out, or write another.");
    case Unreadable::grouping:
        //: Beside a field: 1.234 may be a thousand or a little more than one
        return QCoreApplication::translate("Unreadable", "A thousand, or a little over one? Write 1234, or 1.2340, or the unit after it.");
    case Unreadable::negative:
        //: Beside a field for an amount
        return QCoreApplication::translate("Unreadable", "This cannot be below zero.");
    case Unreadable::too_large:
        //: Beside a field for an amount
        return QCoreApplication::translate("Unreadable", "This is more than can be kept. Check the figure and its unit.");
    case Unreadable::too_fine:
        //: Beside a field for an amount
        return QCoreApplication::translate("Unreadable", "This has more decimals than are kept. Leave the last ones out.");
    case Unreadable::impossible_date:
        //: Beside a field for a day or a time of day
        return QCoreApplication::translate("Unreadable", "There is no such day or time. Check the figures.");
    case Unreadable::two_meanings:
        //: Beside a field for a day: 03/04/26 may be read two ways
        return QCoreApplication::translate("Unreadable", "This reads as two different days. Write the month as a word, or the year in full.");
    }
    return {};
}

} // namespace soakbook::ui
