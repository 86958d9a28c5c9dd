// SPDX-License-Identifier: GPL-3.0-or-later
// The numbers and days in a refusal or an explanation as plain text in the smallest unit, with a letter that says what
// they are: ui writes them in the user's own units and form. "m:12500000" is a mass in mg, "t:5520" a temperature in
// 0.01 C, "f:400000" a fraction in ppm, "d:2026-10-03" a day, "n:12" a number, "v:9889800" a volume in microlitres,
// "c:42500" money in ten-thousandths, "h:2190" a time in minutes, "x:0.0453" a plain number with a decimal point;
// anything else is a name and stands as it is.
#pragma once

#include "core/maths/quantities.h"

#include <QString>

#include <concepts>

namespace soakbook::work {

QString fact(maths::Mass mass);
QString fact(maths::Temperature temperature);
QString fact(maths::Fraction fraction);
QString fact(maths::Volume volume);
QString fact(maths::Money money);
QString fact(maths::Day day);
template <std::integral Number> QString fact(Number number) {
    return QStringLiteral("n:%1").arg(static_cast<qint64>(number));
}
/// A name or code that stands as it is; one that looks like a number above is marked ("s:") so that it is not read as
/// one.
QString fact(const QString& name);
/// A span of time, to the minute.
QString hours_fact(double hours);
/// A number of no unit, with so many decimals.
QString number_fact(double number, int decimals);

} // namespace soakbook::work
