// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/facts.h"

#include "core/book/value.h"

#include <cmath>

namespace soakbook::work {

namespace {
QString marked(char kind, qint64 count) {
    const QString text = QLatin1Char(kind) + QStringLiteral(":") + QString::number(count);
    return text;
}
} // namespace

QString fact(maths::Mass mass) {
    return marked('m', mass.count);
}
QString fact(maths::Temperature temperature) {
    return marked('t', temperature.count);
}
QString fact(maths::Fraction fraction) {
    return marked('f', fraction.count);
}
QString fact(maths::Volume volume) {
    return marked('v', volume.count);
}
QString fact(maths::Money money) {
    return marked('c', money.count);
}

QString fact(maths::Day day) {
    const QString text = QStringLiteral("d:") + book::day_text(day);
    return text;
}

QString fact(const QString& name) {
    const bool looks_marked =
        name.size() > 1 && name.at(1) == QLatin1Char(':') && QStringLiteral("mtfdnsvchx").contains(name.at(0));
    const QString text = looks_marked ? QStringLiteral("s:") + name : name;
    return text;
}

QString hours_fact(double hours) {
    return marked('h', std::llround(hours * 60.0));
}

QString number_fact(double number, int decimals) {
    const QString text = QStringLiteral("x:") + QString::number(number, 'f', decimals);
    return text;
}

} // namespace soakbook::work
