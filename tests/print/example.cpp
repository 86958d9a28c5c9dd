// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"

#include <QDir>
#include <QTemporaryDir>

namespace soakbook::ui::test {

namespace {

void give_hazard(LabelContent& content, double strength_percent) {
    const maths::Fraction strength = maths::percent(strength_percent);
    content.hazard_up_to_rev_8 = *maths::hazard_of_liquid(strength, maths::StatementSet::up_to_rev_8);
    content.hazard_from_rev_9 = *maths::hazard_of_liquid(strength, maths::StatementSet::from_rev_9);
    content.strength = QLocale().toString(strength_percent, 'g', 4) + QStringLiteral("\u2009%");
}

} // namespace

LabelContent a_bag(int number, double strength_percent) {
    LabelContent bag;
    bag.code = QStringLiteral("S%1E").arg(50 + number);
    bag.batch_code = QStringLiteral("B6H");
    bag.sealed = maths::day(2026, 11, 18);
    bag.rest_until = maths::day(2026, 11, 25);
    bag.use_by = maths::day(2027, 11, 18);
    bag.strips = 60;
    bag.acid_per_strip = QStringLiteral("7.1\u2009g");
    bag.number = number;
    bag.of = 9;
    bag.maker = {QStringLiteral("Marsh End Bees"), QStringLiteral("Low Lane 4, Netherby"), QStringLiteral("00 000 000")};
    give_hazard(bag, strength_percent);
    return bag;
}

LabelContent a_pail() {
    LabelContent pail;
    pail.kind = LabelKind::pail;
    pail.code = QStringLiteral("P3F");
    pail.batch_code = QStringLiteral("B6H");
    pail.sealed = maths::day(2026, 11, 19);
    pail.mass = QStringLiteral("11.4\u2009kg");
    pail.maker = a_bag().maker;
    give_hazard(pail, 42);
    return pail;
}

LabelContent a_reserved_bag() {
    LabelContent bag = a_bag(4);
    bag.reserved = true;
    bag.sealed.reset();
    bag.rest_until.reset();
    bag.use_by.reset();
    bag.strips.reset();
    bag.acid_per_strip.clear();
    return bag;
}

std::vector<LabelContent> bags(int n) {
    std::vector<LabelContent> all;
    for (int i = 0; i < n; ++i) {
        LabelContent bag = a_bag(i % 9 + 1);
        bag.code = QStringLiteral("S%1X").arg(i + 100);
        all.push_back(bag);
    }
    return all;
}

LabelStyle english() {
    LabelStyle style;
    style.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    return style;
}

QString picture_path(const QString& name) {
    static const QTemporaryDir passing;
    const QString wished = qEnvironmentVariable("SOAKBOOK_PICTURES");
    const QDir folder(wished.isEmpty() ? passing.path() : wished);
    folder.mkpath(QStringLiteral("."));
    return folder.filePath(name);
}

} // namespace soakbook::ui::test
